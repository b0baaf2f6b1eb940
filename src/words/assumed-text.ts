// What is assumed because it was not given: the name of each value and how it came about. Leaves out the values typed.
import type { AssumedValue, AssumptionCode, ValueKey } from '../patient/patient-spread.ts'
import { KNOWN_NAMES } from './names.ts'
import { bandText, stepForWidth } from './number-text.ts'

export const VALUE_NAMES: Readonly<Record<ValueKey, string>> = {
  weightKg: 'weight',
  heightCm: 'height',
  ratePerMin: 'breathing rate',
  tidalVolumeMl: 'tidal volume',
  dutyFraction: 'share of the breath spent breathing in',
  expiratoryTimeConstantS: 'time constant of breathing out',
  mouthShare: 'share breathed by mouth',
  tubeShare: 'share breathed through the tube',
  extrathoracicMl: 'dead space of mouth and nose',
  intrathoracicMl: 'dead space of the airways in the chest',
  functionalResidualCapacityMl: 'gas left in the lungs after a breath',
  haemoglobinGpl: 'haemoglobin',
  temperatureC: 'body temperature',
  arterialPco2Kpa: 'arterial PCO2',
  ph: 'arterial pH',
  carboxyhaemoglobinFraction: 'carboxyhaemoglobin',
  p50Kpa: 'PO2 at half saturation',
  respiratoryQuotient: 'respiratory quotient',
  oxygenUptakeMlPerMin: 'oxygen uptake',
  cardiacOutputLpm: 'cardiac output',
  shuntFraction: 'shunt',
  extraShiftKpa: 'mismatch of ventilation and perfusion, as pressure lost',
  oximeterBiasPercent: 'error of the oximeter',
  barometricPressureKpa: 'barometric pressure',
}

export const ASSUMPTION_TEXTS: Readonly<Record<AssumptionCode, string>> = {
  SEA_LEVEL_ASSUMED: 'sea level',
  PRESSURE_FROM_ALTITUDE: 'from the altitude',
  SIZE_FROM_AGE: 'from the age',
  SIZE_FROM_OTHER_SIZE: 'from the size given and the age',
  FROM_STATE: 'from the breathing state',
  FROM_SIZE: 'from age, sex and size',
  LUNG_CONDITION_NOT_KNOWN: 'some lung disease, of unknown kind',
  FROM_RETENTION_RISK: 'from the risk of carbon-dioxide retention',
  FROM_GOAL_REASON: 'from the reason for the goal',
  PLAYS_NO_PART: 'plays no part with this airway',
}

/** "breathing rate about 18, 14–24/min (from the breathing state; common practice)" */
export function assumedText(assumed: AssumedValue): string {
  const { low, high, median } = assumed
  const step = high > low ? stepForWidth(high - low) : stepForWidth(Math.abs(median) || 1)
  const said = bandText({ low, high, median }, { step, unit: assumed.unit })
  const how = [
    assumed.code === undefined ? '' : ASSUMPTION_TEXTS[assumed.code],
    KNOWN_NAMES[assumed.known],
    assumed.source ?? '',
  ]
  return `${VALUE_NAMES[assumed.key]} ${said} (${how.filter((part) => part !== '').join('; ')})`
}
