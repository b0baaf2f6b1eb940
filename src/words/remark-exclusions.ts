// Why a set-up is ruled out. Leaves out what would change it, which flip-text.ts says.
import { AIRWAY_NAMES, FAMILY_NAMES, GOAL_KIND_NAMES, SIZE_NAMES } from './names.ts'
import { flowText, numberText, stepForWidth } from './number-text.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'
import { say } from './say.ts'
import { inShownUnit } from './shown-unit.ts'

export const EXCLUSION_TEXTS: RemarkTexts = {
  FACE_DOES_NOT_REACH_LUNGS: (v) =>
    say('{airway}: gas at mouth and nose does not reach the lungs', { airway: airwayOf(v) }),
  VALVE_DRAWS_FROM_TUBE: () =>
    say(
      'the speaking valve draws every breath in through the tube: gas at mouth and nose is not inhaled',
    ),
  NO_NECK_OPENING_IN_USE: (v) =>
    say('{airway}: no opening at the neck leads to the lungs', { airway: airwayOf(v) }),
  NOSE_BLOCKED: () => say('both nostrils are blocked or packed: gas in the nose is not inhaled'),
  HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE: () =>
    say('base-of-skull fracture: pressure in the nose may drive air or fluid into the skull'),
  CATHETER_AFTER_SKULL_BASE_FRACTURE: () =>
    say('base-of-skull fracture: a catheter pushed blindly through the nose may enter the skull'),
  CONTACT_ON_BURN_OR_INJURY: () => say('a mask would press on a burnt or injured face'),
  NEVER_DRY_TO_NECK: () => say('a bypassed upper airway is never given dry gas'),
  EXCHANGER_UNDER_WET_GAS: () =>
    say(
      'active humidification and a heat and moisture exchanger are never used together: take the exchanger off first',
    ),
  SIZE_FOR_OTHER_AGE: (v) =>
    say('size {size} does not fit at {age}', {
      size: sizeOf(v),
      age: ageText(numberOf(v, 'ageYears')),
    }),
  SIZE_FOR_OTHER_WEIGHT: (v) => {
    const size = sizeOf(v)
    const limit = kgText(numberOf(v, 'limitKg'))
    const weight = kgText(numberOf(v, 'weightKg'))
    return textOf(v, 'end') === 'least'
      ? say('size {size} is for {limit} and more, the patient weighs {weight}', {
          size,
          limit,
          weight,
        })
      : say('size {size} is for up to {limit}, the patient weighs {weight}', {
          size,
          limit,
          weight,
        })
  },
  BELOW_RATED_FLOW: (v) =>
    say('{flow} is below the least flow for this {family}, {limit}: rebreathing or an empty bag', {
      flow: flowOf(v),
      family: familyOf(v),
      limit: limitOf(v),
    }),
  ABOVE_RATED_FLOW: (v) =>
    say('{flow} is above the highest flow for this {family}, {limit}', {
      flow: flowOf(v),
      family: familyOf(v),
      limit: limitOf(v),
    }),
  ABOVE_CANNULA_CEILING: (v) =>
    say('{flow} is above the ceiling of a cannula at this age, {limit}', {
      flow: flowOf(v),
      limit: limitOf(v),
    }),
  HIGH_FLOW_ABOVE_CHILD_CEILING: (v) =>
    say('{flow} is above 2 L/min for each kg ({ceiling} here): local policy decides', {
      flow: flowOf(v),
      ceiling: flowText(numberOf(v, 'ceilingLpm'), 0.1),
    }),
  FLUSH_ONLY_WHEN_ALL_IS_WANTED: (v) =>
    say('flush is kept for as much oxygen as possible; the goal here is a {goal}', {
      goal: nameIn(GOAL_KIND_NAMES, textOf(v, 'goal')),
    }),
  BELOW_CLUSTER_FLOW: (v) =>
    say('{flow} is below the {limit} that cluster headache needs', {
      flow: flowOf(v),
      limit: limitOf(v),
    }),
}

const MONTHS_PER_YEAR = 12
const DAYS_PER_YEAR = 365.25

/** Days in the first month, months up to two years, then years. */
export function ageText(ageYears: number): string {
  if (ageYears < 1 / MONTHS_PER_YEAR)
    return say('{days} days', { days: numberText(ageYears * DAYS_PER_YEAR, 1) })
  if (ageYears < 2)
    return say('{months} months', { months: numberText(ageYears * MONTHS_PER_YEAR, 1) })
  return say('{years} years', { years: numberText(ageYears, 1) })
}

const KG_STEP_SHARE = 0.4

/** In the unit chosen. Two figures for an infant, whole ones from 10 on. */
export function kgText(weightKg: number): string {
  const { value, unit } = inShownUnit('weight', weightKg)
  return `${numberText(value, Math.min(1, stepForWidth(value * KG_STEP_SHARE)))} ${unit}`
}

function airwayOf(values: RemarkValues): string {
  return nameIn(AIRWAY_NAMES, textOf(values, 'airway'))
}

function sizeOf(values: RemarkValues): string {
  return nameIn(SIZE_NAMES, textOf(values, 'size'))
}

function familyOf(values: RemarkValues): string {
  return nameIn(FAMILY_NAMES, textOf(values, 'family'))
}

function flowOf(values: RemarkValues): string {
  return flowText(numberOf(values, 'flowLpm'))
}

function limitOf(values: RemarkValues): string {
  return flowText(numberOf(values, 'limitLpm'))
}

/** The same reasons in a few words, without numbers: for counting and for naming what is ruled out altogether. */
export const EXCLUSION_NAMES: Readonly<Record<string, string>> = {
  FACE_DOES_NOT_REACH_LUNGS: say('gas at mouth and nose does not reach the lungs'),
  VALVE_DRAWS_FROM_TUBE: say('the speaking valve draws from the tube'),
  NO_NECK_OPENING_IN_USE: say('no opening at the neck in use'),
  NOSE_BLOCKED: say('nose blocked'),
  HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE: say('base-of-skull fracture'),
  CATHETER_AFTER_SKULL_BASE_FRACTURE: say('catheter after a base-of-skull fracture'),
  CONTACT_ON_BURN_OR_INJURY: say('would press on a burnt or injured face'),
  NEVER_DRY_TO_NECK: say('dry gas to a bypassed upper airway'),
  EXCHANGER_UNDER_WET_GAS: say(
    'active humidification over a heat and moisture exchanger: take it off first',
  ),
  SIZE_FOR_OTHER_AGE: say('size for another age'),
  SIZE_FOR_OTHER_WEIGHT: say('size for another weight'),
  BELOW_RATED_FLOW: say('below the least flow'),
  ABOVE_RATED_FLOW: say('above the highest flow'),
  ABOVE_CANNULA_CEILING: say('above the ceiling of a cannula at this age'),
  HIGH_FLOW_ABOVE_CHILD_CEILING: say('above the ceiling of high flow for a small child'),
  FLUSH_ONLY_WHEN_ALL_IS_WANTED: say('flush kept for as much oxygen as possible'),
  BELOW_CLUSTER_FLOW: say('below the flow for cluster headache'),
  BAG_COLLAPSES: say('the bag would collapse'),
}
