// The breathing of each state as data: factors on rest, or the state's own numbers in adults, with their sources. Leaves out how they are combined (breathing-states.ts).
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'
import type { LungCondition } from './gas-exchange-presets.ts'

export const BREATHING_STATES = [
  'rest',
  'sleep',
  'walking',
  'fast-shallow',
  'severe-distress',
  'copd-stable',
  'copd-exacerbation',
  'asthma',
  'pneumonia',
  'heart-failure',
  'opioid-slow',
  'obesity-hypoventilation',
  'neuromuscular',
  'pregnancy',
  'fever',
  'bronchiolitis',
  'newborn',
  'preterm',
] as const

export type BreathingState = (typeof BREATHING_STATES)[number]

/** Rate and volume seen in adults of a state, used as they are from 16 years. */
export interface AdultBreathing extends Provenance {
  readonly ratePerMin: Spread
  readonly tidalVolumeMl?: Spread
}

export interface StateRow extends Provenance {
  readonly ageYears: { readonly min: number; readonly max: number }
  readonly asleep?: boolean
  /** On the resting rate and volume for age and size. */
  readonly rateFactor: number
  readonly volumeFactor: number
  /** In place of the resting rate and volume at any age. */
  readonly ratePerMin?: Spread
  readonly tidalVolumeMlPerKg?: number
  readonly adult?: AdultBreathing
  readonly dutyFraction: Spread
  /** In an adult; smaller lungs are scaled. */
  readonly expiratoryTimeConstantS: Spread
  readonly nasalShareFraction: Spread
  readonly inspiratoryShape?: 'half-sine' | 'square' | 'decelerating'
  readonly driven: boolean
  readonly metabolicFactor: Spread
  readonly lungCondition: LungCondition
}

type Limits = readonly [min: number, max: number]

function normal(mean: number, sd: number, [min, max]: Limits): Spread {
  return { kind: 'normal', mean, sd, min, max }
}

function triangular(mode: number, [min, max]: Limits): Spread {
  return { kind: 'triangular', mode, min, max }
}

function around(median: number, logSd = 0.1): Spread {
  const reach = Math.exp(3 * logSd)
  return { kind: 'lognormal', median, logSd, min: median / reach, max: median * reach }
}

const COMMON: Provenance = { known: 'common-practice' }
const ANY_AGE = { min: 0, max: 120 }
const ADULTS = { min: 18, max: 120 }

/** Ti/Ttot 0.37 ± 0.04 by flow [Sanchis1990] and 0.42 ± 0.03 by inductance [Tobin1983]: between the two. */
const RESTING_DUTY = normal(0.39, 0.045, [0.28, 0.5])
/** Flow counts as over in the last quarter of a 2 s expiration: three time constants in 1.5 s [Shapiro1991] (derived). */
const RESTING_TIME_CONSTANT_S: Spread = {
  kind: 'lognormal',
  median: 0.5,
  logSd: 0.25,
  min: 0.25,
  max: 1,
}
const NASAL_ONLY = triangular(1, [0.85, 1])
const MOSTLY_NASAL = triangular(0.95, [0.5, 1])
const HALF_NASAL = triangular(0.5, [0.05, 0.95])
const MOSTLY_ORAL = triangular(0.25, [0, 0.8])

