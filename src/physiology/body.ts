// Size of a body: predicted weight, surface, and what is assumed when weight or height are not given. Leaves out lean mass and fluid.
import { requireWithin } from '../errors.ts'
import { metresFromCm } from '../units/length.ts'
import { medianOf, scaled, type Spread } from '../units/spread.ts'
import { childHeightSpread, childWeightSpread, GROWTH_AGE_YEARS_MAX, type Sex } from './growth.ts'

/** Body as the physiology needs it, every value known or assumed. */
export interface Body {
  readonly ageYears: number
  readonly sex: Sex
  readonly weightKg: number
  readonly heightCm: number
}

/** Limits of what is accepted as a human body. */
export const AGE_YEARS_MAX = 120
export const WEIGHT_KG_MIN = 0.3
export const WEIGHT_KG_MAX = 350
export const HEIGHT_CM_MIN = 25
export const HEIGHT_CM_MAX = 230

/** Predicted body weight: base at 152.4 cm and kg per cm above it [ARDSNet2000]. */
const PREDICTED = { male: 50, female: 45.5, cm: 152.4, perCm: 0.91 } as const
/** Heights for which the formula is used, cm: adults. */
const PREDICTED_CM_MIN = 130
/** BSA = √(H·W/3600) [Mosteller1987]. */
const MOSTELLER = 3600
/** Surface from weight alone, (4W + 7)/(W + 90) m², for babies without a length (memory of a paediatric rule [Costeff1966]). */
const COSTEFF = { slope: 4, constant: 7, offset: 90 } as const

/** Adult height and body-mass index when nothing is known (common practice, wide on purpose; limits of the index lie evenly about its median in the logarithm). */
const ADULT_HEIGHT_CM = {
  male: { kind: 'normal', mean: 174, sd: 7.5, min: 148, max: 200 },
  female: { kind: 'normal', mean: 161, sd: 7, min: 138, max: 184 },
} as const satisfies Readonly<Record<Sex, Spread>>
const ADULT_HEIGHT_UNKNOWN_SEX_CM: Spread = {
  kind: 'normal',
  mean: 167.5,
  sd: 9.7,
  min: 135,
  max: 200,
}
const ADULT_BMI: Spread = { kind: 'lognormal', median: 25, logSd: 0.18, min: 14, max: 625 / 14 }

/** Predicted (ideal) body weight: 50 or 45.5 kg + 0.91·(H − 152.4). Valid 130–230 cm, adults only, else
 *  HEIGHT_OUT_OF_RANGE. Source: [ARDSNet2000]. Within 0.1 kg of the published values (body.test.ts). */
export function predictedBodyWeightKg(adult: {
  readonly heightCm: number
  readonly sex: Sex
}): number {
  requireHeight(adult.heightCm, PREDICTED_CM_MIN)
  return PREDICTED[adult.sex] + PREDICTED.perCm * (adult.heightCm - PREDICTED.cm)
}

/** Body surface √(H·W/3600) m². Valid 25–230 cm, 0.3–350 kg. Source: [Mosteller1987]. */
export function bodySurfaceM2(body: {
  readonly weightKg: number
  readonly heightCm: number
}): number {
  requireWeight(body.weightKg)
  requireHeight(body.heightCm, HEIGHT_CM_MIN)
  return Math.sqrt((body.heightCm * body.weightKg) / MOSTELLER)
}

/** Body surface from weight alone, (4W + 7)/(W + 90) m², within about 10 % of the full formula to 40 kg
 *  (body.test.ts). Valid 0.3–40 kg. Source: [Costeff1966], from memory. */
export function bodySurfaceFromWeightM2(weightKg: number): number {
  requireWithin({
    code: 'WEIGHT_OUT_OF_RANGE',
    path: 'weightKg',
    value: weightKg,
    min: WEIGHT_KG_MIN,
    max: 40,
    unit: 'kg',
  })
  return (COSTEFF.slope * weightKg + COSTEFF.constant) / (weightKg + COSTEFF.offset)
}

/** What is known of a body when height or weight must be assumed. */
export interface KnownBody {
  readonly ageYears: number
  readonly sex?: Sex | undefined
  readonly heightCm?: number | undefined
  readonly gestationWeeks?: number | undefined
}

/** Height when it is not given: growth references to 20 years, then the adult prior. Valid 0–120 years. */
export function heightSpreadCm(known: KnownBody): Spread {
  requireAge(known.ageYears)
  if (known.ageYears < GROWTH_AGE_YEARS_MAX) return childHeightSpread(known)
  return known.sex === undefined ? ADULT_HEIGHT_UNKNOWN_SEX_CM : ADULT_HEIGHT_CM[known.sex]
}

/** Weight when it is not given. Below 20 years by age; adults by body-mass index and height (given, or the middle
 *  of its prior). Preterm babies have none: WEIGHT_REQUIRED. Valid 0–120 years. */
export function weightSpreadKg(known: KnownBody): Spread {
  requireAge(known.ageYears)
  if (known.ageYears < GROWTH_AGE_YEARS_MAX) return childWeightSpread(known)
  const heightCm = known.heightCm ?? medianOf(heightSpreadCm(known))
  requireHeight(heightCm, HEIGHT_CM_MIN)
  return scaled(ADULT_BMI, metresFromCm(heightCm) ** 2)
}

export function requireAge(ageYears: number): number {
  return requireWithin({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageYears',
    value: ageYears,
    min: 0,
    max: AGE_YEARS_MAX,
    unit: 'y',
  })
}

export function requireWeight(weightKg: number): number {
  return requireWithin({
    code: 'WEIGHT_OUT_OF_RANGE',
    path: 'weightKg',
    value: weightKg,
    min: WEIGHT_KG_MIN,
    max: WEIGHT_KG_MAX,
    unit: 'kg',
  })
}

function requireHeight(heightCm: number, min: number): void {
  requireWithin({
    code: 'HEIGHT_OUT_OF_RANGE',
    path: 'heightCm',
    value: heightCm,
    min,
    max: HEIGHT_CM_MAX,
    unit: 'cm',
  })
}
