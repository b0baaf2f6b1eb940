// A set-up of the shelf by the id somebody typed, or what was perhaps meant. Leaves out what is done with it.
import { DomainError } from '../errors.ts'
import { candidateSetUps } from '../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { closest } from '../patient/did-you-mean.ts'
import type { PlanWords } from './plan-question.ts'

export function namedCandidate(given: PlanWords, id: string): CandidateSetUp {
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
