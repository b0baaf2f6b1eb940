// How people breathe in each state, as spreads between persons, for a given body. Leaves out the single breath (delivery/breath.ts) and change over time.
import { DomainError, outOfRange, requireWithin } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { limited, medianOf, quantile, scaled, type Spread } from '../units/spread.ts'
import { metabolicWeightKg } from './metabolism.ts'
import type { Body } from './body.ts'
import { STATE_ROWS, type BreathingState, type StateRow } from './breathing-state-rows.ts'
import type { LungCondition } from './gas-exchange-presets.ts'
import { restingRateProvenance, restingRateSpread } from './respiratory-rate.ts'

export type InspiratoryShapeName = 'half-sine' | 'square' | 'decelerating'

/** Breath-to-breath variation within one person: coefficients of variation and lag-1 correlation. */
export interface BreathVariability {
  readonly rateCv: number
  readonly tidalVolumeCv: number
  readonly dutyCv: number
  readonly tidalVolumeLag1: number
}

export interface BreathingPreset {
  readonly state: BreathingState
  readonly ratePerMin: Spread
  readonly tidalVolumeMl: Spread
  readonly dutyFraction: Spread
  readonly expiratoryTimeConstantS: Spread
  readonly nasalShareFraction: Spread
  readonly inspiratoryShape: InspiratoryShapeName
  readonly variability: BreathVariability
  /** Oxygen uptake relative to rest. */
  readonly metabolicFactor: Spread
  readonly lungCondition: LungCondition
  readonly sources: readonly Provenance[]
}

/** Persons who breathe faster take smaller breaths: volume follows rate to the power −0.5 between persons of one
 *  state, which keeps minute ventilation plausible (our choice; −1 would fix it, 0 would let it run away). */
const VOLUME_RATE_EXPONENT = -0.5
/** Minute ventilation accepted per kg of metabolic weight, mL/min: below, carbon dioxide could not be washed out; above, only athletes in a race. */
const VENTILATION_ML_PER_KG_MIN = 25
const VENTILATION_ML_PER_KG_MAX = 1500
const RATE_MIN = 3
const RATE_MAX = 120
/** Draws stay inside what a breath may have, with room for rounding. */
const RATE_LIMITS = { min: 4, max: 118 } as const
/** Healthy people at rest, 15 minutes each: 20.8 %, 33 %, 17.9 % [Tobin1988]; lag-1 of tidal volume 0.295 [Tobin1995]. */
const RESTING_VARIABILITY: BreathVariability = {
  rateCv: 0.208,
  tidalVolumeCv: 0.33,
  dutyCv: 0.179,
  tidalVolumeLag1: 0.295,
}
/** Driven breathing varies less (common practice). */
const DRIVEN_VARIABILITY: BreathVariability = {
  rateCv: 0.12,
  tidalVolumeCv: 0.2,
  dutyCv: 0.1,
  tidalVolumeLag1: 0.295,
}
const VARIABILITY_SOURCES: readonly Provenance[] = [
  { source: 'Tobin1988', known: 'seen' },
  { source: 'Tobin1995', known: 'seen' },
]

/** Breathing of a body in a state. Rate and volume come from the state's own numbers in adults where there are any,
 *  else from resting values for age and size times the state's factors. Each state names the ages it is for:
 *  outside, AGE_OUT_OF_RANGE. A newborn or preterm body at rest is asked for by those states.
 *  Sources: breathing-state-rows.ts; arterial carbon dioxide that follows is plausible for every state and age
 *  (breathing-states.test.ts). */
