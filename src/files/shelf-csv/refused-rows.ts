// The refused rows of a reading as a CSV file of their own, each with the reasons, to be mended and read again. Leaves out the accepted rows.
import { rowProblemText } from '../../words/shelf-file-text.ts'
import { guarded, unguarded } from './cell-text.ts'
import { REASON_HEADING } from './headings.ts'
import { plain } from './head-row.ts'
import { rowsWith } from './shelf-reading.ts'
import type { ShelfReading } from './shelf-reading.ts'
import { csvText } from './write-shelf-csv.ts'

/** The reasons stand first, so that every cell of a row stays under its heading; reasons of an earlier reading are left out. */
export function refusedCsv(reading: ShelfReading): string {
  const isOld = (i: number): boolean => plain(reading.headings[i] ?? '') === REASON_HEADING
  const own = (cells: readonly string[]): readonly string[] =>
    cells.filter((_, i) => !isOld(i)).map((cell) => guarded(unguarded(cell)))
  const rows = rowsWith(reading, 'refused').map(({ problems, cells }) => [
    guarded(problems.map(rowProblemText).join(' | ')),
    ...own(cells),
  ])
  return csvText([[REASON_HEADING, ...own(reading.headings)], ...rows])
}
