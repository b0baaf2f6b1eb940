// The choice of cylinders against every load there is, and what is left out with its reason. Leaves out contents, which cylinder.test.ts judges.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { kpaFromBar } from '../units/pressure.ts'
import { chooseCylinders, type ChoiceQuestion } from './choose-cylinders.ts'
import { usableContents } from './cylinder.ts'
import type { StoreRow } from './store.ts'

const USE = { barometricKpa: 101.325, leftGaugeKpa: kpaFromBar(10), litresAtC: 15 }

function row(id: string, waterVolumeL: number, rest: Partial<StoreRow> = {}): StoreRow {
  const base = { gaugeKpa: kpaFromBar(137), count: 2, mrSafety: 'not', place: 'heron' } as const
  return { id, label: id, waterVolumeL, ...base, ...rest }
}

function choose(store: readonly StoreRow[], neededL: number, rest: Partial<ChoiceQuestion> = {}) {
  const plain = { drawLpmMax: 10, use: USE, readAtC: 15, isMrConditionalOnly: false }
  return chooseCylinders({ store, neededL, ...plain, ...rest })
}

describe('choice of cylinders', () => {
  it('takes one that suffices before two, and the one that leaves least over', () => {
    const { picks, changes } = choose([row('small', 2), row('middle', 5), row('large', 10)], 500)
    expect(picks.map((one) => one.row.id)).toEqual(['middle'])
    expect(changes).toBe(0)
  })

  it('is the best of all loads that there are', () => {
    const kind = fc.record({
      waterVolumeL: fc.double({ min: 1, max: 12, noNaN: true }),
      count: fc.integer({ min: 0, max: 3 }),
    })
    fc.assert(
      fc.property(
        fc.array(kind, { minLength: 1, maxLength: 4 }),
        fc.double({ min: 1, max: 3500, noNaN: true }),
        (kinds, neededL) => {
          const store = kinds.map((one, i) => row(`k${i}`, one.waterVolumeL, { count: one.count }))
          const answer = choose(store, neededL)
          const usable = store.map((one) => usableL(one))
          const loads = everyLoad(store.map(({ count }) => count)).map((counts) => ({
            count: counts.reduce((a, b) => a + b, 0),
            litres: counts.reduce((sum, n, i) => sum + n * (usable[i] ?? 0), 0),
          }))
          const best = bestOf(loads, neededL)
          expect(answer.cylinders).toBe(best.count)
          expect(answer.missingL).toBeCloseTo(best.missingL, 6)
          // Beyond six cylinders only their number is the least there is.
          expect(best.count > 6 ? best.litres : answer.usableL).toBeCloseTo(best.litres, 6)
        },
      ),
      seeded(60),
    )
  })

  it('lets nothing but MR-conditional cylinders go to a scanner, and takes unknown for not', () => {
    const store = [
      row('steel', 10),
      row('unmarked', 10, { mrSafety: 'unknown' }),
      row('light', 2, { mrSafety: 'conditional' }),
    ]
    const answer = choose(store, 100, { isMrConditionalOnly: true })
    expect(answer.picks.map((one) => one.row.id)).toEqual(['light'])
    expect(answer.notUsed.map(({ reason }) => reason.code)).toEqual([
      'NOT_MR_CONDITIONAL',
      'MR_SAFETY_UNKNOWN',
    ])
  })

  it('says why a row is left out, and what the store lacks', () => {
    const store = [
      row('empty', 10, { gaugeKpa: kpaFromBar(8) }),
      row('none', 10, { count: 0 }),
      row('slow', 10, { flowLpmMax: 6 }),
      row('elsewhere', 10, { place: 'wren' }),
      row('one', 2, { count: 1 }),
    ]
    const answer = choose(store, 1000, { place: 'heron' })
    expect(answer.notUsed.map(({ reason }) => reason.code)).toEqual([
      'NOTHING_USABLE',
      'NONE_LEFT',
      'FLOW_ABOVE_REGULATOR',
      'OTHER_PLACE',
    ])
    expect(answer.missingL).toBeCloseTo(1000 - usableL(row('one', 2)), 6)
    expect(answer.remarks.map(({ code }) => code)).toEqual(['STORE_TOO_SMALL'])
  })

  it('counts a gauge that may read high as reading high', () => {
    const sure = choose([row('a', 10)], 10).usableL
    const doubted = choose([row('a', 10)], 10, { use: { ...USE, gaugeErrorKpa: 500 } }).usableL
    expect(doubted).toBeLessThan(sure)
  })
})

function usableL(one: StoreRow): number {
  const { waterVolumeL, gaugeKpa } = one
  return usableContents({ waterVolumeL, gaugeKpa, readAtC: 15, isValveOpen: true }, USE).usableL
}

function everyLoad(most: readonly number[]): readonly (readonly number[])[] {
  return most.reduce<readonly (readonly number[])[]>(
    (loads, count) =>
      loads.flatMap((load) => Array.from({ length: count + 1 }, (_, n) => [...load, n])),
    [[]],
  )
}

interface Load {
  readonly count: number
  readonly litres: number
}

/** Fewest, then least left over; all there is where nothing suffices. */
function bestOf(loads: readonly Load[], neededL: number): Load & { readonly missingL: number } {
  const enough = loads.filter(({ litres }) => litres >= neededL)
  const sorted =
    enough.length > 0
      ? enough.toSorted((a, b) => a.count - b.count || a.litres - b.litres)
      : loads.toSorted((a, b) => b.litres - a.litres || b.count - a.count)
  const [first = { count: 0, litres: 0 }] = sorted
  return { ...first, missingL: Math.max(0, neededL - first.litres) }
}
