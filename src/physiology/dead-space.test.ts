// Anatomical dead space against the published formula and adult values.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { medianOf } from '../units/spread.ts'
import { anatomicalDeadSpace, DEAD_SPACE_FACTOR } from './dead-space.ts'

describe('dead space', () => {
  it('gives the published mL/kg by age [Numa1996]', () => {
    // 0/0.5/1/2/6/10/14 years: 3.28/3.05/2.89/2.66/2.19/1.94/1.76; 5 years 2.28.
    for (const [ageYears, mlPerKg] of [
      [0, 3.28],
      [0.5, 3.05],
      [1, 2.89],
      [2, 2.66],
      [5, 2.28],
      [6, 2.19],
      [10, 1.94],
      [14, 1.76],
    ] as const) {
      expect(anatomicalDeadSpace({ ageYears, weightKg: 1 }).totalMl).toBeCloseTo(mlPerKg, 2)
    }
  })

  it('gives the published extrathoracic part in infancy and after 6 years, and the intrathoracic constant', () => {
    // 2.3 mL/kg in early infancy, 0.8 after 6 years (within the formula's own fit), 1.03 inside the chest.
    expect(anatomicalDeadSpace({ ageYears: 0, weightKg: 1 }).extrathoracicMl).toBeCloseTo(2.3, 1)
    expect(anatomicalDeadSpace({ ageYears: 12, weightKg: 1 }).extrathoracicMl).toBeCloseTo(0.8, 1)
    for (const ageYears of [0, 3, 14]) {
      expect(anatomicalDeadSpace({ ageYears, weightKg: 1 }).intrathoracicMl).toBeCloseTo(1.03, 12)
    }
  })

  it('gives adults 2.2 mL/kg, split as in cadavers [Nunn1959]', () => {
    const adult = anatomicalDeadSpace({ ageYears: 40, weightKg: 65 })
    expect(adult.totalMl).toBeCloseTo(143, 6)
    // 72 ± 32 and 66 ± 29 mL.
    expect(Math.abs(adult.extrathoracicMl - 72)).toBeLessThan(10)
    expect(Math.abs(adult.intrathoracicMl - 66)).toBeLessThan(10)
  })

  it('always sums its parts and has no step in age', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (ageYears) => {
        const here = anatomicalDeadSpace({ ageYears, weightKg: 10 })
        const later = anatomicalDeadSpace({ ageYears: ageYears + 0.01, weightKg: 10 })
        expect(here.totalMl).toBeCloseTo(here.extrathoracicMl + here.intrathoracicMl, 12)
        expect(Math.abs(later.totalMl - here.totalMl)).toBeLessThan(0.06)
      }),
      seeded(300),
    )
    expect(medianOf(DEAD_SPACE_FACTOR)).toBeCloseTo(1, 12)
    expect(() => anatomicalDeadSpace({ ageYears: -1, weightKg: 3 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => anatomicalDeadSpace({ ageYears: 1, weightKg: 0 })).toThrow('WEIGHT_OUT_OF_RANGE')
  })
})
