// Writes the shelf as one CSV file that spreadsheet programs open: a row for each row of any list. Leaves out how cells are formed (cell-kinds.ts).
import Papa from 'papaparse'
import type { Shelf } from '../../kit/shelf.ts'
import { guarded } from './cell-text.ts'
import { SHELF_CSV_HEADINGS, SHELF_CSV_LISTS } from './headings.ts'
import type { ShelfCsvColumn, ShelfList } from './headings.ts'
import { cellsOf } from './row-cells.ts'
import { shelfRows } from './shelf-reading.ts'

/** By this mark spreadsheet programs know that letters beyond A–Z are UTF-8. */
const BYTE_ORDER_MARK = '\u{FEFF}'
const LINE_END = '\r\n'

/** Commas between cells, quotes where needed, points in numbers; `readShelfCsv` reads back the same shelf. */
export function writeShelfCsv(shelf: Shelf): string {
  // Safe: the keys of each table are its columns and lists.
  const columns = Object.keys(SHELF_CSV_HEADINGS) as readonly ShelfCsvColumn[]
  const lists = Object.keys(SHELF_CSV_LISTS) as readonly ShelfList[]
  const rows = lists.flatMap((list) => shelfRows(shelf, list).map((row) => cellsOf(list, row)))
  return csvText([
    columns.map((column) => SHELF_CSV_HEADINGS[column]),
    ...rows.map((cells) => columns.map((column) => guarded(cells.get(column) ?? ''))),
  ])
}

/** Rows of finished cells as a CSV file. */
export function csvText(rows: readonly (readonly string[])[]): string {
  const body = Papa.unparse(
    rows.map((row) => [...row]),
    { delimiter: ',', newline: LINE_END },
  )
  return `${BYTE_ORDER_MARK}${body}${LINE_END}`
}
