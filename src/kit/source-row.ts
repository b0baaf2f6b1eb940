// Gas sources as shelf rows: what can be set on them and how well they keep it. Leaves out how parts join.
import type { FlowmeterClass } from '../physics/flowmeter-accuracy.ts'
import type { FlowmeterKind } from '../physics/flowmeter.ts'
import type { PurityClass } from '../physics/source-purity.ts'

/** A flow a meter can be set to; `flush` is the meter opened beyond its scale, with a wide spread. */
export type FlowStep =
  | { readonly kind: 'scale'; readonly flowLpm: number }
  | { readonly kind: 'flush' }

/** Flow beyond the scale, L/min as it leaves the outlet. */
export interface FlushFlow {
  readonly medianLpm: number
  readonly lowLpm: number
  readonly highLpm: number
  readonly source: string
}

/** One variable-area, dial or electronic flow setting. */
export interface MeterScale {
  readonly kind: FlowmeterKind
  /** The marks that can be set, L/min, rising; 0 is left out. */
  readonly stepsLpm: readonly number[]
  readonly flush: FlushFlow | null
  readonly meterClass: FlowmeterClass
}

interface SourceBase {
  readonly id: string
  readonly label: string
  readonly count: number
  readonly place: string
  readonly wardMarking?: string
}

export type SourceRow = SourceBase &
  (
    | {
        readonly kind: 'wall-flowmeter'
        readonly meter: MeterScale
        readonly purity: PurityClass
      }
    | {
        readonly kind: 'two-flowmeters'
        readonly meter: MeterScale
        readonly purity: PurityClass
      }
    | {
        readonly kind: 'cylinder-regulator'
        readonly meter: MeterScale
        readonly purity: PurityClass
      }
    | {
        readonly kind: 'concentrator'
        readonly meter: MeterScale
        readonly purity: PurityClass
      }
    /** Large-volume jet nebuliser driven by a flowmeter. */
    | {
        readonly kind: 'jet-nebuliser'
        readonly meter: MeterScale
        readonly purity: PurityClass
        /** Dial settings as fractions; 1 = closed, no air. */
        readonly settings: readonly number[]
        readonly driveLpmMax: number
        readonly jets: 1 | 2
      }
    | {
        readonly kind: 'blender'
        readonly stepsLpm: readonly number[]
        readonly fractionSteps: readonly number[]
        readonly errorRelative: number
      }
    /** Constant flow of blended gas from the inspiratory limb; it gives no breaths. */
    | {
        readonly kind: 'ventilator'
        readonly stepsLpm: readonly number[]
        readonly fractionSteps: readonly number[]
        readonly errorRelative: number
      }
  )

export type SourceKind = SourceRow['kind']
