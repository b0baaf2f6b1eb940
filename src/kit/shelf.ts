// What a hospital's shelf holds: wards, interfaces with sizes and counts, gas sources, humidifiers. Leaves out connectors, tubing and what is joined to what.
import type { EntrainmentSetting } from './families/entrainment.ts'
import type { FamilyId, SizeId } from './family-id.ts'
import type { SourceRow } from './source-row.ts'

export const SHELF_VERSION = 1

/** The place of a row that every ward may use. Any other place is the id of a ward. */
export const EVERYWHERE = 'everywhere'

export interface Ward {
  readonly id: string
  readonly name: string
  readonly beds: number
}

/** One size of an interface: how many there are, and the flows printed on the device where they differ from the usual. */
export interface SizeStock {
  readonly size: SizeId
  readonly count: number
  /** Typed from the device's own label; wins over the family's rated flow. */
  readonly ratedMinLpm?: number
  readonly ratedMaxLpm?: number
}

/** A setting of an entrainment valve as printed on the device. */
export type PrintedSetting = Pick<EntrainmentSetting, 'o2Fraction' | 'minimumLpm'> &
  Partial<Pick<EntrainmentSetting, 'fastBreathingLpm'>>

interface ShelfRow {
  readonly id: string
  readonly label: string
  /** A ward's id, or EVERYWHERE. */
  readonly place: string
  /** The ward's own marking, such as a colour; read by nobody. */
  readonly wardMarking?: string
}

export interface InterfaceRow extends ShelfRow {
  readonly family: FamilyId
  readonly sizes: readonly SizeStock[]
  /** Entrainment valves only; without it the usual settings of the family count. */
  readonly settings?: readonly PrintedSetting[]
  /** A humidification collar fits over the air ports. */
  readonly hasCollar?: boolean
}

/** A gas source, with what this hospital uses of it: steps out of those the scale has, and for which interfaces. */
export type ShelfSource = SourceRow & {
  readonly usedStepsLpm?: readonly number[]
  readonly usedFractions?: readonly number[]
  /** What it is kept for here; where absent, whatever it can feed. */
  readonly usedFor?: readonly FamilyId[]
  /** Unit printed on the scale; L/min where absent. */
  readonly markedIn?: 'L/min' | 'mL/min'
}

export const HUMIDIFIER_KINDS = ['bubble', 'collar', 'heated'] as const

export interface HumidifierRow extends ShelfRow {
  readonly kind: (typeof HUMIDIFIER_KINDS)[number]
  readonly count: number
}

export interface Shelf {
  readonly version: typeof SHELF_VERSION
  readonly hospital: string
  /** True where hospital and figures are made up, as in the demo. */
  readonly isInvented?: boolean
  readonly altitudeM?: number
  readonly wards: readonly Ward[]
  readonly interfaces: readonly InterfaceRow[]
  readonly sources: readonly ShelfSource[]
  readonly humidifiers: readonly HumidifierRow[]
}

/** Whether a ward can take the row from where it lies; without a ward, every row can be taken. */
export function isAtHand(row: { readonly place: string }, wardId: string | undefined): boolean {
  return wardId === undefined || row.place === EVERYWHERE || row.place === wardId
}
