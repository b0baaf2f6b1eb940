// Resting rates against published centiles by age.
import { describe, expect, it } from 'vitest'
import { limitsOf, medianOf, quantile } from '../units/spread.ts'
import {
  COUNTING_ERROR,
  restingRateProvenance,
  restingRateSpread,
  rusconiRatePerMin,
} from './respiratory-rate.ts'

const Z95 = 1.645

describe('respiratory rate', () => {
  it('gives the published centiles awake from 1 to 36 months [Rusconi1994]', () => {
    // 5th/50th/95th: 1 mo 34/47/64; 6 mo 30/41/56; 12 mo 27/36/49; 24 mo 22/30/39; 36 mo 20/27/35.
    const published = [
      [1, 34, 47, 64],
      [6, 30, 41, 56],
      [12, 27, 36, 49],
      [24, 22, 30, 39],
      [36, 20, 27, 35],
    ] as const
    for (const [ageMonths, p5, p50, p95] of published) {
      const misses = [
        rusconiRatePerMin({ ageMonths, z: -Z95 }) - p5,
        rusconiRatePerMin({ ageMonths, z: 0 }) - p50,
        rusconiRatePerMin({ ageMonths, z: Z95 }) - p95,
      ]
      // Printed in whole breaths.
      for (const miss of misses) expect(Math.abs(miss)).toBeLessThanOrEqual(0.5)
      const spread = restingRateSpread({ ageYears: ageMonths / 12 })
      expect(Math.round(medianOf(spread))).toBe(p50)
      expect(Math.abs(quantile(spread, 0.95) - p95)).toBeLessThan(1)
    }
  })

  it('gives the directly published 95th centiles awake and asleep', () => {
    // A second printing: 10^(1.82144 − 0.0126m + 0.00013401m²), 10^(1.72858 − 0.01399m + 0.00017646m²).
    for (const m of [1, 3, 6, 12, 18, 24, 36]) {
      const awake = 10 ** (1.82144 - 0.0126 * m + 0.00013401 * m * m)
      const asleep = 10 ** (1.72858 - 0.01399 * m + 0.00017646 * m * m)
      expect(Math.abs(rusconiRatePerMin({ ageMonths: m, z: Z95 }) - awake)).toBeLessThan(0.05)
      expect(
        Math.abs(rusconiRatePerMin({ ageMonths: m, z: Z95, asleep: true }) - asleep),
      ).toBeLessThan(0.05)
    }
  })

  it('lies in the published bands at birth, two years and in adults', () => {
    // Median 44 at birth and 26 at 2 years over all states [Fleming2011]; 59 awake, 41 asleep at birth [Herbert2020]; adults 12–20.
    const newborn = medianOf(restingRateSpread({ ageYears: 0.01 }))
    expect(newborn).toBeGreaterThan(44)
    expect(newborn).toBeLessThan(59.3)
    const two = [false, true].map((asleep) => medianOf(restingRateSpread({ ageYears: 2, asleep })))
    expect(Math.min(...two)).toBeLessThan(26)
    expect(Math.max(...two)).toBeGreaterThan(26)
    const adult = restingRateSpread({ ageYears: 50 })
    expect(quantile(adult, 0.08)).toBeGreaterThan(12)
    expect(quantile(adult, 0.87)).toBeLessThan(20.1)
  })

  it('falls with age and is slower asleep', () => {
    const ages = [0.01, 0.1, 0.5, 1, 2, 2.9, 3.5, 5, 7, 10, 13, 16, 18, 40, 90]
    const medians = ages.map((ageYears) => medianOf(restingRateSpread({ ageYears })))
    expect(medians.every((rate, i) => i === 0 || rate <= (medians[i - 1] ?? 0) + 0.6)).toBe(true)
    for (const ageYears of ages) {
      expect(medianOf(restingRateSpread({ ageYears, asleep: true }))).toBeLessThan(
        medianOf(restingRateSpread({ ageYears })),
      )
      expect(limitsOf(restingRateSpread({ ageYears })).min).toBeGreaterThan(7)
    }
  })

  it('says how each age is known, and the error of a count', () => {
    expect(restingRateProvenance(1)).toEqual({ source: 'Rusconi1994', known: 'secondary' })
    expect(restingRateProvenance(8).known).toBe('memory')
    // Limits of agreement ±1.96 SD: 7.05 and 13.95/min.
    expect(COUNTING_ERROR.simultaneousSdPerMin * 1.96).toBeCloseTo(7.05, 1)
    expect(COUNTING_ERROR.routineSdPerMin * 1.96).toBeCloseTo(13.95, 1)
    expect(() => rusconiRatePerMin({ ageMonths: 40, z: 0 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => restingRateSpread({ ageYears: 200 })).toThrow('AGE_OUT_OF_RANGE')
  })
})
