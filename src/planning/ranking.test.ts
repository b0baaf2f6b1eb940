// Order and equality on made-up worths. Leaves out real plans, which test/plan.test.ts makes.
import { describe, expect, it } from 'vitest'
import { countsAsEqual, placeByWorth, type Scored } from './ranking.ts'

function scored(id: string, worth: (i: number) => number, burden: readonly number[] = [0]): Scored {
  return {
    id,
    worth: Float64Array.from({ length: 512 }, (_, i) => worth(i)),
    breathOf: Int32Array.from({ length: 512 }, (_, i) => i),
    burden,
  }
}

describe('ranking', () => {
  it('puts the greater mean worth first', () => {
    const placed = placeByWorth([scored('poor', () => 0.2), scored('good', () => 0.9)])
    expect(placed.map((one) => one.id)).toEqual(['good', 'poor'])
    expect(placed.map((one) => one.rank)).toEqual([1, 2])
  })

  it('says equal where the paired difference is within two standard errors, and orders by burden', () => {
    const noisy = (i: number): number => (i % 2 === 0 ? 1 : -1)
    const other = (i: number): number => (i % 2 === 0 ? -1 : 1.1)
    const placed = placeByWorth([scored('heavy', noisy, [3]), scored('light', other, [1])])
    expect(placed.map((one) => [one.id, one.rank, one.equalGroup])).toEqual([
      ['light', 1, 1],
      ['heavy', 1, 1],
    ])
  })

  it('tells a small but certain paired difference apart once it exceeds half a display step', () => {
    const base = (i: number): number => Math.sin(i)
    expect(
      countsAsEqual(
        scored('a', (i) => base(i) + 0.05),
        scored('b', base),
      ),
    ).toBe(false)
    expect(
      countsAsEqual(
        scored('a', (i) => base(i) + 0.01),
        scored('b', base),
      ),
    ).toBe(true)
  })

  it('counts draws that share a breath as one when it judges a difference', () => {
    const worth = (i: number): number => (Math.floor(i / 64) % 2 === 0 ? 1 : -0.9)
    const apart = scored('apart', worth)
    const together = { ...apart, breathOf: apart.breathOf.map((i) => Math.floor(i / 64)) }
    const none = scored('none', () => -0.1)
    expect(countsAsEqual(apart, none)).toBe(false)
    expect(countsAsEqual(together, none)).toBe(true)
  })

  it('keeps every set-up exactly once', () => {
    const many = Array.from({ length: 50 }, (_, k) =>
      scored(`s${k}`, (i) => Math.sin(i * (k + 1)) + k / 100),
    )
    expect(new Set(placeByWorth(many).map((one) => one.id)).size).toBe(50)
  })
})
