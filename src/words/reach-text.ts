// Words of the reach chart: axis, goal, rows read aloud. Leaves out drawing.
import type { Goal } from '../patient/case.ts'
import type { Plan, RankedSetUp } from '../planning/plan-types.ts'
import { NOT_CHECKED, UNCHECKED_MARK } from './caution-texts.ts'
import { goalText } from './goal-text.ts'
import { bandText, numberText } from './number-text.ts'
import { averagesText, chanceCellText, chanceLineText } from './plan-text.ts'
import { setUpShortText } from './set-up-text.ts'
import { say } from './say.ts'

export const REACH_WORDS = {
  title: say('Reach chart: what each set-up is likely to reach'),
  saturationAxis: say('saturation, %'),
  fractionAxis: say('effective inspired oxygen fraction'),
  goalBand: say('goal'),
  interval: say('likely range, 10–90 %, middle'),
  otherSteps: say('other steps of the same set-up'),
  empty: say('No set-up to draw.'),
} as const

/** Whether saturation is the axis: not where the goal is a fraction, or the oximeter is put aside. */
export function showsSaturation(goal: Goal): boolean {
  return goal.kind === 'saturation' || goal.kind === 'comfort'
}

export function reachLabelText(ranked: RankedSetUp): string {
  const mark = ranked.isChecked ? '' : ` ${UNCHECKED_MARK}`
  return `${ranked.rank}. ${setUpShortText(ranked.setUp)}${mark}`
}

export function reachChanceText(ranked: RankedSetUp): string {
  return ranked.chance === null ? '' : chanceCellText(ranked)
}

/** What stands over the rows: goal, and whose chances these are. */
export function reachHeadText(plan: Pick<Plan, 'goal' | 'reading'>): string {
  const said = `${REACH_WORDS.goalBand}: ${goalText(plan.goal)}`
  return plan.reading.isUsed ? said : `${said}; ${averagesText(plan.reading)}`
}

export function reachRowText(ranked: RankedSetUp, plan: Pick<Plan, 'goal' | 'reading'>): string {
  const { saturationPercent, effectiveO2Fraction } = ranked
  const reach =
    saturationPercent !== null && showsSaturation(plan.goal)
      ? say('saturation {band}', { band: bandText(saturationPercent, { step: 1, unit: '%' }) })
      : say('inspired fraction {band}', { band: bandText(effectiveO2Fraction, { step: 0.01 }) })
  const facts = [reach, chanceLineText(ranked, plan), ...(ranked.isChecked ? [] : [NOT_CHECKED])]
  return say('Rank {rank}, {setUp}: {facts}.', {
    rank: numberText(ranked.rank, 1),
    setUp: setUpShortText(ranked.setUp),
    facts: facts.join('; '),
  })
}
