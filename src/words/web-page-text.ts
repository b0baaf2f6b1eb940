// What the web page says around a plan: headings, buttons, states. Leaves out the case form and what the core says.
import { say } from './say.ts'

export const PAGE_WORDS = {
  name: 'Oxwright',
  documentTitle: 'Oxwright: from a patient and a goal to a set-up',
  tagline: 'from a patient and a goal to a set-up',
  heading: 'Bedside',
  skip: 'Skip to the answer',
  skipToPlace: say('Skip to what this place shows'),
  places: 'Places',
  opening: 'Opening …',
  noPlace: 'There is no such place here',
  toBedside: 'To Bedside',
  emergency: 'First of all',
  theCase: 'The case',
  theAnswer: 'The answer',
  editCase: 'Change the case',
  hideForm: 'Hide the form',
  light: 'Light',
  dark: 'Dark',
  asDevice: 'Auto',
  look: 'Look',
  working: 'Working it out …',
  workingStale: 'Working it out; below is still the answer before.',
  refusedHeading: 'Not worked out',
  refusedWhy: 'What is typed cannot be used yet. Nothing typed is lost. To mend:',
  failedHeading: 'The calculation broke off',
  failedWhy: 'This is a fault of the program, not of the case. Nothing typed is lost.',
  tryAgain: 'Try again',
  footer:
    'The case never leaves this device. Every figure of the example cases and of their hospital is invented.',
} as const

export const PLACE_NAMES = {
  bedside: 'Bedside',
  settings: say('Settings'),
} as const

/** Said to a screen reader in place of an answer. */
export function refusedCountText(count: number): string {
  return `${PAGE_WORDS.refusedHeading}: ${count} to mend`
}

/** Progress as a share, in tenths, so that a reader is not told every step. */
export function progressText(done: number, total: number): string {
  return say('{done} of {total} set-ups', { done, total })
}

export const RIBBON_SECTION = {
  heading: 'One breath: where the inhaled gas comes from',
  help: 'The middle patient of this case, breathing on this set-up. Height is flow, area is volume.',
  beside: 'Beside what is on now, on one scale',
  inWords: 'The same in words',
  working: 'Drawing the breath …',
} as const

export const LIST_WORDS = {
  heading: 'Ranked set-ups',
  help: 'Choose one: the answer and the breath above follow. Set-ups that count as equal share a rank.',
  chosen: 'shown above',
  fraction: 'fraction',
  saturation: 'saturation',
  chance: 'in the goal',
  holds: 'holds until',
  oxygen: 'oxygen',
  equal: 'equal to the first',
  showAll: 'Show all',
  showFewer: 'Show the first only',
  noReading: 'Chances here come from averages only.',
} as const

export const DETAIL_WORDS = {
  mind: 'Mind and watch',
  check: 'To check in what was typed',
  missing: 'What is missing',
  onNow: 'On now, really',
  guideline: 'A guideline would start with',
  noGuideline: 'No starting point of a guideline fits this case.',
  ruledOut: 'Ruled out, and why',
  nothingRuledOut: 'Nothing on this shelf was ruled out.',
  assumed: 'Assumed, because it was not given',
  nothingAssumed: 'Nothing was assumed.',
  cautions: 'Cautions',
  show: 'Show this one',
} as const

/** "18 values, each with its spread and source" */
export function assumedCountText(count: number): string {
  return `${count} ${count === 1 ? 'value' : 'values'}, each with its spread and source`
}

export function showAllText(count: number): string {
  return `${LIST_WORDS.showAll} ${count}`
}
