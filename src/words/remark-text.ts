// The text of every remark the core makes by code. A code without a text is a bug, shown by test/words.test.ts.
import { assert } from '../errors.ts'
import type { Reason, Remark } from '../planning/plan-types.ts'
import { flipText, noGoalText } from './flip-text.ts'
import { EMERGENCY_TEXTS, GOAL_CAUTION_TEXTS, PLAN_CAUTION_TEXTS } from './remark-cautions.ts'
import { EXCLUSION_TEXTS } from './remark-exclusions.ts'
import {
  HUMIDITY_ASSUMPTION_TEXTS,
  NOT_MEASURED_TEXTS,
  REQUIREMENT_TEXTS,
} from './humidity-assumptions.ts'
import { HUMIDITY_RULE_TEXTS } from './humidity-rules.ts'
import { GUIDELINE_TEXTS } from './remark-guideline.ts'
import { PLAN_REMARK_TEXTS } from './remark-plan.ts'
import { HUMIDITY_TEXTS, PRINTED_TEXTS, SET_UP_TEXTS, WATCH_TEXTS } from './remark-set-ups.ts'
import type { RemarkTexts } from './remark-value.ts'

export const REMARK_TEXTS: RemarkTexts = {
  ...EMERGENCY_TEXTS,
  ...PLAN_CAUTION_TEXTS,
  ...GOAL_CAUTION_TEXTS,
  ...EXCLUSION_TEXTS,
  ...SET_UP_TEXTS,
  ...PRINTED_TEXTS,
  ...WATCH_TEXTS,
  ...HUMIDITY_TEXTS,
  ...HUMIDITY_RULE_TEXTS,
  ...HUMIDITY_ASSUMPTION_TEXTS,
  ...NOT_MEASURED_TEXTS,
  ...REQUIREMENT_TEXTS,
  ...GUIDELINE_TEXTS,
  ...PLAN_REMARK_TEXTS,
}

export function remarkText(remark: Pick<Remark, 'code' | 'values'>): string {
  const text = REMARK_TEXTS[remark.code]
  assert(text !== undefined, `words/text of ${remark.code}`)
  return text(remark.values)
}

/** Reasons that a goal elsewhere can change, or none can. */
const MISSES_GOAL = ['LIKELY_BELOW_GOAL', 'LIKELY_ABOVE_GOAL']

/** The reason and, where a number or state would change it, which. */
export function reasonText(reason: Reason): string {
  const said = remarkText(reason)
  if (reason.flip !== null) return `${said}; ${flipText(reason.flip)}`
  return MISSES_GOAL.includes(reason.code) ? `${said}; ${noGoalText()}` : said
}
