// What a hospital's shelf holds: wards, interfaces with sizes and counts, gas sources, humidifiers, and the parts between them. Leaves out what joins to what.
import type { EntrainmentSetting } from './families/entrainment.ts'
import type { EndId } from './ends.ts'
import type { FamilyId, SizeId } from './family-id.ts'
import type { AirMeterRow, FittingRow, OutletRow, TubeRow } from './part-rows.ts'
import type { LabelFlow, LabelWeight, OwnEnds, ShelfRow } from './shelf-row.ts'
import type { SourceRow } from './source-row.ts'

export const SHELF_VERSION = 1

/** The place of a row that every ward may use. Any other place is the id of a ward. */
export const EVERYWHERE = 'everywhere'

export interface Ward {
  readonly id: string
  readonly name: string
  readonly beds: number
}

/** One size of an interface: how many there are, and the flows and weights printed on the device where they differ from the usual. */
export interface SizeStock extends LabelWeight {
  readonly size: SizeId
  readonly count: number
  /** Typed from the device's own label; wins over the family's rated flow. */
  readonly ratedMinLpm?: number
  readonly ratedMaxLpm?: number
}

/** A setting of an entrainment valve as printed on the device. */
export type PrintedSetting = Pick<EntrainmentSetting, 'o2Fraction' | 'minimumLpm'> &
  Partial<Pick<EntrainmentSetting, 'fastBreathingLpm'>>

export interface InterfaceRow extends ShelfRow {
  readonly family: FamilyId
  readonly sizes: readonly SizeStock[]
  /** Entrainment valves only; without it the usual settings of the family count. */
  readonly settings?: readonly PrintedSetting[]
  /** A humidification collar fits over the air ports. */
  readonly hasCollar?: boolean
  /** Where the gas comes in, if not by the usual end of the family. */
  readonly inletEnds?: readonly EndId[]
  /** Tubing that is fixed to it, as on most cannulas. */
  readonly tubing?: FixedTubing
}

export interface FixedTubing {
  readonly lengthM: number
  readonly boreMm: number
}

/** A gas source, with what this hospital uses of it: steps out of those the scale has, and for which interfaces. */
export type ShelfSource = SourceRow &
  OwnEnds & {
    readonly usedStepsLpm?: readonly number[]
    readonly usedFractions?: readonly number[]
    /** What it is kept for here; where absent, whatever it can feed. */
    readonly usedFor?: readonly FamilyId[]
    /** Unit printed on the scale; L/min where absent. */
    readonly markedIn?: 'L/min' | 'mL/min'
    /** Highest pressure it pushes with before it gives way or alarms, kPa; blenders and ventilators. */
    readonly pushesKpaMax?: number
    /** Blenders and ventilators: what leaves them when a supply fails. Absent is unknown. */
    readonly failure?: SupplyFailure
    /** Ventilators and blenders: gas drawn beyond what the patient line carries. Absent is unknown. */
    readonly biasFlowAddsToUse?: YesNoUnknown
    readonly leakCompensationAddsToUse?: YesNoUnknown
    /** Ventilators: a filter of the machine's own where the inspiratory limb begins. Absent is unknown. */
    readonly hasOwnFilter?: YesNoUnknown
    /** Ventilators: modes that can be chosen. */
    readonly modes?: readonly VentilatorMode[]
    /** Jet nebulisers: a heater warms the bottle. */
    readonly isHeated?: boolean
  }

export const YES_NO_UNKNOWN = ['yes', 'no', 'unknown'] as const
export type YesNoUnknown = (typeof YES_NO_UNKNOWN)[number]

export const AFTER_FAILURE = [
  'goes-on',
  'oxygen-alone',
  'air-alone',
  'room-air-only',
  'nothing',
  'unknown',
] as const
/** What still comes out after a supply has failed. */
export type AfterFailure = (typeof AFTER_FAILURE)[number]

export interface SupplyFailure {
  readonly air?: AfterFailure
  readonly oxygen?: AfterFailure
  readonly mains?: AfterFailure
}

export const MODE_KINDS = ['constant-flow', 'cycles-pressure'] as const
/** constant-flow: an even stream and no breaths. cycles-pressure: any mode that gives or supports breaths. */
export type ModeKind = (typeof MODE_KINDS)[number]

export interface VentilatorMode {
  readonly label: string
  readonly kind: ModeKind
}

/** Whether every mode that is named gives or supports breaths. Where none is named it is not known. */
export function hasNoEvenMode({ modes }: Pick<ShelfSource, 'modes'>): boolean {
  return (
    modes !== undefined && modes.length > 0 && modes.every(({ kind }) => kind !== 'constant-flow')
  )
}

export const HUMIDIFIER_KINDS = ['bubble', 'collar', 'heated', 'pass-over', 'exchanger'] as const
export type HumidifierKind = (typeof HUMIDIFIER_KINDS)[number]

/** What a chain may be asked to wet its gas with. Sheet addresses keep a place in this list: it only ever grows at its end. */
export const HUMIDIFICATIONS = ['none', ...HUMIDIFIER_KINDS] as const
export type Humidification = (typeof HUMIDIFICATIONS)[number]

/** Undefined for what is none. */
export function humidificationOf(value: unknown): Humidification | undefined {
  return HUMIDIFICATIONS.find((one) => one === value)
}

/** Large-volume jet nebulisers stand among the sources, as they set flow and fraction. */
export interface HumidifierRow extends ShelfRow, OwnEnds, LabelFlow {
  readonly kind: HumidifierKind
  readonly count: number
  /** Pressure at which its relief valve opens, kPa. */
  readonly reliefKpa?: number
  /** Water it holds when full, mL. */
  readonly waterMl?: number
  /** Water given off as printed, mg/L; exchangers: moisture returned. */
  readonly outputMgPerL?: number
  /** Exchangers: breath sizes printed, mL. */
  readonly tidalMinMl?: number
  readonly tidalMaxMl?: number
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
  /** Wall outlets and cylinders by gas. */
  readonly outlets?: readonly OutletRow[]
  /** Flowmeters for air, kept apart from those for oxygen. */
  readonly airMeters?: readonly AirMeterRow[]
  readonly tubes?: readonly TubeRow[]
  readonly fittings?: readonly FittingRow[]
}

/** Whether a ward can take the row from where it lies; without a ward, every row can be taken. */
export function isAtHand(row: { readonly place: string }, wardId: string | undefined): boolean {
  return wardId === undefined || row.place === EVERYWHERE || row.place === wardId
}
