// What would change a reason: the input and the value it would have to have. Leaves out the reason itself.
import type { Flip } from '../planning/plan-types.ts'
import { fieldLabel } from './field-labels.ts'
import {
  AIRWAY_NAMES,
  BREATHING_NAMES,
  CHANGE_NAMES,
  FAMILY_NAMES,
  FIT_NAMES,
  GOAL_KIND_NAMES,
  HUMIDIFICATION_NAMES,
  NOSE_NAMES,
  RETENTION_NAMES,
  SIZE_NAMES,
} from './names.ts'
import { numberText, plainNumberText, withUnit } from './number-text.ts'
import { ageText, kgText } from './remark-exclusions.ts'
import { nameIn } from './remark-value.ts'
import { say } from './say.ts'

/** "changes if breathing rate were 22/min" */
export function flipText(flip: Flip): string {
  if (flip.path === 'patient.changes') {
    return say('changes without “{value}”', { value: nameIn(CHANGE_NAMES, String(flip.value)) })
  }
  return say('changes with {field}: {value}', {
    field: fieldLabel(flip.path),
    value: flipValueText(flip),
  })
}

/** Where no goal of the same width makes a set-up as likely as the first. */
export function noGoalText(): string {
  return say('no range of this width would put it level with the first')
}

/** Names of the values that paths of choices hold. */
const CHOICE_NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'patient.airway': AIRWAY_NAMES,
  'patient.airway.nose': NOSE_NAMES,
  'patient.retentionRisk': RETENTION_NAMES,
  'breathing.state': BREATHING_NAMES,
  'breathing.fit': FIT_NAMES,
  'goal.kind': GOAL_KIND_NAMES,
  'setUp.humidification': HUMIDIFICATION_NAMES,
  'setUp.family': FAMILY_NAMES,
  'setUp.size': SIZE_NAMES,
  'setUp.fit': FIT_NAMES,
}

const SWITCH_NAMES: Readonly<Record<string, string>> = { true: say('yes'), false: say('no') }

function flipValueText(flip: Flip): string {
  const { path, value, unit } = flip
  if (typeof value === 'string') {
    return withUnit(nameIn(CHOICE_NAMES[path] ?? SWITCH_NAMES, value), unit)
  }
  if (path === 'patient.ageYears') return ageText(value)
  if (path === 'patient.weightKg') return kgText(value)
  const step = FLIP_STEPS[path]
  return withUnit(step === undefined ? plainNumberText(value) : numberText(value, step), unit)
}

/** As fine as these are typed or set. */
const FLIP_STEPS: Readonly<Record<string, number>> = {
  'setUp.flowLpm': 0.01,
  'breathing.ratePerMin': 1,
  'breathing.tidalVolumeMl': 10,
  'breathing.mouthShare': 0.05,
  'goal.lowPercent': 1,
  'goal.highPercent': 1,
  'goal.low': 0.01,
  'goal.high': 0.01,
}
