// Reads simple pipe tables of markdown. Leaves out all other markdown.

/** A row as column name → cell text. */
export type TableRow = ReadonlyMap<string, string>

/** Rows of every table whose header row has exactly these columns. */
export function tableRows(options: {
  readonly markdown: string
  readonly columns: readonly string[]
}): TableRow[] {
  const lines = options.markdown.split('\n')
  return lines.flatMap((line, index) =>
    sameCells(cellsOf(line), options.columns)
      ? rowsBelow({ lines, index, columns: options.columns })
      : [],
  )
}

function rowsBelow(options: {
  readonly lines: readonly string[]
  readonly index: number
  readonly columns: readonly string[]
}): TableRow[] {
  const rows: TableRow[] = []
  for (const line of options.lines.slice(options.index + 2)) {
    if (!line.trimStart().startsWith('|')) break
    const cells = cellsOf(line)
    rows.push(new Map(options.columns.map((column, at) => [column, cells[at] ?? ''])))
  }
  return rows
}

function sameCells(cells: readonly string[], columns: readonly string[]): boolean {
  return cells.length === columns.length && cells.every((cell, at) => cell === columns[at])
}

/** The cells of a `| a | b |` line; `\|` is a bar inside a cell. */
function cellsOf(line: string): string[] {
  const trimmed = line.trim()
  if (!trimmed.startsWith('|') || !trimmed.endsWith('|')) return []
  const inner = trimmed.slice(1, -1)
  return inner.split(/(?<!\\)\|/).map((cell) => cell.replaceAll('\\|', '|').trim())
}
