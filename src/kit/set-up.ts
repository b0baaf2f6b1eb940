// One set-up as it stands at the bed: interface, size, fit, source and what is set on it. Leaves out connectors.
import type { FamilyId, FitId, SizeId } from './family-id.ts'
import type { FlowStep, SourceRow } from './source-row.ts'

export interface SetUp {
  readonly family: FamilyId
  readonly size: SizeId
  readonly fit: FitId
  /** Shelf id of the interface; absent when the set-up was typed from the bedside. */
  readonly interfaceId?: string
  readonly source: SourceRow
  readonly flow: FlowStep
  /** Entrainment setting (printed fraction) or blended fraction; null where there is nothing to set. */
  readonly setO2Fraction: number | null
  /** Humidification collar on an entrainment device, or a bubble bottle on a low-flow one. */
  readonly humidification: 'none' | 'bubble' | 'collar' | 'heated'
  /** Cannula worn under a mask: the mask and its own flow. */
  readonly over: {
    readonly family: 'simple-mask'
    readonly flow: FlowStep
  } | null
}
