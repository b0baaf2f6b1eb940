// What is known of one patient, the goal and what is on now, as typed. What is not known is absent here and a spread in assume.ts.
import type { FamilyId, FitId, SizeId } from '../kit/family-id.ts'
import type { SourceKind } from '../kit/source-row.ts'
import type { AirwayState } from '../physiology/airway-state.ts'

export const BREATHING_STATES = [
  'rest',
  'sleep',
  'walking',
  'fast-and-shallow',
  'severe-distress',
  'copd-stable',
  'copd-exacerbation',
  'asthma',
  'pneumonia',
  'heart-failure',
  'slow-under-opioids',
  'obesity-hypoventilation',
  'neuromuscular-weakness',
  'pregnancy',
  'fever',
  'bronchiolitis',
  'newborn',
  'preterm',
] as const
export type BreathingState = (typeof BREATHING_STATES)[number]

export const CHANGES = [
  'beard',
  'no-teeth',
  'facial-burn-or-injury',
  'vomiting-risk',
  'prone',
  'feeding-tube',
  'glasses-or-hearing-aids',
  'confused-and-pulling',
  'claustrophobic',
  'must-eat-and-talk',
  'base-of-skull-fracture',
  'thick-or-bloody-secretions',
  'new-tracheostomy',
  'nebulised-drug',
] as const
export type InterfaceChange = (typeof CHANGES)[number]

export type RetentionRisk = 'none' | 'at-risk' | 'known-retainer'
export type Sex = 'female' | 'male'

export const SECRETIONS = ['thin', 'thick', 'bloody', 'crusting'] as const
/** What is coughed up or sucked out of the airway; absent is not known. */
export type Secretions = (typeof SECRETIONS)[number]

export interface BloodGas {
  readonly arterialPco2Kpa: number
  readonly ph?: number
  readonly arterialPo2Kpa?: number
  readonly carboxyhaemoglobinFraction?: number
  readonly minutesAgo?: number
}

export interface Patient {
  readonly ageYears: number
  /** Weeks of gestation at birth; for infants. */
  readonly gestationWeeks?: number
  readonly weightKg?: number
  readonly heightCm?: number
  readonly sex?: Sex
  readonly airway: AirwayState
  readonly retentionRisk: RetentionRisk
  readonly haemoglobinGpl?: number
  readonly temperatureC?: number
  readonly bloodGas?: BloodGas
  readonly oxygenUptakeMlPerMin?: number
  readonly secretions?: Secretions
  /** Days since the opening at the neck was made. */
  readonly tracheostomyAgeDays?: number
  readonly changes: readonly InterfaceChange[]
}

export interface Breathing {
  readonly state: BreathingState
  readonly ratePerMin?: number
  readonly tidalVolumeMl?: number
  readonly dutyFraction?: number
  /** Share of the breath drawn by mouth, 0–1. */
  readonly mouthShare?: number
  readonly fit?: FitId
}

export interface Site {
  readonly altitudeM?: number
  readonly barometricPressureKpa?: number
}

export type Goal =
  | {
      readonly kind: 'saturation'
      readonly lowPercent: number
      readonly highPercent: number
      readonly reason?: string
    }
  | {
      readonly kind: 'fraction'
      readonly low: number
      readonly high: number
      readonly reason?: string
    }
  | { readonly kind: 'as-much-as-possible'; readonly reason: string }
  | { readonly kind: 'comfort'; readonly reason?: string }

/** The set-up in force, as seen at the bedside. */
export interface SetUpOnNow {
  readonly family: FamilyId
  readonly size?: SizeId
  readonly fit?: FitId
  readonly sourceKind: SourceKind
  readonly flowLpm: number | 'flush'
  readonly setO2Fraction?: number
  readonly over?: {
    readonly family: 'simple-mask'
    readonly flowLpm: number | 'flush'
  }
}

/** What is on now and what it reads; `setUp` null means air. */
export interface OnNow {
  readonly setUp: SetUpOnNow | null
  readonly sinceMinutes?: number
  readonly saturationPercent?: number
  readonly ratePerMin?: number
}

export interface Case {
  readonly version: 1
  /** Anything the writer wants to keep beside the case; read by nobody. */
  readonly note?: string
  readonly bed?: string
  readonly code?: string
  readonly patient: Patient
  readonly breathing: Breathing
  readonly site: Site
  readonly goal: Goal
  readonly onNow?: OnNow
}
