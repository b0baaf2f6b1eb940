// Flowmeter error spreads against the standard's band and the measured low-flow meters; purity limits of sources.
import { describe, expect, it } from 'vitest'
import { limitsOf, medianOf, quantile } from '../units/spread.ts'
import { LOW_FLOW_BIAS, ordinaryAccuracyBandLpm, trueFlowSpread } from './flowmeter-accuracy.ts'
import { SOURCE_PURITY } from './source-purity.ts'

describe('flowmeter accuracy', () => {
  it('follows ±0.5 L/min below 5 L/min and ±10 % above [Duprez2014]', () => {
    expect(ordinaryAccuracyBandLpm(1)).toBe(0.5)
    expect(ordinaryAccuracyBandLpm(5)).toBe(0.5)
    expect(ordinaryAccuracyBandLpm(15)).toBe(1.5)
    const spread = trueFlowSpread({ settingLpm: 10, meterClass: 'ordinary' })
    expect(medianOf(spread)).toBeCloseTo(10, 10)
    // 95 % of a normal lies within two standard deviations, here the band; truncation at three changes it by 0.3 %.
    expect(quantile(spread, 0.0228)).toBeCloseTo(9, 1)
    expect(quantile(spread, 0.9772)).toBeCloseTo(11, 1)
  })

  it('gives mean and spread of 24 low-flow meters at the settings measured [Tinaglia2002]', () => {
    expect(LOW_FLOW_BIAS.rows).toHaveLength(3)
    for (const [settingLpm, meanLpm, sdLpm] of [
      [0.25, 0.32, 0.05],
      [1, 1.05, 0.05],
      [1.5, 1.52, 0.06],
    ] as const) {
      const spread = trueFlowSpread({ settingLpm, meterClass: 'low-flow' })
      expect(medianOf(spread)).toBeCloseTo(meanLpm, 10)
      expect(quantile(spread, 0.8413) - meanLpm).toBeCloseTo(sdLpm, 2)
    }
  })

  it('is closed at zero, never negative, and rises with the setting', () => {
    expect(trueFlowSpread({ settingLpm: 0, meterClass: 'ordinary' })).toEqual({
      kind: 'fixed',
      value: 0,
    })
    for (const meterClass of ['ordinary', 'low-flow'] as const) {
      let before = 0
      for (const settingLpm of [
        0.01, 0.025, 0.1, 0.2, 0.25, 0.3, 0.5, 0.9, 1, 1.2, 1.5, 2, 3, 5, 15,
      ]) {
        const spread = trueFlowSpread({ settingLpm, meterClass })
        expect(limitsOf(spread).min).toBeGreaterThanOrEqual(0)
        const middle = medianOf(spread)
        expect(middle).toBeGreaterThan(before)
        before = middle
      }
    }
    expect(() => trueFlowSpread({ settingLpm: -1, meterClass: 'ordinary' })).toThrow(
      'FLOW_OUT_OF_RANGE',
    )
    expect(() => trueFlowSpread({ settingLpm: Number.NaN, meterClass: 'low-flow' })).toThrow(
      'NOT_A_NUMBER',
    )
  })
})

describe('source purity', () => {
  it('stays within the pharmacopoeia limits', () => {
    expect(limitsOf(SOURCE_PURITY.pipeline.o2Fraction)).toEqual({ min: 0.995, max: 1 })
    expect(limitsOf(SOURCE_PURITY.concentrator.o2Fraction)).toEqual({ min: 0.9, max: 0.96 })
    expect(medianOf(SOURCE_PURITY['oxygen-93'].o2Fraction)).toBeCloseTo(0.93, 10)
    expect(limitsOf(SOURCE_PURITY['who-floor'].o2Fraction).min).toBe(0.82)
  })
})
