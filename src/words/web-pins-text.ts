// Two pinned set-ups beside each other: what is before and after, and how far they differ, in words. Leaves out drawing.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import type { Trial } from '../planning/trial.ts'
import { flowText, fractionText, numberText } from './number-text.ts'
import { say } from './say.ts'
import { breathingRateText } from './web-trial-text.ts'

export const PIN_WORDS = {
  heading: say('Before and after'),
  before: say('before'),
  after: say('after'),
  swap: say('Change places'),
  clear: say('Take both away'),
  one: say('Pinned. Choose or try another and pin that too.'),
  working: say('Working out both …'),
  inWords: say('Both breaths in words'),
} as const

export function pinnedText(name: string, ratePerMin: number | null): string {
  return ratePerMin === null
    ? name
    : say('{name}, breathing at {rate}', { name, rate: breathingRateText(ratePerMin) })
}

interface Compared {
  readonly name: string
  readonly before: number
  readonly after: number
  readonly step: number
  readonly text: (value: number) => string
  readonly differenceText: (value: number) => string
}

/** One line for each quantity: before, after, and the difference as it follows from the shown values. */
export function differenceLines(before: Trial, after: Trial): readonly string[] {
  return [
    fraction(before, after),
    ...shares(before.breath, after.breath),
    ...saturation(before, after),
    oxygen(before, after),
  ].map(differenceLine)
}

function differenceLine(one: Compared): string {
  const [before, after] = [one.text(one.before), one.text(one.after)]
  const shown = (value: number): number => Math.round(value / one.step) * one.step
  const difference = shown(one.after) - shown(one.before)
  const { name } = one
  if (before === after) return say('{name}: {before} before and after', { name, before })
  const size = one.differenceText(Math.abs(difference))
  return difference > 0
    ? say('{name}: {before} before, {after} after, {size} more', { name, before, after, size })
    : say('{name}: {before} before, {after} after, {size} less', { name, before, after, size })
}

function fraction(before: Trial, after: Trial): Compared {
  return {
    name: say('Inhaled fraction'),
    before: before.effectiveO2Fraction.median,
    after: after.effectiveO2Fraction.median,
    step: 0.01,
    text: fractionText,
    differenceText: fractionText,
  }
}

function shares(
  before: DeliveredBreath | null,
  after: DeliveredBreath | null,
): readonly Compared[] {
  if (before === null || after === null) return []
  const share = (name: string, origin: 'room' | 'expired'): Compared => ({
    name,
    before: PER_CENT * before.origins[origin],
    after: PER_CENT * after.origins[origin],
    step: 1,
    text: percentText,
    differenceText: pointsText,
  })
  return [
    share(say('Room air in what is inhaled'), 'room'),
    share(say('Own expired gas in what is inhaled'), 'expired'),
  ]
}

function saturation(before: Trial, after: Trial): readonly Compared[] {
  if (before.saturationPercent === null || after.saturationPercent === null) return []
  return [
    {
      name: say('Saturation forecast'),
      before: before.saturationPercent.median,
      after: after.saturationPercent.median,
      step: 1,
      text: percentText,
      differenceText: pointsText,
    },
  ]
}

function oxygen(before: Trial, after: Trial): Compared {
  return {
    name: say('Oxygen used'),
    before: before.oxygenUsedLpm,
    after: after.oxygenUsedLpm,
    step: 0.1,
    text: (flowLpm) => flowText(flowLpm, 0.1),
    differenceText: (flowLpm) => flowText(flowLpm, 0.1),
  }
}

const PER_CENT = 100

function percentText(percent: number): string {
  return `${numberText(percent, 1)}\u00a0%`
}

/** The difference of two percentages is points, not per cent. */
function pointsText(points: number): string {
  return say('{points, plural, one {# point} other {# points}}', { points: Math.round(points) })
}
