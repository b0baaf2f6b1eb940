// Judges one row by the reader of shelves, on a shelf that holds nothing but the row: so there is one book of rules for files of every kind. Leaves out rows that clash with each other.
import type { Problem } from '../../errors.ts'
import { readShelf } from '../../kit/read-shelf.ts'
import { SHELF_VERSION } from '../../kit/shelf.ts'
import type { Shelf, Ward } from '../../kit/shelf.ts'
import { inThousands, isAmbiguous } from './cell-text.ts'
import type { Column } from './columns.ts'
import { CELL_FORMS, SHELF_CSV_HEADINGS } from './headings.ts'
import type { ShelfCsvColumn, ShelfList } from './headings.ts'
import type { Judged } from './read-drafts.ts'
import { unreadRow } from './row-cells.ts'
import type { Cells } from './row-cells.ts'
import { shelfRows } from './shelf-reading.ts'
import type { CellProblem } from './shelf-reading.ts'

/** Any text: the hospital of a shelf that holds one row to be judged. */
const SOME_HOSPITAL = '-'

/** Judges an unread row of the list; `wards` are the places it may lie in. */
export function judgeRow(options: {
  readonly list: ShelfList
  readonly row: unknown
  readonly wards: readonly Ward[]
}): { readonly row: object | null; readonly problems: readonly Problem[] } {
  const { list, row, wards } = options
  const shelf = {
    version: SHELF_VERSION,
    hospital: SOME_HOSPITAL,
    wards: list === 'wards' ? [] : wards,
    interfaces: [],
    sources: [],
    humidifiers: [],
  }
  const own = list === 'hospital' ? { hospital: undefined, ...asFields(row) } : { [list]: [row] }
  const read = readShelf({ ...shelf, ...own })
  if (!read.ok) return { row: null, problems: read.problems }
  return { row: rowOf(read.shelf, list), problems: [] }
}

function asFields(row: unknown): object {
  return typeof row === 'object' && row !== null ? row : {}
}

function rowOf(shelf: Shelf, list: ShelfList): object | null {
  return shelfRows(shelf, list)[0] ?? null
}

/** Judges the cells of a row; each problem comes back under its heading. */
export function judgeCells(list: ShelfList, cells: Cells, wards: readonly Ward[]): Judged {
  const { row: unread, columns, unused } = unreadRow(list, cells)
  const { row, problems } = judgeRow({ list, row: unread, wards })
  const told = [
    ...unused.map((column) => notForRow(column, cells.get(column) ?? '', columns)),
    ...problems.map((problem) => underHeading({ list, problem, columns })),
  ]
  return { row: told.length === 0 ? row : null, problems: told }
}

function notForRow(column: ShelfCsvColumn, value: string, columns: readonly Column[]): CellProblem {
  const heading = SHELF_CSV_HEADINGS[column]
  return {
    code: 'CELL_NOT_FOR_ROW',
    path: heading,
    column: heading,
    value,
    limit: { oneOf: columns.map((one) => SHELF_CSV_HEADINGS[one.column]) },
  }
}

function underHeading(options: {
  readonly list: ShelfList
  readonly problem: Problem
  readonly columns: readonly Column[]
}): CellProblem {
  const { list, problem, columns } = options
  const field = problem.path.replace(`${list}[0].`, '')
  const found = columnOf(field, columns)
  const heading = found === undefined ? '' : SHELF_CSV_HEADINGS[found.column]
  const told = found === undefined ? problem : inCellTerms(problem, found)
  return {
    ...told,
    path: heading === '' ? field : heading.replace(/ \(.*\)$/, ''),
    column: heading,
  }
}

/** The column of the field or of what it lies in; else the first of those that lie in it. */
function columnOf(field: string, columns: readonly Column[]): Column | undefined {
  const bare = field.replaceAll(/\[\d+\]/g, '')
  return (
    columns.find((one) => bare === one.field || bare.startsWith(`${one.field}.`)) ??
    columns.find((one) => one.field.startsWith(`${bare}.`))
  )
}

/** What is allowed, as it is typed into a cell. */
function inCellTerms(problem: Problem, { cell }: Column): Problem {
  const { code, value } = problem
  if (code === 'NOT_A_BOOLEAN')
    return { ...problem, code: 'UNKNOWN_CHOICE', limit: { oneOf: ['yes', 'no'] } }
  if (code === 'NOT_AN_OBJECT' || code === 'NOT_A_LIST')
    return { ...problem, code: 'CELL_UNREADABLE', limit: { oneOf: [CELL_FORMS[cell.form]] } }
  const { bounds } = cell
  if (code !== 'NOT_A_NUMBER' || typeof value !== 'string' || bounds === undefined) return problem
  if (!isAmbiguous(value, bounds)) return problem
  const { limit: _, unit: __, ...rest } = problem
  const whole = String(inThousands(value))
  const oneOf = cell.isWhole === true ? [whole] : [whole, `${value.replace(',', '.')}0`]
  return { ...rest, code: 'NUMBER_AMBIGUOUS', limit: { oneOf } }
}
