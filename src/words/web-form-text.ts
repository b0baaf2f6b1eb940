// The words of the case form: groups, choices, helps beside fields. Leaves out labels of fields and problems, which have files of their own.
import type { Problem } from '../errors.ts'
import type { AssumedValue } from '../patient/patient-spread.ts'
import type { GoalReason } from '../planning/goal-reasons.ts'
import { goalText } from './goal-text.ts'
import { KNOWN_NAMES } from './names.ts'
import { bandText, plainNumberText, stepForWidth, withUnit } from './number-text.ts'
import { problemText, valueText } from './problem-text.ts'
import { say } from './say.ts'
import { shownBand } from './shown-unit.ts'

export const FORM_WORDS = {
  example: say('Example case'),
  exampleHelp: say('Every example is invented. Choose one and change what you like.'),
  own: say('A case of your own, empty'),
  changed: say('Changed from an example'),
  restore: say('Bring back what was typed before'),
  ward: say('Shelf of'),
  wholeHospital: say('the whole hospital'),
  patient: say('Patient'),
  breathing: say('Breathing'),
  goal: say('Goal'),
  onNow: say('On now'),
  changes: say('What changes the interface'),
  more: say('More that may be known'),
  moreHelp: say('Each narrows the spread. Leave empty what is not known.'),
  notGiven: say('not known'),
  none: say('none given'),
  usualSize: say('usual for the age'),
  age: say('age'),
  ageUnit: say('unit of age'),
  airway: say('airway'),
  nose: say('nose'),
  cuff: say('cuff'),
  exchanger: say('heat and moisture exchanger on'),
  onNowKind: say('what is on'),
  flush: say('flush: the meter fully open'),
  overFlush: say('flush to the mask'),
  low: say('from'),
  high: say('to'),
  rangeHelp: say('Lower and upper end of the range'),
  choose: say('please choose'),
  use: say('Use'),
} as const

export const AGE_UNIT_NAMES = {
  ageYears: say('years'),
  ageMonths: say('months'),
  ageDays: say('days'),
} as const

export const ON_NOW_NAMES = {
  unknown: say('not known'),
  air: say('room air'),
  'set-up': say('oxygen set-up'),
} as const

/** Under a field shown in another unit than it was typed in. */
export function typedAsText(text: string, unit: string): string {
  return say('typed as {value}', { value: withUnit(text, unit) })
}

/** Under an empty altitude: what the settings put in its place. */
export function fromSettingsText(altitudeM: number): string {
  return say('not given, {altitude} m from settings', { altitude: plainNumberText(altitudeM) })
}

/** Under an empty field: what stands in for it. */
export function assumedHelpText(assumed: AssumedValue): string {
  const { low, high, median, unit } = shownBand(assumed.key, assumed)
  const step = high > low ? stepForWidth(high - low) : stepForWidth(Math.abs(median) || 1)
  return say('not given, assumed {value}', {
    value: bandText({ low, high, median }, { step, unit }),
  })
}

/** What a reason usually aims at, to be offered. */
export function suggestedGoalText(reason: GoalReason): string {
  const known = KNOWN_NAMES[reason.known]
  return say('usual for this reason: {goal} ({origin})', {
    goal: goalText(reason.suggested),
    origin: reason.source === undefined ? known : `${reason.source}, ${known}`,
  })
}

export function problemLineText(problem: Problem): string {
  const said = problemText(problem)
  return said.slice(0, 1).toUpperCase() + said.slice(1)
}

/** Button that takes what may have been meant. */
export function takeText(value: number | string, unit: string | undefined): string {
  return say('Use {value}', { value: withUnit(valueText(value), unit) })
}
