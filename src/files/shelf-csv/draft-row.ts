// A row of a CSV file before it is judged: which row of the shelf it speaks of, and its cells under their headings. Leaves out whether they are good.
import type { Shelf } from '../../kit/shelf.ts'
import { unguarded } from './cell-text.ts'
import type { CsvRecord } from './csv-records.ts'
import { plain } from './head-row.ts'
import type { Head } from './head-row.ts'
import { SHELF_CSV_HEADINGS, SHELF_CSV_LISTS } from './headings.ts'
import type { ShelfCsvColumn, ShelfList } from './headings.ts'
import { cellsOf } from './row-cells.ts'
import type { Cells } from './row-cells.ts'
import { judgeCells } from './judge-row.ts'
import type { Draft } from './read-drafts.ts'
import { idOf, shelfRows } from './shelf-reading.ts'
import type { CellProblem } from './shelf-reading.ts'

export function draftOf(options: {
  readonly record: CsvRecord
  readonly head: Head
  readonly shelf: Shelf
}): Draft {
  const { record, head, shelf } = options
  const { line, cells: raw } = record
  if (record.isBroken || head.isUnusable) {
    const value = raw.join(' ')
    const problem = { code: 'UNREADABLE_TEXT', path: ROW, column: '', value } as const
    return { line, raw, list: null, id: null, base: undefined, problems: [problem], judge: noRow }
  }
  const { cells, problems } = typedCells(raw, head)
  const list = listIn(cells.get('list'))
  const id = list === 'hospital' ? null : (cells.get('id') ?? null)
  const base = list === null ? undefined : shelfRows(shelf, list).find((row) => idOf(row) === id)
  const kept = list === null || base === undefined ? cells : withKept(list, base, cells, head)
  const own = [...problems, ...(list === null ? [noList(cells.get('list'))] : [])]
  const alike = list === null || base !== undefined ? undefined : alikeId(shelf, list, id)
  if (alike !== undefined) own.push(notQuite(id, alike))
  // What else is wrong with a row under a wrong id is not known.
  const judge =
    list === null || alike !== undefined
      ? noRow
      : (wards: Shelf['wards']) => judgeCells(list, kept, wards)
  return { line, raw, list, id, base, problems: own, judge }
}

const ROW = 'row'

function noRow() {
  return { row: null, problems: [] }
}

/** The filled cells under known headings, and what is wrong with those that are under none. */
function typedCells(raw: readonly string[], head: Head) {
  const cells = new Map<ShelfCsvColumn, string>()
  const problems: CellProblem[] = []
  raw.forEach((written, i) => {
    if (written.trim() === '' || head.passedOver.has(i)) return
    const column = head.columns[i]
    const value = unguarded(written)
    if (value.includes(LOST_LETTER)) problems.push(lostLetters(head.headings[i] ?? '', value))
    if (column !== undefined) cells.set(column, value)
    else {
      const heading = head.headings[i] ?? ''
      const path = heading === '' ? ROW : heading
      problems.push({ code: 'CELL_NOT_FOR_ROW', path, column: heading, value })
    }
  })
  return { cells, problems }
}

/** Stands where bytes of a file were no UTF-8, as spreadsheet programs of some countries still save them. */
const LOST_LETTER = '\u{FFFD}'

function lostLetters(heading: string, value: string): CellProblem {
  return { code: 'LETTERS_LOST', path: heading, column: heading, value }
}

/** What the shelf has under headings that the file does not have. */
function withKept(list: ShelfList, base: object, cells: Cells, head: Head): Cells {
  const kept = [...cellsOf(list, base)].filter(([column]) => !head.columns.includes(column))
  return new Map([...kept, ...cells])
}

function listIn(text: string | undefined): ShelfList | null {
  if (text === undefined) return null
  const typed = plain(text)
  // Safe: the keys of the table are the lists.
  const lists = Object.keys(SHELF_CSV_LISTS) as readonly ShelfList[]
  return lists.find((list) => plain(SHELF_CSV_LISTS[list]) === typed) ?? null
}

function noList(text: string | undefined): CellProblem {
  const code = text === undefined ? 'MISSING_FIELD' : 'UNKNOWN_CHOICE'
  const limit = { oneOf: Object.values(SHELF_CSV_LISTS) }
  const path = SHELF_CSV_HEADINGS.list
  return { code, path, column: path, value: text ?? null, limit }
}

/** A row on the shelf whose id differs only in capitals, blanks or signs, as programs and people change them. */
function alikeId(shelf: Shelf, list: ShelfList, id: string | null): string | undefined {
  if (id === null || plain(id) === '') return undefined
  const ids = shelfRows(shelf, list).map((row) => idOf(row) ?? '')
  return ids.find((known) => plain(known) === plain(id))
}

function notQuite(id: string | null, suggestion: string): CellProblem {
  const path = SHELF_CSV_HEADINGS.id
  return { code: 'UNKNOWN_ID', path, column: path, value: id, suggestion }
}
