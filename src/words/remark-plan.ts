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
  EQUAL_BUT_LESS_LIKELY: (v) =>
    say(
      'equal to the first within what the draws can tell: chance {chance} against {firstChance}',
      {
        chance: chanceText(numberOf(v, 'own')),
        firstChance: chanceText(numberOf(v, 'first')),
      },
    ),
  EQUAL_BUT_MORE_HARM: (v) =>
    say('equal to the first, but outside the goal in {share} against {firstShare} of patients', {
      share: percentText(numberOf(v, 'own'), 5),
      firstShare: percentText(numberOf(v, 'first'), 5),
    }),
  EQUAL_BUT_NOT_CHECKED: () => say('equal to the first, but 0 published measurements check it'),
  EQUAL_BUT_MORE_TO_HANDLE: (v) =>
    say('equal to the first, but its source has more that can fail: {own} against {first} of 3', {
      own: numberText(numberOf(v, 'own'), 1),
      first: numberText(numberOf(v, 'first'), 1),
    }),
  EQUAL_BUT_OTHER_SIZE: () =>
    say('equal to the first, but 1 size off the usual one for this patient'),
  EQUAL_BUT_LESS_COMFORT: (v) =>
    say(
      'equal to the first, but more to wear: {own} against {first} on a scale from 0, hardly noticed',
      {
        own: numberText(numberOf(v, 'own'), 1),
        first: numberText(numberOf(v, 'first'), 1),
      },
    ),
  EQUAL_BUT_DRIER: (v) =>
    say(
      'equal to the first, but dry gas above {flow}: at or below it, or humidified, it would stand level',
      {
        flow: flowText(numberOf(v, 'limitLpm')),
      },
    ),
  EQUAL_BUT_MORE_OXYGEN: (v) =>
    say('equal to the first, but uses {own} of oxygen against {first}', {
      own: flowText(numberOf(v, 'own'), 0.5),
      first: flowText(numberOf(v, 'first'), 0.5),
    }),
  EQUAL_BUT_MORE_CHANGES: (v) =>
    say('equal to the first, but {own} things to change at the bed against {first}', {
      own: numberText(numberOf(v, 'own'), 1),
      first: numberText(numberOf(v, 'first'), 1),
    }),
  EQUAL_IN_ALL: () => say('equal to the first in every respect: 0 points apart'),
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

const REASSESS_TEXTS: RemarkTexts = {
  REASSESS_CRITICAL: (v) =>
    say('critically ill: look again within {time}', { time: withinText(v) }),
  REASSESS_BLOOD_GAS: (v) =>
    say('at risk of retaining carbon dioxide: blood gas and a new look within {time}', {
      time: withinText(v),
    }),
  REASSESS_NO_READING: (v) =>
    say('no saturation was given: read it and look again within {time}', { time: withinText(v) }),
  REASSESS_COMFORT: (v) =>
    say('comfort is the goal: look again within {time}', { time: withinText(v) }),
  REASSESS_HOURLY: (v) => say('look at the patient again within {time}', { time: withinText(v) }),
}

function withinText(values: RemarkValues): string {
  return durationText(numberOf(values, 'withinMin'))
}

export const PLAN_REMARK_TEXTS: RemarkTexts = {
  ...READING_TEXTS,
  ...REASSESS_TEXTS,
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
