// Plain text for a terminal: tables with aligned columns, wrapped paragraphs and lists, at most 100 columns. Leaves out what they say.
import { filledLines } from '../words/line-break.ts'

export const COLUMNS_MOST = 100

const GAP = '  '

export interface TableColumn {
  /** Lines of the heading. */
  readonly heading: string
  readonly align?: 'left' | 'right'
  /** Wider cells are wrapped; without it the widest cell decides. */
  readonly widthMost?: number
}

export interface TableRow {
  readonly cells: readonly string[]
  /** Stands under the row over the whole width. */
  readonly note?: string
}

const NOTE_INDENT = 4

/** Lines of a table; cells wrap inside their column, rows stay together with their notes. */
export function tableLines(
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
): readonly string[] {
  const wrappedCells = (cells: readonly string[]): readonly (readonly string[])[] =>
    columns.map((column, i) => wrapWords(cells[i] ?? '', column.widthMost ?? COLUMNS_MOST))
  const heading = wrappedCells(columns.map((column) => column.heading))
  const body = rows.map((row) => wrappedCells(row.cells))
  const widths = columns.map((_, i) =>
    Math.max(...[heading, ...body].flatMap((row) => (row[i] ?? []).map((line) => line.length))),
  )
  return [
    ...rowLines(heading, columns, widths),
    widths.map((width) => '─'.repeat(width)).join(GAP),
    ...rows.flatMap(({ note }, i) => [
      ...rowLines(body[i] ?? [], columns, widths),
      ...(note === undefined || note === '' ? [] : indented(note, NOTE_INDENT)),
    ]),
  ]
}

function rowLines(
  row: readonly (readonly string[])[],
  columns: readonly TableColumn[],
  widths: readonly number[],
): readonly string[] {
  const height = Math.max(1, ...row.map((cell) => cell.length))
  return Array.from({ length: height }, (_, line) =>
    columns
      .map((column, i) => {
        const text = row[i]?.[line] ?? ''
        const width = widths[i] ?? 0
        return column.align === 'right' ? text.padStart(width) : text.padEnd(width)
      })
      .join(GAP)
      .trimEnd(),
  )
}

/** Breaks so that no line is longer, unless one word is. */
export function wrapWords(text: string, widthMost: number): readonly string[] {
  return filledLines(text, (line) => line.length <= widthMost)
}

/** A paragraph with every line set in by the same blanks. */
export function indented(text: string, indent = 2): readonly string[] {
  return wrapWords(text, COLUMNS_MOST - indent).map((line) => ' '.repeat(indent) + line)
}

/** A list: the first line of each entry is marked, the rest set in below it. */
export function bulleted(entries: readonly string[], indent = 2): readonly string[] {
  return entries.flatMap((entry) =>
    wrapWords(entry, COLUMNS_MOST - indent - 2).map(
      (line, i) => ' '.repeat(indent) + (i === 0 ? '- ' : '  ') + line,
    ),
  )
}

/** A heading and its lines, with an empty line before; nothing where there are no lines. */
export function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', heading, ...lines]
}
