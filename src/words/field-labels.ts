// What each field of a case is called, with its unit as printed. Leaves out bounds, which the case reader holds.

export interface FieldLabel {
  readonly label: string
  readonly unit?: string
  readonly help?: string
}

export const FIELD_LABELS: Readonly<Record<string, FieldLabel>> = {
  version: { label: 'version of the case file' },
  note: { label: 'note' },
  bed: { label: 'bed' },
  code: { label: 'patient code' },
  patient: { label: 'patient' },
  'patient.ageYears': { label: 'age', unit: 'years' },
  'patient.ageMonths': { label: 'age', unit: 'months' },
  'patient.ageDays': { label: 'age', unit: 'days' },
  'patient.gestationWeeks': { label: 'gestation at birth', unit: 'weeks' },
  'patient.weightKg': { label: 'weight', unit: 'kg' },
  'patient.heightCm': { label: 'height', unit: 'cm' },
  'patient.sex': { label: 'sex' },
  'patient.airway': { label: 'airway' },
  'patient.airway.route': { label: 'way of breathing' },
  'patient.airway.nose': { label: 'nose' },
  'patient.airway.tube': { label: 'tracheostomy tube' },
  'patient.airway.tube.cuff': { label: 'cuff' },
  'patient.airway.tube.speakingValve': { label: 'speaking valve' },
  'patient.airway.tube.capped': { label: 'tube capped' },
  'patient.airway.tube.heatMoistureExchanger': { label: 'heat and moisture exchanger' },
  'patient.airway.heatMoistureExchanger': { label: 'heat and moisture exchanger' },
  'patient.retentionRisk': { label: 'risk of carbon-dioxide retention' },
  'patient.haemoglobinGpl': { label: 'haemoglobin', unit: 'g/L' },
  'patient.temperatureC': { label: 'body temperature', unit: '°C' },
  'patient.bloodGas': { label: 'blood gas' },
  'patient.bloodGas.arterialPco2Kpa': { label: 'arterial PCO2', unit: 'kPa' },
  'patient.bloodGas.arterialPo2Kpa': { label: 'arterial PO2', unit: 'kPa' },
  'patient.bloodGas.ph': { label: 'arterial pH' },
  'patient.bloodGas.carboxyhaemoglobinFraction': {
    label: 'carboxyhaemoglobin',
    help: 'as a fraction: 0.05 for 5 %',
  },
  'patient.bloodGas.minutesAgo': { label: 'age of the blood gas', unit: 'min' },
  'patient.oxygenUptakeMlPerMin': { label: 'oxygen uptake', unit: 'mL/min' },
  'patient.secretions': { label: 'secretions' },
  'patient.tracheostomyAgeDays': { label: 'age of the opening at the neck', unit: 'days' },
  'patient.changes': { label: 'what changes the interface' },
  breathing: { label: 'breathing' },
  'breathing.state': { label: 'breathing state' },
  'breathing.ratePerMin': { label: 'breathing rate', unit: '/min' },
  'breathing.tidalVolumeMl': { label: 'tidal volume', unit: 'mL' },
  'breathing.dutyFraction': {
    label: 'share of the breath spent breathing in',
    help: 'as a fraction: 0.33 for 1 to 2',
  },
  'breathing.mouthShare': {
    label: 'share breathed by mouth',
    help: 'as a fraction: 0 nose only, 1 mouth only',
  },
  'breathing.fit': { label: 'fit of a mask' },
  site: { label: 'site' },
  'site.altitudeM': { label: 'altitude', unit: 'm' },
  'site.barometricPressureKpa': { label: 'barometric pressure', unit: 'kPa' },
  goal: { label: 'goal' },
  'goal.kind': { label: 'kind of goal' },
  'goal.lowPercent': { label: 'lower end of the saturation range', unit: '%' },
  'goal.highPercent': { label: 'upper end of the saturation range', unit: '%' },
  'goal.low': { label: 'lower end of the fraction range' },
  'goal.high': { label: 'upper end of the fraction range' },
  'goal.reason': { label: 'reason for the goal' },
  onNow: { label: 'what is on now' },
  'onNow.setUp': { label: 'set-up on now', help: 'null means room air' },
  'onNow.setUp.family': { label: 'interface on now' },
  'onNow.setUp.size': { label: 'size of the interface on now' },
  'onNow.setUp.fit': { label: 'fit of the interface on now' },
  'onNow.setUp.sourceKind': { label: 'source on now' },
  'onNow.setUp.flowLpm': { label: 'flow on now', unit: 'L/min' },
  'onNow.setUp.setO2Fraction': { label: 'fraction set now' },
  'onNow.setUp.over': { label: 'mask over the cannula' },
  'onNow.setUp.over.family': { label: 'mask over the cannula' },
  'onNow.setUp.over.flowLpm': { label: 'flow to the mask over the cannula', unit: 'L/min' },
  'onNow.sinceMinutes': { label: 'time on this set-up', unit: 'min' },
  'onNow.saturationPercent': { label: 'saturation read', unit: '%' },
  'onNow.ratePerMin': { label: 'breathing rate on this set-up', unit: '/min' },
}

/** Labels of numbers the core names by their last part alone. */
const LOOSE_LABELS: Readonly<Record<string, string>> = {
  flowLpm: 'flow',
  altitudeM: 'altitude',
  pressureKpa: 'pressure',
  barometricKpa: 'barometric pressure',
  temperatureC: 'temperature',
  tidalVolumeL: 'tidal volume',
  ratePerMin: 'breathing rate',
  dutyFraction: 'share of the breath spent breathing in',
  ageYears: 'age',
  weightKg: 'weight',
  draws: 'number of draws',
  seed: 'seed',
  top: 'number of rows',
}

/** The label of a path; a path without one stands for itself, so that nothing is hidden. */
export function fieldLabel(path: string): string {
  if (path === '') return 'the case'
  const bare = path.replaceAll(/\[\d+\]/g, '')
  const last = bare.split('.').at(-1) ?? bare
  return FIELD_LABELS[bare]?.label ?? LOOSE_LABELS[last] ?? path
}
