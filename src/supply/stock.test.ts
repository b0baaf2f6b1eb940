// Stock: days left and the reorder point against the exact sum of random counts. Leaves out prices.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { stockAnswer, stockAnswers, type StockItem } from './stock.ts'

function item(rest: Partial<StockItem> = {}): StockItem {
  const plain = { onHand: 40, usedEachDay: [4, 4, 4, 4], leadTimeDays: 5 }
  return { id: 'cannula', label: 'Cannula', ...plain, ...rest }
}

/** Chance that random counts with this mean stay at or below a number. */
function poissonShare(mean: number, most: number): number {
  let term = Math.exp(-mean)
  let sum = term
  for (let k = 1; k <= most; k++) {
    term *= mean / k
    sum += term
  }
  return sum
}

describe('stock', () => {
  it('lasts as many days as it holds days of use', () => {
    expect(stockAnswer(item())).toMatchObject({ usePerDay: 4, daysLeft: 10, mustOrder: false })
    expect(stockAnswer(item({ usedEachDay: [0, 0] })).daysLeft).toBeNull()
  })

  it('orders at a stock that covers the lead time in the share of cycles asked for, within 2 %', () => {
    for (const serviceLevel of [0.9, 0.95, 0.99]) {
      const { reorderPoint } = stockAnswer(item({ serviceLevel }))
      // Four a day for five days: twenty on average, falling at random.
      expect(poissonShare(20, reorderPoint)).toBeGreaterThan(serviceLevel - 0.02)
      expect(poissonShare(20, reorderPoint - 2)).toBeLessThan(serviceLevel)
    }
  })

  it('orders earlier for a longer lead time, a higher level or more uneven use', () => {
    const point = (rest: Partial<StockItem>): number => stockAnswer(item(rest)).reorderPoint
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (leadTimeDays) => {
        expect(point({ leadTimeDays: leadTimeDays + 1 })).toBeGreaterThan(point({ leadTimeDays }))
      }),
      seeded(20),
    )
    expect(point({ serviceLevel: 0.99 })).toBeGreaterThan(point({ serviceLevel: 0.9 }))
    expect(point({ usedEachDay: [0, 16, 0, 0] })).toBeGreaterThan(point({}))
  })

  it('says to order, to borrow, and which comes first', () => {
    const codes = (rest: Partial<StockItem>) =>
      stockAnswer(item(rest)).remarks.map(({ code }) => code)
    expect(codes({ onHand: 22 })).toContain('REORDER_NOW')
    expect(codes({ onHand: 8 })).toContain('OUT_BEFORE_DELIVERY')
    const sorted = stockAnswers([
      item(),
      item({ id: 'b', onHand: 3 }),
      item({ id: 'c', usedEachDay: [0] }),
    ])
    expect(sorted.map((one) => one.item.id)).toEqual(['b', 'cannula', 'c'])
    expect(() => stockAnswer(item({ onHand: -1 }))).toThrow(DomainError)
  })
})
