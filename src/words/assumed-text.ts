// What is assumed because it was not given: the name of each value and how it came about. Leaves out the values typed.
import type { AssumedValue, AssumptionCode, ValueKey } from '../patient/patient-spread.ts'
import { KNOWN_NAMES } from './names.ts'
import { bandText, stepForWidth } from './number-text.ts'
import { say } from './say.ts'
import { shownBand } from './shown-unit.ts'

export const VALUE_NAMES: Readonly<Record<ValueKey, string>> = {
  weightKg: say('weight'),
  heightCm: say('height'),
  ratePerMin: say('breathing rate'),
  tidalVolumeMl: say('tidal volume'),
  dutyFraction: say('share of the breath spent breathing in'),
  expiratoryTimeConstantS: say('time constant of breathing out'),
  mouthShare: say('share breathed by mouth'),
  tubeShare: say('share breathed through the tube'),
  extrathoracicMl: say('dead space of mouth and nose'),
  intrathoracicMl: say('dead space of the airways in the chest'),
  functionalResidualCapacityMl: say('gas left in the lungs after a breath'),
  haemoglobinGpl: say('haemoglobin'),
  temperatureC: say('body temperature'),
  arterialPco2Kpa: say('arterial PCO2'),
  ph: say('arterial pH'),
  carboxyhaemoglobinFraction: say('carboxyhaemoglobin'),
  p50Kpa: say('PO2 at half saturation'),
  respiratoryQuotient: say('respiratory quotient'),
  oxygenUptakeMlPerMin: say('oxygen uptake'),
  cardiacOutputLpm: say('cardiac output'),
  shuntFraction: say('shunt'),
  extraShiftKpa: say('mismatch of ventilation and perfusion, as pressure lost'),
  oximeterBiasPercent: say('error of the oximeter'),
  barometricPressureKpa: say('barometric pressure'),
}

export const ASSUMPTION_TEXTS: Readonly<Record<AssumptionCode, string>> = {
  SEA_LEVEL_ASSUMED: say('sea level'),
  PRESSURE_FROM_ALTITUDE: say('from the altitude'),
  SIZE_FROM_AGE: say('from the age'),
  SIZE_FROM_OTHER_SIZE: say('from the size given and the age'),
  FROM_STATE: say('from the breathing state'),
  FROM_SIZE: say('from age, sex and size'),
  LUNG_CONDITION_NOT_KNOWN: say('some lung disease, of unknown kind'),
  FROM_RETENTION_RISK: say('from the risk of carbon-dioxide retention'),
  FROM_GOAL_REASON: say('from the reason for the goal'),
  PLAYS_NO_PART: say('plays no part with this airway'),
}

/** "breathing rate about 18, 14–24/min (from the breathing state; common practice)" */
export function assumedText(assumed: AssumedValue): string {
  const { low, high, median, unit } = shownBand(assumed.key, assumed)
  const step = high > low ? stepForWidth(high - low) : stepForWidth(Math.abs(median) || 1)
  const said = bandText({ low, high, median }, { step, unit })
  const how = [
    assumed.code === undefined ? '' : ASSUMPTION_TEXTS[assumed.code],
    KNOWN_NAMES[assumed.known],
    assumed.source ?? '',
  ]
  return say('{name} {value} ({how})', {
    name: VALUE_NAMES[assumed.key],
    value: said,
    how: how.filter((part) => part !== '').join('; '),
  })
}
