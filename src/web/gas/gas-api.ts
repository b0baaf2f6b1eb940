// What the Gas page asks the core for, across the border of its worker. Leaves out how it is carried.
import type { Course, TransferPlan, TransferQuestion } from '../../supply/transfer.ts'
import type { Answer } from '../worker/core-api.ts'

export interface TransferRequest {
  /** The shelf is the worker's to add. */
  readonly question: Omit<TransferQuestion, 'shelf'>
  /** The leg that stands still, where one does. */
  readonly stopLegIndex: number | null
}

export interface TransferAnswer {
  readonly plan: TransferPlan
  readonly stopped: { readonly course: Course; readonly isCovered: boolean } | null
}

export interface GasApi {
  readonly transfer: (request: TransferRequest) => Answer<TransferAnswer>
}
