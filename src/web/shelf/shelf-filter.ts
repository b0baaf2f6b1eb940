// Which rows of the shelf are in sight for a search, a ward, a list. Leaves out showing them.
import type { AnyRow, RowList } from '../../kit/edit-shelf.ts'
import { ROW_LISTS, countOf, rowsOf } from '../../kit/edit-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { isAtHand } from '../../kit/shelf.ts'
import { translated } from '../../words/say.ts'
import { choiceName, placeName } from './choice-names.ts'

export interface ShelfFilter {
  readonly text: string
  /** A ward's id; empty for any place. */
  readonly wardId: string
  /** Empty for every list. */
  readonly list: RowList | ''
  readonly isOutOnly: boolean
}

export const NO_FILTER: ShelfFilter = { text: '', wardId: '', list: '', isOutOnly: false }

export interface ShownList {
  readonly list: RowList
  readonly rows: readonly AnyRow[]
  readonly all: number
}

/** Lists with anything to show, in the order of the shelf. */
export function shownLists(shelf: Shelf, filter: ShelfFilter): readonly ShownList[] {
  return ROW_LISTS.filter((list) => filter.list === '' || filter.list === list).flatMap((list) => {
    const all = rowsOf(shelf, list)
    const rows = all.filter((row) => isShown(shelf, row, filter))
    return rows.length === 0 ? [] : [{ list, rows, all: all.length }]
  })
}

function isShown(shelf: Shelf, row: AnyRow, filter: ShelfFilter): boolean {
  if (filter.isOutOnly && !hasRunOut(row)) return false
  if (filter.wardId !== '' && !isAtHand(row, filter.wardId)) return false
  const said = plain(wordsOf(shelf, row))
  return plain(filter.text)
    .split(/\s+/)
    .every((word) => said.includes(word))
}

/** A row with sizes has run out as soon as one size has. */
export function hasRunOut(row: AnyRow): boolean {
  return 'sizes' in row ? row.sizes.some(({ count }) => count === 0) : countOf(row) === 0
}

/** All by which a row may be looked for. */
function wordsOf(shelf: Shelf, row: AnyRow): string {
  const kind = 'family' in row ? choiceName('family', row.family) : kindName(row)
  const sizes = 'sizes' in row ? row.sizes.map(({ size }) => choiceName('sizes[].size', size)) : []
  const gas = 'gas' in row ? choiceName('gas', row.gas) : ''
  const names = [row.label, translated(row.label)]
  return [...names, row.wardMarking ?? '', kind, gas, placeName(shelf, row.place), ...sizes].join(
    ' ',
  )
}

/** What a row is, in the words of the list it stands in. */
export function kindName(row: AnyRow): string {
  return 'kind' in row ? choiceName('kind', row.kind) : ''
}

function plain(text: string): string {
  return text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase().trim()
}
