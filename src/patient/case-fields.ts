// The fields of a case and what each may hold, as data: bounds, unit, other units it may have been typed in. Leaves out how fields bear on each other.
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../physics/atmosphere.ts'
import {
  BLOOD_TEMPERATURE_C_MAX,
  BLOOD_TEMPERATURE_C_MIN,
  PH_MAX,
  PH_MIN,
} from '../physiology/dissociation.ts'
import { HEIGHT_CM_MAX, HEIGHT_CM_MIN, WEIGHT_KG_MAX, WEIGHT_KG_MIN } from '../physiology/body.ts'
import { BAROMETRIC_KPA_MAX, BAROMETRIC_KPA_MIN } from '../units/constants.ts'
import type { NumberRule } from './field.ts'
import { SLIPS } from './unit-slip.ts'

/** Bounds are what the product accepts (common practice), wide enough for any living patient and narrow enough to
 *  show a wrong unit. They are not limits of health. */
export const NUMBERS = {
  ageYears: { code: 'AGE_OUT_OF_RANGE', unit: 'a', min: 0, max: 120, slips: SLIPS.ageYears },
  ageMonths: { code: 'AGE_OUT_OF_RANGE', unit: 'mo', min: 0, max: 1440 },
  ageDays: { code: 'AGE_OUT_OF_RANGE', unit: 'd', min: 0, max: 43_800 },
  gestationWeeks: {
    code: 'GESTATION_OUT_OF_RANGE',
    unit: 'wk',
    min: 22,
    max: 44,
    slips: SLIPS.gestationWeeks,
  },
  weightKg: {
    code: 'WEIGHT_OUT_OF_RANGE',
    unit: 'kg',
    min: WEIGHT_KG_MIN,
    max: WEIGHT_KG_MAX,
    slips: SLIPS.weightKg,
  },
  heightCm: {
    code: 'HEIGHT_OUT_OF_RANGE',
    unit: 'cm',
    min: HEIGHT_CM_MIN,
    max: HEIGHT_CM_MAX,
    slips: SLIPS.heightCm,
  },
  haemoglobinGpl: {
    code: 'HAEMOGLOBIN_OUT_OF_RANGE',
    unit: 'g/L',
    min: 30,
    max: 270,
    slips: SLIPS.haemoglobinGpl,
  },
  temperatureC: {
    code: 'TEMPERATURE_OUT_OF_RANGE',
    unit: '°C',
    min: BLOOD_TEMPERATURE_C_MIN,
    max: BLOOD_TEMPERATURE_C_MAX,
    slips: SLIPS.temperatureC,
  },
  arterialPco2Kpa: {
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    unit: 'kPa',
    min: 1.5,
    max: 24,
    slips: SLIPS.arterialPco2Kpa,
  },
  arterialPo2Kpa: {
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    unit: 'kPa',
    min: 2,
    max: 90,
    slips: SLIPS.arterialPo2Kpa,
  },
  ph: { code: 'PH_OUT_OF_RANGE', unit: '1', min: PH_MIN, max: PH_MAX, slips: SLIPS.ph },
  carboxyhaemoglobinFraction: {
    code: 'FRACTION_OUT_OF_RANGE',
    unit: '1',
    min: 0,
    max: 0.7,
    slips: SLIPS.share,
  },
  minutesAgo: { code: 'DURATION_OUT_OF_RANGE', unit: 'min', min: 0, max: 10_080 },
  oxygenUptakeMlPerMin: {
    code: 'FLOW_OUT_OF_RANGE',
    unit: 'mL/min',
    min: 1,
    max: 3000,
    slips: SLIPS.oxygenUptakeMlPerMin,
  },
  tracheostomyAgeDays: { code: 'DURATION_OUT_OF_RANGE', unit: 'd', min: 0, max: 43_800 },
  ratePerMin: { code: 'RATE_OUT_OF_RANGE', unit: '/min', min: 3, max: 120 },
  tidalVolumeMl: {
    code: 'VOLUME_OUT_OF_RANGE',
    unit: 'mL',
    min: 1.5,
    max: 3000,
    slips: SLIPS.tidalVolumeMl,
  },
  dutyFraction: {
    code: 'DUTY_OUT_OF_RANGE',
    unit: '1',
    min: 0.15,
    max: 0.7,
    slips: SLIPS.share,
  },
  mouthShare: { code: 'FRACTION_OUT_OF_RANGE', unit: '1', min: 0, max: 1, slips: SLIPS.share },
  altitudeM: {
    code: 'ALTITUDE_OUT_OF_RANGE',
    unit: 'm',
    min: ALTITUDE_M_MIN,
    max: ALTITUDE_M_MAX,
    slips: SLIPS.altitudeM,
  },
  barometricPressureKpa: {
    code: 'BAROMETRIC_PRESSURE_OUT_OF_RANGE',
    unit: 'kPa',
    min: BAROMETRIC_KPA_MIN,
    max: BAROMETRIC_KPA_MAX,
    slips: SLIPS.barometricPressureKpa,
  },
  goalPercent: {
    code: 'SATURATION_OUT_OF_RANGE',
    unit: '%',
    min: 70,
    max: 100,
    slips: SLIPS.percent,
  },
  inspiredFraction: {
    code: 'FRACTION_OUT_OF_RANGE',
    unit: '1',
    min: 0.21,
    max: 1,
    slips: SLIPS.fraction,
  },
  saturationPercent: {
    code: 'SATURATION_OUT_OF_RANGE',
    unit: '%',
    min: 30,
    max: 100,
    slips: SLIPS.percent,
  },
  sinceMinutes: { code: 'DURATION_OUT_OF_RANGE', unit: 'min', min: 0, max: 525_600 },
  flowLpm: { code: 'FLOW_OUT_OF_RANGE', unit: 'L/min', min: 0.01, max: 70, slips: SLIPS.flowLpm },
} as const satisfies Record<string, NumberRule>

