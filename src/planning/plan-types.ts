// What a plan says, as codes and numbers: ranked set-ups, what was ruled out, what was assumed. Holds no text.
import type { Goal } from '../patient/case.ts'
import type { AssumedValue } from '../patient/patient-spread.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { SourceRow } from '../kit/source-row.ts'
import type { Provenance } from '../units/provenance.ts'

/** Something said by code, with the numbers and names that its text needs. */
export interface Remark extends Partial<Provenance> {
  readonly code: RemarkCode
  readonly values: Readonly<Record<string, number | string>>
}

export interface Reassessment {
  readonly withinMin: number
  readonly why: Remark
}

/** A reason against a set-up and what would change it. */
export interface Reason extends Remark {
  readonly flip: Flip | null
}

/** The number (or state) that would change a reason: `path` names the input, `value` what it would have to be. */
export interface Flip {
  readonly path: string
  readonly value: number | string
  readonly unit?: string
}

export type RemarkCode = string

/** Middle and 10–90 % limits. */
export interface Band {
  readonly median: number
  readonly low: number
  readonly high: number
}

/** Shares of the draws, 0–1. Shown in steps of 5 %. */
export interface Chance {
  readonly below: number
  readonly inRange: number
  readonly above: number
}

/** The breathing rate at which a set-up leaves the goal, and on which side; null: not between 4 and 60 per minute. */
export interface HoldsUntil {
  readonly ratePerMin: number | null
  readonly side: 'below' | 'above' | null
}

export interface RankedSetUp {
  readonly id: string
  readonly setUp: SetUp
  /** 1 is first; set-ups that count as equal share a rank. */
  readonly rank: number
  readonly isEqualToFirst: boolean
  /** Rows with the same number are said to be equal. */
  readonly equalGroup: number
  readonly effectiveO2Fraction: Band
  /** Null where the goal forbids trusting the oximeter. */
  readonly saturationPercent: Band | null
  /** Null for a goal without a range. */
  readonly chance: Chance | null
  /** Chance in range, less what harm weighs; what the ranking sorts by. */
  readonly score: number
  /** The same interface, size and settings on another source that does as well; listed here instead of as rows of their own. */
  readonly twins: readonly Twin[]
  readonly printedO2Fraction: { readonly low: number; readonly high: number } | null
  readonly oxygenUsedLpm: number
  readonly demandMarginLpm: Band
  readonly holdsUntil: HoldsUntil
  readonly isChecked: boolean
  readonly remarks: readonly Remark[]
  readonly humidity: readonly Remark[]
  readonly watch: readonly Remark[]
  readonly whyNotFirst: Reason | null
  /** Oxygen in alveoli and arterial blood at the site, over all draws; null where no saturation is shown either. */
  readonly blood: BloodBands | null
  /** Nasal high flow only: middle, mouth open and mouth closed. */
  readonly meanAirwayPressureCmH2o: Band | null
}

export interface BloodBands {
  readonly alveolarPo2Kpa: Band
  readonly arterialPo2Kpa: Band
}

export interface Twin {
  readonly id: string
  readonly source: SourceRow
}

export interface ExcludedSetUp {
  readonly id: string
  readonly setUp: SetUp
  readonly reasons: readonly Reason[]
}

export interface ReadingUse {
  /** Whether a saturation on a known set-up (or on air) narrowed the forecast. */
  readonly isUsed: boolean
  /** Effective number of draws after weighing by the reading. */
  readonly effectiveDraws: number
  readonly wasRedrawn: boolean
  readonly remarks: readonly Remark[]
}

/** The starting point that a guideline gives for this patient, beside ours. */
export interface GuidelineStart extends Provenance {
  readonly code: RemarkCode
  readonly values: Readonly<Record<string, number | string>>
  /** Set-ups of this shelf that are that starting point. */
  readonly setUpIds: readonly string[]
}

export interface Plan {
  readonly modelVersion: string
  readonly goal: Goal
  readonly ranked: readonly RankedSetUp[]
  readonly excluded: readonly ExcludedSetUp[]
  readonly emergency: readonly Remark[]
  readonly cautions: readonly Remark[]
  readonly guideline: readonly GuidelineStart[]
  readonly assumed: readonly AssumedValue[]
  readonly reading: ReadingUse
  /** What is on now, as it delivers by the same model. */
  readonly onNow: RankedSetUp | null
  /** Said when nothing ranked reaches the goal: what is missing. */
  readonly missing: readonly Remark[]
  /** How long the plan may stand, from the observations in the case, and why. */
  readonly reassess: Reassessment
  readonly draws: number
  readonly barometricPressureKpa: number
}
