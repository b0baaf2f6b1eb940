// Growth priors against the references' own centiles and rows; seams; refusals.
import { execFileSync } from 'node:child_process'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { quantile } from '../units/spread.ts'
import {
  childHeightSpread,
  childWeightSpread,
  growthShape,
  heightAtZCm,
  heightZ,
  weightAtZKg,
  weightZ,
  type GrowthMeasure,
  type Sex,
} from './growth.ts'

const MONTHS_PER_YEAR = 12
/** z of the 97th centile. */
const Z97 = 1.880794
const COLUMNS = ['measure', 'sex', 'age_months', 'L', 'M', 'S']

function sexOf(text: string | undefined): Sex {
  return text === 'M' ? 'male' : 'female'
}

/** Misses of our shape at every row of a reference file within the ages we take from it. */
function rowsAgainst(path: string, measure: GrowthMeasure, ages: { from: number; to: number }) {
  const rows = referenceRows(path, COLUMNS).filter((row) => {
    const month = numberIn(row, 'age_months')
    return month >= ages.from && month <= ages.to
  })
  return rows.map((row) => {
    const shape = growthShape(measure, {
      ageYears: numberIn(row, 'age_months') / MONTHS_PER_YEAR,
      sex: sexOf(row['sex']),
    })
    const misses = [
      shape.power - numberIn(row, 'L'),
      shape.median / numberIn(row, 'M') - 1,
      shape.cv - numberIn(row, 'S'),
    ]
    return { label: JSON.stringify(row), ours: Math.max(...misses.map(Math.abs)), theirs: 0 }
  })
}

