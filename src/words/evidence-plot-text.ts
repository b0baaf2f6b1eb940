// The words of the evidence plot and its text equivalent. Leaves out the drawing.
import type { FractionPoint } from '../evidence/fraction-points.ts'
import { FAMILY_NAMES } from './names.ts'
import { fractionText, numberText } from './number-text.ts'
import { say } from './say.ts'

export const PLOT_WORDS = {
  title: say('Measured oxygen fractions, published against ours'),
  ours: say('Ours'),
  rule: say('Usual rule of thumb'),
  published: say('published fraction'),
  legendPass: say('within the published spread or tolerance'),
  legendMiss: say('beyond it'),
  legendSpread: say('published spread or tolerance'),
  legendEqual: say('on the slanting line both are equal'),
  none: say('No measurement of a fraction exists for this choice.'),
} as const

const MISS_STEP = 0.001

export interface MissFigures {
  readonly rows: number
  readonly bias: number
  readonly rms: number
}

/** "11 rows, bias −0.02, RMS 0.05" */
export function figuresText({ rows, bias, rms }: MissFigures): string {
  return say('{rows, plural, one {# row} other {# rows}}, bias {bias}, RMS {rms}', {
    rows,
    bias: (bias > 0 ? '+' : '') + numberText(bias, MISS_STEP),
    rms: numberText(rms, MISS_STEP),
  })
}

/** One sentence for a family in the text equivalent. */
export function familyPointsText(about: {
  readonly family: FractionPoint['family']
  readonly ours: MissFigures
  readonly rule: MissFigures | null
}): string {
  const { family, ours, rule } = about
  const name = FAMILY_NAMES[family]
  return rule === null
    ? say('{family}: ours {ours}; no rule of thumb.', { family: name, ours: figuresText(ours) })
    : say('{family}: ours {ours}; rule of thumb {rule}.', {
        family: name,
        ours: figuresText(ours),
        rule: figuresText(rule),
      })
}

/** "Beyond: row-id, published 0.54, ours 0.66." */
export function missedPointText(point: FractionPoint): string {
  return say('Beyond the spread: {row}, published {published}, ours {ours}.', {
    row: point.rowId,
    published: fractionText(point.publishedO2Fraction),
    ours: fractionText(point.ourO2Fraction),
  })
}
