// Starting points that guidelines give, in one line each. Leaves out the source, which is shown beside.
import { FAMILY_NAMES } from './names.ts'
import { fractionText, rangeText } from './number-text.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'

export const GUIDELINE_TEXTS: RemarkTexts = {
  START_RISK_24: (v) => `at risk of carbon-dioxide retention: ${startOf(v)}`,
  START_RISK_28: (v) => `at risk of carbon-dioxide retention: ${startOf(v)}`,
  START_RISK_CANNULA: (v) => `at risk of carbon-dioxide retention: ${startOf(v)}`,
  START_RESERVOIR_15: (v) => `very low saturation or critical illness: ${startOf(v)}`,
  START_CANNULA_2_6: (v) => `acutely ill, not critical: ${startOf(v)} (preferred)`,
  START_SIMPLE_5_10: (v) => `acutely ill, not critical: ${startOf(v)}`,
  START_ALL_RESERVOIR_15: (v) => `as much oxygen as possible: ${startOf(v)}`,
  START_TRACHEOSTOMY_MASK: (v) =>
    `breathing through the neck: ${nameIn(FAMILY_NAMES, textOf(v, 'family'))}, adjusted to the range`,
  START_PRONGS_NEWBORN: (v) => `newborn: ${startOf(v)}`,
  START_PRONGS_INFANT: (v) => `infant: ${startOf(v)}`,
  START_PRONGS_CHILD: (v) => `child: ${startOf(v)}`,
}

const FLOW_STEP_LPM = 0.1

function startOf(values: RemarkValues): string {
  const flow = rangeText({
    low: numberOf(values, 'flowLpmMin'),
    high: numberOf(values, 'flowLpmMax'),
    step: FLOW_STEP_LPM,
    unit: 'L/min',
  })
  const family = nameIn(FAMILY_NAMES, textOf(values, 'family'))
  const setting =
    values['setO2Fraction'] === undefined
      ? ''
      : ` set to ${fractionText(numberOf(values, 'setO2Fraction'))}`
  return `${family}${setting}, ${flow}`
}
