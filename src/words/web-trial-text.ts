// The set-up in sight on Bedside and what is tried on it: dials, what-if, what speaks against it. Leaves out the ranked list.
import type { FlowStep } from '../kit/source-row.ts'
import type { Goal } from '../patient/case.ts'
import type { Band, RankedSetUp, Reason } from '../planning/plan-types.ts'
import type { TrialRates } from '../planning/trial.ts'
import { goalText } from './goal-text.ts'
import {
  chanceText,
  fractionBandText,
  numberText,
  rangeText,
  saturationBandText,
  withUnit,
} from './number-text.ts'
import { reasonText } from './remark-text.ts'
import { say } from './say.ts'
import { flowStepText } from './set-up-text.ts'
import { oxygenText, saturationText } from './web-answer-text.ts'

export const SHOWN_WORDS = {
  onNow: say('On now'),
  inhaledNow: say('inhaled now'),
  inhaledThen: say('inhaled with this'),
  roomAir: say('Room air'),
  roomAirHelp: say('Room air alone: nothing is added, so there is no ribbon to draw.'),
  trialHelp: say('The list is still that of the case.'),
  back: say('Back to the case'),
  takeRate: say('Take this rate into the case'),
  trying: say('What if'),
  flow: say('Flow'),
  overFlow: say('Flow to the mask'),
  rate: say('Breathing rate'),
  less: say('One step less'),
  more: say('One step more'),
  oneStep: say('This source can be set to this flow only.'),
  offShelf: say(
    'The shelf does not hold this interface at this flow, or it lies outside its rated range.',
  ),
  showFirst: say('Show it'),
  pin: say('Pin it to compare'),
  beside: say('Beside what is on now'),
  whyNot: say('Why not this one?'),
  failed: say('This could not be worked out.'),
} as const

export function flowStepValueText(step: FlowStep): string {
  return flowStepText(step)
}

export function breathingRateText(ratePerMin: number): string {
  return withUnit(numberText(ratePerMin, 1), '/min')
}

/** "24/min, as typed" */
export function rateValueText(ratePerMin: number, rates: TrialRates): string {
  const rate = breathingRateText(ratePerMin)
  if (Math.round(ratePerMin) !== Math.round(rates.middlePerMin))
    return say('{rate}, tried', { rate })
  return rates.isTyped ? say('{rate}, as typed', { rate }) : say('{rate}, assumed', { rate })
}

/** What a trial changes, in one line. */
export function trialText(tried: {
  readonly flow: string | null
  readonly ratePerMin: number | null
}): string {
  const { flow, ratePerMin } = tried
  const rate = ratePerMin === null ? '' : breathingRateText(ratePerMin)
  if (flow === null) return say('Only a trial: breathing at {rate}, all else as it is', { rate })
  if (ratePerMin === null) return say('Only a trial: {flow}', { flow })
  return say('Only a trial: {flow}, breathing at {rate}', { flow, rate })
}

export function againstText(reason: Reason): string {
  return say('Ruled out here: {reason}', { reason: reasonText(reason) })
}

/** Where this is likely to land, in one sentence; for what is on now and for trials, which stand in no ranking. */
export function landsText(row: Pick<RankedSetUp, 'chance'>, goal: Goal): string {
  const { chance } = row
  if (chance === null) {
    return goal.kind === 'comfort'
      ? say('Comfort is the goal: no saturation is aimed at.')
      : say('As much oxygen as possible is the goal: the higher the fraction, the better.')
  }
  const { below, inRange, above } = chance
  const share = (part: number): string => withNoBreak(chanceText(part))
  if (inRange >= below && inRange >= above)
    return say('Likely in the goal: {share} of patients like this one.', { share: share(inRange) })
  return below >= above
    ? say('Likely below the goal: {share} of patients like this one.', { share: share(below) })
    : say('Likely above the goal: {share} of patients like this one.', { share: share(above) })
}

/** "On now, against saturation 94–98 % (acutely ill)" */
export function onNowEyebrowText(goal: Goal): string {
  return withNoBreak(say('On now, against {goal}', { goal: goalText(goal) }))
}

/** "about 91 %, 89–93 %; goal 94–98 %" */
export function forecastBesideText(band: Band, goal: Goal): string {
  const forecast = saturationBandText(band)
  if (goal.kind !== 'saturation') return withNoBreak(forecast)
  const range = rangeText({ low: goal.lowPercent, high: goal.highPercent, step: 1, unit: '%' })
  return withNoBreak(say('{forecast}; goal {range}', { forecast, range }))
}

/** "inhaled about 0.71, 0.58–0.8; saturation about 96 %, 94–98 %" */
export function firstGivesText(row: RankedSetUp): string {
  const fraction = fractionBandText(row.effectiveO2Fraction)
  if (row.saturationPercent === null) return say('inhaled {fraction}', { fraction })
  const saturation = saturationBandText(row.saturationPercent)
  return withNoBreak(say('inhaled {fraction}; saturation {saturation}', { fraction, saturation }))
}

/** "inhaled about 0.37, 0.31–0.43", "about 91 %, 89–93 %", "holds until 30/min, then below", "oxygen 3 L/min" */
export function rowNumberTexts(row: RankedSetUp, goal: Goal): readonly string[] {
  const hasRange = goal.kind === 'saturation' || goal.kind === 'fraction'
  return [
    say('inhaled {fraction}', { fraction: fractionBandText(row.effectiveO2Fraction) }),
    saturationText(row, goal),
    ...(hasRange ? [holdsPartText(row)] : []),
    say('oxygen {flow}', { flow: oxygenText(row) }),
  ].map(withNoBreak)
}

function holdsPartText({ holdsUntil }: RankedSetUp): string {
  const { ratePerMin, side } = holdsUntil
  if (ratePerMin === null) {
    if (side === null) return say('holds at every breathing rate')
    return side === 'below' ? say('below the goal already') : say('above the goal already')
  }
  const rate = withUnit(numberText(ratePerMin, 1), '/min')
  return side === 'above'
    ? say('holds until {rate}, then above', { rate })
    : say('holds until {rate}, then below', { rate })
}

/** One sentence, with the number that would change it. */
export function whyNotText(reason: Reason): string {
  const said = reasonText(reason)
  return `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`
}

/** Numbers kept on one line with their per-cent sign. */
function withNoBreak(said: string): string {
  return said.replaceAll(/(\d) (%|L\/min)/g, '$1\u00a0$2')
}
