// Presets against the published groups they stand for; every draw makes a usable patient.
import { describe, expect, it } from 'vitest'
import { kpaFromMmhg, mmhgFromKpa } from '../units/pressure.ts'
import { limitsOf, medianOf, quantile } from '../units/spread.ts'
import { gasExchangePreset, LUNG_CONDITIONS, type LungCondition } from './gas-exchange-presets.ts'
import { arterialFromInspired, gasExchange } from './shunt-shift.ts'

function typicalOn(
  condition: LungCondition,
  setting: { readonly ageYears: number; readonly inspiredO2Fraction: number },
) {
  const preset = gasExchangePreset({ condition, ageYears: setting.ageYears })
  const lung = gasExchange({
    shuntFraction: medianOf(preset.shuntFraction.spread),
    extraShiftKpa: medianOf(preset.extraShiftKpa.spread),
    o2UptakeMlPerMin: 240,
    cardiacOutputLpm: 5.5,
    haemoglobinGPerDl: 14,
  })
  return arterialFromInspired(lung, {
    inspiredO2Fraction: setting.inspiredO2Fraction,
    barometricKpa: 101.325,
    arterialPco2Kpa: medianOf(preset.arterialPco2Kpa.spread),
  })
}

function onAir(condition: LungCondition): number {
  return typicalOn(condition, { ageYears: 50, inspiredO2Fraction: 0.2095 }).arterialSaturation
}

describe('gas-exchange presets', () => {
  it('keep every draw inside what the model accepts', () => {
    expect(LUNG_CONDITIONS).toHaveLength(18)
    for (const condition of LUNG_CONDITIONS) {
      for (const ageYears of [0, 30, 90]) {
        const preset = gasExchangePreset({ condition, ageYears })
        expect(limitsOf(preset.shuntFraction.spread).min).toBeGreaterThanOrEqual(0)
        expect(limitsOf(preset.shuntFraction.spread).max).toBeLessThanOrEqual(0.5)
        expect(limitsOf(preset.extraShiftKpa.spread).min).toBeGreaterThanOrEqual(0)
        expect(limitsOf(preset.extraShiftKpa.spread).max).toBeLessThanOrEqual(20)
        expect(limitsOf(preset.arterialPco2Kpa.spread).min).toBeGreaterThan(2.5)
        expect(limitsOf(preset.arterialPco2Kpa.spread).max).toBeLessThan(13)
      }
    }
  })

  it('give the ratio of arterial to inspired oxygen of the patients measured in COPD [Barbera1997]', () => {
    // Stable 282 ± 52 mmHg, exacerbation 245 ± 58; here on air and on 24 %.
    const stable =
      mmhgFromKpa(
        typicalOn('copd-stable', { ageYears: 68, inspiredO2Fraction: 0.2095 }).arterialPo2Kpa,
      ) / 0.2095
    const worse =
      mmhgFromKpa(
        typicalOn('copd-exacerbation', { ageYears: 68, inspiredO2Fraction: 0.24 }).arterialPo2Kpa,
      ) / 0.24
    expect(Math.abs(stable - 282)).toBeLessThan(52)
    expect(Math.abs(worse - 245)).toBeLessThan(58)
    expect(worse).toBeLessThan(stable)
  })

  it('give the carbon dioxide and shunt of the groups measured', () => {
    const exacerbation = gasExchangePreset({ condition: 'copd-exacerbation', ageYears: 30 })
    expect(Math.abs(mmhgFromKpa(medianOf(exacerbation.arterialPco2Kpa.spread)) - 51)).toBeLessThan(
      2,
    )
    // Spontaneously breathing pneumonia 7 ± 2 % (sem), ventilated 22 ± 5 % (sem).
    const ward = gasExchangePreset({ condition: 'pneumonia', ageYears: 30 })
    const severe = gasExchangePreset({ condition: 'severe-pneumonia', ageYears: 30 })
    expect(Math.abs(medianOf(ward.shuntFraction.spread) - 0.07)).toBeLessThan(0.02)
    expect(Math.abs(medianOf(severe.shuntFraction.spread) - 0.22)).toBeLessThan(0.05)
    // Day 2 to 3 after coronary surgery: medians 3.2 and 4.0 kPa.
    const postoperative = gasExchangePreset({ condition: 'postoperative', ageYears: 30 })
    expect(Math.abs(medianOf(postoperative.extraShiftKpa.spread) - 3.6)).toBeLessThan(0.8)
  })

  it('make healthy people read what they read on air, young and old', () => {
    const young = typicalOn('healthy', { ageYears: 25, inspiredO2Fraction: 0.2095 })
    const old = typicalOn('healthy', { ageYears: 80, inspiredO2Fraction: 0.2095 })
    expect(young.arterialSaturation).toBeGreaterThan(0.965)
    expect(old.arterialSaturation).toBeGreaterThan(0.94)
    expect(old.arterialSaturation).toBeLessThan(young.arterialSaturation)
    // Upper limit of the alveolar–arterial difference, age/4 + 4 mmHg: 24 at 80 years; alveolar about 101 mmHg.
    expect(101 - mmhgFromKpa(old.arterialPo2Kpa)).toBeLessThan(24)
  })

  it('order conditions as a clinician would, on air', () => {
    expect(onAir('severe-pneumonia')).toBeLessThan(onAir('pneumonia'))
    expect(onAir('pneumonia')).toBeLessThan(onAir('healthy'))
    expect(onAir('copd-exacerbation')).toBeLessThan(onAir('copd-stable'))
    expect(onAir('pregnancy')).toBeGreaterThan(0.96)
  })

  it('refuses an unknown condition and age', () => {
    // Unchecked text from outside, as a reader might pass it.
    const unknown = 'flu' as LungCondition
    expect(() => gasExchangePreset({ condition: unknown, ageYears: 30 })).toThrow('UNKNOWN_CHOICE')
    expect(() => gasExchangePreset({ condition: 'asthma', ageYears: -3 })).toThrow(
      'AGE_OUT_OF_RANGE',
    )
    expect(
      quantile(gasExchangePreset({ condition: 'newborn', ageYears: 0 }).extraShiftKpa.spread, 0.5),
    ).toBeLessThan(kpaFromMmhg(15))
  })
})
