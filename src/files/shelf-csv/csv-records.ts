// Rows of a CSV text one by one, each with its cells as written: a row that cannot be read, such as one with a quote left open, is taken as its bare line, so that it never swallows those below it. Leaves out what cells mean.
import Papa from 'papaparse'

export interface CsvRecord {
  /** Row number as spreadsheet programs count, the heading being 1. */
  readonly line: number
  readonly cells: readonly string[]
  /** A bare line whose quotes do not fit: its one cell is the whole line. */
  readonly isBroken: boolean
}

export const SEPARATORS = [',', ';', '\t'] as const
export type Separator = (typeof SEPARATORS)[number]

const BYTE_ORDER_MARK = '\u{FEFF}'
/** The line by which some spreadsheet programs name their separator. */
const NAMED_SEPARATOR = /^sep=.\r?\n/

export interface CsvRows {
  readonly separator: Separator
  readonly heading: CsvRecord
  readonly records: readonly CsvRecord[]
}

/** The rows by the separator that makes most headings known; empty rows are left out and counted. */
export function csvRows(text: string, isHeading: (cell: string) => boolean): CsvRows {
  const body = withEvenLineEnds(text)
  const known = (separator: Separator): number =>
    (nextRecord({ text: body, start: 0, separator })?.cells ?? []).filter(isHeading).length
  const separator = SEPARATORS.reduce((best, one) => (known(one) > known(best) ? one : best))
  const [heading = { line: 1, cells: [], isBroken: false }, ...records] = recordsOf(body, separator)
  return { separator, heading, records: records.filter(({ cells }) => cells.some(isFilled)) }
}

function isFilled(cell: string): boolean {
  return cell.trim() !== ''
}

/** Files with lone carriage returns for line ends are old, and papaparse looks for one kind of line end. */
function withEvenLineEnds(text: string): string {
  const bare = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text
  const named = bare.replace(NAMED_SEPARATOR, '')
  return named.includes('\n') ? named : named.replaceAll('\r', '\n')
}

function recordsOf(text: string, separator: Separator): readonly CsvRecord[] {
  const records: CsvRecord[] = []
  let cellsMost = Number.POSITIVE_INFINITY
  let start = 0
  while (start < text.length) {
    const read = nextRecord({ text, start, separator })
    const isWhole = read !== undefined && read.cells.length <= cellsMost
    const next = isWhole ? read : bareLine({ text, start, separator })
    records.push({ line: records.length + 1, cells: next.cells, isBroken: next.isBroken })
    if (records.length === 1) cellsMost = next.cells.length
    start = next.end
  }
  return records
}

interface Read {
  readonly cells: readonly string[]
  readonly isBroken: boolean
  readonly end: number
}

interface From {
  readonly text: string
  readonly start: number
  readonly separator: Separator
}

/** The next row, over several lines where a cell in quotes has line breaks; nothing where its quotes do not fit. */
function nextRecord({ text, start, separator }: From): Read | undefined {
  const first = parsed(text.slice(start), separator)
  if (first === undefined) return undefined
  const end = start + first.end
  // Read again without its line end, so that a carriage return belongs to the line end and to no cell.
  const record = parsed(text.slice(start, end).replace(/\r?\n$/, ''), separator)
  return record === undefined ? undefined : { ...record, end }
}

function bareLine({ text, start, separator }: From): Read {
  const found = text.indexOf('\n', start)
  const end = found < 0 ? text.length : found + 1
  const line = text.slice(start, end).replace(/\r?\n$/, '')
  const read = parsed(line, separator)
  return read === undefined
    ? { cells: [line], isBroken: true, end }
    : { cells: read.cells, isBroken: false, end }
}

function parsed(text: string, separator: Separator): Read | undefined {
  if (text === '') return { cells: [''], isBroken: false, end: 0 }
  const { data, errors, meta } = Papa.parse<readonly string[]>(text, {
    delimiter: separator,
    newline: '\n',
    preview: 1,
    // Its fast way splits the whole rest of the file for each row.
    fastMode: false,
  })
  const [cells = ['']] = data
  return errors.length > 0 ? undefined : { cells, isBroken: false, end: meta.cursor }
}
