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
import { say } from './say.ts'

const WHY_NOT_FIRST_TEXTS: RemarkTexts = {
  EQUAL_BUT_MORE_TO_BEAR: () =>
    say('equal to the first; harm, comfort, humidity, gas use or changes at the bed put it after'),
  MORE_TO_BEAR: () =>
    say('more to bear than the first: comfort, humidity, gas use, changes at the bed'),
  GIVES_LESS_OXYGEN: (v) =>
    say('inspired fraction {fraction} against {firstFraction} of the first', {
      fraction: fractionText(numberOf(v, 'o2Fraction')),
      firstFraction: fractionText(numberOf(v, 'firstO2Fraction')),
    }),
  LIKELY_BELOW_GOAL: (v) =>
    say('more likely below the goal than the first: {middle}', { middle: middleText(v) }),
  LIKELY_ABOVE_GOAL: (v) =>
    say('more likely above the goal than the first: {middle}', { middle: middleText(v) }),
}

const MISSING_TEXTS: RemarkTexts = {
  NOTHING_CAN_BE_BUILT: () => say('No set-up on this shelf suits this patient.'),
  NOTHING_REACHES_GOAL: (v) =>
    say('No set-up on this shelf is likely to reach the goal: the best chance is {bestChance}.', {
      bestChance: chanceText(numberOf(v, 'bestChance')),
    }),
  EVERYTHING_EXCEEDS_GOAL: (v) =>
    say(
      'Every set-up on this shelf is likely to exceed the goal: the best chance is {bestChance}. Ask whether oxygen is needed at all.',
      { bestChance: chanceText(numberOf(v, 'bestChance')) },
    ),
  CALL_FOR_SENIOR_HELP: () =>
    say('Call for senior help now; give the most oxygen at hand meanwhile.'),
  RULED_OUT_FAMILY: (v) =>
    say('Ruled out altogether: {family} ({reason}).', {
      family: nameIn(FAMILY_NAMES, textOf(v, 'family')),
      reason: nameIn(EXCLUSION_NAMES, textOf(v, 'reason')),
    }),
}

const COLLAPSE_TEXTS: RemarkTexts = {
  BAG_COLLAPSES: (v) =>
    say('at {flow} the bag would run empty in about {share} of patients like this', {
      flow: flowText(numberOf(v, 'flowLpm')),
      share: percentText(numberOf(v, 'bagEmptyShare'), 5),
    }),
}

const READING_TEXTS: RemarkTexts = {
  NO_READING: () =>
    say('type what is on now and the saturation on it: the forecast becomes narrower'),
  READING_NOT_TRUSTED: (v) =>
    say(
      'the saturation of {percent} is put aside: with carbon monoxide the oximeter is not to be trusted',
      { percent: percentOf(v, 'saturationPercent') },
    ),
  READING_BELOW_TESTED: (v) =>
    say('the saturation of {percent} is put aside: oximeters are tested down to {tested} only', {
      percent: percentOf(v, 'saturationPercent'),
      tested: percentOf(v, 'testedPercent'),
    }),
  READING_UNLIKELY: (v) =>
    say('hardly anyone like this reads {percent} on this: check probe, set-up and the case', {
      percent: percentOf(v, 'saturationPercent'),
    }),
  READING_TAKEN_EARLY: (v) =>
    say('the saturation was read after {time}, before {settled}: it counts for less', {
      time: durationText(numberOf(v, 'minutes')),
      settled: durationText(numberOf(v, 'settledMinutes')),
    }),
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
      ? say('inspired fraction about {fraction}', {
          fraction: fractionText(numberOf(values, 'o2Fraction')),
        })
      : say('saturation about {percent} %', {
          percent: numberText(numberOf(values, 'medianPercent'), 1),
        })
  return say('{middle}, chance in range {chance}', {
    middle,
    chance: chanceText(numberOf(values, 'chance')),
  })
}
