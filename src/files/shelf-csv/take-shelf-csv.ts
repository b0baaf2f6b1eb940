// Puts the accepted rows of a file on the shelf. Rows that the file does not have stay. Leaves out judging rows.
import { readShelf } from '../../kit/read-shelf.ts'
import type { ReadShelf } from '../../kit/read-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { SHELF_CSV_LISTS } from './headings.ts'
import type { ShelfList } from './headings.ts'
import { idOf, shelfRows } from './shelf-reading.ts'
import type { ShelfReading } from './shelf-reading.ts'

/** The shelf with every row that was not refused, read once more as a whole. */
export function takeShelfCsv(shelf: Shelf, reading: ShelfReading): ReadShelf {
  // Safe: the keys of the table are the lists.
  const lists = Object.keys(SHELF_CSV_LISTS) as readonly ShelfList[]
  const fields = lists.map((list) => [list, listWith(shelf, reading, list)] as const)
  const { hospital, ...rest } = Object.fromEntries(fields)
  const filled = Object.entries(rest).filter(
    ([list, rows]) => list in shelf || (rows !== undefined && rows.length > 0),
  )
  return readShelf({ version: shelf.version, ...hospital?.[0], ...Object.fromEntries(filled) })
}

/** Changed rows where they were, new ones at the end. */
function listWith(shelf: Shelf, reading: ShelfReading, list: ShelfList): readonly object[] {
  const rows = new Map(shelfRows(shelf, list).map((row) => [idOf(row), row]))
  for (const taken of reading.rows)
    if (taken.list === list && taken.row !== null) rows.set(taken.id, taken.row)
  return [...rows.values()]
}
