// What the fields of a shelf file may be called and hold, as data. Bounds show a wrong unit; they are not limits of health.
import type { FlowmeterClass } from '../physics/flowmeter-accuracy.ts'
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../physics/atmosphere.ts'
import { ENTRAINED_O2_FRACTION_MIN } from './delivered-stream.ts'
import type { NumberRule } from './read-fields.ts'
import type { SourceKind } from './source-row.ts'

export const SOURCE_KINDS = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
  'concentrator',
  'jet-nebuliser',
  'blender',
  'ventilator',
] as const satisfies readonly SourceKind[]

export const METER_CLASSES = ['ordinary', 'low-flow'] as const satisfies readonly FlowmeterClass[]
export const UNITS_ON_SCALE = ['L/min', 'mL/min'] as const

const PER_MILLE = 0.001
const PER_CENT = 0.01

/** All bounds: common practice. */
export const RULES = {
  altitudeM: { code: 'ALTITUDE_OUT_OF_RANGE', min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX, unit: 'm' },
  count: { code: 'COUNT_OUT_OF_RANGE', min: 0, max: 100_000 },
  beds: { code: 'COUNT_OUT_OF_RANGE', min: 0, max: 1000 },
  jets: { code: 'COUNT_OUT_OF_RANGE', min: 1, max: 2 },
  stepLpm: {
    code: 'FLOW_OUT_OF_RANGE',
    min: 0.005,
    max: 75,
    unit: 'L/min',
    slipFactor: PER_MILLE,
  },
  ratedLpm: { code: 'FLOW_OUT_OF_RANGE', min: 0.005, max: 100, unit: 'L/min' },
  fitsKg: { code: 'WEIGHT_OUT_OF_RANGE', min: 0.3, max: 400, unit: 'kg' },
  flushLpm: { code: 'FLOW_OUT_OF_RANGE', min: 15, max: 150, unit: 'L/min' },
  o2Fraction: { code: 'FRACTION_OUT_OF_RANGE', min: 0.21, max: 1, slipFactor: PER_CENT },
  valveFraction: {
    code: 'FRACTION_OUT_OF_RANGE',
    min: ENTRAINED_O2_FRACTION_MIN,
    max: 1,
    slipFactor: PER_CENT,
  },
  errorRelative: { code: 'VALUE_OUT_OF_RANGE', min: 0, max: 0.5 },
  lengthM: { code: 'SIZE_OUT_OF_RANGE', min: 0.02, max: 30, unit: 'm', slipFactor: PER_CENT },
  boreMm: { code: 'SIZE_OUT_OF_RANGE', min: 1, max: 40, unit: 'mm' },
  pressureKpa: { code: 'PRESSURE_OUT_OF_RANGE', min: 0.1, max: 400, unit: 'kPa' },
  waterMl: { code: 'VOLUME_OUT_OF_RANGE', min: 1, max: 5000, unit: 'mL' },
  outputMgPerL: { code: 'HUMIDITY_OUT_OF_RANGE', min: 0, max: 44, unit: 'mg/L' },
  tidalMl: { code: 'VOLUME_OUT_OF_RANGE', min: 1, max: 3000, unit: 'mL' },
} as const satisfies Readonly<Record<string, NumberRule>>

const ROW = ['id', 'label', 'place', 'wardMarking'] as const
const OWN_ENDS = ['inletEnds', 'outletEnd'] as const
const LABEL = ['ratedMinLpm', 'ratedMaxLpm'] as const
const SOURCE = [
  'kind',
  ...ROW,
  'count',
  'usedStepsLpm',
  'usedFor',
  'markedIn',
  ...OWN_ENDS,
] as const
const METERED = [...SOURCE, 'meter', 'purity'] as const
const BLENDED = [
  ...SOURCE,
  'stepsLpm',
  'fractionSteps',
  'errorRelative',
  'usedFractions',
  'pushesKpaMax',
  'failure',
  'biasFlowAddsToUse',
] as const
const VENTILATOR = [...BLENDED, 'leakCompensationAddsToUse', 'hasOwnFilter', 'modes'] as const
const NEBULISER = [
  ...METERED,
  'settings',
  'driveLpmMax',
  'jets',
  'usedFractions',
  'isHeated',
] as const

/** Every field of every object of a shelf file. */
export const KEYS = {
  shelf: [
    'version',
    'hospital',
    'isInvented',
    'altitudeM',
    'wards',
    'interfaces',
    'sources',
    'humidifiers',
    'outlets',
    'airMeters',
    'tubes',
    'fittings',
  ],
  ward: ['id', 'name', 'beds'],
  interface: ['family', ...ROW, 'sizes', 'settings', 'hasCollar', 'inletEnds', 'tubing'],
  tubing: ['lengthM', 'boreMm'],
  size: ['size', 'count', 'ratedMinLpm', 'ratedMaxLpm', 'fitsMinKg', 'fitsMaxKg'],
  setting: ['o2Fraction', 'minimumLpm', 'fastBreathingLpm'],
  humidifier: [
    'kind',
    ...ROW,
    'count',
    ...OWN_ENDS,
    ...LABEL,
    'reliefKpa',
    'waterMl',
    'outputMgPerL',
    'tidalMinMl',
    'tidalMaxMl',
  ],
  outlet: ['kind', ...ROW, 'gas', 'count', 'outletEnd'],
  airMeter: [...ROW, 'count', 'stepsLpm', ...OWN_ENDS],
  tube: [
    'kind',
    ...ROW,
    'count',
    'lengthM',
    'boreMm',
    'isHeated',
    'hasWaterTrap',
    'inletEnd',
    'outletEnd',
    ...LABEL,
  ],
  fitting: ['kind', ...ROW, 'count', ...OWN_ENDS, 'openEnds', 'hasPorts', ...LABEL],
  failure: ['air', 'oxygen', 'mains'],
  mode: ['label', 'kind'],
  meter: ['kind', 'stepsLpm', 'flush', 'meterClass'],
  flush: ['lowLpm', 'medianLpm', 'highLpm', 'source'],
  'wall-flowmeter': METERED,
  'two-flowmeters': METERED,
  'cylinder-regulator': METERED,
  concentrator: METERED,
  'jet-nebuliser': NEBULISER,
  blender: BLENDED,
  ventilator: VENTILATOR,
  anySource: [...NEBULISER, ...VENTILATOR],
} as const satisfies Readonly<Record<string, readonly string[]>>
