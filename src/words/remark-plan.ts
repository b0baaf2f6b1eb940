// What a plan says about itself: what is missing, why a set-up is not first. Leaves out cautions.
import { FAMILY_NAMES } from './names.ts'
import {
  chanceText,
  durationText,
  flowText,
  fractionText,
  numberText,
  percentText,
} from './number-text.ts'
import { EXCLUSION_NAMES } from './remark-exclusions.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'

const WHY_NOT_FIRST_TEXTS: RemarkTexts = {
  EQUAL_BUT_MORE_TO_BEAR: () =>
    'equal to the first; harm, comfort, humidity, gas use or changes at the bed put it after',
  MORE_TO_BEAR: () => 'more to bear than the first: comfort, humidity, gas use, changes at the bed',
  GIVES_LESS_OXYGEN: (v) =>
    `inspired fraction ${fractionText(numberOf(v, 'o2Fraction'))} against ${fractionText(numberOf(v, 'firstO2Fraction'))} of the first`,
  LIKELY_BELOW_GOAL: (v) => `more likely below the goal than the first: ${middleText(v)}`,
  LIKELY_ABOVE_GOAL: (v) => `more likely above the goal than the first: ${middleText(v)}`,
}

const MISSING_TEXTS: RemarkTexts = {
  NOTHING_CAN_BE_BUILT: () => 'No set-up on this shelf suits this patient.',
  NOTHING_REACHES_GOAL: (v) =>
    `No set-up on this shelf is likely to reach the goal: the best chance is ${chanceText(numberOf(v, 'bestChance'))}.`,
  EVERYTHING_EXCEEDS_GOAL: (v) =>
    `Every set-up on this shelf is likely to exceed the goal: the best chance is ${chanceText(numberOf(v, 'bestChance'))}. Ask whether oxygen is needed at all.`,
  CALL_FOR_SENIOR_HELP: () => 'Call for senior help now; give the most oxygen at hand meanwhile.',
  RULED_OUT_FAMILY: (v) =>
    `Ruled out altogether: ${nameIn(FAMILY_NAMES, textOf(v, 'family'))} (${nameIn(EXCLUSION_NAMES, textOf(v, 'reason'))}).`,
}

const COLLAPSE_TEXTS: RemarkTexts = {
  BAG_COLLAPSES: (v) =>
    `at ${flowText(numberOf(v, 'flowLpm'))} the bag would run empty in about ${percentText(numberOf(v, 'bagEmptyShare'), 5)} of patients like this`,
}

const READING_TEXTS: RemarkTexts = {
  NO_READING: () => 'type what is on now and the saturation on it: the forecast becomes narrower',
  READING_NOT_TRUSTED: (v) =>
    `the saturation of ${percentOf(v, 'saturationPercent')} is put aside: with carbon monoxide the oximeter is not to be trusted`,
  READING_BELOW_TESTED: (v) =>
    `the saturation of ${percentOf(v, 'saturationPercent')} is put aside: oximeters are tested down to ${percentOf(v, 'testedPercent')} only`,
  READING_UNLIKELY: (v) =>
    `hardly anyone like this reads ${percentOf(v, 'saturationPercent')} on this: check probe, set-up and the case`,
  READING_TAKEN_EARLY: (v) =>
    `the saturation was read after ${durationText(numberOf(v, 'minutes'))}, before ${durationText(numberOf(v, 'settledMinutes'))}: it counts for less`,
}

export const PLAN_REMARK_TEXTS: RemarkTexts = {
  ...READING_TEXTS,
  ...WHY_NOT_FIRST_TEXTS,
  ...MISSING_TEXTS,
  ...COLLAPSE_TEXTS,
}

function percentOf(values: RemarkValues, key: string): string {
  return `${numberText(numberOf(values, key), 1)} %`
}

function middleText(values: RemarkValues): string {
  const middle =
    values['medianPercent'] === undefined
      ? `inspired fraction about ${fractionText(numberOf(values, 'o2Fraction'))}`
      : `saturation about ${numberText(numberOf(values, 'medianPercent'), 1)} %`
  return `${middle}, chance in range ${chanceText(numberOf(values, 'chance'))}`
}
