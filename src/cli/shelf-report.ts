// The report on a file of shelf rows, as lines and as JSON: counts first, then what is wrong, then what changes. Leaves out reading the file.
import { ROW_OUTCOMES, rowsWith } from '../files/shelf-csv/shelf-reading.ts'
import type {
  CellProblem,
  ShelfReading,
  ShelfRowReading,
} from '../files/shelf-csv/shelf-reading.ts'
import {
  changeText,
  OUTCOME_NAMES,
  readingCountsText,
  rowHeadText,
  rowProblemText,
  SHELF_FILE_WORDS,
} from '../words/shelf-file-text.ts'
import type { OutcomeName } from '../words/shelf-file-text.ts'
import { jsonText } from './json-output.ts'
import { bulleted, indented, section } from './table.ts'

export const SHELF_REPORT_JSON_FORMAT = 'oxwright-shelf-1'

/** `isEach`: rows that are added or stay as they are, too. */
export function reportLines(reading: ShelfReading, isEach: boolean): readonly string[] {
  const { refused, changed, added, same } = grouped(reading)
  return [
    readingCountsText(counts(reading)),
    ...section(SHELF_FILE_WORDS.wholeFile, bulleted(reading.headProblems.map(rowProblemText))),
    ...section(OUTCOME_NAMES.refused, refused.flatMap(refusedLines)),
    ...section(OUTCOME_NAMES.changed, changed.flatMap(changedLines)),
    ...(isEach ? section(OUTCOME_NAMES.added, bulleted(added.map(headOf))) : []),
    ...(isEach ? section(OUTCOME_NAMES.same, bulleted(same.map(headOf))) : []),
  ]
}

function grouped(reading: ShelfReading) {
  return {
    added: rowsWith(reading, 'added'),
    changed: rowsWith(reading, 'changed'),
    same: rowsWith(reading, 'same'),
    refused: rowsWith(reading, 'refused'),
  }
}

export function counts(reading: ShelfReading): Readonly<Record<OutcomeName, number>> {
  const { added, changed, same, refused } = grouped(reading)
  return {
    added: added.length,
    changed: changed.length,
    same: same.length,
    refused: refused.length,
  }
}

function headOf({ line, list, id }: ShelfRowReading): string {
  return rowHeadText({ line, list, id })
}

const DEEPER = 4

function refusedLines(row: ShelfRowReading): readonly string[] {
  return [...indented(headOf(row)), ...bulleted(row.problems.map(rowProblemText), DEEPER)]
}

function changedLines(row: ShelfRowReading): readonly string[] {
  return [...indented(headOf(row)), ...bulleted(row.changes.map(changeText), DEEPER)]
}

export function reportJson(reading: ShelfReading, version: string): string {
  return jsonText({
    format: SHELF_REPORT_JSON_FORMAT,
    version,
    counts: Object.fromEntries(
      ROW_OUTCOMES.map((outcome) => [outcome, rowsWith(reading, outcome).length]),
    ),
    problems: reading.headProblems.map(toldProblem),
    rows: reading.rows.map(({ line, list, id, outcome, problems, changes, cells }) => ({
      line,
      list,
      id,
      outcome,
      problems: problems.map(toldProblem),
      changes,
      cells,
    })),
  })
}

function toldProblem(problem: CellProblem): object {
  return { ...problem, text: rowProblemText(problem) }
}
