// What is on the patient as typed, at the start or from a leg on: the kind of set-up with its numbers, or what is on at Bedside. Leaves out legs.
import type { SetUpOnNow } from '../../patient/case.ts'
import type { BesideFlows } from '../../supply/gas-drawn.ts'
import { AIR_O2_FRACTION } from '../../units/constants.ts'
import { ON_CHOICES } from '../../words/gas-transfer-choices.ts'
import type { OnChoice } from '../../words/gas-transfer-choices.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import type { Texts } from './kept-form.ts'
import type { FormReader, NumberRule } from './read-form.ts'

export const FLOW: NumberRule = { min: 0.01, max: 100, unit: 'L/min' }

export const ON_RULES = {
  setUpLpm: FLOW,
  setO2Fraction: { min: AIR_O2_FRACTION, max: 1 },
  biasFlowLpm: { min: 0, max: 100, unit: 'L/min' },
} as const satisfies Readonly<Record<string, NumberRule>>

export type OnField = keyof typeof ON_RULES

/** Set-ups that are typed, not taken from Bedside. */
export type TypedOn = Exclude<OnChoice, 'bedside'>
export const TYPED_ON: readonly TypedOn[] = ON_CHOICES.filter((choice) => choice !== 'bedside')

/** Fields that a set-up of this kind asks for. */
export const ON_FIELDS: Readonly<Record<OnChoice, readonly OnField[]>> = {
  bedside: [],
  'nasal-cannula': ['setUpLpm'],
  'simple-mask': ['setUpLpm'],
  'non-rebreather-mask': ['setUpLpm'],
  'entrainment-mask': ['setUpLpm', 'setO2Fraction'],
  'blended-high-flow': ['setUpLpm', 'setO2Fraction'],
  'ventilator-high-flow': ['setUpLpm', 'setO2Fraction', 'biasFlowLpm'],
}

export function onChoiceOf(texts: Texts): OnChoice {
  return ON_CHOICES.find((choice) => choice === texts['on']) ?? 'bedside'
}

/** Null where the set-up of before stays on. */
export function legOnOf(texts: Texts): TypedOn | null {
  return TYPED_ON.find((choice) => choice === texts['legOn']) ?? null
}

/** What is on, and what flows beside it; null where it could not be read, which is reported. */
export interface OnRead {
  readonly setUp: SetUpOnNow | null
  readonly beside: BesideFlows
}

export function startRead(reader: FormReader, texts: Texts, bedside: BedsideDraw): OnRead {
  const on = onChoiceOf(texts)
  if (on !== 'bedside') return typedRead(reader, on)
  if (bedside.kind === 'drawn') return { setUp: bedside.setUp, beside: {} }
  reader.report({ code: 'MISSING_FIELD', path: 'onNow.setUp', value: null }, 'on')
  return { setUp: null, beside: {} }
}

export function typedRead(reader: FormReader, on: TypedOn): OnRead {
  const flowLpm = reader.number('setUpLpm', FLOW)
  const setO2Fraction = ON_FIELDS[on].includes('setO2Fraction')
    ? { setO2Fraction: reader.number('setO2Fraction', ON_RULES.setO2Fraction) }
    : {}
  const biasFlowLpm = ON_FIELDS[on].includes('biasFlowLpm')
    ? reader.optional('biasFlowLpm', ON_RULES.biasFlowLpm)
    : undefined
  return {
    setUp: { ...kindOf(on), flowLpm, ...setO2Fraction },
    beside: biasFlowLpm === undefined ? {} : { biasFlowLpm },
  }
}

function kindOf(on: TypedOn): Pick<SetUpOnNow, 'family' | 'sourceKind'> {
  switch (on) {
    case 'blended-high-flow':
      return { family: 'nasal-high-flow', sourceKind: 'blender' }
    case 'ventilator-high-flow':
      return { family: 'nasal-high-flow', sourceKind: 'ventilator' }
    case 'nasal-cannula':
    case 'simple-mask':
    case 'non-rebreather-mask':
    case 'entrainment-mask':
      return { family: on, sourceKind: 'cylinder-regulator' }
  }
}
