// Words of one delivered breath: the honest line to copy, the ribbon's labels and its text equivalent. Leaves out drawing.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import type { Origins } from '../delivery/origins.ts'
import type { Band } from '../planning/plan-types.ts'
import { UNCHECKED_MARK } from './caution-texts.ts'
import { ORIGIN_NAMES } from './names.ts'
import {
  fractionBandText,
  fractionText,
  numberText,
  percentText,
  rangeText,
  SHOWN_STEPS,
} from './number-text.ts'
import { say } from './say.ts'

export interface Range {
  readonly low: number
  readonly high: number
}

/** Bottom to top in the ribbon, and the order in which they are read out. */
export const ORIGIN_ORDER = [
  'device',
  'stored',
  'room',
  'expired',
] as const satisfies readonly (keyof Origins)[]

/** Rows of the table of one breath, in the order they are shown. */
export const BREATH_ROW_NAMES = {
  effective: say('effective inspired fraction, over all like this'),
  printed: say('printed or quoted'),
  opening: say('mean fraction at the airway opening'),
  trachea: say('mean fraction in the windpipe'),
  fresh: say('mean fraction of what is inhaled for the first time'),
  breathToBreath: say('effective fraction from breath to breath'),
  inspiredCo2: say('inspired carbon dioxide'),
  margin: say('device stream against peak inspiratory flow'),
  wasted: say('device gas never inhaled'),
  bag: say('reservoir bag at its lowest'),
  saturation: say('saturation, over all patients like this'),
  alveolarO2: say('alveolar PO2'),
  arterialO2: say('arterial PO2'),
  oxygenUsed: say('oxygen used'),
  clearance: say('flow that clears the upper airway'),
  pressure: say('mean airway pressure, mouth open to closed'),
} as const

export type BreathRow = keyof typeof BREATH_ROW_NAMES

export const RIBBON_WORDS = {
  title: say('Breath ribbon: where the inhaled gas comes from'),
  flowAxis: say('inspiratory flow, L/min'),
  fractionAxis: say('oxygen fraction at the airway opening'),
  timeAxis: say('time from the start of the breath, s'),
  before: say('before'),
  after: say('after'),
} as const

/** "about 0.45, 0.38–0.54; printed 0.4–0.6" */
export function onReallyText(really: {
  readonly effective: Band
  readonly printed: Range | null
}): string {
  return `${fractionBandText(really.effective)}; ${printedText(really.printed)}`
}

export function printedText(printed: Range | null): string {
  if (printed === null) return say('no printed value')
  return say('printed {range}', { range: rangeText({ ...printed, step: SHOWN_STEPS.o2Fraction }) })
}

export function effectiveLabelText(effectiveO2Fraction: number, isChecked: boolean): string {
  const said = say('effective in this breath {fraction}', {
    fraction: fractionText(effectiveO2Fraction),
  })
  return isChecked ? said : `${said} ${UNCHECKED_MARK}`
}

export function openingLabelText(): string {
  return say('at the airway opening')
}

export function originText(origin: keyof Origins, share: number): string {
  return `${ORIGIN_NAMES[origin]}, ${percentText(share)}`
}

const LPM_STEP = 1
const TIME_STEP_S = 0.01

/** Gas the device brings at any moment, against what the breath draws at its peak. */
export function streamLabelText(streamLpm: number): string {
  return say('device stream, warmed, {stream}', { stream: streamText(streamLpm) })
}

function streamText(streamLpm: number): string {
  return `${numberText(streamLpm, streamLpm < 10 ? 0.1 : LPM_STEP)} L/min`
}

export function ribbonLines(told: {
  readonly breath: DeliveredBreath
  readonly printed: Range | null
  readonly inspirationS: number
  readonly peakFlowLpm: number
  readonly streamLpm: number
}): readonly string[] {
  const { breath, printed } = told
  const fractions = breath.ribbon.map((step) => step.openingO2Fraction)
  return [
    say('Effective inspired oxygen fraction {fraction}; {printed}.', {
      fraction: fractionText(breath.effectiveO2Fraction),
      printed: printedText(printed),
    }),
    say('Of the inhaled gas: {shares}.', {
      shares: ORIGIN_ORDER.map((origin) => originText(origin, breath.origins[origin])).join('; '),
    }),
    say(
      'Breathing in lasts {inspirationS} s and peaks at {peakFlowLpm} L/min; the device brings {stream} at body conditions: {margin}.',
      {
        inspirationS: numberText(told.inspirationS, TIME_STEP_S),
        peakFlowLpm: numberText(told.peakFlowLpm, LPM_STEP),
        stream: streamText(told.streamLpm),
        margin: marginText(breath.demandMarginLpm),
      },
    ),
    say(
      'Fraction at the airway opening: {first} at first, {lowest} at its lowest, {last} at the end.',
      {
        first: fractionText(fractions[0] ?? breath.openingO2Fraction),
        lowest: fractionText(Math.min(...fractions)),
        last: fractionText(fractions.at(-1) ?? breath.openingO2Fraction),
      },
    ),
    ...bagLines(breath),
  ]
}

export function marginText(marginLpm: number): string {
  const size = `${numberText(Math.abs(marginLpm), LPM_STEP)} L/min`
  return marginLpm < 0
    ? say('{size} short of the peak, so other gas is drawn in', { size })
    : say('{size} more than the peak', { size })
}

const BAG_STEP_L = 0.05

function bagLines(breath: DeliveredBreath): readonly string[] {
  if (breath.lowestBagL === null) return []
  return breath.bagRunsEmpty
    ? [say('The reservoir bag runs empty in each breath: raise the flow.')]
    : [
        say('The reservoir bag keeps at least {volume} L.', {
          volume: numberText(breath.lowestBagL, BAG_STEP_L),
        }),
      ]
}