export function breathingPreset(patient: {
  readonly state: BreathingState
  readonly body: Body
}): BreathingPreset {
  const row = stateRow(patient.state)
  const { ageYears } = patient.body
  requireStateAge(row, ageYears)
  const asleep = row.asleep ?? false
  const resting = restingRateSpread({ ageYears, asleep })
  const own = ageYears >= ADULT_AGE_YEARS ? row.adult : undefined
  const rate = own?.ratePerMin ?? row.ratePerMin ?? scaled(resting, row.rateFactor)
  const ownSources = own === undefined ? [] : [own]
  return {
    state: patient.state,
    ratePerMin: limited(rate, RATE_LIMITS),
    tidalVolumeMl: own?.tidalVolumeMl ?? tidalVolumeSpread(row, patient.body),
    dutyFraction: row.dutyFraction,
    expiratoryTimeConstantS: scaled(row.expiratoryTimeConstantS, timeConstantFactor(ageYears)),
    nasalShareFraction: ageYears < NASAL_AGE_YEARS ? INFANT_NASAL_SHARE : row.nasalShareFraction,
    inspiratoryShape: row.inspiratoryShape ?? 'half-sine',
    variability: row.driven ? DRIVEN_VARIABILITY : RESTING_VARIABILITY,
    metabolicFactor: row.metabolicFactor,
    lungCondition: row.lungCondition,
    sources: [row, ...ownSources, restingRateProvenance(ageYears), ...VARIABILITY_SOURCES].map(
      provenanceOf,
    ),
  }
}

/** Uniform draws in (0, 1), one per quantity: the caller owns chance. */
export interface BreathingDraws {
  readonly rate: number
  readonly tidalVolume: number
  readonly duty: number
  readonly timeConstant: number
  readonly nasalShare: number
}

/** One person's breathing. */
export interface DrawnBreathing {
  readonly ratePerMin: number
  readonly tidalVolumeMl: number
  readonly dutyFraction: number
  readonly expiratoryTimeConstantS: number
  readonly nasalShareFraction: number
}

/** Draws one person; a measured rate takes the place of the draw and pulls the volume along. Volume is adjusted to
 *  the rate (see tidalVolumeAtRateMl). Measured rate valid 3–120/min. */
export function drawBreathing(
  preset: BreathingPreset,
  drawn: { readonly u: BreathingDraws; readonly ratePerMin?: number | undefined },
): DrawnBreathing {
  const ratePerMin = drawn.ratePerMin ?? quantile(preset.ratePerMin, drawn.u.rate)
  const tidalVolumeMl = quantile(preset.tidalVolumeMl, drawn.u.tidalVolume)
  return {
    ratePerMin,
    tidalVolumeMl: tidalVolumeAtRateMl({ preset, tidalVolumeMl, ratePerMin }),
    dutyFraction: quantile(preset.dutyFraction, drawn.u.duty),
    expiratoryTimeConstantS: quantile(preset.expiratoryTimeConstantS, drawn.u.timeConstant),
    nasalShareFraction: quantile(preset.nasalShareFraction, drawn.u.nasalShare),
  }
}

/** Tidal volume of a person of the state who breathes at a rate: volume × (rate/median rate)^−0.5.
 *  Valid 3–120/min, else RATE_OUT_OF_RANGE. */
export function tidalVolumeAtRateMl(person: {
  readonly preset: BreathingPreset
  readonly tidalVolumeMl: number
  readonly ratePerMin: number
}): number {
  requireWithin({
    code: 'RATE_OUT_OF_RANGE',
    path: 'ratePerMin',
    value: person.ratePerMin,
    min: RATE_MIN,
    max: RATE_MAX,
    unit: '/min',
  })
  const relative = person.ratePerMin / medianOf(person.preset.ratePerMin)
  return person.tidalVolumeMl * relative ** VOLUME_RATE_EXPONENT
}

/** Minute ventilation that no living body has, as a problem for the reader of a case: 25–1500 mL/min per kg. */
export function requirePlausibleVentilation(breathing: {
  readonly ratePerMin: number
  readonly tidalVolumeMl: number
  readonly body: Body
}): number {
  const weightKg = metabolicWeightKg(breathing.body)
  return requireWithin({
    code: 'BREATH_OUT_OF_RANGE',
    path: 'minuteVentilationMlPerMin',
    value: breathing.ratePerMin * breathing.tidalVolumeMl,
    min: VENTILATION_ML_PER_KG_MIN * weightKg,
    max: VENTILATION_ML_PER_KG_MAX * weightKg,
    unit: 'mL/min',
  })
}

