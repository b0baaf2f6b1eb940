// Body size formulas against published values; what is assumed when nothing is given.
import { describe, expect, it } from 'vitest'
import { limitsOf, medianOf, quantile } from '../units/spread.ts'
import {
  bodySurfaceFromWeightM2,
  bodySurfaceM2,
  heightSpreadCm,
  predictedBodyWeightKg,
  weightSpreadKg,
} from './body.ts'
import { growthShape } from './growth.ts'

describe('body', () => {
  it('gives the published predicted weights within 0.1 kg [ARDSNet2000]', () => {
    for (const [sex, heightCm, kg] of [
      ['male', 170, 66],
      ['male', 180, 75.1],
      ['female', 160, 52.4],
      ['female', 165, 57],
    ] as const) {
      expect(Math.abs(predictedBodyWeightKg({ heightCm, sex }) - kg)).toBeLessThan(0.1)
    }
    // 60 inches is the base of both; 2.3 kg per inch.
    expect(predictedBodyWeightKg({ heightCm: 152.4, sex: 'male' })).toBe(50)
    expect(predictedBodyWeightKg({ heightCm: 152.4 + 2.54, sex: 'female' })).toBeCloseTo(
      45.5 + 2.3,
      1,
    )
    expect(() => predictedBodyWeightKg({ heightCm: 100, sex: 'male' })).toThrow(
      'HEIGHT_OUT_OF_RANGE',
    )
    expect(() => predictedBodyWeightKg({ heightCm: 1.7, sex: 'male' })).toThrow(
      'HEIGHT_OUT_OF_RANGE',
    )
  })

  it('gives surface from weight alone within 10 % of the full formula at usual sizes', () => {
    expect(bodySurfaceM2({ weightKg: 70, heightCm: 170 })).toBeCloseTo(1.82, 2)
    for (const ageYears of [0, 0.25, 0.5, 1, 2, 4, 6, 8, 10]) {
      const weightKg = growthShape('weight', { ageYears }).median
      const heightCm = growthShape('height', { ageYears }).median
      const ratio = bodySurfaceFromWeightM2(weightKg) / bodySurfaceM2({ weightKg, heightCm })
      expect(Math.abs(ratio - 1)).toBeLessThan(0.1)
    }
    expect(() => bodySurfaceFromWeightM2(60)).toThrow('WEIGHT_OUT_OF_RANGE')
    expect(() => bodySurfaceM2({ weightKg: 3000, heightCm: 50 })).toThrow('WEIGHT_OUT_OF_RANGE')
  })

  it('assumes weight by height and age when it must', () => {
    expect(medianOf(weightSpreadKg({ ageYears: 40, heightCm: 180 }))).toBeCloseTo(25 * 1.8 * 1.8, 6)
    expect(medianOf(weightSpreadKg({ ageYears: 40, sex: 'male' }))).toBeCloseTo(25 * 1.74 * 1.74, 6)
    expect(medianOf(weightSpreadKg({ ageYears: 1, sex: 'male' }))).toBeCloseTo(9.65, 2)
    expect(medianOf(heightSpreadCm({ ageYears: 40 }))).toBeCloseTo(167.5, 1)
    const adult = heightSpreadCm({ ageYears: 40, sex: 'female' })
    expect(quantile(adult, 0.1)).toBeGreaterThan(limitsOf(adult).min)
    expect(() => weightSpreadKg({ ageYears: 0.2, gestationWeeks: 28 })).toThrow('WEIGHT_REQUIRED')
    expect(() => weightSpreadKg({ ageYears: 140 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => weightSpreadKg({ ageYears: Number.NaN })).toThrow('NOT_A_NUMBER')
  })
})
