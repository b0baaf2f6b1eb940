// Fields of ward and transfer files and what each may hold, as data. Bounds show a wrong unit; they are not limits of use.
import { NUMBERS } from '../patient/case-fields.ts'
import type { Aliases } from '../patient/did-you-mean.ts'
import type { NumberRule } from '../patient/field.ts'

/** A pressure of a cylinder is typed in one of three units, each with its own field. */
export const GAUGE_UNITS = ['Bar', 'Psi', 'Kpa'] as const
export type GaugeUnit = (typeof GAUGE_UNITS)[number]

/** Names of the fields of one pressure, a field for each unit. */
export function gaugeKeys(stem: string): readonly string[] {
  return GAUGE_UNITS.map((unit) => stem + unit)
}

const LPM = { code: 'FLOW_OUT_OF_RANGE', unit: 'L/min' } as const
const MINUTES = { code: 'DURATION_OUT_OF_RANGE', unit: 'min', min: 0, max: 1440 } as const

/** All bounds: common practice. */
export const SUPPLY_NUMBERS = {
  waterVolumeL: { code: 'VOLUME_OUT_OF_RANGE', unit: 'L', min: 0.1, max: 150 },
  gaugeBar: { code: 'PRESSURE_OUT_OF_RANGE', unit: 'bar', min: 0, max: 350 },
  gaugePsi: { code: 'PRESSURE_OUT_OF_RANGE', unit: 'psi', min: 0, max: 5000 },
  gaugeKpa: { code: 'PRESSURE_OUT_OF_RANGE', unit: 'kPa', min: 0, max: 35_000 },
  count: { code: 'COUNT_OUT_OF_RANGE', unit: '1', min: 0, max: 1000 },
  outlets: { code: 'COUNT_OUT_OF_RANGE', unit: '1', min: 0, max: 20 },
  minutes: MINUTES,
  /** A delay leaves room for a leg that stands still besides. */
  delayMinutes: { ...MINUTES, max: 1200 },
  besideLpm: { ...LPM, min: 0, max: 100 },
  supplyLpm: { ...LPM, min: 1, max: 100_000 },
  regulatorLpm: { ...LPM, min: 0.1, max: 100 },
  liquidL: { code: 'VOLUME_OUT_OF_RANGE', unit: 'L', min: 0, max: 200_000 },
  gasC: { code: 'TEMPERATURE_OUT_OF_RANGE', unit: '°C', min: -40, max: 50 },
  tubeLengthM: { code: 'SIZE_OUT_OF_RANGE', unit: 'm', min: 0, max: 100 },
  tubeBoreMm: { code: 'SIZE_OUT_OF_RANGE', unit: 'mm', min: 2, max: 10 },
  reserveFactor: { code: 'VALUE_OUT_OF_RANGE', unit: '1', min: 1, max: 10 },
  stockCount: { code: 'COUNT_OUT_OF_RANGE', unit: '1', min: 0, max: 100_000 },
  daysSeen: { code: 'COUNT_OUT_OF_RANGE', unit: '1', min: 1, max: 365 },
  leadTimeDays: { code: 'DURATION_OUT_OF_RANGE', unit: 'd', min: 0, max: 365 },
  serviceLevel: { code: 'PROBABILITY_OUT_OF_RANGE', unit: '1', min: 0.5, max: 0.999 },
  altitudeM: NUMBERS.altitudeM,
  barometricPressureKpa: NUMBERS.barometricPressureKpa,
  ageYears: NUMBERS.ageYears,
  weightKg: NUMBERS.weightKg,
} as const satisfies Readonly<Record<string, NumberRule>>

/** Keys of each object, in the order they are written. */
export const SUPPLY_KEYS = {
  ward: [
    'version',
    'hospital',
    'ward',
    'isInvented',
    'note',
    'altitudeM',
    'barometricPressureKpa',
    'roomC',
    'supply',
    'beds',
  ],
  supply: [
    'area',
    'plant',
    'plantsHaveGenerator',
    'branchLpmMax',
    'outletLpmMax',
    'manifold',
    'bulk',
    'restOfHospitalLpm',
  ],
  manifold: ['waterVolumeL', ...gaugeKeys('gauge'), 'count', ...gaugeKeys('left')],
  bulk: ['liquidL', 'evaporationLPerDay'],
  bed: [
    'bed',
    'code',
    'isEmpty',
    'ageYears',
    'weightKg',
    'retentionRisk',
    'setUp',
    'beside',
    'hasHeatedHumidifier',
    'mixerDrive',
    'batteryMinutes',
    'cylinders',
    'oxygenOutlets',
    'airOutlets',
  ],
  beside: ['biasFlowLpm', 'drivingGasLpm', 'jetLpm', 'leakLpm'],
  bedCylinder: ['waterVolumeL', ...gaugeKeys('gauge'), 'isValveOpen'],
  transfer: [
    'version',
    'note',
    'isInvented',
    'bed',
    'code',
    'ageYears',
    'weightKg',
    'setUp',
    'beside',
    'altitudeM',
    'barometricPressureKpa',
    'legs',
    'reserve',
    'store',
    ...gaugeKeys('left'),
    ...gaugeKeys('gaugeError'),
    'readAtC',
    'usedAtC',
    'scanner',
  ],
  leg: [
    'kind',
    'minutes',
    'delayMinutes',
    'setUp',
    'beside',
    'feed',
    'altitudeM',
    'barometricPressureKpa',
  ],
  reserve: ['factor', 'extraMinutes'],
  storeRow: [
    'id',
    'label',
    'waterVolumeL',
    ...gaugeKeys('gauge'),
    'count',
    'mrSafety',
    'place',
    ...gaugeKeys('regulatorMinimum'),
    'flowLpmMax',
    'marking',
  ],
  scanner: ['regulator', 'flowmeter', 'tubeLengthM', 'tubeBoreMm'],
  stock: ['version', 'note', 'isInvented', 'items'],
  stockItem: ['id', 'label', 'onHand', 'usedEachDay', 'leadTimeDays', 'serviceLevel'],
} as const satisfies Readonly<Record<string, readonly string[]>>

/** Other names people use, in plain letters. */
export const SUPPLY_ALIASES: Aliases = {
  age: 'ageYears',
  weight: 'weightKg',
  interface: 'setUp',
  device: 'setUp',
  source: 'sourceKind',
  flow: 'flowLpm',
  fio2: 'setO2Fraction',
  pressure: 'gaugeBar',
  gauge: 'gaugeBar',
  gaugemeter: 'gaugeBar',
  left: 'leftBar',
  volume: 'waterVolumeL',
  size: 'waterVolumeL',
  name: 'ward',
  altitude: 'altitudeM',
  time: 'minutes',
  duration: 'minutes',
  delay: 'delayMinutes',
  bias: 'biasFlowLpm',
  jet: 'jetLpm',
  leak: 'leakLpm',
  battery: 'batteryMinutes',
  empty: 'isEmpty',
  outlets: 'oxygenOutlets',
}
