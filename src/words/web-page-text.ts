// What the web page says around a plan: headings, buttons, states. Leaves out the case form and what the core says.
import { say } from './say.ts'

export const PAGE_WORDS = {
  name: 'Oxwright',
  documentTitle: say('Oxwright: from a patient and a goal to a set-up'),
  tagline: say('from a patient and a goal to a set-up'),
  heading: say('Bedside'),
  skip: say('Skip to the answer'),
  skipToPlace: say('Skip to what this place shows'),
  places: say('Places'),
  opening: say('Opening …'),
  noPlace: say('There is no such place here'),
  toBedside: say('To Bedside'),
  emergency: say('First of all'),
  theCase: say('The case'),
  theAnswer: say('The answer'),
  editCase: say('Change the case'),
  hideForm: say('Hide the form'),
  light: say('Light'),
  dark: say('Dark'),
  asDevice: say('Auto'),
  look: say('Look'),
  working: say('Working it out …'),
  workingStale: say('Working it out; below is still the answer before.'),
  refusedHeading: say('Not worked out'),
  refusedWhy: say('What is typed cannot be used yet. Nothing typed is lost. To mend:'),
  failedHeading: say('The calculation broke off'),
  failedWhy: say('This is a fault of the program, not of the case. Nothing typed is lost.'),
  tryAgain: say('Try again'),
  footer: say(
    'The case never leaves this device. Every figure of the example cases and of their hospital is invented.',
  ),
} as const

export const PLACE_NAMES = {
  bedside: say('Bedside'),
  sheet: say('Sheet'),
  gas: say('Gas'),
  chain: say('Chain'),
  shelf: say('Shelf'),
  evidence: say('Evidence'),
  settings: say('Settings'),
} as const

/** Said to a screen reader in place of an answer. */
export function refusedCountText(count: number): string {
  return say('{heading}: {count} to mend', {
    heading: PAGE_WORDS.refusedHeading,
    count,
  })
}

/** Progress as a share, in tenths, so that a reader is not told every step. */
export function progressText(done: number, total: number): string {
  return say('{done} of {total} set-ups', { done, total })
}

export const RIBBON_SECTION = {
  heading: say('One breath: where the inhaled gas comes from'),
  help: say(
    'The middle patient of this case, breathing on this set-up. Height is flow, area is volume.',
  ),
  beside: say('Beside what is on now, on one scale'),
  inWords: say('The same in words'),
  working: say('Drawing the breath …'),
} as const

export const LIST_WORDS = {
  heading: say('Ranked set-ups'),
  help: say(
    'Choose one: the answer and the breath above follow. Set-ups that count as equal share a rank.',
  ),
  chosen: say('shown above'),
  fraction: say('fraction'),
  saturation: say('saturation'),
  chance: say('in the goal'),
  holds: say('holds until'),
  oxygen: say('oxygen'),
  equal: say('equal to the first'),
  showFewer: say('Show the first only'),
  noReading: say('Chances here come from averages only.'),
} as const

export const DETAIL_WORDS = {
  mind: say('Mind and watch'),
  check: say('To check in what was typed'),
  missing: say('What is missing'),
  onNow: say('On now, really'),
  guideline: say('A guideline would start with'),
  noGuideline: say('No starting point of a guideline fits this case.'),
  ruledOut: say('Ruled out, and why'),
  nothingRuledOut: say('Nothing on this shelf was ruled out.'),
  assumed: say('Assumed, because it was not given'),
  nothingAssumed: say('Nothing was assumed.'),
  cautions: say('Cautions'),
  show: say('Show this one'),
} as const

/** "18 values, each with its spread and source" */
export function assumedCountText(count: number): string {
  return say(
    '{count, plural, one {{count} value} other {{count} values}}, each with its spread and source',
    { count },
  )
}

export function showAllText(count: number): string {
  return say('Show all {count}', { count })
}
