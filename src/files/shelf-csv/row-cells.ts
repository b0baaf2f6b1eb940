// A row of the shelf as cells under headings, and cells as an unread row of a shelf file. Leaves out whether the row is good.
import { columnsOf } from './columns.ts'
import type { Column } from './columns.ts'
import { SHELF_CSV_HEADINGS, SHELF_CSV_LISTS } from './headings.ts'
import type { ShelfCsvColumn, ShelfList } from './headings.ts'

/** Cells that are not empty, without marks against formulas. */
export type Cells = ReadonlyMap<ShelfCsvColumn, string>

/** `row` is a row of the list, or the hospital's own fields. */
export function cellsOf(list: ShelfList, row: object): Cells {
  const cells = new Map<ShelfCsvColumn, string>([['list', SHELF_CSV_LISTS[list]]])
  for (const { column, field, cell } of columnsOf(list, textAt(row, 'kind'))) {
    const value = valueAt(row, field)
    if (value !== undefined && value !== null) cells.set(column, cell.write(value))
  }
  return cells
}

function valueAt(row: object, field: string): unknown {
  return field
    .split('.')
    .reduce<unknown>(
      (value, key) =>
        typeof value === 'object' && value !== null
          ? new Map<string, unknown>(Object.entries(value)).get(key)
          : undefined,
      row,
    )
}

function textAt(row: object, field: string): string | undefined {
  const value = valueAt(row, field)
  return typeof value === 'string' ? value : undefined
}

/** The row as a shelf file would hold it, unread, and the filled cells that such a row does not have. */
export function unreadRow(list: ShelfList, cells: Cells): UnreadRow {
  const columns = columnsOf(list, cells.get('kind')?.trim())
  const row = {}
  const unused = new Map(cells)
  unused.delete('list')
  for (const { column, field, cell } of columns) {
    const text = cells.get(column)
    unused.delete(column)
    if (text !== undefined) putAt(row, field.split('.'), cell.read(text))
  }
  return { row, columns, unused: [...unused.keys()] }
}

export interface UnreadRow {
  readonly row: object
  readonly columns: readonly Column[]
  readonly unused: readonly ShelfCsvColumn[]
}

function putAt(row: object, [key = '', ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    Object.assign(row, { [key]: value })
    return
  }
  const inner: unknown = valueAt(row, key)
  const object = typeof inner === 'object' && inner !== null ? inner : {}
  Object.assign(row, { [key]: object })
  putAt(object, rest, value)
}

export interface CellChange {
  readonly column: string
  /** Empty where nothing stood or stands there. */
  readonly before: string
  readonly after: string
}

export function changesBetween(before: Cells, after: Cells): readonly CellChange[] {
  // Safe: the keys of the table are its columns.
  const columns = Object.keys(SHELF_CSV_HEADINGS) as readonly ShelfCsvColumn[]
  return columns
    .map((column) => ({
      column: SHELF_CSV_HEADINGS[column],
      before: before.get(column) ?? '',
      after: after.get(column) ?? '',
    }))
    .filter((change) => change.before !== change.after)
}
