// Functional residual capacity against published rows and a second method.
import { describe, expect, it } from 'vitest'
import { functionalResidualCapacityMl } from './frc.ts'

const infant = (heightCm: number) =>
  functionalResidualCapacityMl({ ageYears: 0.5, sex: 'male', weightKg: 7, heightCm })

describe('functional residual capacity', () => {
  it('gives the published infants and children at their rows', () => {
    for (const [cm, ml] of [
      [50, 72],
      [60, 114],
      [70, 168],
      [80, 236],
      [90, 318],
    ] as const) {
      expect(infant(cm)).toBeCloseTo(ml, 6)
    }
    for (const [cm, boy, girl] of [
      [100, 463, 447],
      [110, 622, 598],
      [120, 816, 784],
      [140, 1339, 1276],
      [160, 2024, 1966],
    ] as const) {
      const child = { ageYears: 8, weightKg: 25, heightCm: cm }
      expect(functionalResidualCapacityMl({ ...child, sex: 'male' })).toBeCloseTo(boy, 6)
      expect(functionalResidualCapacityMl({ ...child, sex: 'female' })).toBeCloseTo(girl, 6)
    }
  })

  it('agrees with washout in infants within 10 % [Lum2013]', () => {
    // Washout, boys: 55 cm 85, 60 cm 107, 65 cm 132, 70 cm 162, 80 cm 237 mL.
    for (const [cm, ml] of [
      [55, 85],
      [60, 107],
      [65, 132],
      [70, 162],
      [80, 237],
    ] as const) {
      expect(Math.abs(infant(cm) / ml - 1)).toBeLessThan(0.1)
    }
  })

  it('gives the adult formula and the preterm rule', () => {
    // Man 1.75 m, 50 years: 2.34·1.75 + 0.01·50 − 1.09 = 3.505 L; woman 1.62 m: 2.24·1.62 + 0.05 − 1 = 2.679 L.
    const adult = { ageYears: 50, weightKg: 70 }
    expect(functionalResidualCapacityMl({ ...adult, sex: 'male', heightCm: 175 })).toBeCloseTo(
      3505,
      6,
    )
    expect(functionalResidualCapacityMl({ ...adult, sex: 'female', heightCm: 162 })).toBeCloseTo(
      2678.8,
      6,
    )
    expect(
      functionalResidualCapacityMl({ ageYears: 0, sex: 'male', weightKg: 1, heightCm: 37 }),
    ).toBe(25)
    expect(() => functionalResidualCapacityMl({ ...adult, sex: 'male', heightCm: 1.75 })).toThrow(
      'HEIGHT_OUT_OF_RANGE',
    )
  })
})
