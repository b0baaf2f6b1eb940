// Judges breathing against age, size and sex: states that cannot be this patient's, rates and volumes no such body draws. Leaves out distributions.
import { isDomainError, problemOf, type ErrorCode } from '../errors.ts'
import { breathingStateAges, requirePlausibleVentilation } from '../physiology/breathing-states.ts'
import { middleBody } from './assume-body.ts'
import type { Breathing, BreathingState, OnNow, Patient } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { isPreterm, PRETERM_BELOW_WEEKS } from './check-size.ts'
import { LEAST_BREATH_PER_DEAD_SPACE, leastDeadSpaceMl } from './dead-space-in-use.ts'
import { presetState } from './preset-state.ts'
import { checkNumber, report, type Reading } from './field.ts'
import { roundForSuggestion, type UnitSlip } from './unit-slip.ts'

interface Ages {
  readonly min: number
  readonly max: number
}

/** Rates a living, breathing body of that age can have, /min (common practice; wide of every published centile). */
export const RATES_BY_AGE: readonly (Ages & {
  readonly slowest: number
  readonly fastest: number
})[] = [
  { min: 0, max: 1, slowest: 6, fastest: 120 },
  { min: 1, max: 5, slowest: 5, fastest: 110 },
  { min: 5, max: 12, slowest: 4, fastest: 90 },
  { min: 12, max: 120, slowest: 3, fastest: 80 },
]

/** Tidal volume and oxygen uptake a body can reach per kg, at rest to hard work (common practice). */
const TIDAL_ML_PER_KG = { min: 1, max: 40 }
const UPTAKE_ML_PER_KG_MIN = { min: 1.2, max: 70 }

/** Two routine counts of one patient differ by up to about this, /min: half-width of the limits of agreement, −10 to +18. Source: Daw2017. */
const RATE_TOLERANCE_PER_MIN = 14

export function checkBreathing(
  reading: Reading,
  given: {
    readonly patient: Patient
    readonly breathing: Breathing
    readonly onNow: OnNow | undefined
  },
): void {
  const { patient, breathing, onNow } = given
  checkState(reading, patient, breathing.state)
  checkRate(reading, patient, { path: 'breathing.ratePerMin', ratePerMin: breathing.ratePerMin })
  checkRate(reading, patient, { path: 'onNow.ratePerMin', ratePerMin: onNow?.ratePerMin })
  checkPerKg(reading, patient, {
    code: 'TIDAL_VOLUME_IMPLAUSIBLE_FOR_SIZE',
    path: 'breathing.tidalVolumeMl',
    value: breathing.tidalVolumeMl,
    unit: 'mL',
    perKg: TIDAL_ML_PER_KG,
    slips: NUMBERS.tidalVolumeMl.slips,
  })
  checkPerKg(reading, patient, {
    code: 'UPTAKE_IMPLAUSIBLE_FOR_SIZE',
    path: 'patient.oxygenUptakeMlPerMin',
    value: patient.oxygenUptakeMlPerMin,
    unit: 'mL/min',
    perKg: UPTAKE_ML_PER_KG_MIN,
    slips: NUMBERS.oxygenUptakeMlPerMin.slips,
  })
  checkDeadSpace(reading, patient, breathing)
  checkVentilation(reading, patient, breathing)
  checkRatesAgree(reading, breathing, onNow)
  warnNoPart(reading, patient, breathing)
}

function checkState(reading: Reading, patient: Patient, state: BreathingState): void {
  const path = 'breathing.state'
  const ages = breathingStateAges(presetState(state))
  if (patient.ageYears < ages.min || patient.ageYears > ages.max) {
    const limit = { min: ages.min, max: ages.max }
    report(reading, { code: 'STATE_NOT_FOR_AGE', path, value: state, limit, unit: 'a' })
  }
  if (state === 'pregnancy' && patient.sex === 'male') {
    report(reading, { code: 'STATE_NOT_FOR_SEX', path, value: state, limit: { oneOf: ['female'] } })
  }
  checkStateForGestation(reading, patient, state)
}

function checkStateForGestation(reading: Reading, patient: Patient, state: BreathingState): void {
  const { gestationWeeks } = patient
  if (gestationWeeks === undefined) return
  const isPreterm = gestationWeeks < PRETERM_BELOW_WEEKS
  const reportWith = (suggestion: BreathingState, limit: { min?: number; max?: number }): void =>
    report(reading, {
      code: 'STATE_NOT_FOR_GESTATION',
      path: 'breathing.state',
      value: state,
      limit,
      unit: 'wk',
      suggestion,
    })
  if (state === 'preterm' && !isPreterm) reportWith('newborn', { max: PRETERM_BELOW_WEEKS })
  if (state === 'newborn' && isPreterm) reportWith('preterm', { min: PRETERM_BELOW_WEEKS })
}

