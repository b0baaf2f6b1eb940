// Shunt, extra shift and arterial carbon dioxide as spreads, from the blood gas, the breathing state and the risk of retention. Leaves out what a saturation reading adds, which inference works out.
import { gasExchangePreset, type LungCondition } from '../physiology/gas-exchange-presets.ts'
import { biasSpreadPercent, ACCURACY_CLASSES } from '../physiology/oximeter.ts'
import { kpaFromMmhg } from '../units/pressure.ts'
import { medianOf, type Spread } from '../units/spread.ts'
import type { Case, RetentionRisk } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { around, assumed, typed, type PatientSpread, type SourcedSpread } from './patient-spread.ts'

/** Whoever is given oxygen is not taken for healthy: some illness of unknown kind, from nearly none to severe, as wide as
 *  the named conditions together (common practice). */
const UNKNOWN_SHUNT: Spread = { kind: 'lognormal', median: 0.07, logSd: 0.9, min: 0.01, max: 0.5 }
const UNKNOWN_SHIFT: Spread = {
  kind: 'triangular',
  mode: kpaFromMmhg(10),
  min: 0,
  max: kpaFromMmhg(60),
}

/** Lungs of whoever does not fit the named condition: mixed with it in every sample, because a state typed at the bedside may be wrong or not alone. */
export const UNKNOWN_LUNGS = { shuntFraction: UNKNOWN_SHUNT, extraShiftKpa: UNKNOWN_SHIFT } as const

export interface LungSpreads {
  readonly shuntFraction: PatientSpread
  readonly extraShiftKpa: PatientSpread
  readonly arterialPco2Kpa: PatientSpread
}

export function lungSpreads(about: Case, condition: LungCondition): LungSpreads {
  const preset = gasExchangePreset({ condition, ageYears: about.patient.ageYears })
  const arterialPco2Kpa = carbonDioxideSpread(about, preset.arterialPco2Kpa)
  if (condition === 'healthy') {
    const how = { known: 'common-practice', code: 'LUNG_CONDITION_NOT_KNOWN' } as const
    return {
      shuntFraction: assumed({ spread: UNKNOWN_SHUNT, ...how }),
      extraShiftKpa: assumed({ spread: UNKNOWN_SHIFT, ...how }),
      arterialPco2Kpa,
    }
  }
  return {
    shuntFraction: assumed({ ...preset.shuntFraction, code: 'FROM_STATE' }),
    extraShiftKpa: assumed({ ...preset.extraShiftKpa, code: 'FROM_STATE' }),
    arterialPco2Kpa,
  }
}

/** Error of a fresh gas, and what it may have moved since: about 0.5 kPa in half an hour (common practice). */
const GAS_ERROR_KPA = 0.2
const GAS_DRIFT_KPA_PER_ROOT_MIN = 0.09
const GAS_DRIFT_MINUTES_MAX = 240

/** Carbon dioxide of a known retainer without a gas, kPa: as in an exacerbation, 51 ± 12 mmHg. */
const RETAINER: SourcedSpread = {
  spread: {
    kind: 'normal',
    mean: kpaFromMmhg(51),
    sd: kpaFromMmhg(12),
    min: kpaFromMmhg(38),
    max: kpaFromMmhg(95),
  },
  known: 'seen',
  source: 'Barbera1997',
}
/** The risk alone: between normal and retaining (common practice). */
const AT_RISK: SourcedSpread = {
  spread: {
    kind: 'normal',
    mean: kpaFromMmhg(44),
    sd: kpaFromMmhg(7),
    min: kpaFromMmhg(33),
    max: kpaFromMmhg(70),
  },
  known: 'common-practice',
}
const BY_RISK: Readonly<Record<RetentionRisk, SourcedSpread | undefined>> = {
  none: undefined,
  'at-risk': AT_RISK,
  'known-retainer': RETAINER,
}

/** The gas; without one the wider of what the state and the risk suggest: that with the higher middle. */
function carbonDioxideSpread(about: Case, ofState: SourcedSpread): PatientSpread {
  const gas = about.patient.bloodGas
  if (gas !== undefined) {
    const { min, max } = NUMBERS.arterialPco2Kpa
    const minutes = Math.min(gas.minutesAgo ?? GAS_DRIFT_MINUTES_MAX, GAS_DRIFT_MINUTES_MAX)
    const sd = GAS_ERROR_KPA + GAS_DRIFT_KPA_PER_ROOT_MIN * Math.sqrt(minutes)
    return typed(around({ value: gas.arterialPco2Kpa, sd, min, max }))
  }
  const ofRisk = BY_RISK[about.patient.retentionRisk]
  if (ofRisk === undefined || medianOf(ofRisk.spread) <= medianOf(ofState.spread)) {
    return assumed({ ...ofState, code: 'FROM_STATE' })
  }
  return assumed({ ...ofRisk, code: 'FROM_RETENTION_RISK' })
}

/** Bias of an oximeter of the usual class. */
export function oximeterBiasSpread(): PatientSpread {
  const { armsPercent, known, source } = ACCURACY_CLASSES.transmittance
  return assumed({ spread: biasSpreadPercent(armsPercent), known, source })
}
