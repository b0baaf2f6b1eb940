// Why a set-up is ruled out. Leaves out what would change it, which flip-text.ts says.
import { AIRWAY_NAMES, FAMILY_NAMES, GOAL_KIND_NAMES, SIZE_NAMES } from './names.ts'
import { flowText, numberText, stepForWidth } from './number-text.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'

export const EXCLUSION_TEXTS: RemarkTexts = {
  FACE_DOES_NOT_REACH_LUNGS: (v) =>
    `${airwayOf(v)}: gas at mouth and nose does not reach the lungs`,
  VALVE_DRAWS_FROM_TUBE: () =>
    'the speaking valve draws every breath in through the tube: gas at mouth and nose is not inhaled',
  NO_NECK_OPENING_IN_USE: (v) => `${airwayOf(v)}: no opening at the neck leads to the lungs`,
  NOSE_BLOCKED: () => 'both nostrils are blocked or packed: gas in the nose is not inhaled',
  HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE: () =>
    'base-of-skull fracture: pressure in the nose may drive air or fluid into the skull',
  CONTACT_ON_BURN_OR_INJURY: () => 'a mask would press on a burnt or injured face',
  NEVER_DRY_TO_NECK: () => 'a bypassed upper airway is never given dry gas',
  EXCHANGER_UNDER_WET_GAS: () =>
    'active humidification and a heat and moisture exchanger are never used together',
  SIZE_FOR_OTHER_AGE: (v) =>
    `size ${sizeOf(v)} does not fit at ${ageText(numberOf(v, 'ageYears'))}`,
  SIZE_FOR_OTHER_WEIGHT: (v) =>
    `size ${sizeOf(v)} is for up to ${kgText(numberOf(v, 'limitKg'))}, the patient weighs ${kgText(numberOf(v, 'weightKg'))}`,
  BELOW_RATED_FLOW: (v) =>
    `${flowOf(v)} is below the least flow for this ${familyOf(v)}, ${limitOf(v)}: rebreathing or an empty bag`,
  ABOVE_RATED_FLOW: (v) =>
    `${flowOf(v)} is above the highest flow for this ${familyOf(v)}, ${limitOf(v)}`,
  ABOVE_CANNULA_CEILING: (v) =>
    `${flowOf(v)} is above the ceiling of a cannula at this age, ${limitOf(v)}`,
  HIGH_FLOW_ABOVE_CHILD_CEILING: (v) =>
    `${flowOf(v)} is above 2 L/min for each kg (${flowText(numberOf(v, 'ceilingLpm'), 0.1)} here): local policy decides`,
  FLUSH_ONLY_WHEN_ALL_IS_WANTED: (v) =>
    `flush is kept for as much oxygen as possible; the goal here is a ${nameIn(GOAL_KIND_NAMES, textOf(v, 'goal'))}`,
  BELOW_CLUSTER_FLOW: (v) => `${flowOf(v)} is below the ${limitOf(v)} that cluster headache needs`,
}

const MONTHS_PER_YEAR = 12
const DAYS_PER_YEAR = 365.25

/** Days in the first month, months up to two years, then years. */
export function ageText(ageYears: number): string {
  if (ageYears < 1 / MONTHS_PER_YEAR) return `${numberText(ageYears * DAYS_PER_YEAR, 1)} days`
  if (ageYears < 2) return `${numberText(ageYears * MONTHS_PER_YEAR, 1)} months`
  return `${numberText(ageYears, 1)} years`
}

const KG_STEP_SHARE = 0.4

/** Two figures for an infant, whole kilograms from 10 kg. */
export function kgText(weightKg: number): string {
  return `${numberText(weightKg, Math.min(1, stepForWidth(weightKg * KG_STEP_SHARE)))} kg`
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
  FACE_DOES_NOT_REACH_LUNGS: 'gas at mouth and nose does not reach the lungs',
  VALVE_DRAWS_FROM_TUBE: 'the speaking valve draws from the tube',
  NO_NECK_OPENING_IN_USE: 'no opening at the neck in use',
  NOSE_BLOCKED: 'nose blocked',
  HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE: 'base-of-skull fracture',
  CONTACT_ON_BURN_OR_INJURY: 'would press on a burnt or injured face',
  NEVER_DRY_TO_NECK: 'dry gas to a bypassed upper airway',
  EXCHANGER_UNDER_WET_GAS: 'active humidification over a heat and moisture exchanger',
  SIZE_FOR_OTHER_AGE: 'size for another age',
  SIZE_FOR_OTHER_WEIGHT: 'size for another weight',
  BELOW_RATED_FLOW: 'below the least flow',
  ABOVE_RATED_FLOW: 'above the highest flow',
  ABOVE_CANNULA_CEILING: 'above the ceiling of a cannula at this age',
  HIGH_FLOW_ABOVE_CHILD_CEILING: 'above the ceiling of high flow for a small child',
  FLUSH_ONLY_WHEN_ALL_IS_WANTED: 'flush kept for as much oxygen as possible',
  BELOW_CLUSTER_FLOW: 'below the flow for cluster headache',
  BAG_COLLAPSES: 'the bag would collapse',
}
