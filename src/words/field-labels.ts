// What each field of a case is called, with its unit as printed. Leaves out bounds, which the case reader holds.
import { gasPathLabel } from './gas-field-labels.ts'
import { say } from './say.ts'

export interface FieldLabel {
  readonly label: string
  readonly unit?: string
  readonly help?: string
}

export const FIELD_LABELS: Readonly<Record<string, FieldLabel>> = {
  version: { label: say('version of the case file') },
  note: { label: say('note') },
  bed: { label: say('bed') },
  code: { label: say('patient code') },
  patient: { label: say('patient') },
  'patient.ageYears': { label: say('age'), unit: say('years') },
  'patient.ageMonths': { label: say('age'), unit: say('months') },
  'patient.ageDays': { label: say('age'), unit: say('days') },
  'patient.gestationWeeks': { label: say('gestation at birth'), unit: say('weeks') },
  'patient.weightKg': { label: say('weight'), unit: 'kg' },
  'patient.heightCm': { label: say('height'), unit: 'cm' },
  'patient.sex': { label: say('sex') },
  'patient.airway': { label: say('airway') },
  'patient.airway.route': { label: say('way of breathing') },
  'patient.airway.nose': { label: say('nose') },
  'patient.airway.tube': { label: say('tracheostomy tube') },
  'patient.airway.tube.cuff': { label: say('cuff') },
  'patient.airway.tube.speakingValve': { label: say('speaking valve') },
  'patient.airway.tube.capped': { label: say('tube capped') },
  'patient.airway.tube.heatMoistureExchanger': { label: say('heat and moisture exchanger') },
  'patient.airway.heatMoistureExchanger': { label: say('heat and moisture exchanger') },
  'patient.retentionRisk': { label: say('risk of carbon-dioxide retention') },
  'patient.haemoglobinGpl': { label: say('haemoglobin'), unit: 'g/L' },
  'patient.temperatureC': { label: say('body temperature'), unit: '°C' },
  'patient.bloodGas': { label: say('blood gas') },
  'patient.bloodGas.arterialPco2Kpa': { label: say('arterial PCO2'), unit: 'kPa' },
  'patient.bloodGas.arterialPo2Kpa': { label: say('arterial PO2'), unit: 'kPa' },
  'patient.bloodGas.ph': { label: say('arterial pH') },
  'patient.bloodGas.carboxyhaemoglobinFraction': {
    label: say('carboxyhaemoglobin'),
    help: say('as a fraction: 0.05 for 5 %'),
  },
  'patient.bloodGas.minutesAgo': { label: say('age of the blood gas'), unit: 'min' },
  'patient.oxygenUptakeMlPerMin': { label: say('oxygen uptake'), unit: 'mL/min' },
  'patient.secretions': { label: say('secretions') },
  'patient.tracheostomyAgeDays': {
    label: say('age of the opening at the neck'),
    unit: say('days'),
  },
  'patient.changes': { label: say('what changes the interface') },
  breathing: { label: say('breathing') },
  'breathing.state': { label: say('breathing state') },
  'breathing.ratePerMin': { label: say('breathing rate'), unit: '/min' },
  'breathing.tidalVolumeMl': { label: say('tidal volume'), unit: 'mL' },
  'breathing.dutyFraction': {
    label: say('share of the breath spent breathing in'),
    help: say('as a fraction: 0.33 for 1 to 2'),
  },
  'breathing.mouthShare': {
    label: say('share breathed by mouth'),
    help: say('as a fraction: 0 nose only, 1 mouth only'),
  },
  'breathing.fit': { label: say('fit of a mask') },
  site: { label: say('site') },
  'site.altitudeM': { label: say('altitude'), unit: 'm' },
  'site.barometricPressureKpa': { label: say('barometric pressure'), unit: 'kPa' },
  goal: { label: say('goal') },
  'goal.kind': { label: say('kind of goal') },
  'goal.lowPercent': { label: say('lower end of the saturation range'), unit: '%' },
  'goal.highPercent': { label: say('upper end of the saturation range'), unit: '%' },
  'goal.low': { label: say('lower end of the fraction range') },
  'goal.high': { label: say('upper end of the fraction range') },
  'goal.reason': { label: say('reason for the goal') },
  onNow: { label: say('what is on now') },
  'onNow.setUp': { label: say('set-up on now'), help: say('null means room air') },
  'onNow.setUp.family': { label: say('interface on now') },
  'onNow.setUp.size': { label: say('size of the interface on now') },
  'onNow.setUp.fit': { label: say('fit of the interface on now') },
  'onNow.setUp.sourceKind': { label: say('source on now') },
  'onNow.setUp.flowLpm': { label: say('flow on now'), unit: 'L/min' },
  'onNow.setUp.setO2Fraction': { label: say('fraction set now') },
  'onNow.setUp.over': { label: say('mask over the cannula') },
  'onNow.setUp.over.family': { label: say('mask over the cannula') },
  'onNow.setUp.over.flowLpm': { label: say('flow to the mask over the cannula'), unit: 'L/min' },
  'onNow.sinceMinutes': { label: say('time on this set-up'), unit: 'min' },
  'onNow.saturationPercent': { label: say('saturation read'), unit: '%' },
  'onNow.ratePerMin': { label: say('breathing rate on this set-up'), unit: '/min' },
}

/** Labels of numbers the core names by their last part alone. */
const LOOSE_LABELS: Readonly<Record<string, string>> = {
  flowLpm: say('flow'),
  altitudeM: say('altitude'),
  pressureKpa: say('pressure'),
  barometricKpa: say('barometric pressure'),
  heaterTemperatureC: say('temperature of the gas leaving the heater, not of its plate or water'),
  roomTemperatureC: say('room temperature'),
  roomRelativeHumidityFraction: say('relative humidity of the room'),
  temperatureC: say('temperature'),
  tidalVolumeL: say('tidal volume'),
  ratePerMin: say('breathing rate'),
  dutyFraction: say('share of the breath spent breathing in'),
  ageYears: say('age'),
  weightKg: say('weight'),
  draws: say('number of draws'),
  seed: say('seed'),
  top: say('number of rows'),
}

/** The label of a path; a path without one stands for itself, so that nothing is hidden. */
export function fieldLabel(path: string): string {
  if (path === '') return say('the case')
  const bare = path.replaceAll(/\[\d+\]/g, '')
  const last = bare.split('.').at(-1) ?? bare
  return FIELD_LABELS[bare]?.label ?? gasPathLabel(bare) ?? LOOSE_LABELS[last] ?? path
}
