// Small tools of Bedside in words: printed beside measured, how long a plan stands. Leaves out the plan and files (case-file-text.ts).
import type { Quantity } from '../evidence/evidence-row.ts'
import type { Reassessment } from '../planning/plan-types.ts'
import { clockText, flowText, fractionText } from './number-text.ts'
import { remarkText } from './remark-text.ts'
import { say, translated } from './say.ts'

export const MEASURED_WORDS = {
  heading: say('Printed beside measured'),
  none: say('No measurement exists for this interface.'),
  working: say('Looking for the nearest measurement …'),
  toRow: say('This row on Evidence'),
} as const

const QUANTITY_TEXTS: Readonly<Partial<Record<Quantity, string>>> = {
  effective: say('effective fraction'),
  opening: say('at the airway opening'),
  pharynx: say('in the throat'),
  trachea: say('in the windpipe'),
  'in-mask': say('in the mask'),
  'end-expired': say('at the end of breathing out'),
}

export interface MeasuredTold {
  readonly condition: string
  readonly quantity: Quantity
  readonly flowLpm: number
  readonly publishedO2Fraction: number
  readonly modelO2Fraction: number
  readonly source: string
}

/** Published value, where it was measured and on whom, how far ours lies from it, and how our model does under the study's own conditions. */
export function measuredLines(told: MeasuredTold, oursO2Fraction: number): readonly string[] {
  const published = fractionText(told.publishedO2Fraction)
  return [
    say('Nearest measurement: {published} {quantity} at {flow} ({source}: {condition}).', {
      published,
      quantity: QUANTITY_TEXTS[told.quantity] ?? told.quantity,
      flow: flowText(told.flowLpm),
      source: told.source,
      condition: translated(told.condition),
    }),
    distanceText(oursO2Fraction - told.publishedO2Fraction),
    say('Under the conditions of that study our model gives {model}.', {
      model: fractionText(told.modelO2Fraction),
    }),
  ]
}

function distanceText(difference: number): string {
  const size = fractionText(Math.abs(difference))
  if (size === '0') return say('Ours for this patient is the same.')
  return difference > 0
    ? say('Ours for this patient lies {size} above it.', { size })
    : say('Ours for this patient lies {size} below it.', { size })
}

export const VALID_WORDS = {
  old: say('Out of date: not valid any more'),
  oldHelp: say(
    'Look at the patient, read the saturation again, correct the case where it changed, then work it out anew.',
  ),
  anew: say('Work it out anew'),
} as const

interface Clock {
  readonly hour: number
  readonly minute: number
}

/** "Valid until 14:20: look at the patient again within 1 h" */
export function validUntilText(until: Clock, reassess: Reassessment): string {
  return say('Valid until {time}: {why}', { time: clockText(until), why: remarkText(reassess.why) })
}

export function ranOutText(typed: Clock, until: Clock): string {
  return say('The case was typed or confirmed at {typed}; its plan was valid until {time}.', {
    typed: clockText(typed),
    time: clockText(until),
  })
}

/** For paper: date and time by the numbers, the same in every language. */
export function printedOnText(told: {
  readonly date: string
  readonly modelVersion: string
}): string {
  const { date, modelVersion } = told
  return say('Worked out {date}, model {modelVersion}. Valid only until the time above.', {
    date,
    modelVersion,
  })
}
