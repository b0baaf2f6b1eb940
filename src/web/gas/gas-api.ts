// What the Gas page asks the core for, across the border of its worker. Leaves out how it is carried.
import type { Shelf } from '../../kit/shelf.ts'
import type { Course, TransferPlan, TransferQuestion } from '../../supply/transfer.ts'
import type { LightsOut } from '../../supply/lights-out.ts'
import type { WardDemand } from '../../supply/ward-demand.ts'
import type { WardFile } from '../../supply/ward.ts'
import type { Answer } from '../worker/core-api.ts'

export interface TransferRequest {
  readonly question: TransferQuestion
  /** The leg that stands still, where one does. */
  readonly stopLegIndex: number | null
}

export interface TransferAnswer {
  readonly plan: TransferPlan
  readonly stopped: { readonly course: Course; readonly isCovered: boolean } | null
}

/** A ward with the shelf whose meters and sources stand at its beds. */
export interface WardRequest {
  readonly ward: WardFile
  readonly shelf: Shelf
}

/** The demand with its simulation as numbers alone: a function does not cross the border. */
export type WardSummary = Omit<WardDemand, 'simulation'> & {
  readonly simulation: Omit<WardDemand['simulation'], 'shareAbove'>
  readonly shareAboveDesign: number
}

export interface GasApi {
  readonly ward: (request: WardRequest) => Answer<WardSummary>
  readonly drill: (request: WardRequest) => Answer<LightsOut>
  readonly transfer: (request: TransferRequest) => Answer<TransferAnswer>
}
