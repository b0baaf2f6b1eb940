// Where a chain leaks or comes apart most easily: joints pushed on rather than screwed or latched. Leaves out how much leaks.
import type { Chain } from './chain.ts'
import { endsOf } from './check-joins.ts'
import { LEAK_POINTS, matingRule } from './mating-rules.ts'
import type { Hold } from './mating-rules.ts'

export interface LeakPoint {
  /** Place in the chain's joins. */
  readonly join: number
  readonly heldBy: Hold
}

export function leakPointsOf(chain: Chain): readonly LeakPoint[] {
  return chain.joins.flatMap((join, at) => {
    const { from, to } = endsOf(chain, join)
    const rule = from === null || to === null ? undefined : matingRule(from, to)
    return rule !== undefined && LEAK_POINTS.includes(rule.heldBy)
      ? [{ join: at, heldBy: rule.heldBy }]
      : []
  })
}
