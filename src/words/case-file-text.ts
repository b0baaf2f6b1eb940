// What Bedside says of case and shelf files, opened and saved; loaded with them. Leaves out the Shelf page's report on single rows.
import { say } from './say.ts'

export const FILE_WORDS = {
  open: say('Open a case or shelf file'),
  save: say('Save this case as a file'),
  drop: say('JSON or YAML, a shelf as CSV too; a file may also be dropped here.'),
  dropNow: say('Let go to open the file'),
  demoShelf: say('Back to the demo shelf'),
  ownShelf: say('Shelf from a file'),
  notKept: say('This browser does not keep the shelf: open it again next time.'),
  shelf: say('shelf'),
} as const

export function openedCaseText(file: string): string {
  return say('Case opened from {file}.', { file })
}

export function openedShelfText(file: string, hospital: string): string {
  return say('Shelf of {hospital} opened from {file}; it is in use now.', { file, hospital })
}

/** A spreadsheet is taken here whole or not at all. */
export function refusedText(file: string, { isCsv }: { readonly isCsv: boolean }): string {
  return isCsv
    ? say(
        '{file}: The file was not opened; nothing here was changed. The Shelf page takes the rows of it that are right.',
        { file },
      )
    : say('{file}: The file was not opened; nothing here was changed.', { file })
}

export function unreadableText(file: string, why: string): string {
  return say('{file} is neither JSON nor YAML: {why}', { file, why })
}

export function tooLargeText(file: string, limit: string): string {
  return say('{file} is larger than {limit}.', { file, limit })
}
