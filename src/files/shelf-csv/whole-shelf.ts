// A spreadsheet that stands for a whole shelf: every row of it can be taken, or none is. Leaves out taking single rows (take-shelf-csv.ts).
import type { Problem } from '../../errors.ts'
import type { ReadShelf } from '../../kit/read-shelf.ts'
import { csvRows } from './csv-records.ts'
import { headOf } from './head-row.ts'
import { readShelfCsv } from './read-shelf-csv.ts'
import { EMPTY_SHELF, rowsWith } from './shelf-reading.ts'
import type { CellProblem, ShelfRowReading } from './shelf-reading.ts'
import { takeShelfCsv } from './take-shelf-csv.ts'

/** By its name, or where it has none by its first row. */
export function isShelfCsv(name: string, text: string): boolean {
  if (/\.csv$/i.test(name)) return true
  if (/\.(?:json|ya?ml)$/i.test(name) || /^\s*[[{]/.test(text)) return false
  const isHeading = (cell: string): boolean => headOf([cell]).columns[0] !== undefined
  return !headOf(csvRows(text, isHeading).heading.cells).isUnusable
}

/** Every problem at once, each with the number of its row. */
export function wholeShelf(text: string): ReadShelf {
  const reading = readShelfCsv(text, EMPTY_SHELF)
  const problems = [
    ...reading.headProblems,
    ...rowsWith(reading, 'refused').flatMap((row) => row.problems.map((one) => inRow(one, row))),
  ]
  return problems.length > 0 ? { ok: false, problems } : takeShelfCsv(EMPTY_SHELF, reading)
}

function inRow(problem: CellProblem, { line }: ShelfRowReading): Problem {
  return { ...problem, path: `[${line}] ${problem.path}` }
}
