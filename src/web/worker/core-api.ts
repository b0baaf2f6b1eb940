// What the page asks the core for, across the worker's border. Leaves out how it is carried.
import type { Problem } from '../../errors.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { Case } from '../../patient/case.ts'
import type { Plan } from '../../planning/plan-types.ts'
import type { Trial, TrialQuestion, TrialRates } from '../../planning/trial.ts'
import type { EvidenceAnswer } from './evidence-answer.ts'
import type { MeasuredBeside, MeasuredQuestion } from './measured-beside.ts'

/** An answer, or what the core refuses, as data: errors lose their fields on the way between threads. */
export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem }

export interface PlanRequest {
  readonly about: Case
  readonly shelf: Shelf
  readonly wardId?: string
}

export interface TrialRequest {
  readonly request: PlanRequest
  /** `on-now`: the set-up that the case itself names. */
  readonly question: TrialQuestion | 'on-now'
}

export interface Tried {
  readonly trial: Trial
  readonly rates: TrialRates
}

export type Progress = (done: number, total: number) => void

export interface CoreApi {
  readonly plan: (request: PlanRequest, onProgress: Progress) => Answer<Plan>
  /** Draws a case once and keeps the draws while the same case is asked about. */
  readonly trial: (request: TrialRequest) => Answer<Tried>
  /** Loads the published measurements when first asked. */
  readonly measured: (question: MeasuredQuestion) => Promise<MeasuredBeside | null>
  /** Runs every outside check; loads them when first asked. */
  readonly evidence: (onProgress: Progress) => Promise<EvidenceAnswer>
}
