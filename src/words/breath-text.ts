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
  effective: 'effective inspired fraction, over all like this',
  printed: 'printed or quoted',
  opening: 'mean fraction at the airway opening',
  trachea: 'mean fraction in the windpipe',
  fresh: 'mean fraction of what is inhaled for the first time',
  breathToBreath: 'effective fraction from breath to breath',
  inspiredCo2: 'inspired carbon dioxide',
  margin: 'device stream against peak inspiratory flow',
  wasted: 'device gas never inhaled',
  bag: 'reservoir bag at its lowest',
  saturation: 'saturation, over all patients like this',
  alveolarO2: 'alveolar PO2',
  arterialO2: 'arterial PO2',
  oxygenUsed: 'oxygen used',
  clearance: 'flow that clears the upper airway',
  pressure: 'mean airway pressure, mouth open to closed',
} as const

export type BreathRow = keyof typeof BREATH_ROW_NAMES

export const RIBBON_WORDS = {
  title: 'Breath ribbon: where the inhaled gas comes from',
  flowAxis: 'inspiratory flow, L/min',
  fractionAxis: 'oxygen fraction at the airway opening',
  timeAxis: 'time from the start of the breath, s',
  before: 'before',
  after: 'after',
} as const

/** "about 0.45, 0.38–0.54; printed 0.4–0.6" */
export function onReallyText(really: {
  readonly effective: Band
  readonly printed: Range | null
}): string {
  return `${fractionBandText(really.effective)}; ${printedText(really.printed)}`
}

export function printedText(printed: Range | null): string {
  if (printed === null) return 'no printed value'
  return `printed ${rangeText({ ...printed, step: SHOWN_STEPS.o2Fraction })}`
}

export function effectiveLabelText(effectiveO2Fraction: number, isChecked: boolean): string {
  const said = `effective ${fractionText(effectiveO2Fraction)}`
  return isChecked ? said : `${said} ${UNCHECKED_MARK}`
}

export function openingLabelText(): string {
  return 'at the airway opening'
}

export function originText(origin: keyof Origins, share: number): string {
  return `${ORIGIN_NAMES[origin]}, ${percentText(share)}`
}

const LPM_STEP = 1
const TIME_STEP_S = 0.01

/** Gas the device brings at any moment, against what the breath draws at its peak. */
export function streamLabelText(streamLpm: number): string {
  return `device stream, warmed, ${streamText(streamLpm)}`
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
    `Effective inspired oxygen fraction ${fractionText(breath.effectiveO2Fraction)}; ${printedText(printed)}.`,
    `Of the inhaled gas: ${ORIGIN_ORDER.map((origin) => originText(origin, breath.origins[origin])).join('; ')}.`,
    `Breathing in lasts ${numberText(told.inspirationS, TIME_STEP_S)} s and peaks at ${numberText(told.peakFlowLpm, LPM_STEP)} L/min; the device brings ${streamText(told.streamLpm)} at body conditions: ${marginText(breath.demandMarginLpm)}.`,
    `Fraction at the airway opening: ${fractionText(fractions[0] ?? breath.openingO2Fraction)} at first, ${fractionText(Math.min(...fractions))} at its lowest, ${fractionText(fractions.at(-1) ?? breath.openingO2Fraction)} at the end.`,
    ...bagLines(breath),
  ]
}

export function marginText(marginLpm: number): string {
  const size = `${numberText(Math.abs(marginLpm), LPM_STEP)} L/min`
  return marginLpm < 0
    ? `${size} short of the peak, so other gas is drawn in`
    : `${size} more than the peak`
}

const BAG_STEP_L = 0.05

function bagLines(breath: DeliveredBreath): readonly string[] {
  if (breath.lowestBagL === null) return []
  return breath.bagRunsEmpty
    ? ['The reservoir bag runs empty in each breath: raise the flow.']
    : [`The reservoir bag keeps at least ${numberText(breath.lowestBagL, BAG_STEP_L)} L.`]
}
