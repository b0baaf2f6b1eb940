// Gathers set-ups of one rank that differ in nothing but the source under the first of them, so that a list shows choices and not meters.
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { stepCode } from '../kit/flow-steps.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Twin } from './plan-types.ts'
import type { Placed } from './ranking.ts'

interface Row {
  readonly place: Placed
  readonly candidate: CandidateSetUp
}

/** Keeps the order; every row is either kept or a twin of exactly one kept row. */
export function gatherTwins<R extends Row>(
  rows: readonly R[],
): readonly (R & { readonly twins: readonly Twin[] })[] {
  const kept = new Map<string, R & { twins: Twin[] }>()
  for (const row of rows) {
    const key = `${row.place.rank}|${faceKey(row.candidate.setUp)}`
    const first = kept.get(key)
    if (first === undefined) kept.set(key, { ...row, twins: [] })
    else first.twins.push({ id: row.candidate.id, source: row.candidate.setUp.source })
  }
  return [...kept.values()]
}

/** What the patient wears and what is set, without where the gas comes from. */
function faceKey(setUp: SetUp): string {
  const over = setUp.over === null ? '' : `${setUp.over.family}#${stepCode(setUp.over.flow)}`
  return [
    setUp.interfaceId,
    setUp.family,
    setUp.size,
    stepCode(setUp.flow),
    setUp.setO2Fraction,
    over,
  ].join('|')
}
