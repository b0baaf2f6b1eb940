// What an interface family is: where it sits, what feeds it, sizes, rated flows and the numbers of its gas behaviour. Holds no values.
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'
import type { FamilyId, FeedId, FitId, OpeningId, SizeId } from './family-id.ts'

/** A number that is not known exactly, with where it is from. */
export interface SourcedSpread extends Provenance {
  readonly spread: Spread
}

export interface RatedFlow extends Provenance {
  readonly minLpm: number
  readonly maxLpm: number
}

export interface InterfaceSize {
  readonly id: SizeId
  readonly ageYearsMin: number
  readonly ageYearsMax: number
  /** Where weight rather than age decides (newborn sizes). */
  readonly weightKgMin?: number
  readonly weightKgMax?: number
  readonly rated: RatedFlow
  /** Gas space of the device at the opening; 0 for nasal prongs. */
  readonly pocketL: SourcedSpread
}

/** Exchange of the pocket with the room: base (breathing movement, draught) plus a share of the jet's own flow. */
export interface RoomExchange {
  readonly baseLpm: SourcedSpread
  readonly perJetFlow: SourcedSpread
  /** Multiplies the whole exchange. */
  readonly fitFactor: Readonly<Record<FitId, number>>
}

export type GasBehaviour =
  | {
      readonly kind: 'nasal'
      readonly captureOut: SourcedSpread
      readonly flushShare: SourcedSpread
      readonly behindNoseShare: number
    }
  | {
      readonly kind: 'high-flow'
      readonly clearanceMlPerSPerLpm: SourcedSpread
      readonly meanPressureCmH2oPerLpm: SourcedSpread
      readonly openMouthPressureShare: SourcedSpread
    }
  | {
      readonly kind: 'mask'
      readonly exchange: RoomExchange
      readonly limbL: SourcedSpread | null
      readonly draughtLpm: SourcedSpread
    }
  | {
      readonly kind: 'reservoir'
      readonly exchange: RoomExchange
      readonly bagL: SourcedSpread
      readonly leakRatio: Readonly<Record<FitId, SourcedSpread>>
      readonly forwardLoss: SourcedSpread
      readonly hasInletValve: boolean
      readonly expiredShareIntoBag: number
    }
  | { readonly kind: 'box'; readonly exchange: RoomExchange }
  | { readonly kind: 'nasal-under-mask' }

export interface InterfaceFamily {
  readonly id: FamilyId
  readonly opening: OpeningId
  readonly feeds: readonly FeedId[]
  /** Seals enough that gas failure leaves the patient without air. */
  readonly isCloseFitting: boolean
  readonly entrainsAir: 'no' | 'fixed-settings' | 'adjustable'
  readonly sizes: readonly InterfaceSize[]
  readonly behaviour: GasBehaviour
  /** Whether any outside measurement judges this family; if none does, every number says so and is widened. */
  readonly isChecked: boolean
  /** Relative spread of the oxygen added above room air that the model does not explain (standard deviation). */
  readonly modelSd: Provenance & { readonly value: number }
  /** Fraction printed or quoted for it, for the comparison beside ours. */
  readonly printed: PrintedFraction
}

export type PrintedFraction =
  | (Provenance & { readonly kind: 'setting' })
  | (Provenance & {
      readonly kind: 'per-litre'
      readonly base: number
      readonly perLpm: number
      readonly maxLpm: number
    })
  | (Provenance & {
      readonly kind: 'table'
      readonly rows: readonly {
        readonly flowLpm: number
        readonly low: number
        readonly high: number
      }[]
    })
  | { readonly kind: 'none' }

/** How much the unexplained spread of a family that no measurement checks is widened. */
export const UNCHECKED_WIDENING = 2
