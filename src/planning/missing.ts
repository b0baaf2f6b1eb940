// What to say when nothing on the shelf is likely to reach the goal.
import type { Goal } from '../patient/case.ts'
import type { ExcludedSetUp, RankedSetUp, Remark } from './plan-types.ts'

/** Below this chance nothing counts as reaching the goal: one in four (common practice). */
const REACHES_CHANCE = 0.25

export interface MissingQuestion {
  readonly goal: Goal
  readonly ranked: readonly RankedSetUp[]
  readonly excluded: readonly ExcludedSetUp[]
}

/** Empty while the first set-up has a fair chance. Otherwise: how far the best falls short, and what was ruled out that might help. */
export function missingRemarks(question: MissingQuestion): readonly Remark[] {
  const first = question.ranked[0]
  if (first === undefined)
    return [{ code: 'NOTHING_CAN_BE_BUILT', values: {} }, ...ruledOut(question)]
  if (first.chance === null || bestChance(question.ranked) >= REACHES_CHANCE) return []
  const tooLow = first.chance.below >= first.chance.above
  const code = tooLow ? 'NOTHING_REACHES_GOAL' : 'EVERYTHING_EXCEEDS_GOAL'
  return [
    { code, values: { bestChance: bestChance(question.ranked) } },
    ...(tooLow ? [{ code: 'CALL_FOR_SENIOR_HELP', values: {} }, ...ruledOut(question)] : []),
  ]
}

function bestChance(ranked: readonly RankedSetUp[]): number {
  return ranked.reduce((best, one) => Math.max(best, one.chance?.inRange ?? 0), 0)
}

/** Families that were ruled out altogether, each with the commonest reason. */
function ruledOut(question: MissingQuestion): readonly Remark[] {
  const kept = new Set(question.ranked.map((one) => one.setUp.family))
  const reasons = new Map<string, string>()
  for (const { setUp, reasons: found } of question.excluded) {
    const code = found[0]?.code
    if (!kept.has(setUp.family) && code !== undefined && !reasons.has(setUp.family))
      reasons.set(setUp.family, code)
  }
  return [...reasons].map(([family, reason]) => ({
    code: 'RULED_OUT_FAMILY',
    values: { family, reason },
  }))
}
