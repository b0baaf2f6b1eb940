// What is on really in words: its entries and the one honest line. Leaves out the other tools of Bedside.
import type { FamilyId } from '../kit/family-id.ts'
import type { Trial } from '../planning/trial.ts'
import { onReallyText } from './breath-text.ts'
import { NOT_CHECKED } from './caution-texts.ts'
import { FAMILY_NAMES } from './names.ts'
import { flowText, fractionText, numberText, withUnit } from './number-text.ts'
import { say } from './say.ts'

export const REALLY_WORDS = {
  heading: say('What is on really?'),
  help: say('Three entries and one tap: a line to copy.'),
  interface: say('interface'),
  flow: say('flow of the meter'),
  overFlow: say('flow to the mask over it'),
  rate: say('breathing rate counted'),
  tell: say('Tell me'),
  copy: say('Copy the line'),
  copied: say('Copied.'),
  notCopied: say('Copying is not allowed here. The line is selected: copy it by hand.'),
  working: say('Working it out …'),
  choose: say('please choose'),
  opening: say('Opening …'),
} as const

export function wearableText(worn: {
  readonly family: FamilyId
  readonly setO2Fraction: number | null
}): string {
  const family = FAMILY_NAMES[worn.family]
  return worn.setO2Fraction === null
    ? family
    : say('{family}, set to {fraction}', { family, fraction: fractionText(worn.setO2Fraction) })
}

/** The honest line: what is on, the fraction really inhaled with its spread, the printed one, and for whom this was worked out. */
export function reallyLineText(told: {
  readonly wearing: string
  readonly flowLpm: number
  /** Of a mask over it; null where none is. */
  readonly overFlowLpm: number | null
  readonly ratePerMin: number
  readonly trial: Trial
  readonly isOfCase: boolean
}): string {
  const { trial } = told
  const wearing = told.wearing.slice(0, 1).toUpperCase() + told.wearing.slice(1)
  const flow =
    told.overFlowLpm === null
      ? flowText(told.flowLpm)
      : say('{flow}, the mask over it at {overFlow}', {
          flow: flowText(told.flowLpm),
          overFlow: flowText(told.overFlowLpm),
        })
  const rate = withUnit(numberText(told.ratePerMin, 1), '/min')
  const really = onReallyText({
    effective: trial.effectiveO2Fraction,
    printed: trial.printedO2Fraction,
  })
  const said = told.isOfCase
    ? say('{wearing}, {flow}, breathing {rate}: inhaled {really}', { wearing, flow, rate, really })
    : say(
        '{wearing}, {flow}, breathing {rate}: inhaled {really}; for an average adult, no case was entered',
        { wearing, flow, rate, really },
      )
  return trial.isChecked ? said : say('{said}; {notChecked}', { said, notChecked: NOT_CHECKED })
}