function checkRate(
  reading: Reading,
  patient: Patient,
  typed: { readonly path: string; readonly ratePerMin: number | undefined },
): void {
  const band = RATES_BY_AGE.find((row) => patient.ageYears >= row.min && patient.ageYears < row.max)
  if (band === undefined || typed.ratePerMin === undefined) return
  const rule = {
    code: 'RATE_IMPLAUSIBLE_FOR_AGE',
    unit: '/min',
    min: band.slowest,
    max: band.fastest,
  } as const
  checkNumber({ reading, path: typed.path, value: typed.ratePerMin, rule })
}

/** The typed weight decides; without one there is nothing to judge by. */
function checkPerKg(
  reading: Reading,
  patient: Patient,
  typed: {
    readonly code: ErrorCode
    readonly path: string
    readonly value: number | undefined
    readonly unit: string
    readonly perKg: { readonly min: number; readonly max: number }
    readonly slips: readonly UnitSlip[]
  },
): void {
  const { weightKg } = patient
  if (weightKg === undefined || typed.value === undefined) return
  const min = typed.perKg.min * weightKg
  const max = typed.perKg.max * weightKg
  const asPerKg = {
    from: `${typed.unit}/kg`,
    convert: (value: number) => value * weightKg,
    min,
    max,
  }
  const slips = [asPerKg, ...typed.slips.map((slip) => ({ ...slip, min, max }))]
  const rule = { code: typed.code, unit: typed.unit, min, max, slips }
  checkNumber({ reading, path: typed.path, value: typed.value, rule })
}

/** A typed volume that no drawn dead space leaves room for. */
function checkDeadSpace(reading: Reading, patient: Patient, breathing: Breathing): void {
  const path = 'breathing.tidalVolumeMl'
  const { tidalVolumeMl } = breathing
  if (tidalVolumeMl === undefined || !isSized(reading, patient, breathing)) return
  if (reading.problems.some((problem) => problem.path === path)) return
  const min = LEAST_BREATH_PER_DEAD_SPACE * leastDeadSpaceMl(patient)
  if (tidalVolumeMl > min) return
  report(reading, {
    code: 'TIDAL_VOLUME_BELOW_DEAD_SPACE',
    path,
    value: tidalVolumeMl,
    limit: { min: roundForSuggestion(min) },
    unit: 'mL',
  })
}

/** Typed rate and volume that together no living body breathes. */
function checkVentilation(reading: Reading, patient: Patient, breathing: Breathing): void {
  const { ratePerMin, tidalVolumeMl } = breathing
  if (ratePerMin === undefined || tidalVolumeMl === undefined) return
  if (!isSized(reading, patient, breathing)) return
  if (reading.problems.some(({ path }) => path.startsWith('breathing.'))) return
  try {
    requirePlausibleVentilation({ ratePerMin, tidalVolumeMl, body: middleBody(patient, breathing) })
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    report(reading, { ...problemOf(thrown), path: 'breathing.tidalVolumeMl' })
  }
}

/** Whether weight and height are typed, or can be assumed for this age. */
function isSized(reading: Reading, patient: Patient, breathing: Breathing): boolean {
  if (
    reading.problems.some(({ path }) => path === 'patient.weightKg' || path === 'patient.heightCm')
  )
    return false
  return patient.weightKg !== undefined || !isPreterm(patient, breathing)
}

function checkRatesAgree(reading: Reading, breathing: Breathing, onNow: OnNow | undefined): void {
  if (breathing.ratePerMin === undefined || onNow?.ratePerMin === undefined) return
  if (Math.abs(breathing.ratePerMin - onNow.ratePerMin) <= RATE_TOLERANCE_PER_MIN) return
  report(reading, {
    code: 'RATES_DISAGREE',
    path: 'onNow.ratePerMin',
    value: onNow.ratePerMin,
    limit: {
      min: Math.max(0, breathing.ratePerMin - RATE_TOLERANCE_PER_MIN),
      max: breathing.ratePerMin + RATE_TOLERANCE_PER_MIN,
    },
    unit: '/min',
  })
}

/** A mouth share typed for a neck breather is kept and named, not used. */
function warnNoPart(reading: Reading, patient: Patient, breathing: Breathing): void {
  const { airway } = patient
  const bypassed =
    airway.route === 'laryngectomy' ||
    (airway.route === 'tracheostomy' && airway.tube.cuff === 'up')
  if (!bypassed || breathing.mouthShare === undefined) return
  reading.warnings.push({
    code: 'VALUE_PLAYS_NO_PART',
    path: 'breathing.mouthShare',
    value: breathing.mouthShare,
  })
}
