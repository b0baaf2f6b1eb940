// Why a ranked set-up is not first, in one coded reason with the number that would change it.
import type { Goal } from '../patient/case.ts'
import type { Band, Chance, Reason } from './plan-types.ts'

export interface WhyNotQuestion {
  readonly goal: Goal
  readonly isFirst: boolean
  readonly isEqualToFirst: boolean
  readonly chance: Chance | null
  readonly saturationPercent: Band | null
  readonly effectiveO2Fraction: Band
  readonly firstO2Fraction: number
}

/** Null for the first. Equal ones say what broke the tie; others name the goal for which they would do as well as the first. */
export function whyNotFirst(question: WhyNotQuestion): Reason | null {
  if (question.isFirst) return null
  if (question.isEqualToFirst) return { code: 'EQUAL_BUT_MORE_TO_BEAR', values: {}, flip: null }
  const { goal } = question
  switch (goal.kind) {
    case 'saturation':
      return saturationReason(question, goal)
    case 'fraction':
      return fractionReason(question, goal)
    case 'as-much-as-possible':
      return {
        code: 'GIVES_LESS_OXYGEN',
        values: {
          o2Fraction: question.effectiveO2Fraction.median,
          firstO2Fraction: question.firstO2Fraction,
        },
        flip: null,
      }
    case 'comfort':
      return { code: 'MORE_TO_BEAR', values: {}, flip: null }
  }
}

/** The goal of the same width centred on this set-up's own forecast. */
function saturationReason(
  question: WhyNotQuestion,
  goal: Extract<Goal, { kind: 'saturation' }>,
): Reason {
  const median = question.saturationPercent?.median ?? 0
  const width = goal.highPercent - goal.lowPercent
  const highPercent = Math.min(100, Math.ceil(median + width / 2))
  const code = codeFor(question.chance)
  return {
    code,
    values: { medianPercent: median, chance: question.chance?.inRange ?? 0 },
    flip: { path: 'goal', value: `${highPercent - width}–${highPercent}`, unit: '%' },
  }
}

function fractionReason(
  question: WhyNotQuestion,
  goal: Extract<Goal, { kind: 'fraction' }>,
): Reason {
  const width = goal.high - goal.low
  const low = Math.max(0, question.effectiveO2Fraction.median - width / 2)
  return {
    code: codeFor(question.chance),
    values: {
      o2Fraction: question.effectiveO2Fraction.median,
      chance: question.chance?.inRange ?? 0,
    },
    flip: { path: 'goal', value: `${low.toFixed(2)}–${(low + width).toFixed(2)}` },
  }
}

function codeFor(chance: Chance | null): string {
  return chance !== null && chance.above > chance.below ? 'LIKELY_ABOVE_GOAL' : 'LIKELY_BELOW_GOAL'
}
