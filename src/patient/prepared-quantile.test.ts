// The prepared quantile function against the careful one.
import { describe, expect, it } from 'vitest'
import { quantile, type Spread } from '../units/spread.ts'
import { preparedQuantile } from './prepared-quantile.ts'

const SPREADS: readonly Spread[] = [
  { kind: 'fixed', value: 3 },
  { kind: 'uniform', min: 1, max: 4 },
  { kind: 'triangular', mode: 2, min: 1, max: 4 },
  { kind: 'normal', mean: 25, sd: 2.5, min: 17, max: 33 },
  { kind: 'normal', mean: 25, sd: 2.5, min: 30, max: 33 },
  { kind: 'normal', mean: 0, sd: 1, min: -8, max: 8 },
  { kind: 'lognormal', median: 350, logSd: 0.2, min: 170, max: 700 },
  { kind: 'lognormal', median: 0.05, logSd: 0.8, min: 0.01, max: 0.5 },
  { kind: 'lognormal', median: 350, logSd: 0.2, min: 60, max: 200 },
  { kind: 'box-cox', median: 9, power: 0.1, cv: 0.11, min: 6, max: 13 },
]

describe('preparedQuantile', () => {
  it.each(SPREADS)('is the quantile of %j', (spread) => {
    const prepared = preparedQuantile(spread)
    for (const u of [1e-12, 1e-6, 0.01, 0.1, 0.3, 0.5, 0.77, 0.9, 0.999, 1 - 1e-9]) {
      const exact = quantile(spread, u)
      expect(Math.abs(prepared(u) - exact)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(exact)))
    }
  })
})
