// Rows of a file before they are judged, and the judging of all of them against the shelf in use: wards first, as places are wards. Leaves out how a file is taken apart into rows.
import type { Shelf, Ward } from '../../kit/shelf.ts'
import { SHELF_CSV_HEADINGS } from './headings.ts'
import type { ShelfList } from './headings.ts'
import { cellsOf, changesBetween } from './row-cells.ts'
import type { CellProblem, ShelfRowReading } from './shelf-reading.ts'

export interface Draft {
  readonly line: number
  readonly raw: readonly string[]
  readonly list: ShelfList | null
  readonly id: string | null
  /** The row on the shelf that it speaks of. */
  readonly base: object | undefined
  readonly problems: readonly CellProblem[]
  readonly judge: (wards: readonly Ward[]) => Judged
}

export interface Judged {
  /** Null where anything is wrong. */
  readonly row: object | null
  readonly problems: readonly CellProblem[]
}

/** Every draft with its outcome, in the order of the file. */
export function readDrafts(drafts: readonly Draft[], shelf: Shelf): readonly ShelfRowReading[] {
  const clashing = withClashes(drafts)
  const places = clashing
    .filter(({ list }) => isHead(list))
    .map((draft) => rowReading(draft, shelf.wards))
  const wards = wardsWith(shelf, places)
  const rest = clashing.filter(({ list }) => !isHead(list)).map((draft) => rowReading(draft, wards))
  return [...places, ...rest].toSorted((a, b) => a.line - b.line)
}

/** Rows that others need. */
function isHead(list: ShelfList | null): boolean {
  return list === 'hospital' || list === 'wards'
}

/** Two rows of one id: neither is known to be the right one. */
function withClashes(drafts: readonly Draft[]): readonly Draft[] {
  const counts = new Map<string, number>()
  for (const draft of drafts) counts.set(keyOf(draft), (counts.get(keyOf(draft)) ?? 0) + 1)
  return drafts.map((draft) => {
    const isNamed = draft.list === 'hospital' || (draft.list !== null && draft.id !== null)
    if (!isNamed || (counts.get(keyOf(draft)) ?? 0) < 2) return draft
    const path = draft.list === 'hospital' ? SHELF_CSV_HEADINGS.list : SHELF_CSV_HEADINGS.id
    const value = draft.id ?? draft.list
    const problem = { code: 'DUPLICATE_ID', path, column: path, value } as const
    return { ...draft, problems: [...draft.problems, problem] }
  })
}

function keyOf({ list, id }: Draft): string {
  return JSON.stringify([list, id])
}

function rowReading(draft: Draft, wards: readonly Ward[]): ShelfRowReading {
  const { line, raw, list, id, base } = draft
  const own = draft.judge(wards)
  const problems = [...draft.problems, ...own.problems]
  const named = { line, list, id, cells: raw, problems }
  if (list === null || own.row === null || problems.length > 0)
    return { ...named, outcome: 'refused', changes: [], row: null }
  if (base === undefined) return { ...named, outcome: 'added', changes: [], row: own.row }
  const changes = changesBetween(cellsOf(list, base), cellsOf(list, own.row))
  return changes.length === 0
    ? { ...named, outcome: 'same', changes, row: base }
    : { ...named, outcome: 'changed', changes, row: own.row }
}

/** The wards of the shelf with those that the file brings. */
function wardsWith(shelf: Shelf, rows: readonly ShelfRowReading[]): readonly Ward[] {
  const read = rows
    .filter(({ list, row }) => list === 'wards' && row !== null)
    // Safe: accepted rows of the list of wards were read as wards.
    .map(({ row }) => row as unknown as Ward)
  return [...shelf.wards.filter(({ id }) => !read.some((ward) => ward.id === id)), ...read]
}
