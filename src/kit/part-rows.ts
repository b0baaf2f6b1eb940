// Shelf rows of what stands between source and patient: outlets, air flowmeters, tubing and hoses, fittings. Leaves out what joins to what.
import type { EndId, GasId } from './ends.ts'
import type { LabelFlow, OwnEnds, ShelfRow } from './shelf-row.ts'

export const OUTLET_KINDS = ['wall-outlet', 'cylinder'] as const
export type OutletKind = (typeof OUTLET_KINDS)[number]

/** A wall outlet (terminal unit), or a cylinder without a regulator of its own. */
export interface OutletRow extends ShelfRow, Pick<OwnEnds, 'outletEnd'> {
  readonly kind: OutletKind
  readonly gas: GasId
  readonly count: number
}

/** A flowmeter for medical air: for nebulisers and collars, never for oxygen tubing. */
export interface AirMeterRow extends ShelfRow, OwnEnds {
  readonly count: number
  readonly stepsLpm: readonly number[]
}

export const TUBE_KINDS = ['oxygen-tubing', 'breathing-hose'] as const
export type TubeKind = (typeof TUBE_KINDS)[number]

export interface TubeRow extends ShelfRow, LabelFlow {
  readonly kind: TubeKind
  readonly count: number
  readonly lengthM: number
  readonly boreMm: number
  /** A wire in the hose keeps the gas warm. */
  readonly isHeated?: boolean
  readonly hasWaterTrap?: boolean
  readonly inletEnd?: EndId
  readonly outletEnd?: EndId
}

export const FITTING_KINDS = [
  'adapter',
  'filter',
  'y-piece',
  'open-t-piece',
  'exhalation-port',
  'one-way-valve',
  'relief-valve',
  'reservoir',
  'cap',
  'cuffed-mask',
] as const
export type FittingKind = (typeof FITTING_KINDS)[number]

/** A passive part with its ends. `openEnds` lead into the room unless something closes them. */
export interface FittingRow extends ShelfRow, LabelFlow {
  readonly kind: FittingKind
  readonly count: number
  readonly inletEnds: readonly EndId[]
  /** Absent where gas ends here, as on a cap. */
  readonly outletEnd?: EndId
  readonly openEnds?: readonly EndId[]
  /** Ports or a valve that let gas out and cannot be capped. */
  readonly hasPorts?: boolean
}
