// What reading a file of shelf rows gives: each row with its outcome, what is wrong with it, and what it changes. Leaves out reading.
import type { Problem } from '../../errors.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { ShelfList } from './headings.ts'
import type { CellChange } from './row-cells.ts'

/** A problem with the heading it stands under; empty where it is about the row as a whole. */
export interface CellProblem extends Problem {
  readonly column: string
}

export const ROW_OUTCOMES = ['added', 'changed', 'same', 'refused'] as const
export type RowOutcome = (typeof ROW_OUTCOMES)[number]

export interface ShelfRowReading {
  /** Row number as spreadsheet programs count, the heading being 1; in other files the number of the row. */
  readonly line: number
  /** Null where no list can be read. */
  readonly list: ShelfList | null
  /** Null where the row has none, as the hospital's own. */
  readonly id: string | null
  readonly outcome: RowOutcome
  readonly problems: readonly CellProblem[]
  /** The cells as they stand in the file. */
  readonly cells: readonly string[]
  /** Of a row that is on the shelf already: what it changes. */
  readonly changes: readonly CellChange[]
  /** The row as read, for taking it; null where it is refused. */
  readonly row: object | null
}

export interface ShelfReading {
  readonly headings: readonly string[]
  /** What is wrong with the file as a whole. */
  readonly headProblems: readonly CellProblem[]
  readonly rows: readonly ShelfRowReading[]
}

export type ShelfCsvReading = ShelfReading

export function rowsWith(reading: ShelfReading, outcome: RowOutcome): readonly ShelfRowReading[] {
  return reading.rows.filter((row) => row.outcome === outcome)
}

/** A shelf with nothing on it, for files that stand for themselves; the hospital's name comes with its row. */
export const EMPTY_SHELF: Shelf = {
  version: 1,
  hospital: '',
  wards: [],
  interfaces: [],
  sources: [],
  humidifiers: [],
}

/** The rows of a list as they are on the shelf; the hospital's own fields stand for one row. */
export function shelfRows(shelf: Shelf, list: ShelfList): readonly object[] {
  if (list !== 'hospital') return shelf[list] ?? []
  const { hospital, isInvented, altitudeM } = shelf
  return hospital === '' ? [] : [{ hospital, isInvented, altitudeM }]
}

export function idOf(row: object): string | null {
  return 'id' in row && typeof row.id === 'string' ? row.id : null
}
