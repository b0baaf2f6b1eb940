// Functional residual capacity by size, the oxygen store of the lungs. Leaves out posture, disease and the method's own offset between washout and box.
import { requireWithin } from '../errors.ts'
import type { Sex } from './growth.ts'
import { requireAge, requireWeight } from './body.ts'

/** Infants by length: cm, mL [Stocks1995 table 1]. */
const INFANT_ROWS = [
  [50, 72],
  [60, 114],
  [70, 168],
  [80, 236],
  [90, 318],
] as const
/** Children by height, washout: cm, boys mL, girls mL [Lum2013 table 4]. */
const CHILD_ROWS = [
  [100, 463, 447],
  [110, 622, 598],
  [120, 816, 784],
  [140, 1339, 1276],
  [160, 2024, 1966],
] as const
/** Adults, L: a·H m + b·age − c [Quanjer1993]. */
const ADULT = {
  male: { height: 2.34, age: 0.01, constant: 1.09 },
  female: { height: 2.24, age: 0.001, constant: 1 },
} as const
const ADULT_AGE_YEARS = 18
const ADULT_AGE_YEARS_MAX = 70
const ML_PER_L = 1000
const CM_PER_M = 100
/** Below 50 cm, mL per kg (common practice: 20 to 30 in preterm babies). */
const PRETERM_ML_PER_KG = 25

/** Functional residual capacity, mL. Under 50 cm: 25 mL/kg. 50–90 cm: [Stocks1995]. 100–160 cm: [Lum2013].
 *  From 18 years: [Quanjer1993], from memory, with age held at 70 above it. Between rows, and for taller children,
 *  along the line of log volume on log height (derived). Valid 0–120 years, 0.3–350 kg, 25–230 cm. */
export function functionalResidualCapacityMl(body: {
  readonly ageYears: number
  readonly sex: Sex
  readonly weightKg: number
  readonly heightCm: number
}): number {
  requireAge(body.ageYears)
  requireWeight(body.weightKg)
  requireWithin({
    code: 'HEIGHT_OUT_OF_RANGE',
    path: 'heightCm',
    value: body.heightCm,
    min: 25,
    max: 230,
    unit: 'cm',
  })
  if (body.ageYears >= ADULT_AGE_YEARS) return adultMl(body)
  const rows = childRows(body.sex)
  const [shortest] = rows
  if (body.heightCm < shortest[0]) {
    return Math.min(shortest[1], PRETERM_ML_PER_KG * body.weightKg)
  }
  return alongRows(rows, body.heightCm)
}

type Point = readonly [heightCm: number, volumeMl: number]
type Points = readonly [Point, Point, ...Point[]]

function childRows(sex: Sex): Points {
  const [first, second, ...rest] = INFANT_ROWS
  const older = CHILD_ROWS.map(([cm, boy, girl]): Point => [cm, sex === 'male' ? boy : girl])
  return [first, second, ...rest, ...older]
}

/** Power law through the two rows around a height; the last two serve beyond the end. */
function alongRows(rows: Points, heightCm: number): number {
  let [low, high] = rows
  for (const row of rows.slice(2)) {
    if (heightCm <= high[0]) break
    low = high
    high = row
  }
  const exponent = Math.log(high[1] / low[1]) / Math.log(high[0] / low[0])
  return low[1] * (heightCm / low[0]) ** exponent
}

function adultMl(body: {
  readonly ageYears: number
  readonly sex: Sex
  readonly heightCm: number
}): number {
  const k = ADULT[body.sex]
  const ageYears = Math.min(ADULT_AGE_YEARS_MAX, body.ageYears)
  const volumeL = k.height * (body.heightCm / CM_PER_M) + k.age * ageYears - k.constant
  return volumeL * ML_PER_L
}
