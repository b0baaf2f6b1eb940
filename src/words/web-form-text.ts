// The words of the case form: groups, choices, helps beside fields. Leaves out labels of fields and problems, which have files of their own.
import type { Problem } from '../errors.ts'
import type { AssumedValue } from '../patient/patient-spread.ts'
import type { GoalReason } from '../planning/goal-reasons.ts'
import { goalText } from './goal-text.ts'
import { KNOWN_NAMES } from './names.ts'
import { bandText, stepForWidth, withUnit } from './number-text.ts'
import { problemText } from './problem-text.ts'

export const FORM_WORDS = {
  example: 'Example case',
  exampleHelp: 'Every example is invented. Choose one and change what you like.',
  own: 'A case of your own, empty',
  changed: 'Changed from an example',
  restore: 'Bring back what was typed before',
  ward: 'Shelf of',
  wholeHospital: 'the whole hospital',
  patient: 'Patient',
  breathing: 'Breathing',
  goal: 'Goal',
  onNow: 'On now',
  changes: 'What changes the interface',
  more: 'More that may be known',
  moreHelp: 'Each narrows the spread. Leave empty what is not known.',
  notGiven: 'not known',
  none: 'none given',
  usualSize: 'usual for the age',
  age: 'age',
  ageUnit: 'unit of age',
  airway: 'airway',
  nose: 'nose',
  cuff: 'cuff',
  exchanger: 'heat and moisture exchanger on',
  onNowKind: 'what is on',
  flush: 'flush: the meter fully open',
  overFlush: 'flush to the mask',
  low: 'from',
  high: 'to',
  rangeHelp: 'Lower and upper end of the range',
  choose: 'please choose',
  use: 'Use',
} as const

export const AGE_UNIT_NAMES = { ageYears: 'years', ageMonths: 'months', ageDays: 'days' } as const

export const ON_NOW_NAMES = {
  unknown: 'not known',
  air: 'room air',
  'set-up': 'oxygen set-up',
} as const

/** Under an empty field: what stands in for it. */
export function assumedHelpText(assumed: AssumedValue): string {
  const { low, high, median, unit } = assumed
  const step = high > low ? stepForWidth(high - low) : stepForWidth(Math.abs(median) || 1)
  return `not given, assumed ${bandText({ low, high, median }, { step, unit })}`
}

/** What a reason usually aims at, to be offered. */
export function suggestedGoalText(reason: GoalReason): string {
  const source = reason.source === undefined ? '' : `${reason.source}, `
  return `usual for this reason: ${goalText(reason.suggested)} (${source}${KNOWN_NAMES[reason.known]})`
}

export function problemLineText(problem: Problem): string {
  const said = problemText(problem)
  return said.slice(0, 1).toUpperCase() + said.slice(1)
}

/** Button that takes what may have been meant. */
export function takeText(value: number | string, unit: string | undefined): string {
  return `${FORM_WORDS.use} ${withUnit(String(value), unit)}`
}
