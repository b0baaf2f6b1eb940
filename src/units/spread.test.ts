// Draws from spreads: limits, monotone quantiles, known middle values, scaling.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomStream, seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import {
  boxCoxValue,
  boxCoxZ,
  fixed,
  limited,
  limitsOf,
  medianOf,
  quantile,
  scaled,
  type Spread,
} from './spread.ts'

const SPREADS: readonly Spread[] = [
  { kind: 'normal', mean: 16, sd: 3, min: 8, max: 24 },
  { kind: 'normal', mean: 0, sd: 1, min: 6, max: 9 },
  { kind: 'lognormal', median: 5, logSd: 0.4, min: 1, max: 20 },
  { kind: 'lognormal', median: 5, logSd: 0.4, min: 9, max: 20 },
  { kind: 'box-cox', median: 9.65, power: -0.2, cv: 0.11, min: 7, max: 14 },
  { kind: 'box-cox', median: 9.65, power: 0, cv: 0.11, min: 7, max: 14 },
  { kind: 'uniform', min: -1, max: 3 },
  { kind: 'triangular', mode: 2, min: 1, max: 5 },
  { kind: 'triangular', mode: 1, min: 1, max: 5 },
]

const share = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true })

describe('spread', () => {
  it('stays inside its limits and never falls as u rises', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SPREADS), share, share, (spread, a, b) => {
        const low = quantile(spread, Math.min(a, b))
        const high = quantile(spread, Math.max(a, b))
        const limits = limitsOf(spread)
        expect(low).toBeLessThanOrEqual(high)
        expect(low).toBeGreaterThanOrEqual(limits.min)
        expect(high).toBeLessThanOrEqual(limits.max)
      }),
      seeded(2000),
    )
  })

  it('has the middle values of the textbook formulas', () => {
    expect(medianOf({ kind: 'normal', mean: 16, sd: 3, min: 10, max: 22 })).toBeCloseTo(16, 12)
    expect(medianOf({ kind: 'lognormal', median: 5, logSd: 0.5, min: 1, max: 25 })).toBeCloseTo(
      5,
      12,
    )
    expect(medianOf({ kind: 'uniform', min: 2, max: 4 })).toBe(3)
    expect(medianOf({ kind: 'triangular', mode: 1, min: 0, max: 2 })).toBeCloseTo(1, 12)
    expect(medianOf(fixed(7))).toBe(7)
    // Nearly untruncated: the 97.5 % point of a normal lies 1.959964 standard deviations up.
    expect(quantile({ kind: 'normal', mean: 100, sd: 10, min: -100, max: 300 }, 0.975)).toBeCloseTo(
      119.59964,
      4,
    )
  })

  it('draws a truncated normal with the mean that theory gives', () => {
    // Half normal: mean = sd·√(2/π).
    const spread: Spread = { kind: 'normal', mean: 0, sd: 2, min: 0, max: 40 }
    const next = randomStream(1)
    const n = 20000
    let sum = 0
    for (let i = 0; i < n; i += 1) sum += quantile(spread, (i + next()) / n || 1e-9)
    expect(sum / n).toBeCloseTo(2 * Math.sqrt(2 / Math.PI), 3)
  })

  it('with power 0 is the lognormal and with power 1 the normal', () => {
    const limits = { min: 1, max: 20 }
    fc.assert(
      fc.property(share, (u) => {
        const log = quantile({ kind: 'lognormal', median: 5, logSd: 0.2, ...limits }, u)
        expect(
          quantile({ kind: 'box-cox', median: 5, power: 0, cv: 0.2, ...limits }, u),
        ).toBeCloseTo(log, 9)
        const plain = quantile({ kind: 'normal', mean: 5, sd: 1, ...limits }, u)
        expect(
          quantile({ kind: 'box-cox', median: 5, power: 1, cv: 0.2, ...limits }, u),
        ).toBeCloseTo(plain, 9)
      }),
      seeded(300),
    )
    expect(() => boxCoxValue({ median: 5, power: 1, cv: 0.5 }, -3)).toThrow('Z_SCORE_OUT_OF_RANGE')
    expect(() => boxCoxZ({ median: 5, power: 1, cv: 0.5 }, 0)).toThrow('VALUE_OUT_OF_RANGE')
  })

  it('scales every draw by the factor', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SPREADS),
        share,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (spread, u, factor) => {
          const expected = quantile(spread, u) * factor
          expect(quantile(scaled(spread, factor), u)).toBeCloseTo(expected, 6)
        },
      ),
      seeded(500),
    )
  })

  it('is cut by narrower limits and untouched by wider ones', () => {
    const spread: Spread = { kind: 'normal', mean: 16, sd: 3, min: 8, max: 24 }
    expect(limited(spread, { min: 0, max: 100 })).toEqual(spread)
    expect(limitsOf(limited(spread, { min: 10, max: 100 }))).toEqual({ min: 10, max: 24 })
    expect(limited(fixed(5), { min: 0, max: 9 })).toEqual(fixed(5))
    expect(() => limited(fixed(5), { min: 6, max: 9 })).toThrow('SPREAD_EMPTY')
    expect(() => limited(spread, { min: 30, max: 40 })).toThrow('SPREAD_EMPTY')
    const peak: Spread = { kind: 'triangular', mode: 2, min: 1, max: 5 }
    expect(limitsOf(limited(peak, { min: 1.5, max: 3 }))).toEqual({ min: 1.5, max: 3 })
    expect(() => limited(peak, { min: 3, max: 4 })).toThrow('SPREAD_EMPTY')
  })

  it('refuses empty and reversed spreads and a u outside the open interval', () => {
    expect(() => quantile({ kind: 'normal', mean: 0, sd: 1, min: 1, max: 1 }, 0.5)).toThrow(
      DomainError,
    )
    expect(() => quantile({ kind: 'normal', mean: 0, sd: 0, min: -1, max: 1 }, 0.5)).not.toThrow()
    expect(() => quantile({ kind: 'lognormal', median: 1, logSd: 1, min: 3, max: 2 }, 0.5)).toThrow(
      DomainError,
    )
    expect(() => quantile({ kind: 'triangular', mode: 1, min: 2, max: 1 }, 0.5)).toThrow(
      DomainError,
    )
    expect(() => quantile({ kind: 'uniform', min: 0, max: 1 }, 0)).toThrow(DomainError)
    expect(() => quantile(fixed(1), Number.NaN)).toThrow(DomainError)
    expect(() => scaled(fixed(1), -1)).toThrow(DomainError)
  })
})
