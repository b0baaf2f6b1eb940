// Starting points that guidelines give, in one line each. Leaves out the source, which is shown beside.
import { FAMILY_NAMES } from './names.ts'
import { fractionText, rangeText } from './number-text.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'
import { say } from './say.ts'

export const GUIDELINE_TEXTS: RemarkTexts = {
  START_RISK_24: (v) => say('at risk of carbon-dioxide retention: {start}', { start: startOf(v) }),
  START_RISK_28: (v) => say('at risk of carbon-dioxide retention: {start}', { start: startOf(v) }),
  START_RISK_CANNULA: (v) =>
    say('at risk of carbon-dioxide retention: {start}', { start: startOf(v) }),
  START_RESERVOIR_15: (v) =>
    say('very low saturation or critical illness: {start}', { start: startOf(v) }),
  START_CANNULA_2_6: (v) =>
    say('acutely ill, not critical: {start} (preferred)', { start: startOf(v) }),
  START_SIMPLE_5_10: (v) => say('acutely ill, not critical: {start}', { start: startOf(v) }),
  START_ALL_RESERVOIR_15: (v) => say('as much oxygen as possible: {start}', { start: startOf(v) }),
  START_TRACHEOSTOMY_MASK: (v) =>
    say('breathing through the neck: {family}, adjusted to the range', {
      family: nameIn(FAMILY_NAMES, textOf(v, 'family')),
    }),
  START_PRONGS_NEWBORN: (v) => say('newborn: {start}', { start: startOf(v) }),
  START_PRONGS_INFANT: (v) => say('infant: {start}', { start: startOf(v) }),
  START_PRONGS_CHILD: (v) => say('child: {start}', { start: startOf(v) }),
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
  if (values['setO2Fraction'] === undefined) return `${family}, ${flow}`
  const fraction = fractionText(numberOf(values, 'setO2Fraction'))
  return say('{family} set to {fraction}, {flow}', { family, fraction, flow })
}
