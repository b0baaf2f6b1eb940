// Changes to a shelf: the row and nothing else changes, and what the reader refuses is refused here.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candidateSetUps } from './build-set-ups.ts'
import { DEMO_SHELF } from './demo-shelf/demo-shelf.ts'
import {
  ROW_LISTS,
  countOf,
  freeId,
  putRow,
  putWard,
  rowsIn,
  rowsOf,
  withCount,
  withoutRow,
  withoutWard,
} from './edit-shelf.ts'
import type { AnyRow, RowList } from './edit-shelf.ts'
import { readShelf } from './read-shelf.ts'

const EVERY_ROW = ROW_LISTS.flatMap((list) =>
  rowsOf(DEMO_SHELF, list).map((row): readonly [RowList, AnyRow] => [list, row]),
)

function counted(row: AnyRow, count: number): AnyRow {
  const size = 'sizes' in row ? row.sizes[0]?.size : undefined
  return withCount(row, { count, ...(size === undefined ? {} : { size }) })
}

describe('a changed shelf', () => {
  it('differs in the count of one row alone, and still reads as a shelf', () => {
    fc.assert(
      fc.property(fc.constantFrom(...EVERY_ROW), fc.nat(100_000), ([list, row], count) => {
        const put = putRow(DEMO_SHELF, list, counted(row, count))
        if (!put.ok) throw new Error('refused')
        expect(readShelf(put.shelf).ok).toBe(true)
        for (const [of, other] of EVERY_ROW) {
          const now = rowsOf(put.shelf, of).find(({ id }) => id === other.id)
          expect(now).toEqual(other.id === row.id && of === list ? counted(row, count) : other)
        }
      }),
      { numRuns: 25 },
    )
  })

  it('is refused for a count that is none, with the place in the row', () => {
    for (const [list, row] of EVERY_ROW) {
      for (const count of [-1, 1.5, 100_001, Number.NaN]) {
        const put = putRow(DEMO_SHELF, list, counted(row, count))
        if (put.ok) throw new Error(`accepted ${count}`)
        expect(put.problems.map(({ path }) => path)).toEqual([
          'sizes' in row ? 'sizes[0].count' : 'count',
        ])
      }
    }
  })

  it('offers no set-up of what is counted out, and the others still', () => {
    const row = rowsOf(DEMO_SHELF, 'interfaces').find(({ id }) => id === 'simple-mask')
    if (row === undefined) throw new Error('no simple mask')
    const put = putRow(DEMO_SHELF, 'interfaces', withCount(row, { size: 'adult', count: 0 }))
    if (!put.ok) throw new Error('refused')
    const isGone = (id: string): boolean => id.startsWith('simple-mask/adult@')
    const before = candidateSetUps(DEMO_SHELF).map(({ id }) => id)
    expect(before.some(isGone)).toBe(true)
    expect(candidateSetUps(put.shelf).map(({ id }) => id)).toEqual(
      before.filter((id) => !isGone(id)),
    )
  })

  it('loses one row, or gains one at the end of its list', () => {
    for (const [list, row] of EVERY_ROW) {
      const without = withoutRow(DEMO_SHELF, list, row.id)
      expect(rowsOf(without, list).length).toBe(rowsOf(DEMO_SHELF, list).length - 1)
      const again = putRow(without, list, row)
      expect(again.ok && rowsOf(again.shelf, list).at(-1)).toEqual(row)
    }
  })

  it('keeps a ward in which something lies, and lets an empty one go', () => {
    const [ward] = DEMO_SHELF.wards
    if (ward === undefined) throw new Error('no ward')
    expect(rowsIn(DEMO_SHELF, ward.id).length).toBeGreaterThan(0)
    expect(withoutWard(DEMO_SHELF, ward.id)).toBe(DEMO_SHELF)
    const more = putWard(DEMO_SHELF, { id: 'lark', name: 'Lark', beds: 4 })
    if (!more.ok) throw new Error('refused')
    expect(withoutWard(more.shelf, 'lark')).toEqual(DEMO_SHELF)
    const none = putWard(DEMO_SHELF, { id: 'lark', name: ' ', beds: -4 })
    expect(none.ok ? [] : none.problems.map(({ path }) => path)).toEqual(['name', 'beds'])
  })

  it('counts over all sizes, and names rows anew where a name is taken', () => {
    expect(
      countOf({
        id: 'a',
        label: 'A',
        place: 'b',
        family: 'simple-mask',
        sizes: [
          { size: 'child', count: 2 },
          { size: 'adult', count: 5 },
        ],
      }),
    ).toBe(7)
    expect(freeId('Maske, groß (A)', [])).toBe('maske-gro-a')
    expect(freeId('A', ['a', 'a-2'])).toBe('a-3')
    expect(freeId('…', [])).toBe('row')
  })
})
