// What the import part of the Shelf page says. Leaves out the report on single rows (shelf-file-text.ts).
import { OUTCOME_NAMES } from './shelf-file-text.ts'
import type { OutcomeName } from './shelf-file-text.ts'
import { say } from './say.ts'

export type OutcomeCounts = Readonly<Record<OutcomeName, number>>

export const IMPORT_WORDS = {
  heading: say('Out to a file and in from one'),
  saveCsv: say('Save as a spreadsheet (CSV)'),
  saveJson: say('Save as JSON'),
  open: say('Open a shelf file'),
  openHelp: say(
    'CSV, JSON or YAML; may also be dropped here. You see what each row does before anything changes.',
  ),
  undo: say('Undo: back to the shelf before this file'),
  undone: say('Undone. The shelf is as it was before the file.'),
  left: say('The file was put aside; the shelf is unchanged.'),
  notTaken: say('The shelf would not be whole; nothing was changed.'),
  notYet: say('Nothing is changed yet.'),
  target: say('Where the rows go'),
  into: say('into this shelf'),
  instead: say('in its place'),
  intoHelp: say(
    'Rows of the shelf that the file does not have stay as they are. A count of 0 says that there are none.',
  ),
  insteadHelp: say(
    'The shelf in use is put aside; only what the file holds is on the new one. The file must name its hospital.',
  ),
  saveRefused: say('Save the refused rows'),
  leave: say('Put the file aside'),
  nothingToTake: say('There is nothing to take from this file.'),
  show: say('Rows shown'),
  noRow: say('No such row.'),
} as const

export function shelfInUseText(options: {
  readonly hospital: string
  readonly isDemo: boolean
  readonly isInvented: boolean
}): string {
  const { hospital, isDemo, isInvented } = options
  if (isDemo) return say('In use: the demo shelf of {hospital}, invented.', { hospital })
  return isInvented
    ? say('In use: the shelf of {hospital}, invented.', { hospital })
    : say('In use: the shelf of {hospital}.', { hospital })
}

export function unreadableFileText(file: string, why: string): string {
  return say('{file} cannot be read: {why}', { file, why })
}

/** Refused rows first: they are what is left to do. */
export function reportHeadText(file: string, counts: OutcomeCounts): string {
  const { added, changed, same, refused } = counts
  return say(
    '{file}: {refused} refused, {added} added, {changed} changed, {same} as on the shelf',
    {
      file,
      refused: String(refused),
      added: String(added),
      changed: String(changed),
      same: String(same),
    },
  )
}

export function takeText(count: number): string {
  return say('{count, plural, one {Take # row} other {Take # rows}}', { count })
}

export function tookText(file: string, { added, changed, refused }: OutcomeCounts): string {
  return say(
    'Taken from {file}: {added} added, {changed} changed. {refused, plural, =0 {No row was refused.} one {# row was refused.} other {# rows were refused.}}',
    { file, added: String(added), changed: String(changed), refused },
  )
}

export function filterTexts(counts: OutcomeCounts): Readonly<Record<OutcomeName, string>> {
  return {
    refused: filterText('refused', counts),
    changed: filterText('changed', counts),
    added: filterText('added', counts),
    same: filterText('same', counts),
  }
}

function filterText(outcome: OutcomeName, counts: OutcomeCounts): string {
  return say('{outcome} ({count})', {
    outcome: OUTCOME_NAMES[outcome],
    count: String(counts[outcome]),
  })
}

export function moreRowsText(count: number): string {
  return say('{count, plural, one {# more row is} other {# more rows are}} not shown here.', {
    count,
  })
}