describe('growth references', () => {
  it('holds every row of the references in the ages each is used for', () => {
    const parts = [
      rowsAgainst('who-2006/weight.csv', 'weight', { from: 3, to: 60 }),
      rowsAgainst('who-2007/weight.csv', 'weight', { from: 61, to: 108 }),
      rowsAgainst('cdc-2000/weight.csv', 'weight', { from: 120.5, to: 240 }),
      rowsAgainst('who-2006/height.csv', 'height', { from: 0, to: 60 }),
      rowsAgainst('who-2007/height.csv', 'height', { from: 61, to: 216 }),
      rowsAgainst('cdc-2000/height.csv', 'height', { from: 228.5, to: 240 }),
    ]
    expect(parts.map((part) => part.length)).toEqual([116, 96, 242, 122, 312, 26])
    // Tables keep eight digits.
    expectWithin(parts.flat(), 1e-7)
  })

  it('gives the weekly weights of the first quarter', () => {
    const rows = referenceRows('who-2006/weight-weekly.csv', [
      'measure',
      'sex',
      'age_days',
      'L',
      'M',
      'S',
    ])
    expect(rows).toHaveLength(28)
    expectWithin(
      rows.map((row) => ({
        label: JSON.stringify(row),
        ours: growthShape('weight', {
          ageYears: numberIn(row, 'age_days') / 365.25,
          sex: sexOf(row['sex']),
        }).median,
        theirs: numberIn(row, 'M'),
      })),
      1e-6,
    )
  })

  it('gives the published 3rd, 50th and 97th centiles of weight', () => {
    // Recomputed by the keepers of the references, kg.
    const published = [
      ['male', 0, 2.51, 3.35, 4.35],
      ['male', 6, 6.44, 7.94, 9.73],
      ['male', 12, 7.84, 9.65, 11.83],
      ['male', 24, 9.8, 12.15, 15.07],
      ['male', 60, 14.29, 18.34, 23.76],
      ['female', 0, 2.44, 3.23, 4.17],
      ['female', 6, 5.82, 7.3, 9.2],
      ['female', 12, 7.14, 8.95, 11.33],
      ['female', 24, 9.16, 11.47, 14.61],
      ['female', 60, 13.96, 18.22, 24.43],
      ['male', 120.5, 24.19, 32.09, 49.42],
      ['male', 180.5, 41.52, 56.49, 83.24],
      ['male', 240, 54, 70.6, 100.78],
      ['female', 120.5, 23.99, 33.06, 51.43],
      ['female', 180.5, 39.59, 52.14, 81.65],
      ['female', 240, 45.05, 58.22, 89.04],
    ] as const
    const compared = published.flatMap(([sex, month, p3, p50, p97]) => {
      const at = (z: number) => weightAtZKg({ ageYears: month / MONTHS_PER_YEAR, sex, z })
      return [
        { label: `${sex} ${month} P3`, ours: at(-Z97), theirs: p3 },
        { label: `${sex} ${month} P50`, ours: at(0), theirs: p50 },
        { label: `${sex} ${month} P97`, ours: at(Z97), theirs: p97 },
      ]
    })
    expect(compared).toHaveLength(48)
    expectWithin(compared, 0.0051)
  })

  it('gives the WHO 2 SD limits at 12 months', () => {
    expect(weightAtZKg({ ageYears: 1, sex: 'male', z: -2 })).toBeCloseTo(7.74, 2)
    // The daily table that we keep gives 11.98 here, the monthly one 11.99.
    expect(Math.abs(weightAtZKg({ ageYears: 1, sex: 'male', z: 2 }) - 11.99)).toBeLessThan(0.01)
    expect(weightAtZKg({ ageYears: 1, sex: 'female', z: -2 })).toBeCloseTo(7.04, 2)
    expect(weightAtZKg({ ageYears: 1, sex: 'female', z: 2 })).toBeCloseTo(11.51, 2)
  })

  it('grows without a step, except standing up at 24 months', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 239, noNaN: true }),
        fc.constantFrom('male' as const, 'female' as const),
        (month, sex) => {
          const here = { ageYears: month / MONTHS_PER_YEAR, sex }
          const later = { ageYears: (month + 0.25) / MONTHS_PER_YEAR, sex }
          const gain = growthShape('weight', later).median / growthShape('weight', here).median
          expect(gain).toBeGreaterThan(0.999)
          expect(gain).toBeLessThan(1.1)
          const taller = growthShape('height', later).median - growthShape('height', here).median
          expect(taller).toBeGreaterThan(month > 23 && month < 24.3 ? -0.71 : -0.01)
          expect(taller).toBeLessThan(1.4)
        },
      ),
      seeded(1000),
    )
    const lying = heightAtZCm({ ageYears: 23.999 / 12, sex: 'male', z: 0 })
    const standing = heightAtZCm({ ageYears: 2, sex: 'male', z: 0 })
    expect(lying - standing).toBeCloseTo(0.7, 2)
  })

  it('turns z to value and back, and draws inside three SD', () => {
    const z = fc.double({ min: -3, max: 3, noNaN: true })
    const age = fc.double({ min: 0, max: 20, noNaN: true })
    fc.assert(
      fc.property(
        age,
        fc.constantFrom('male' as const, 'female' as const, undefined),
        z,
        (ageYears, sex, wanted) => {
          const child = { ageYears, sex }
          expect(weightZ({ ...child, weightKg: weightAtZKg({ ...child, z: wanted }) })).toBeCloseTo(
            wanted,
            9,
          )
          expect(heightZ({ ...child, heightCm: heightAtZCm({ ...child, z: wanted }) })).toBeCloseTo(
            wanted,
            9,
          )
        },
      ),
      seeded(500),
    )
    const spread = childWeightSpread({ ageYears: 1, sex: 'male' })
    // P97 of a normal cut at ±3 SD lies 0.02 SD lower.
    expect(quantile(spread, 0.97)).toBeCloseTo(11.83, 1)
    expect(quantile(childHeightSpread({ ageYears: 1, sex: 'male' }), 0.5)).toBeCloseTo(75.7, 1)
  })

  it('asks for the weight of a preterm baby', () => {
    expect(() => childWeightSpread({ ageYears: 0.1, gestationWeeks: 30 })).toThrow(
      'WEIGHT_REQUIRED weightKg null',
    )
    expect(() => childHeightSpread({ ageYears: 0.1, gestationWeeks: 36.9 })).toThrow(
      'WEIGHT_REQUIRED',
    )
    expect(() => childWeightSpread({ ageYears: 0.1, gestationWeeks: 37 })).not.toThrow()
    expect(() => childWeightSpread({ ageYears: 3, gestationWeeks: 30 })).not.toThrow()
    expect(() => childWeightSpread({ ageYears: 0.1, gestationWeeks: 280 })).toThrow(
      'GESTATION_OUT_OF_RANGE',
    )
    expect(() => childWeightSpread({ ageYears: 21 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => weightAtZKg({ ageYears: 1, z: 4 })).toThrow('Z_SCORE_OUT_OF_RANGE')
  })

  it('has tables that the generator still makes from the references', () => {
    expect(() => execFileSync('node', ['scripts/generate-growth.mjs', '--check'])).not.toThrow()
  })
})
