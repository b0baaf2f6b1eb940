// Weight and height by age and sex, birth at term to 20 years, from growth references. Leaves out preterm babies (weight must be given), ethnicity and illness.
import { assert, DomainError, requireWithin } from '../errors.ts'
import { monthsFromYears } from '../units/age.ts'
import type { Provenance } from '../units/provenance.ts'
import { boxCoxValue, boxCoxZ, type BoxCox, type Spread } from '../units/spread.ts'
import { HEIGHT_LMS, WEIGHT_LMS } from './growth-tables.ts'

export type Sex = 'male' | 'female'
export type GrowthMeasure = 'weight' | 'height'

/** Ages covered, years. */
export const GROWTH_AGE_YEARS_MAX = 20
/** Below this gestation at birth, in completed weeks, no weight is assumed until this age, years (our rule: growth differs too much). */
export const TERM_WEEKS = 37
export const PRETERM_WEIGHT_REQUIRED_YEARS = 2
/** Draws stay within ±3 SD, as far as the references go. */
const Z_MAX = 3
const COLUMNS = 4
const GESTATION_WEEKS_MIN = 22
const GESTATION_WEEKS_MAX = 45

export const GROWTH_SOURCES: readonly (Provenance & { readonly fromMonths: number })[] = [
  { fromMonths: 0, source: 'WHO2006', known: 'seen' },
  { fromMonths: 61, source: 'WHO2007', known: 'seen' },
  { fromMonths: 120, source: 'CDC2000', known: 'seen' },
]

export interface GrowthAge {
  readonly ageYears: number
  /** Unknown sex: the mean of both references (derived). */
  readonly sex?: Sex | undefined
}

/** Median, power and coefficient of variation at an age, linear between the rows of the references.
 *  Valid 0–20 years, else AGE_OUT_OF_RANGE. Source: [WHO2006] to 60 months, [WHO2007] from 61, blended into
 *  [CDC2000] over 108–120 months (weight) and 216–228 months (height). Exact at the rows (growth.test.ts). */
export function growthShape(measure: GrowthMeasure, child: GrowthAge): BoxCox {
  const ageMonths = requireAgeMonths(child.ageYears)
  const tables = measure === 'weight' ? WEIGHT_LMS : HEIGHT_LMS
  if (child.sex !== undefined) return rowAt(tables[child.sex], ageMonths)
  const boy = rowAt(tables.male, ageMonths)
  const girl = rowAt(tables.female, ageMonths)
  return {
    median: (boy.median + girl.median) / 2,
    power: (boy.power + girl.power) / 2,
    cv: (boy.cv + girl.cv) / 2,
  }
}

/** Weight at z standard deviations, kg. Valid 0–20 years, |z| ≤ 3. */
export function weightAtZKg(child: GrowthAge & { readonly z: number }): number {
  return boxCoxValue(growthShape('weight', child), requireZ(child.z))
}

/** Height (recumbent length below 24 months) at z standard deviations, cm. Valid 0–20 years, |z| ≤ 3. */
export function heightAtZCm(child: GrowthAge & { readonly z: number }): number {
  return boxCoxValue(growthShape('height', child), requireZ(child.z))
}

/** Standard deviations from the median of a weight; the number is returned however large. Valid 0–20 years. */
export function weightZ(child: GrowthAge & { readonly weightKg: number }): number {
  return boxCoxZ(growthShape('weight', child), child.weightKg)
}

/** Standard deviations from the median of a height. Valid 0–20 years. */
export function heightZ(child: GrowthAge & { readonly heightCm: number }): number {
  return boxCoxZ(growthShape('height', child), child.heightCm)
}

/** Weight that a child of this age may have, ±3 SD. Below 37 weeks' gestation and 2 years there is none:
 *  WEIGHT_REQUIRED. Valid 0–20 years. */
export function childWeightSpread(
  child: GrowthAge & { readonly gestationWeeks?: number | undefined },
): Spread {
  requireTermOrOlder(child)
  return spreadOf(growthShape('weight', child))
}

/** Height that a child of this age may have, ±3 SD. As childWeightSpread, whose refusal it shares. */
export function childHeightSpread(
  child: GrowthAge & { readonly gestationWeeks?: number | undefined },
): Spread {
  requireTermOrOlder(child)
  return spreadOf(growthShape('height', child))
}

function spreadOf(shape: BoxCox): Spread {
  return {
    kind: 'box-cox',
    ...shape,
    min: boxCoxValue(shape, -Z_MAX),
    max: boxCoxValue(shape, Z_MAX),
  }
}

function requireTermOrOlder(child: {
  readonly ageYears: number
  readonly gestationWeeks?: number | undefined
}): void {
  if (child.gestationWeeks === undefined) return
  requireWithin({
    code: 'GESTATION_OUT_OF_RANGE',
    path: 'gestationWeeks',
    value: child.gestationWeeks,
    min: GESTATION_WEEKS_MIN,
    max: GESTATION_WEEKS_MAX,
    unit: 'wk',
  })
  if (child.gestationWeeks >= TERM_WEEKS || child.ageYears >= PRETERM_WEIGHT_REQUIRED_YEARS) return
  throw new DomainError({ code: 'WEIGHT_REQUIRED', path: 'weightKg', value: null, unit: 'kg' })
}

function rowAt(table: readonly number[], ageMonths: number): BoxCox {
  const upper = firstRowFrom(table, ageMonths)
  if (monthOf(table, upper) === ageMonths) return shapeOf(table, upper)
  const lower = upper - 1
  const from = monthOf(table, lower)
  const share = (ageMonths - from) / (monthOf(table, upper) - from)
  const a = shapeOf(table, lower)
  const b = shapeOf(table, upper)
  return {
    median: a.median + share * (b.median - a.median),
    power: a.power + share * (b.power - a.power),
    cv: a.cv + share * (b.cv - a.cv),
  }
}

/** Index of the first row at or after an age, by bisection; the table covers every accepted age. */
function firstRowFrom(table: readonly number[], ageMonths: number): number {
  let low = 0
  let high = table.length / COLUMNS - 1
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (monthOf(table, middle) < ageMonths) low = middle + 1
    else high = middle
  }
  return low
}

function monthOf(table: readonly number[], row: number): number {
  return cell(table, row * COLUMNS)
}

function shapeOf(table: readonly number[], row: number): BoxCox {
  const start = row * COLUMNS
  return {
    power: cell(table, start + 1),
    median: cell(table, start + 2),
    cv: cell(table, start + 3),
  }
}

function cell(table: readonly number[], index: number): number {
  const value = table[index]
  assert(value !== undefined, 'growth table covers every accepted age')
  return value
}

function requireAgeMonths(ageYears: number): number {
  requireWithin({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageYears',
    value: ageYears,
    min: 0,
    max: GROWTH_AGE_YEARS_MAX,
    unit: 'y',
  })
  return monthsFromYears(ageYears)
}

function requireZ(z: number): number {
  return requireWithin({
    code: 'Z_SCORE_OUT_OF_RANGE',
    path: 'z',
    value: z,
    min: -Z_MAX,
    max: Z_MAX,
  })
}
