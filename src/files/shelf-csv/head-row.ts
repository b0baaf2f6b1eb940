// The headings of a CSV file: which column each names, which are unknown or stand twice. Leaves out the rows below.
import { closest } from '../../patient/did-you-mean.ts'
import { unguarded } from './cell-text.ts'
import { REASON_HEADING, SHELF_CSV_HEADINGS } from './headings.ts'
import type { ShelfCsvColumn } from './headings.ts'
import type { CellProblem } from './shelf-reading.ts'

export interface Head {
  readonly headings: readonly string[]
  /** The column at each place; undefined where the heading names none. */
  readonly columns: readonly (ShelfCsvColumn | undefined)[]
  /** Places of cells that nobody reads: the reasons of a file of refused rows. */
  readonly passedOver: ReadonlySet<number>
  readonly problems: readonly CellProblem[]
  /** Without list and id no row can be told from another. */
  readonly isUnusable: boolean
}

/** Capitals, blanks and signs of a heading do not matter. */
export function headOf(cells: readonly string[]): Head {
  const headings = cells.map(unguarded)
  const problems: CellProblem[] = []
  const passedOver = new Set<number>()
  const columns: (ShelfCsvColumn | undefined)[] = []
  headings.forEach((heading, i) => {
    const column = COLUMNS.get(plain(heading))
    const isTwice = column !== undefined && columns.includes(column)
    columns.push(isTwice ? undefined : column)
    if (plain(heading) === REASON_HEADING) passedOver.add(i)
    else if (isTwice) problems.push(wrong('DUPLICATE_ID', heading))
    else if (column === undefined && heading.trim() !== '')
      problems.push(wrong('UNKNOWN_FIELD', heading))
  })
  const missing = NEEDED.filter((column) => !columns.includes(column))
  for (const column of missing) problems.push(missed(SHELF_CSV_HEADINGS[column]))
  return { headings, columns, passedOver, problems, isUnusable: missing.length > 0 }
}

const NEEDED = ['list', 'id'] as const

// Safe: the keys of the table are its columns.
const ALL = Object.entries(SHELF_CSV_HEADINGS) as readonly (readonly [ShelfCsvColumn, string])[]
const COLUMNS = new Map(ALL.map(([column, heading]) => [plain(heading), column]))

/** All headings there are would hide the one that is meant. */
function wrong(code: 'DUPLICATE_ID' | 'UNKNOWN_FIELD', heading: string): CellProblem {
  const told = { code, path: heading, column: heading, value: heading }
  const suggestion = closest({ typed: heading, choices: Object.values(SHELF_CSV_HEADINGS) })
  return code === 'DUPLICATE_ID' || suggestion === undefined ? told : { ...told, suggestion }
}

function missed(heading: string): CellProblem {
  return { code: 'MISSING_FIELD', path: heading, column: heading, value: null }
}

/** Letters and digits alone. */
export function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '')
}