export const STATE_ROWS: Readonly<Record<BreathingState, StateRow>> = {
  rest: {
    ageYears: ANY_AGE,
    rateFactor: 1,
    volumeFactor: 1,
    dutyFraction: RESTING_DUTY,
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: MOSTLY_NASAL,
    driven: false,
    metabolicFactor: around(1, 0.05),
    lungCondition: 'healthy',
    source: 'Tobin1983',
    known: 'memory',
  },
  sleep: {
    ageYears: ANY_AGE,
    asleep: true,
    rateFactor: 1,
    volumeFactor: 0.93,
    dutyFraction: normal(0.4, 0.045, [0.28, 0.5]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.9, [0.4, 1]),
    driven: false,
    metabolicFactor: around(0.88, 0.05),
    lungCondition: 'healthy',
    ...COMMON,
  },
  walking: {
    ageYears: { min: 1, max: 120 },
    rateFactor: 1.45,
    volumeFactor: 1.5,
    dutyFraction: normal(0.42, 0.04, [0.3, 0.52]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.7, [0.2, 1]),
    driven: true,
    metabolicFactor: around(2.4, 0.15),
    lungCondition: 'healthy',
    ...COMMON,
  },
  'fast-shallow': {
    ageYears: ANY_AGE,
    rateFactor: 1.55,
    volumeFactor: 0.8,
    adult: { ratePerMin: normal(30, 4, [22, 42]), ...COMMON },
    dutyFraction: normal(0.43, 0.04, [0.32, 0.54]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: HALF_NASAL,
    driven: true,
    metabolicFactor: around(1.1),
    lungCondition: 'healthy',
    ...COMMON,
  },
  'severe-distress': {
    ageYears: ANY_AGE,
    rateFactor: 1.7,
    volumeFactor: 1.1,
    // Rule of thumb: 350–1000 mL, 25–40/min, Ti/Ttot 0.33–0.45.
    adult: {
      ratePerMin: normal(32, 4, [24, 44]),
      tidalVolumeMl: { kind: 'lognormal', median: 550, logSd: 0.25, min: 300, max: 1000 },
      ...COMMON,
    },
    dutyFraction: normal(0.39, 0.035, [0.3, 0.48]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 0.6, logSd: 0.3, min: 0.25, max: 1.5 },
    nasalShareFraction: MOSTLY_ORAL,
    driven: true,
    metabolicFactor: around(1.4, 0.12),
    lungCondition: 'severe-pneumonia',
    ...COMMON,
  },
  'copd-stable': {
    ageYears: { min: 30, max: 120 },
    rateFactor: 1,
    volumeFactor: 1,
    // 17.9 ± 1.2 (sem)/min, 690 ± 50 (sem) mL with a mouthpiece, which inflates volume (a journal table whose paper was
    // not identified); benches use 17 and 304 mL.
    adult: {
      ratePerMin: normal(18, 4, [10, 30]),
      tidalVolumeMl: { kind: 'lognormal', median: 520, logSd: 0.25, min: 280, max: 1000 },
      known: 'derived',
    },
    // 0.38 ± 0.02 (sem) at rest, 0.259 ± 0.040 before exercise tests in 234 patients.
    dutyFraction: normal(0.34, 0.05, [0.22, 0.46]),
    // Resistance 12–25 cmH2O·s/L and compliance 66 mL/cmH2O on a bench: 0.8–1.65 s.
    expiratoryTimeConstantS: { kind: 'lognormal', median: 1, logSd: 0.3, min: 0.5, max: 2 },
    nasalShareFraction: triangular(0.7, [0.2, 1]),
    driven: false,
    metabolicFactor: around(1.1),
    lungCondition: 'copd-stable',
    source: 'Zhou2014',
    known: 'derived',
  },
  'copd-exacerbation': {
    ageYears: { min: 30, max: 120 },
    rateFactor: 1.5,
    volumeFactor: 0.9,
    adult: {
      ratePerMin: normal(26, 4, [17, 40]),
      tidalVolumeMl: { kind: 'lognormal', median: 420, logSd: 0.22, min: 230, max: 800 },
      ...COMMON,
    },
    dutyFraction: normal(0.33, 0.05, [0.2, 0.45]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 1.3, logSd: 0.3, min: 0.6, max: 2.6 },
    nasalShareFraction: HALF_NASAL,
    driven: true,
    metabolicFactor: around(1.25),
    lungCondition: 'copd-exacerbation',
    ...COMMON,
  },
  asthma: {
    ageYears: { min: 1, max: 120 },
    rateFactor: 1.35,
    volumeFactor: 1,
    adult: { ratePerMin: normal(23, 4.5, [14, 38]), ...COMMON },
    dutyFraction: normal(0.35, 0.045, [0.24, 0.46]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 1, logSd: 0.3, min: 0.5, max: 2.2 },
    nasalShareFraction: HALF_NASAL,
    driven: true,
    metabolicFactor: around(1.2),
    lungCondition: 'asthma',
    ...COMMON,
  },
  pneumonia: {
    ageYears: ANY_AGE,
    rateFactor: 1.45,
    volumeFactor: 0.92,
    adult: { ratePerMin: normal(25, 4.5, [15, 40]), ...COMMON },
    dutyFraction: normal(0.41, 0.04, [0.3, 0.52]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: HALF_NASAL,
    driven: true,
    metabolicFactor: around(1.2),
    lungCondition: 'pneumonia',
    ...COMMON,
  },
  'heart-failure': {
    ageYears: ANY_AGE,
    rateFactor: 1.45,
    volumeFactor: 0.95,
    adult: { ratePerMin: normal(26, 5, [15, 42]), ...COMMON },
    dutyFraction: normal(0.41, 0.04, [0.3, 0.52]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 0.6, logSd: 0.25, min: 0.3, max: 1.3 },
    nasalShareFraction: HALF_NASAL,
    driven: true,
    metabolicFactor: around(1.2),
    lungCondition: 'pulmonary-oedema',
    ...COMMON,
  },
  'opioid-slow': {
    ageYears: { min: 12, max: 120 },
    rateFactor: 0.5,
    volumeFactor: 1.15,
    ratePerMin: normal(8, 1.2, [5, 11]),
    dutyFraction: normal(0.3, 0.05, [0.16, 0.42]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.8, [0.2, 1]),
    driven: false,
    metabolicFactor: around(0.9, 0.06),
    lungCondition: 'hypoventilation',
    ...COMMON,
  },
  'obesity-hypoventilation': {
    ageYears: ADULTS,
    rateFactor: 1.1,
    volumeFactor: 1,
    // 633 ± 149 mL, 17.5 ± 5.2/min on air (a journal table whose paper was not identified).
    adult: {
      ratePerMin: normal(17.5, 5.2, [8, 32]),
      tidalVolumeMl: normal(633, 149, [300, 1050]),
      known: 'secondary',
    },
    dutyFraction: RESTING_DUTY,
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.7, [0.1, 1]),
    driven: false,
    metabolicFactor: around(1.2),
    lungCondition: 'obesity-hypoventilation',
    ...COMMON,
  },
  neuromuscular: {
    ageYears: ANY_AGE,
    rateFactor: 1.3,
    volumeFactor: 0.75,
    adult: { ratePerMin: normal(23, 4, [14, 36]), ...COMMON },
    dutyFraction: normal(0.42, 0.04, [0.3, 0.52]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 0.4, logSd: 0.25, min: 0.2, max: 0.9 },
    nasalShareFraction: triangular(0.8, [0.2, 1]),
    driven: false,
    metabolicFactor: around(0.95, 0.06),
    lungCondition: 'hypoventilation',
    ...COMMON,
  },
  pregnancy: {
    ageYears: { min: 12, max: 55 },
    rateFactor: 1.05,
    volumeFactor: 1.35,
    dutyFraction: RESTING_DUTY,
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.8, [0.3, 1]),
    driven: false,
    metabolicFactor: around(1.2, 0.06),
    lungCondition: 'pregnancy',
    ...COMMON,
  },
  fever: {
    ageYears: ANY_AGE,
    rateFactor: 1.25,
    volumeFactor: 1,
    dutyFraction: normal(0.4, 0.045, [0.28, 0.51]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: triangular(0.85, [0.3, 1]),
    driven: false,
    metabolicFactor: around(1.2),
    lungCondition: 'healthy',
    ...COMMON,
  },
  bronchiolitis: {
    ageYears: { min: 0, max: 2 },
    rateFactor: 1,
    volumeFactor: 1,
    ratePerMin: normal(58, 10, [38, 90]),
    tidalVolumeMlPerKg: 6.2,
    dutyFraction: normal(0.38, 0.04, [0.28, 0.48]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 0.8, logSd: 0.25, min: 0.4, max: 1.6 },
    nasalShareFraction: triangular(0.85, [0.3, 1]),
    driven: true,
    metabolicFactor: around(1.2),
    lungCondition: 'bronchiolitis',
    ...COMMON,
  },
  newborn: {
    ageYears: { min: 0, max: 0.25 },
    rateFactor: 1,
    volumeFactor: 1,
    // 44 (median at birth [Fleming2011]), 59 awake [Herbert2020].
    ratePerMin: { kind: 'lognormal', median: 50, logSd: 0.2, min: 28, max: 88 },
    tidalVolumeMlPerKg: 6,
    dutyFraction: normal(0.42, 0.03, [0.33, 0.5]),
    expiratoryTimeConstantS: RESTING_TIME_CONSTANT_S,
    nasalShareFraction: NASAL_ONLY,
    driven: false,
    metabolicFactor: around(1, 0.06),
    lungCondition: 'newborn',
    source: 'Fleming2011',
    known: 'derived',
  },
  preterm: {
    ageYears: { min: 0, max: 0.5 },
    rateFactor: 1,
    volumeFactor: 1,
    // 20 preterm babies in week 1: 5.4–6.7 mL/kg, 72–80/min, Ti/Ttot 0.40–0.44 by face mask [EarlyHumDev1995]; 40–60/min is
    // usual on the ward (common practice), and 5.5 mL/kg reproduced pharyngeal oxygen in 31 babies [Finer1996].
    ratePerMin: { kind: 'lognormal', median: 60, logSd: 0.2, min: 34, max: 100 },
    tidalVolumeMlPerKg: 5.7,
    dutyFraction: normal(0.41, 0.03, [0.32, 0.5]),
    expiratoryTimeConstantS: { kind: 'lognormal', median: 0.4, logSd: 0.25, min: 0.2, max: 0.8 },
    nasalShareFraction: NASAL_ONLY,
    driven: false,
    metabolicFactor: around(1, 0.06),
    lungCondition: 'preterm',
    source: 'EarlyHumDev1995',
    known: 'derived',
  },
}
