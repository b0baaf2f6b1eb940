// A part of a chain as the joining rules see it: what it is, its ends, how gas passes and where it can leave. Leaves out where it lies and what is set on it.
import type { EndId, GasId } from '../kit/ends.ts'
import type { FamilyId, SizeId } from '../kit/family-id.ts'
import type { FittingKind, OutletKind, TubeKind } from '../kit/part-rows.ts'
import type { HumidifierKind, HumidifierRow, ShelfSource } from '../kit/shelf.ts'
import type { LabelWeight } from '../kit/shelf-row.ts'
import type { SourceKind } from '../kit/source-row.ts'

/** `patient`: the opening gas goes to. `other-line`: a line into the body that is not for gas. */
export type PartKind =
  | OutletKind
  | SourceKind
  | 'air-flowmeter'
  | HumidifierKind
  | TubeKind
  | FittingKind
  | 'interface'
  | 'patient'
  | 'other-line'

export interface TubeSize {
  readonly lengthM: number
  readonly boreMm: number
  readonly isHeated: boolean
  readonly hasWaterTrap: boolean
}

export interface PartFlow {
  readonly minLpm?: number
  readonly maxLpm?: number
  /** Printed on the device and typed in; wins over ours. */
  readonly isFromLabel: boolean
}

export interface Part {
  /** Id of the shelf row; of an interface with its size: `simple-mask/adult`. */
  readonly id: string
  readonly kind: PartKind
  readonly label: string
  readonly inlets: readonly EndId[]
  /** Null where gas ends: at the patient, at a cap. */
  readonly outlet: EndId | null
  /** Lead into the room unless something closes them. */
  readonly openEnds: readonly EndId[]
  /** Lets surplus and expired gas out by ports, a valve, loose lying or the nose itself, and cannot be capped. */
  readonly isOpen: boolean
  readonly tube: TubeSize | null
  readonly flow: PartFlow
  /** Gas of an outlet or cylinder. */
  readonly gas?: GasId
  /** Flows that can be set on a meter, and fractions on a mixer or dial. */
  readonly marksLpm?: readonly number[]
  readonly fractions?: readonly number[]
  readonly family?: FamilyId
  readonly size?: SizeId
  /** Whom an interface is for by its label. */
  readonly fits?: LabelWeight
  /** The shelf's row of a source. */
  readonly source?: ShelfSource
  readonly humidifier?: HumidifierRow
}

/** Tells parts apart: ids are unique within a list of the shelf, and each list has kinds of its own. */
export function partKey({ kind, id }: Part): string {
  return `${kind}:${id}`
}
