// Hard reasons against a set-up, each a row with its source and what would change it. Leaves out what depends on the computed breath.
import { exclusionsByAirway } from './exclusions-airway.ts'
import { exclusionsByFlow } from './exclusions-flow.ts'
import type { ExclusionRule, PlanSubject } from './exclusion-rule.ts'
import type { Reason } from './plan-types.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'

export const EXCLUSION_RULES: readonly ExclusionRule[] = [
  ...exclusionsByAirway,
  ...exclusionsByFlow,
]

/** All hard reasons that apply; empty when the set-up may be ranked. */
export function exclusionsOf(
  subject: PlanSubject,
  candidate: Pick<CandidateSetUp, 'setUp' | 'rated'>,
): readonly Reason[] {
  return EXCLUSION_RULES.flatMap((rule) => {
    const found = rule.applies(subject, candidate.setUp, candidate.rated)
    if (found === null) return []
    const { known, source } = rule
    return [
      {
        code: rule.code,
        values: found.values,
        flip: found.flip,
        known,
        ...(source === undefined ? {} : { source }),
      },
    ]
  })
}
