// Changes to a shelf, each giving a new one: a count, a row put in or taken out, a ward. Judged by the shelf reader alone. Leaves out who changes it and keeping it.
import type { Problem } from '../errors.ts'
import type { SizeId } from './family-id.ts'
import type { AirMeterRow, FittingRow, OutletRow, TubeRow } from './part-rows.ts'
import { readShelf } from './read-shelf.ts'
import type { HumidifierRow, InterfaceRow, Shelf, ShelfSource, Ward } from './shelf.ts'

/** The lists of a shelf whose rows can be held in the hand. */
export const ROW_LISTS = [
  'interfaces',
  'sources',
  'humidifiers',
  'tubes',
  'fittings',
  'outlets',
  'airMeters',
] as const
export type RowList = (typeof ROW_LISTS)[number]

export type AnyRow =
  | InterfaceRow
  | ShelfSource
  | HumidifierRow
  | OutletRow
  | AirMeterRow
  | TubeRow
  | FittingRow

export type Edited =
  | { readonly ok: true; readonly shelf: Shelf }
  | { readonly ok: false; readonly problems: readonly Problem[] }

export function rowsOf(shelf: Shelf, list: RowList): readonly AnyRow[] {
  return shelf[list] ?? []
}

/** How many there are of a row, over all its sizes. */
export function countOf(row: AnyRow): number {
  if (!('sizes' in row)) return row.count
  return row.sizes.reduce((sum, { count }) => sum + count, 0)
}

/** The row with another count, of one size where it has sizes. `count` whole, 0 or more; others are refused when read. */
export function withCount<Row extends AnyRow>(
  row: Row,
  { size, count }: { readonly size?: SizeId; readonly count: number },
): Row {
  if (!('sizes' in row)) return { ...row, count }
  const sizes = row.sizes.map((stock) => (stock.size === size ? { ...stock, count } : stock))
  return { ...row, sizes }
}

/** The shelf with this row: in place of the one with its id, else after the last. Problems have paths within the row. */
export function putRow(shelf: Shelf, list: RowList, row: object): Edited {
  const rows: readonly object[] = rowsOf(shelf, list)
  const place = rows.findIndex((one) => idOf(one) === idOf(row))
  const at = place < 0 ? rows.length : place
  return edited({ ...shelf, [list]: replacedAt(rows, at, row) }, `${list}[${at}]`)
}

export function withoutRow(shelf: Shelf, list: RowList, id: string): Shelf {
  return { ...shelf, [list]: rowsOf(shelf, list).filter((row) => row.id !== id) }
}

/** The shelf with this ward: in place of the one with its id, else after the last. */
export function putWard(shelf: Shelf, ward: object): Edited {
  const place = shelf.wards.findIndex(({ id }) => id === idOf(ward))
  const at = place < 0 ? shelf.wards.length : place
  return edited({ ...shelf, wards: replacedAt(shelf.wards, at, ward) }, `wards[${at}]`)
}

/** The shelf with what it says of the hospital itself: name, altitude, whether all is made up. What is left out is no longer said. */
export function withHospital(shelf: Shelf, about: object): Edited {
  const { hospital: _name, altitudeM: _altitude, isInvented: _isInvented, ...rest } = shelf
  return edited({ ...rest, ...about }, '')
}

/** Rows that lie in a ward; while there are any it cannot go. */
export function rowsIn(shelf: Shelf, wardId: string): readonly AnyRow[] {
  return ROW_LISTS.flatMap((list) => rowsOf(shelf, list)).filter(({ place }) => place === wardId)
}

/** The shelf without a ward that holds nothing; one that holds something stays. */
export function withoutWard(shelf: Shelf, wardId: string): Shelf {
  if (rowsIn(shelf, wardId).length > 0) return shelf
  return { ...shelf, wards: shelf.wards.filter(({ id }: Ward) => id !== wardId) }
}

/** A short name not yet in use, from letters and digits of a label. */
export function freeId(label: string, taken: readonly string[]): string {
  const plain = label
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  const stem = plain === '' ? 'row' : plain
  for (let n = 1; ; n += 1) {
    const id = n === 1 ? stem : `${stem}-${n}`
    if (!taken.includes(id)) return id
  }
}

function idOf(row: object): unknown {
  return 'id' in row ? row.id : undefined
}

function replacedAt(rows: readonly object[], place: number, row: object): readonly object[] {
  return place === rows.length ? [...rows, row] : rows.map((one, i) => (i === place ? row : one))
}

function edited(candidate: object, place: string): Edited {
  const read = readShelf(candidate)
  if (read.ok) return read
  const problems = read.problems.map((problem) => ({
    ...problem,
    path: problem.path.startsWith(`${place}.`)
      ? problem.path.slice(place.length + 1)
      : problem.path,
  }))
  return { ok: false, problems }
}
