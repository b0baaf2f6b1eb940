// What a set-up delivers to the patient of a case: bands over the draws and the middle breath, for what is on now and for a named set-up.
import { DomainError } from '../errors.ts'
import { candidateSetUps } from '../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import type { Shelf } from '../kit/shelf.ts'
import { bedsideBreath } from '../planning/bedside-breath.ts'
import type { BedsideBreath } from '../planning/bedside-breath.ts'
import { closest } from '../patient/did-you-mean.ts'
import { makePlan } from '../planning/plan.ts'
import type { Plan, RankedSetUp, Reason } from '../planning/plan-types.ts'
import { UsageError } from './failure.ts'
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

function namedCandidate(given: PlanWords, id: string): CandidateSetUp {
  const candidates = candidateSetUps(given.shelf, given.wardId)
  const found = candidates.find((candidate) => candidate.id === id)
  if (found !== undefined) return found
  const suggestion = closest({ typed: id, choices: candidates.map((one) => one.id) })
  throw new DomainError({
    code: 'UNKNOWN_ID',
    path: 'set-up',
    value: id,
    ...(suggestion === undefined ? {} : { suggestion }),
  })
}

/** The same sample as a whole plan, on as little of the shelf as the answer needs. */
function planOf(given: PlanWords, candidate: CandidateSetUp | null): Plan {
  return makePlan({
    case: given.case,
    shelf: narrowed(given.shelf, candidate),
    draws: given.draws,
    seed: given.seed,
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
  })
}

/** Only the named interface and source can be taken; the other sources stay, because what is on now is looked up among them. */
function narrowed(shelf: Shelf, candidate: CandidateSetUp | null): Shelf {
  const setUp = candidate?.setUp
  return {
    ...shelf,
    interfaces: shelf.interfaces.filter(({ id }) => id === setUp?.interfaceId),
    sources: shelf.sources.map((row) => (row.id === setUp?.source.id ? row : { ...row, count: 0 })),
  }
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
