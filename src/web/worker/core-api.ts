// What the page asks the core for, across the worker's border. Leaves out how it is carried.
import type { DeliveredBreath } from '../../delivery/delivered-breath.ts'
import type { Problem } from '../../errors.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Case } from '../../patient/case.ts'
import type { Plan } from '../../planning/plan-types.ts'

/** An answer, or what the core refuses, as data: errors lose their fields on the way between threads. */
export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem }

export interface PlanRequest {
  readonly about: Case
  readonly wardId?: string
}

export interface BreathRequest {
  readonly about: Case
  readonly setUp: SetUp
}

export type Progress = (done: number, total: number) => void

export interface CoreApi {
  readonly plan: (request: PlanRequest, onProgress: Progress) => Answer<Plan>
  readonly breath: (request: BreathRequest) => Answer<DeliveredBreath>
}
