// One outside check as data: what was published under which conditions, and how our code reproduces it. Holds no numbers of its own.
import type { BreathPattern } from '../delivery/breath.ts'
import type { FamilyId } from '../kit/family-id.ts'
import type { Known } from '../units/provenance.ts'
import type { EngineCase } from './engine-case.ts'
import type { FormulaCall } from './formulas.ts'
import type { PeopleQuestion } from './people.ts'
import type { SourceKey } from './sources.ts'

/** `formula`: a published equation or table worked again by our code. `model`: the breath engine run under the row's conditions. */
export type RowKind = 'formula' | 'model'

/** Whether flow and ventilation stand at one condition, or the flow is as read on a meter and ventilation at body conditions. */
export type GasBasis = 'btps-from-meter' | 'one-condition'

export type Quantity =
  | 'effective'
  | 'opening'
  | 'pharynx'
  | 'trachea'
  | 'in-mask'
  | 'end-expired'
  | 'air-share'
  | 'inspired-co2'
  | 'fresh-ventilation'
  | 'demand-margin'
  | 'lowest-bag'
  | 'arterial-po2-rise'
  | 'total-flow'
  | 'flow'
  | 'ratio'
  | 'factor'
  | 'saturation'
  | 'content'
  | 'gas-pressure'
  | 'airway-pressure'
  | 'clearance'
  | 'vapour-pressure'
  | 'humidity'
  | 'volume'
  | 'duration'
  | 'rate'
  | 'size'
  | 'index'

/** `factor`: ours over theirs, judged on the logarithm. `sign`: only the direction of a change is known. */
export type Comparison = 'equal' | 'at-least' | 'at-most' | 'factor' | 'sign'

export type ToleranceReason =
  | 'published-sd'
  | 'published-range'
  | 'limits-of-agreement'
  | 'exact-arithmetic'
  | 'printed-digits'
  | 'published-fit-error'
  | 'reading-precision'
  | 'usual-range-half-width'
  | 'conditions-not-stated'
  | 'grid-error'
  | 'width-half-to-twice'
  | 'direction-only'

/** `judge` and `calibrate` exclude each other. `trend`: a sign test. `context`: shown beside ours without verdict. */
export type RowUse = 'judge' | 'calibrate' | 'trend' | 'context'

export interface AssumedBreathing {
  readonly breath: BreathPattern
  /** Whether the source gives volume and rate, or we assume them. */
  readonly isStated: boolean
}

export type Reproduction =
  | ({ readonly by: 'formula' } & FormulaCall)
  | { readonly by: 'engine'; readonly engine: EngineCase }
  /** Second minus first. */
  | { readonly by: 'change'; readonly from: EngineCase; readonly to: EngineCase }
  /** Over several patterns: the largest over the smallest, or one of the two. */
  | {
      readonly by: 'patterns'
      readonly engines: readonly EngineCase[]
      readonly statistic: 'max-over-min' | 'min' | 'max'
    }
  | ({ readonly by: 'people' } & PeopleQuestion)

export interface EvidenceRow {
  readonly id: string
  readonly kind: RowKind
  readonly family: FamilyId | null
  /** Null for exact laws, arithmetic and common practice. */
  readonly source: SourceKey | null
  readonly condition: string
  readonly gas: GasBasis
  readonly quantity: Quantity
  readonly breathing: AssumedBreathing | null
  readonly publishedValue: number
  readonly unit: string
  readonly compare: Comparison
  readonly tolerance: { readonly value: number; readonly reason: ToleranceReason }
  readonly known: Known
  readonly use: RowUse
  /** True for tables that the engine must meet exactly with its pockets switched off: arithmetic, not measurement. */
  readonly isLimitingCase: boolean
  readonly reproduce: Reproduction
}
