// The humidity rules as data: each a condition on airway, path and result, with its source and how it weighs. Leaves out their words.
import type { FamilyId } from '../kit/family-id.ts'
import type { Provenance } from '../units/provenance.ts'
import type { HumidityBand } from './band.ts'
import { HEATER_TEMPERATURE_C_MAX, INFANT_AGE_YEARS_MAX, NEW_OPENING_DAYS_MAX } from './facts.ts'
import type { AirwayFacts } from './facts.ts'
import { DRY_LPM_MAX, isInfant } from './required-content.ts'
import { hasStage, isActivePath, isHeatedPath, vesselsOf } from './water-path.ts'
import type { WaterPath } from './water-path.ts'

/** `breach`: this chain breaks it; `ask`: a fact is missing to decide; `do`: holds here and is to be done; `note`: to be known. */
export type RuleWeight = 'breach' | 'ask' | 'do' | 'note'

export type RuleValues = Readonly<Record<string, number | string>>

export interface AppliedRule extends Provenance {
  readonly code: string
  readonly weight: RuleWeight
  readonly values: RuleValues
}

export interface RuleContext {
  readonly airway: AirwayFacts
  readonly path: WaterPath
  readonly family: FamilyId
  readonly deviceFlowLpm: number
  readonly temperatureC: HumidityBand
  readonly condensateMlPerHour: number
}

interface Rule extends Provenance {
  readonly code: string
  readonly weight: RuleWeight
  /** Values for its words where it applies, else null. */
  readonly applies: (about: RuleContext) => RuleValues | null
}

/** Streams above this count as high flow, L/min (common practice: beyond an ordinary meter's scale). */
export const HIGH_FLOW_LPM_MIN = 15
/** Highest temperature recommended at the airway, °C [Restrepo2012]. */
export const AIRWAY_TEMPERATURE_C_MAX = 41
/** Least temperature recommended at a bypassed airway with active humidification, °C [Restrepo2012]. */
export const AIRWAY_TEMPERATURE_C_MIN = 34
/** Breaths smaller than this count as small for an exchanger, mL (common practice; a label's own range wins). */
export const SMALL_BREATH_ML = 150

const PRACTICE = { known: 'common-practice' } as const
const RESTREPO = { known: 'seen', source: 'Restrepo2012' } as const
const BTS = { known: 'seen', source: 'ODriscoll2017' } as const
const AARC = { known: 'seen', source: 'Piraino2022' } as const

function when(condition: boolean, values: RuleValues = {}): RuleValues | null {
  return condition ? values : null
}

