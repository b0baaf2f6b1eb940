// A ward as its gas is judged: beds with the set-up in force, cylinders and outlets at each, and what stands behind the pipeline. Leaves out the patients' care.
import type { RetentionRisk, SetUpOnNow } from '../patient/case.ts'
import type { BesideFlows } from './gas-drawn.ts'
import type { PipelineArea } from './pipeline.ts'

export const WARD_VERSION = 1

/** What feeds the oxygen pipeline. */
export const OXYGEN_PLANTS = ['bulk-liquid', 'manifold', 'concentrator-plant'] as const
export type OxygenPlant = (typeof OXYGEN_PLANTS)[number]

/** Whether blender or ventilator work by gas pressure alone or need power (and then make their own air). */
export const MIXER_DRIVES = ['pneumatic', 'mains'] as const
export type MixerDrive = (typeof MIXER_DRIVES)[number]

export interface Manifold {
  readonly waterVolumeL: number
  readonly gaugeKpa: number
  /** Cylinders that still stand full on both banks. */
  readonly count: number
  /** Pressure at which a bank changes over. */
  readonly leftGaugeKpa: number
}

export interface BulkTank {
  /** Liquid that can be used, L. */
  readonly liquidL: number
  /** What evaporates without being drawn, L of liquid a day. */
  readonly evaporationLPerDay?: number
}

export interface WardSupply {
  readonly area: PipelineArea
  readonly plant?: OxygenPlant
  /** Whether the plants of oxygen and air run on when mains power fails. */
  readonly plantsHaveGenerator?: boolean
  /** What this ward's branch of the pipeline carries, and what one outlet gives. */
  readonly branchLpmMax?: number
  readonly outletLpmMax?: number
  readonly manifold?: Manifold
  readonly bulk?: BulkTank
  /** Drawn by everybody else from the same plant. */
  readonly restOfHospitalLpm?: number
}

export interface BedCylinder {
  readonly waterVolumeL: number
  readonly gaugeKpa: number
  readonly isValveOpen: boolean
}

export interface Bed {
  readonly bed: string
  readonly code?: string
  readonly isEmpty?: boolean
  readonly ageYears?: number
  readonly weightKg?: number
  readonly retentionRisk?: RetentionRisk
  /** Null is room air; absent: not known, unless the bed is empty. */
  readonly setUp?: SetUpOnNow | null
  readonly beside?: BesideFlows
  readonly hasHeatedHumidifier?: boolean
  readonly mixerDrive?: MixerDrive
  readonly batteryMinutes?: number
  readonly cylinders?: readonly BedCylinder[]
  readonly oxygenOutlets?: number
  readonly airOutlets?: number
}

export interface WardFile {
  readonly version: typeof WARD_VERSION
  readonly hospital: string
  readonly ward: string
  readonly isInvented?: boolean
  readonly note?: string
  readonly altitudeM?: number
  readonly barometricPressureKpa?: number
  /** Of the ward, °C; cylinders stand at it. */
  readonly roomC?: number
  readonly supply: WardSupply
  readonly beds: readonly Bed[]
}