/** Keys of each object of a case, in the order they are written. */
export const KEYS = {
  case: ['version', 'note', 'bed', 'code', 'patient', 'breathing', 'site', 'goal', 'onNow'],
  patient: [
    'ageYears',
    'ageMonths',
    'ageDays',
    'gestationWeeks',
    'weightKg',
    'heightCm',
    'sex',
    'airway',
    'retentionRisk',
    'haemoglobinGpl',
    'temperatureC',
    'bloodGas',
    'oxygenUptakeMlPerMin',
    'secretions',
    'tracheostomyAgeDays',
    'changes',
  ],
  naturalAirway: ['route', 'nose'],
  tracheostomyAirway: ['route', 'tube', 'nose'],
  laryngectomyAirway: ['route', 'heatMoistureExchanger'],
  tube: ['cuff', 'speakingValve', 'capped', 'heatMoistureExchanger'],
  bloodGas: ['arterialPco2Kpa', 'ph', 'arterialPo2Kpa', 'carboxyhaemoglobinFraction', 'minutesAgo'],
  breathing: ['state', 'ratePerMin', 'tidalVolumeMl', 'dutyFraction', 'mouthShare', 'fit'],
  site: ['altitudeM', 'barometricPressureKpa'],
  saturationGoal: ['kind', 'lowPercent', 'highPercent', 'reason'],
  fractionGoal: ['kind', 'low', 'high', 'reason'],
  otherGoal: ['kind', 'reason'],
  onNow: ['setUp', 'sinceMinutes', 'saturationPercent', 'ratePerMin'],
  setUp: ['family', 'size', 'fit', 'sourceKind', 'flowLpm', 'setO2Fraction', 'over'],
  over: ['family', 'flowLpm'],
} as const

export const AGE_KEYS = ['ageYears', 'ageMonths', 'ageDays'] as const