export const HUMIDITY_RULES: readonly Rule[] = [
  {
    code: 'NEVER_DRY_TO_BYPASSED',
    weight: 'breach',
    ...BTS,
    applies: (about) => when(about.airway.isBypassed && !hasAnyWater(about)),
  },
  {
    code: 'NEVER_BOTH_HUMIDIFIERS',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) => when(hasExchanger(about) && addsWater(about.path)),
  },
  {
    code: 'EXCHANGER_OFF_FOR_NEBULISED_DRUG',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) => when(hasExchanger(about) && about.airway.nebulisesDrug === true),
  },
  {
    code: 'GAS_TOO_HOT',
    weight: 'breach',
    ...RESTREPO,
    applies: ({ temperatureC }) =>
      when(temperatureC.high > AIRWAY_TEMPERATURE_C_MAX, {
        temperatureC: temperatureC.high,
        limitC: AIRWAY_TEMPERATURE_C_MAX,
      }),
  },
  {
    code: 'ACTIVE_FOR_NEW_OPENING',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) =>
      needsActive(about, about.airway.isNewOpening === true, { days: NEW_OPENING_DAYS_MAX }),
  },
  {
    code: 'ACTIVE_FOR_SECRETIONS',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) => {
      const { secretions } = about.airway
      if (secretions === null) return null
      return needsActive(about, secretions !== 'thin', { secretions })
    },
  },
  {
    code: 'ACTIVE_FOR_INFANT',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) => needsActive(about, isInfant(about.airway), { years: INFANT_AGE_YEARS_MAX }),
  },
  {
    code: 'ACTIVE_FOR_HIGH_FLOW',
    weight: 'breach',
    ...PRACTICE,
    applies: (about) =>
      when(isHighFlow(about) && !isActivePath(about.path), { flowLpm: about.deviceFlowLpm }),
  },
  {
    code: 'EXCHANGER_NOT_WITH_SMALL_BREATHS',
    weight: 'breach',
    ...RESTREPO,
    applies: (about) => {
      const { tidalVolumeMl } = about.airway
      if (tidalVolumeMl === null) return null
      return when(hasExchanger(about) && tidalVolumeMl < SMALL_BREATH_ML, { tidalVolumeMl })
    },
  },
  {
    code: 'ASK_AGE_OF_OPENING',
    weight: 'ask',
    ...PRACTICE,
    applies: (about) => asks(about, about.airway.isNewOpening === null),
  },
  {
    code: 'ASK_SECRETIONS',
    weight: 'ask',
    ...PRACTICE,
    applies: (about) => asks(about, about.airway.secretions === null),
  },
  {
    code: 'ASK_NEBULISED_DRUG',
    weight: 'ask',
    ...PRACTICE,
    applies: (about) => when(hasExchanger(about) && about.airway.nebulisesDrug === null),
  },
  {
    code: 'EXCHANGER_WILL_DO',
    weight: 'note',
    ...PRACTICE,
    applies: (about) => when(about.airway.isBypassed && isExchangerEnough(about)),
  },
  {
    code: 'GAS_COOL_FOR_BYPASSED',
    weight: 'note',
    ...RESTREPO,
    applies: ({ airway, path, temperatureC }) =>
      when(
        airway.isBypassed && isHeatedPath(path) && temperatureC.middle < AIRWAY_TEMPERATURE_C_MIN,
        { temperatureC: temperatureC.middle, limitC: AIRWAY_TEMPERATURE_C_MIN },
      ),
  },
  {
    code: 'CONSIDER_ABOVE_4_LPM',
    weight: 'note',
    ...AARC,
    applies: (about) => when(isNasalAboveDry(about)),
  },
  {
    code: 'BUBBLE_ADVISED_AGAINST',
    weight: 'note',
    ...BTS,
    applies: (about) => when(isNasalAboveDry(about) || hasStage(about.path, 'bubble')),
  },
  {
    code: 'HEATER_OFF_WHEN_FLOW_STOPS',
    weight: 'do',
    ...PRACTICE,
    applies: ({ path }) => when(isHeatedPath(path), { limitC: HEATER_TEMPERATURE_C_MAX }),
  },
  {
    code: 'DRAIN_AWAY_FROM_PATIENT',
    weight: 'do',
    ...PRACTICE,
    applies: ({ path, condensateMlPerHour }) =>
      when(condensateMlPerHour > 0 || isActivePath(path), { condensateMlPerHour }),
  },
  {
    code: 'STERILE_WATER_DATED',
    weight: 'do',
    ...PRACTICE,
    applies: ({ path }) => when(vesselsOf(path).length > 0),
  },
  {
    code: 'CHANGE_SOAKED_EXCHANGER',
    weight: 'do',
    ...PRACTICE,
    applies: (about) => when(hasExchanger(about)),
  },
]

/** Every rule that applies, breaches first, then what is to be asked, done and known. */
export function appliedRules(about: RuleContext): readonly AppliedRule[] {
  const applied = HUMIDITY_RULES.flatMap(({ applies, ...rule }) => {
    const values = applies(about)
    return values === null ? [] : [{ ...rule, values }]
  })
  return WEIGHTS.flatMap((weight) => applied.filter((rule) => rule.weight === weight))
}

const WEIGHTS: readonly RuleWeight[] = ['breach', 'ask', 'do', 'note']

function hasExchanger({ airway, path }: RuleContext): boolean {
  return airway.wearsExchanger || hasStage(path, 'exchanger')
}

/** Bottle, chamber or mist put water into the stream. */
function addsWater(path: WaterPath): boolean {
  return vesselsOf(path).length > 0
}

function hasAnyWater(about: RuleContext): boolean {
  return hasExchanger(about) || addsWater(about.path)
}

function isHighFlow({ family, deviceFlowLpm }: RuleContext): boolean {
  return family === 'nasal-high-flow' || deviceFlowLpm > HIGH_FLOW_LPM_MIN
}

/** A bypassed airway for which an exchanger alone, or nothing, will not do. */
function needsActive(about: RuleContext, holds: boolean, values: RuleValues): RuleValues | null {
  return when(about.airway.isBypassed && holds && !isActivePath(about.path), values)
}

/** Asked where the answer would change what is needed. */
function asks(about: RuleContext, isUnknown: boolean): RuleValues | null {
  return when(about.airway.isBypassed && isUnknown && !isActivePath(about.path))
}

function isExchangerEnough(about: RuleContext): boolean {
  const { airway } = about
  return (
    airway.isNewOpening === false &&
    airway.secretions === 'thin' &&
    !isInfant(airway) &&
    !isHighFlow(about)
  )
}

function isNasalAboveDry({ airway, family, deviceFlowLpm, path }: RuleContext): boolean {
  const isNasal = family === 'nasal-cannula' || family === 'cannula-under-mask'
  return isNasal && !airway.isBypassed && deviceFlowLpm > DRY_LPM_MAX && !isHeatedPath(path)
}
