// Normal distribution against a second implementation, and the two directions against each other.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  expectWithin,
  expectWithinRelative,
  numberIn,
  referenceRows,
} from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { normalProbability, normalQuantile } from './normal.ts'

const rows = referenceRows('normal-distribution/data.csv', ['kind', 'input', 'value'])

function compared(kind: string, ours: (x: number) => number) {
  return rows
    .filter((row) => row['kind'] === kind)
    .map((row) => ({
      label: `${kind} ${row['input']}`,
      ours: ours(numberIn(row, 'input')),
      theirs: numberIn(row, 'value'),
    }))
}

describe('normal distribution', () => {
  it('gives the probabilities of a second implementation', () => {
    const probabilities = compared('probability', normalProbability)
    expect(probabilities).toHaveLength(33)
    expectWithin(probabilities, 1e-14)
    // The far tail keeps its leading digits: the published continued fraction is good to about 1e-8 there.
    expectWithinRelative(probabilities, 1e-7)
  })

  it('gives the quantiles of a second implementation', () => {
    const quantiles = compared('quantile', normalQuantile)
    expect(quantiles).toHaveLength(29)
    expectWithinRelative(quantiles, 1e-13)
  })

  it('returns to the probability it started from', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }), (u) => {
        expect(normalProbability(normalQuantile(u))).toBeCloseTo(u, 13)
      }),
      seeded(500),
    )
  })

  it('refuses probabilities outside the open interval', () => {
    for (const u of [0, 1, -0.1, 1.1, Number.NaN]) {
      expect(() => normalQuantile(u)).toThrow(DomainError)
    }
  })
})
