// Reads a shelf file row by row against the shelf in use, with the same outcomes as a spreadsheet. Leaves out parsing of text and taking the rows.
import type { Problem } from '../../errors.ts'
import { readShelf } from '../../kit/read-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { rowProblemText } from '../../words/shelf-file-text.ts'
import { SHELF_CSV_LISTS } from './headings.ts'
import type { ShelfList } from './headings.ts'
import { judgeRow } from './judge-row.ts'
import { readDrafts } from './read-drafts.ts'
import type { Draft } from './read-drafts.ts'
import { idOf, rowsWith, shelfRows } from './shelf-reading.ts'
import type { CellProblem, ShelfReading } from './shelf-reading.ts'

const OWN_FIELDS = ['hospital', 'isInvented', 'altitudeM'] as const
// Safe: the keys of the table are the lists.
const LISTS = (Object.keys(SHELF_CSV_LISTS) as readonly ShelfList[]).filter(
  (list) => list !== 'hospital',
)

/** `input` is what the file holds. A file of another version is refused as a whole, row by row. */
export function readShelfJson(input: unknown, shelf: Shelf): ShelfReading {
  const fields = fieldsOf(input)
  const whole = wholeProblems(input, fields)
  const version = whole.filter(({ path }) => path === 'version' || path === '')
  const rows = entriesOf(fields).map(({ list, path, entry }, i) => ({
    line: i + 1,
    raw: [JSON.stringify(entry) ?? ''],
    list,
    id: list === 'hospital' ? null : idIn(entry),
    base: shelfRows(shelf, list).find((row) => idOf(row) === idIn(entry)),
    problems: version,
    judge: judgeOf({ list, path, entry }),
  }))
  return { headings: [], headProblems: whole, rows: readDrafts(rows, shelf) }
}

interface Entry {
  readonly list: ShelfList
  /** Where it stands in the file. */
  readonly path: string
  readonly entry: unknown
}

function fieldsOf(input: unknown): ReadonlyMap<string, unknown> {
  const isOpen = typeof input === 'object' && input !== null && !Array.isArray(input)
  return new Map<string, unknown>(isOpen ? Object.entries(input) : [])
}

function entriesOf(fields: ReadonlyMap<string, unknown>): readonly Entry[] {
  const own = OWN_FIELDS.filter((key) => fields.has(key)).map((key) => [key, fields.get(key)])
  const hospital = { list: 'hospital', path: '', entry: Object.fromEntries(own) } as const
  const listed = LISTS.flatMap((list) => {
    const rows = fields.get(list)
    return Array.isArray(rows)
      ? rows.map((entry: unknown, i) => ({ list, path: `${list}[${i}]`, entry }))
      : []
  })
  return own.length === 0 ? listed : [hospital, ...listed]
}

function idIn(entry: unknown): string | null {
  return typeof entry === 'object' && entry !== null ? idOf(entry) : null
}

function judgeOf({ list, path, entry }: Entry): Draft['judge'] {
  return (wards) => {
    const { row, problems } = judgeRow({ list, row: entry, wards })
    return { row, problems: problems.map((problem) => inFile(problem, list, path)) }
  }
}

function inFile(problem: Problem, list: ShelfList, path: string): CellProblem {
  const within = problem.path.replace(`${list}[0]`, '')
  return { ...problem, path: `${path}${within}`, column: within.replace(/^\./, '') }
}

/** What is wrong with the file around its rows; a list that is not there says nothing. */
function wholeProblems(
  input: unknown,
  fields: ReadonlyMap<string, unknown>,
): readonly CellProblem[] {
  const emptied = [...fields].map(([key, value]) => [
    key,
    LISTS.some((list) => list === key) && Array.isArray(value) ? [] : value,
  ])
  const read = readShelf(fields.size === 0 ? input : Object.fromEntries(emptied))
  const isOfRow = ({ path, code }: Problem): boolean =>
    OWN_FIELDS.some((key) => key === path) ||
    (code === 'MISSING_FIELD' && LISTS.some((list) => list === path))
  const problems = read.ok ? [] : read.problems
  return problems.filter((one) => !isOfRow(one)).map((one) => ({ ...one, column: one.path }))
}

/** The refused rows as they stand in the file, each with its reasons. */
export function refusedJson(reading: ShelfReading): string {
  const rows = rowsWith(reading, 'refused').map(({ list, problems, cells }) => ({
    list,
    reasons: problems.map(rowProblemText),
    row: JSON.parse(cells[0] ?? 'null') as unknown,
  }))
  return `${JSON.stringify(rows, null, 2)}\n`
}
