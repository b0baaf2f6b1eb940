// Affinity by age against the published newborn and infant values.
import { describe, expect, it } from 'vitest'
import { mmhgFromKpa } from '../units/pressure.ts'
import { medianOf } from '../units/spread.ts'
import { bloodCurve, bloodSaturation, STANDARD_P50_KPA } from './dissociation.ts'
import { p50SpreadKpa } from './fetal-haemoglobin.ts'

const p50Mmhg = (ageYears: number, gestationWeeks?: number) =>
  mmhgFromKpa(medianOf(p50SpreadKpa({ ageYears, gestationWeeks })))

describe('fetal haemoglobin', () => {
  it('starts at 18 to 19 mmHg, passes the adult value by 4 to 6 months and reaches about 30', () => {
    expect(p50Mmhg(0)).toBeCloseTo(19, 6)
    expect(p50Mmhg(0.2)).toBeLessThan(26)
    expect(p50Mmhg(0.42)).toBeGreaterThan(26.8)
    expect(p50Mmhg(10 / 12)).toBeCloseTo(30, 6)
    expect(p50Mmhg(20)).toBeCloseTo(mmhgFromKpa(STANDARD_P50_KPA), 2)
  })

  it('counts age from term for a preterm baby, and is adult after transfusion', () => {
    expect(p50Mmhg(0.15, 28)).toBeCloseTo(19, 6)
    expect(p50Mmhg(0.5, 28)).toBeLessThan(p50Mmhg(0.5, 40))
    expect(p50SpreadKpa({ ageYears: 0.1, adultBloodTransfused: true })).toEqual({
      kind: 'fixed',
      value: STANDARD_P50_KPA,
    })
  })

  it('puts newborn saturation of 95 to 98 % at 50 to 75 mmHg, as published', () => {
    // HbF-rich blood: SpO2 95–98 % at 50–75 mmHg.
    const curve = bloodCurve({ p50Kpa: medianOf(p50SpreadKpa({ ageYears: 0 })) })
    expect(bloodSaturation(curve, 50 / 7.50062)).toBeGreaterThan(0.925)
    expect(bloodSaturation(curve, 75 / 7.50062)).toBeGreaterThan(0.975)
  })

  it('refuses ages and gestations that do not exist', () => {
    expect(() => p50SpreadKpa({ ageYears: -1 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => p50SpreadKpa({ ageYears: 0, gestationWeeks: 12 })).toThrow(
      'GESTATION_OUT_OF_RANGE',
    )
  })
})