/** Ages, years, for which a state is offered. */
export function breathingStateAges(state: BreathingState): {
  readonly min: number
  readonly max: number
} {
  return stateRow(state).ageYears
}

const ADULT_AGE_YEARS = 16
/** To this age babies breathe through the nose (common practice). */
const NASAL_AGE_YEARS = 0.5
const INFANT_NASAL_SHARE: Spread = { kind: 'triangular', mode: 1, min: 0.85, max: 1 }

/** Resting tidal volume by age, mL/kg of metabolic weight; linear between rows. Newborn 6 (common practice);
 *  6–8 awake in infants, in adults 383 ± 91 mL lying [Tobin1983] to 500 mL (7 mL/kg) by handbook, all from memory. */
const TIDAL_ROWS = [
  { ageYears: 0, mlPerKg: 6 },
  { ageYears: 0.25, mlPerKg: 7 },
  { ageYears: 3, mlPerKg: 7.5 },
  { ageYears: 10, mlPerKg: 7.5 },
  { ageYears: 18, mlPerKg: 6.3 },
] as const
const TIDAL_LOG_SD = 0.2
const TIDAL_FACTOR_MIN = 0.5
const TIDAL_FACTOR_MAX = 2

function tidalVolumeSpread(row: StateRow, body: Body): Spread {
  const mlPerKg = row.tidalVolumeMlPerKg ?? restingMlPerKg(body.ageYears)
  return scaled(
    {
      kind: 'lognormal',
      median: 1,
      logSd: TIDAL_LOG_SD,
      min: TIDAL_FACTOR_MIN,
      max: TIDAL_FACTOR_MAX,
    },
    mlPerKg * row.volumeFactor * metabolicWeightKg(body),
  )
}

function restingMlPerKg(ageYears: number): number {
  const lower = TIDAL_ROWS.findLast((row) => row.ageYears <= ageYears) ?? TIDAL_ROWS[0]
  const upper = TIDAL_ROWS.find((row) => row.ageYears > ageYears)
  if (upper === undefined) return lower.mlPerKg
  const share = (ageYears - lower.ageYears) / (upper.ageYears - lower.ageYears)
  return lower.mlPerKg + share * (upper.mlPerKg - lower.mlPerKg)
}

/** Small lungs empty faster: share of the adult's expiratory time constant (common practice: about 0.15 s in newborns against 0.5 s). */
const NEWBORN_TIME_CONSTANT_SHARE = 0.3
const TIME_CONSTANT_ADULT_YEARS = 12

function timeConstantFactor(ageYears: number): number {
  const grown = Math.min(1, Math.sqrt(ageYears / TIME_CONSTANT_ADULT_YEARS))
  return NEWBORN_TIME_CONSTANT_SHARE + (1 - NEWBORN_TIME_CONSTANT_SHARE) * grown
}

function stateRow(state: BreathingState): StateRow {
  const row = STATE_ROWS[state]
  // The type allows no other state, but callers may hold unchecked text.
  if (row !== undefined) return row
  throw new DomainError({
    code: 'UNKNOWN_CHOICE',
    path: 'breathing.state',
    value: state,
    limit: { oneOf: Object.keys(STATE_ROWS) },
  })
}

function requireStateAge(row: StateRow, ageYears: number): void {
  if (ageYears >= row.ageYears.min && ageYears <= row.ageYears.max) return
  throw outOfRange({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageYears',
    value: ageYears,
    min: row.ageYears.min,
    max: row.ageYears.max,
    unit: 'y',
  })
}

function provenanceOf(row: Provenance): Provenance {
  return row.source === undefined ? { known: row.known } : { source: row.source, known: row.known }
}
