// What the report on a file of shelf rows says: outcomes, reasons, what a row changes. Leaves out where it is shown.
import type { Problem } from '../errors.ts'
import { problemText } from './problem-text.ts'
import { say } from './say.ts'

export const LIST_NAMES = {
  hospital: say('hospital'),
  wards: say('wards'),
  interfaces: say('interfaces'),
  sources: say('gas sources'),
  humidifiers: say('humidifiers'),
  outlets: say('outlets'),
  airMeters: say('air flowmeters'),
  tubes: say('tubes and hoses'),
  fittings: say('fittings'),
} as const

export type ListName = keyof typeof LIST_NAMES

export const OUTCOME_NAMES = {
  added: say('added'),
  changed: say('changed'),
  same: say('as on the shelf'),
  refused: say('refused'),
} as const

export type OutcomeName = keyof typeof OUTCOME_NAMES

/** One reason, with the column it stands in where there is one. */
export function rowProblemText(problem: Problem & { readonly column: string }): string {
  return problemText(problem)
}

/** "marks used (L/min): 2 | 4 → 2 | 4 | 6" */
export function changeText(change: {
  readonly column: string
  readonly before: string
  readonly after: string
}): string {
  const { column, before, after } = change
  return say('{column}: {before} → {after}', {
    column,
    before: before === '' ? say('nothing') : before,
    after: after === '' ? say('nothing') : after,
  })
}

/** "row 12: tubes, hose-22"; a row that cannot be told has its number alone. */
export function rowHeadText(row: {
  readonly line: number
  readonly list: ListName | null
  readonly id: string | null
}): string {
  const line = String(row.line)
  if (row.list === null) return say('row {line}', { line })
  const list = LIST_NAMES[row.list]
  return row.id === null
    ? say('row {line}: {list}', { line, list })
    : say('row {line}: {list}, {id}', { line, list, id: row.id })
}

export function readingCountsText(counts: Readonly<Record<OutcomeName, number>>): string {
  const { added, changed, same, refused } = counts
  return say('{added} added, {changed} changed, {same} as on the shelf, {refused} refused', {
    added: String(added),
    changed: String(changed),
    same: String(same),
    refused: String(refused),
  })
}

export const SHELF_FILE_WORDS = {
  wholeFile: say('the file as a whole'),
  notWritten: say(
    'nothing was written, as rows were refused; with --refused FILE they are written to a file of their own and the others are taken',
  ),
} as const
