// Why a ranked set-up is not first, in one coded reason with the goal that would make it as good.
import type { Goal } from '../patient/case.ts'
import type { Evaluation } from './evaluate.ts'
import type { Flip, Reason } from './plan-types.ts'
import { BURDEN_REASONS, DRY_FLOW_LPM } from './burden.ts'
import { bandOf, chanceOf } from './score.ts'

export interface WhyNotQuestion {
  readonly goal: Goal
  readonly isEqualToFirst: boolean
  readonly own: Evaluation
  /** The first of the plan, by the same draws; null where there is nothing to compare with. */
  readonly first: Evaluation | null
  readonly burden: readonly number[]
  readonly firstBurden: readonly number[]
}

/** Null for the first. Equal ones say that a tie was broken; others name the nearest goal for which their chance is at least the first's. */
export function whyNotFirst(question: WhyNotQuestion): Reason | null {
  const { goal, own, first } = question
  if (first === null || first === own) return null
  if (question.isEqualToFirst) return equalReason(question, first)
  switch (goal.kind) {
    case 'saturation':
      return saturationReason(goal, own, first)
    case 'fraction':
      return fractionReason(goal, own, first)
    case 'as-much-as-possible':
      return givesLess(own, first)
    case 'comfort':
      return { code: 'MORE_TO_BEAR', values: {}, flip: null }
  }
}

/** What broke the tie: the first number of the burden in which it is worse; else its chance. */
function equalReason(question: WhyNotQuestion, first: Evaluation): Reason {
  const { burden, firstBurden, goal } = question
  const at = burden.findIndex((own, i) => own !== (firstBurden[i] ?? own))
  if (at < 0) return { code: 'EQUAL_IN_ALL', values: {}, flip: null }
  const own = burden[at] ?? 0
  const firstOwn = firstBurden[at] ?? 0
  const code = BURDEN_REASONS[at]
  if (own > firstOwn && code !== undefined) {
    const values = { own, first: firstOwn, limitLpm: DRY_FLOW_LPM }
    return { code, values, flip: null }
  }
  if (goal.kind === 'saturation' || goal.kind === 'fraction') {
    const values = { own: inRange(goal, question.own), first: inRange(goal, first) }
    return { code: 'EQUAL_BUT_LESS_LIKELY', values, flip: null }
  }
  return givesLess(question.own, first)
}

function inRange(
  goal: Extract<Goal, { kind: 'saturation' | 'fraction' }>,
  evaluation: Evaluation,
): number {
  return goal.kind === 'saturation'
    ? chanceOf(evaluation.shownPercent, { low: goal.lowPercent, high: goal.highPercent }).inRange
    : chanceOf(evaluation.effectiveO2Fraction, goal).inRange
}

function givesLess(own: Evaluation, first: Evaluation): Reason {
  return {
    code: 'GIVES_LESS_OXYGEN',
    values: {
      o2Fraction: bandOf(own.effectiveO2Fraction).median,
      firstO2Fraction: bandOf(first.effectiveO2Fraction).median,
    },
    flip: null,
  }
}

function saturationReason(
  goal: Extract<Goal, { kind: 'saturation' }>,
  own: Evaluation,
  first: Evaluation,
): Reason {
  const chance = chanceOf(own.shownPercent, { low: goal.lowPercent, high: goal.highPercent })
  const width = goal.highPercent - goal.lowPercent
  const low = nearestLow({
    from: goal.lowPercent,
    step: 1,
    min: 70,
    max: 100 - width,
    width,
    own: own.shownPercent,
    first: first.shownPercent,
  })
  const flip: Flip | null =
    low === null ? null : { path: 'goal', value: `${low}–${low + width}`, unit: '%' }
  return {
    code: codeFor(chance),
    values: { medianPercent: bandOf(own.shownPercent).median, chance: chance.inRange },
    flip,
  }
}

function fractionReason(
  goal: Extract<Goal, { kind: 'fraction' }>,
  own: Evaluation,
  first: Evaluation,
): Reason {
  const chance = chanceOf(own.effectiveO2Fraction, goal)
  const width = goal.high - goal.low
  const low = nearestLow({
    from: goal.low,
    step: 0.01,
    min: 0.21,
    max: 1 - width,
    width,
    own: own.effectiveO2Fraction,
    first: first.effectiveO2Fraction,
  })
  const flip: Flip | null =
    low === null ? null : { path: 'goal', value: `${low.toFixed(2)}–${(low + width).toFixed(2)}` }
  return {
    code: codeFor(chance),
    values: { o2Fraction: bandOf(own.effectiveO2Fraction).median, chance: chance.inRange },
    flip,
  }
}

interface LowSearch {
  readonly from: number
  readonly step: number
  readonly min: number
  readonly max: number
  readonly width: number
  readonly own: Float64Array
  readonly first: Float64Array
}

/** The lower end, nearest to the goal's own, of a range in which this set-up is likely at all and at least as likely as the first. */
function nearestLow(search: LowSearch): number | null {
  const steps = Math.round((search.max - search.min) / search.step)
  for (let k = 1; k <= steps; k++) {
    for (const low of [search.from + k * search.step, search.from - k * search.step]) {
      if (low < search.min - 1e-9 || low > search.max + 1e-9) continue
      const own = shareWithin(search.own, low, low + search.width)
      if (own >= LIKELY && own >= shareWithin(search.first, low, low + search.width)) return low
    }
  }
  return null
}

/** A range that a set-up reaches in fewer draws than this would be no goal to set. */
const LIKELY = 0.25

function shareWithin(values: Float64Array, low: number, high: number): number {
  let inside = 0
  for (const value of values) if (value >= low - 1e-9 && value <= high + 1e-9) inside++
  return inside / values.length
}

function codeFor(chance: { readonly below: number; readonly above: number }): string {
  return chance.above > chance.below ? 'LIKELY_ABOVE_GOAL' : 'LIKELY_BELOW_GOAL'
}
