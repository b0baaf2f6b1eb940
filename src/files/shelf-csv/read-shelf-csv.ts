// Reads the shelf as a spreadsheet, row by row against the shelf in use: added, changed, same or refused, and why. Leaves out taking the rows.
import type { Shelf } from '../../kit/shelf.ts'
import { csvRows } from './csv-records.ts'
import { draftOf } from './draft-row.ts'
import { headOf } from './head-row.ts'
import { readDrafts } from './read-drafts.ts'
import type { ShelfCsvReading } from './shelf-reading.ts'

/**
 * Every row with an outcome; nothing is thrown, dropped or guessed. A column that the file does not have leaves what the
 * shelf has; an empty cell takes it away. Rows that the file does not have stay on the shelf; a count of 0 says that
 * there are none.
 */
export function readShelfCsv(text: string, shelf: Shelf): ShelfCsvReading {
  const { heading, records } = csvRows(text, (cell) => headOf([cell]).columns[0] !== undefined)
  const head = headOf(heading.cells)
  const drafts = records.map((record) => draftOf({ record, head, shelf }))
  return {
    headings: heading.cells,
    headProblems: head.problems,
    rows: readDrafts(drafts, shelf),
  }
}
