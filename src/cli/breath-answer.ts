// What a set-up delivers to the patient of a case: bands over the draws and the middle breath, for what is on now and for a named set-up.
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { narrowShelf } from '../kit/narrow-shelf.ts'
import { bedsideBreath } from '../planning/bedside-breath.ts'
import type { BedsideBreath } from '../planning/bedside-breath.ts'
import { makePlan } from '../planning/plan.ts'
import type { Plan, RankedSetUp, Reason } from '../planning/plan-types.ts'
import { UsageError } from './failure.ts'
import { namedCandidate } from './named-candidate.ts'
import type { PlanWords } from './plan-question.ts'

export interface SetUpAnswer {
  /** `on-now`, or the id of the shelf's candidate. */
  readonly id: string
  readonly ranked: RankedSetUp | null
  /** Why the plan rules it out; then it has no bands. */
  readonly reasons: readonly Reason[]
  readonly setUp: RankedSetUp['setUp']
  readonly bedside: BedsideBreath
}

export interface BreathAnswer {
  readonly plan: Plan
  readonly onNow: SetUpAnswer | null
  readonly named: SetUpAnswer | null
}

export function breathAnswer(given: PlanWords, namedId: string | undefined): BreathAnswer {
  const candidate = namedId === undefined ? null : namedCandidate(given, namedId)
  const plan = planOf(given, candidate)
  const onNow = plan.onNow === null ? null : onNowAnswer(given, plan.onNow)
  const named = candidate === null ? null : namedAnswer(given, plan, candidate)
  if (onNow === null && named === null) {
    const isOnAir = given.case.onNow?.setUp === null
    throw new UsageError({ kind: isOnAir ? 'room-air-on-now' : 'nothing-on-now' })
  }
  return { plan, onNow, named }
}

/** The same sample as a whole plan, on as little of the shelf as the answer needs. */
function planOf(given: PlanWords, candidate: CandidateSetUp | null): Plan {
  return makePlan({
    case: given.case,
    shelf: narrowShelf(given.shelf, candidate?.setUp ?? null),
    draws: given.draws,
    seed: given.seed,
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
  })
}

function onNowAnswer(given: PlanWords, ranked: RankedSetUp): SetUpAnswer {
  return {
    id: ranked.id,
    ranked,
    reasons: [],
    setUp: ranked.setUp,
    bedside: bedside(given, ranked.setUp),
  }
}

function namedAnswer(given: PlanWords, plan: Plan, candidate: CandidateSetUp): SetUpAnswer {
  const { id } = candidate
  const ranked = plan.ranked.find((one) => one.id === id) ?? null
  const reasons = plan.excluded.find((one) => one.id === id)?.reasons ?? []
  return { id, ranked, reasons, setUp: candidate.setUp, bedside: bedside(given, candidate.setUp) }
}

function bedside(given: PlanWords, setUp: RankedSetUp['setUp']): BedsideBreath {
  return bedsideBreath({ case: given.case, setUp, seed: given.seed })
}
