// What rows of a shelf have in common: id, label, place, marking, ends of their own, flows from a label. Leaves out the rows themselves.
import type { EndId } from './ends.ts'

export interface ShelfRow {
  readonly id: string
  readonly label: string
  /** A ward's id, or EVERYWHERE. */
  readonly place: string
  /** The ward's own marking, such as a colour; read by nobody. */
  readonly wardMarking?: string
}

/** Ends of a part where they differ from the usual ones of its kind (usual-ends.ts). */
export interface OwnEnds {
  /** Where gas comes in, one for each line that must feed the part. */
  readonly inletEnds?: readonly EndId[]
  readonly outletEnd?: EndId
}

/** Weights printed on the device whom it is for, kg. Either of them takes the place of the usual weights of its size; the usual ages stay. */
export interface LabelWeight {
  readonly fitsMinKg?: number
  readonly fitsMaxKg?: number
}

/** Flows printed on the device's own label; they win over the usual ones and are shown as such. */
export interface LabelFlow {
  readonly ratedMinLpm?: number
  readonly ratedMaxLpm?: number
}
