// The words of the Evidence page around the checks: headings, filters, counts. Leaves out the checks themselves.
import type { FamilySummary, MissSummary } from '../evidence/family-summary.ts'
import { RULE_NAMES } from './evidence-text.ts'
import { numberText } from './number-text.ts'
import { say } from './say.ts'

export const EVIDENCE_PAGE = {
  heading: say('Evidence'),
  lead: say(
    'Every outside check runs here, on this device, with the same model that answers at the bedside.',
  ),
  working: say('Running the checks …'),
  plot: say('Published against ours'),
  inWords: say('The same in words'),
  families: say('By interface'),
  rows: say('All checks'),
  rowsHelp: say('Those that miss come first, the worst at the head.'),
  family: say('interface'),
  group: say('kind of check'),
  source: say('source'),
  quantity: say('what is compared'),
  result: say('result'),
  text: say('words in it'),
  all: say('all'),
  clear: say('Show all checks again'),
  more: say('Show more'),
  none: say('No check fits this choice.'),
  noMeasurement: say('No measurement exists'),
  noMeasurementHelp: say(
    'No published measurement was found for this interface. Its numbers are widened and say so.',
  ),
  published: say('published'),
  ours: say('ours'),
  rule: say('rule of thumb'),
  oursSame: say('ours, same rows'),
  whose: say('less the published value'),
  bias: say('bias'),
  rms: say('RMS'),
  worst: say('worst'),
  count: say('rows'),
  link: say('Link to this check'),
} as const

export const GROUP_NAMES = {
  measured: say('measured'),
  formula: say('formula or table'),
  limiting: say('limiting case'),
  trend: say('direction only'),
  calibrate: say('calibrates, judges nothing'),
  context: say('shown only'),
} as const

export const RESULT_NAMES = {
  miss: say('miss'),
  pass: say('pass'),
  none: say('not judged'),
} as const

/** "340 of 1357 checks" */
export function checksText(progress: { readonly done: number; readonly total: number }): string {
  const { done, total } = progress
  return say('{done} of {total} checks', { done, total })
}

/** "17 checks, 40 of them below" */
export function shownText(count: number, shown: number): string {
  return say('{count, plural, one {# check} other {# checks}}, {shown} shown', { count, shown })
}

/** "9 judged, 2 miss" */
export function judgedText({ judged, missed }: FamilySummary): string {
  return say('{judged} judged by measurement, {missed} miss', { judged, missed })
}

export function ruleNamesText(rule: NonNullable<FamilySummary['rule']>): string {
  return rule.ruleIds.map((id) => RULE_NAMES[id]).join(', ')
}

const MISS_STEP = 0.001

/** Bias, RMS, worst, rows, as cells of a table. */
export function missCells(misses: MissSummary): readonly string[] {
  const signed = (value: number): string => (value > 0 ? '+' : '') + numberText(value, MISS_STEP)
  return [
    signed(misses.bias),
    numberText(misses.rms, MISS_STEP),
    signed(misses.worst),
    String(misses.rows),
  ]
}
