// The shape of one exclusion rule and what it may look at.
import type { RatedRange } from '../kit/set-up-settings.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { InterfaceChange, Goal, RetentionRisk } from '../patient/case.ts'
import type { AirwayState } from '../physiology/airway-state.ts'
import type { Provenance } from '../units/provenance.ts'
import type { Flip } from './plan-types.ts'

export interface PlanSubject {
  readonly ageYears: number
  readonly weightKg: number
  readonly airway: AirwayState
  readonly changes: readonly InterfaceChange[]
  readonly retentionRisk: RetentionRisk
  readonly goal: Goal
  readonly ratePerMin: number
}

export interface Found {
  readonly values: Readonly<Record<string, number | string>>
  readonly flip: Flip | null
}

export interface ExclusionRule extends Provenance {
  readonly code: string
  /** Null where the rule has nothing against the set-up. `rated` is what the device's label or its family allows. */
  applies(subject: PlanSubject, setUp: SetUp, rated: RatedRange): Found | null
}
