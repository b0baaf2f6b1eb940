// Every rule of the case reader, one bad input each: the code, the place, and what is offered instead.
import { describe, expect, it } from 'vitest'
import type { ErrorCode } from '../src/errors.ts'
import { readCase } from '../src/patient/read-case.ts'
import { parsedExample } from './support/examples.ts'

type Edit = readonly [path: string, value: unknown]
interface Bad {
  readonly what: string
  readonly edits: readonly Edit[]
  readonly code: ErrorCode
  readonly path: string
  readonly suggestion?: string | number
  readonly from?: string
}

const GONE = Symbol('gone')

/** The example with some fields set, or gone. */
function edited(bad: Bad): unknown {
  const root = structuredClone(parsedExample(bad.from ?? 'nasal-cannula'))
  for (const [path, value] of bad.edits) setAt(root, path.split('.'), value)
  return root
}

function setAt(root: unknown, keys: readonly string[], value: unknown): void {
  let at = root as Record<string, unknown> // Safe: examples are objects down to the last key.
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>
  const last = keys.at(-1) ?? ''
  if (value === GONE) delete at[last]
  else at[last] = value
}

const ADULT_TUBE = 'tracheostomy-speaking-valve'

const SHAPE: readonly Bad[] = [
  { what: 'no version', edits: [['version', GONE]], code: 'MISSING_FIELD', path: 'version' },
  { what: 'another version', edits: [['version', 2]], code: 'UNKNOWN_CHOICE', path: 'version' },
  { what: 'a note that is no text', edits: [['note', 3]], code: 'NOT_TEXT', path: 'note' },
  { what: 'no patient', edits: [['patient', GONE]], code: 'MISSING_FIELD', path: 'patient' },
  {
    what: 'a patient that is a list',
    edits: [['patient', []]],
    code: 'NOT_AN_OBJECT',
    path: 'patient',
  },
  { what: 'no breathing', edits: [['breathing', GONE]], code: 'MISSING_FIELD', path: 'breathing' },
  { what: 'no goal', edits: [['goal', GONE]], code: 'MISSING_FIELD', path: 'goal' },
  {
    what: 'a misspelt field',
    edits: [['patient.wieghtKg', 62]],
    code: 'UNKNOWN_FIELD',
    path: 'patient.wieghtKg',
    suggestion: 'weightKg',
  },
  {
    what: 'a field without its unit',
    edits: [['patient.weight', 62]],
    code: 'UNKNOWN_FIELD',
    path: 'patient.weight',
    suggestion: 'weightKg',
  },
  {
    what: 'a field by its short name',
    edits: [['onNow.spo2', 91]],
    code: 'UNKNOWN_FIELD',
    path: 'onNow.spo2',
    suggestion: 'saturationPercent',
  },
  {
    what: 'two saturations at once',
    edits: [['onNow.saturationOnAirPercent', 84]],
    code: 'UNKNOWN_FIELD',
    path: 'onNow.saturationOnAirPercent',
    suggestion: 'saturationPercent',
  },
  {
    what: 'a field nobody knows',
    edits: [['patient.shoeSize', 41]],
    code: 'UNKNOWN_FIELD',
    path: 'patient.shoeSize',
  },
  {
    what: 'a number as text',
    edits: [['patient.weightKg', '62']],
    code: 'NOT_A_NUMBER',
    path: 'patient.weightKg',
    suggestion: 62,
  },
  {
    what: 'a decimal comma',
    edits: [['patient.weightKg', '62,5']],
    code: 'NOT_A_NUMBER',
    path: 'patient.weightKg',
    suggestion: 62.5,
  },
  {
    what: 'a group sign',
    edits: [['patient.weightKg', '1,062.5']],
    code: 'NOT_A_NUMBER',
    path: 'patient.weightKg',
  },
  {
    what: 'not a number',
    edits: [['patient.weightKg', Number.NaN]],
    code: 'NOT_A_NUMBER',
    path: 'patient.weightKg',
  },
  {
    what: 'infinity',
    edits: [['breathing.ratePerMin', Number.POSITIVE_INFINITY]],
    code: 'NOT_A_NUMBER',
    path: 'breathing.ratePerMin',
  },
  {
    what: 'null for a number',
    edits: [['patient.weightKg', null]],
    code: 'NOT_A_NUMBER',
    path: 'patient.weightKg',
  },
  {
    what: 'a switch as text',
    edits: [['patient.airway.tube.capped', 'no']],
    code: 'NOT_A_BOOLEAN',
    path: 'patient.airway.tube.capped',
    from: ADULT_TUBE,
  },
  {
    what: 'changes that are no list',
    edits: [['patient.changes', 'beard']],
    code: 'NOT_A_LIST',
    path: 'patient.changes',
  },
  {
    what: 'a change nobody knows',
    edits: [['patient.changes', ['berad']]],
    code: 'UNKNOWN_CHOICE',
    path: 'patient.changes[0]',
    suggestion: 'beard',
  },
  {
    what: 'a change twice',
    edits: [['patient.changes', ['beard', 'beard']]],
    code: 'DUPLICATE_ID',
    path: 'patient.changes[1]',
  },
  {
    what: 'a misspelt state',
    edits: [['breathing.state', 'pnuemonia']],
    code: 'UNKNOWN_CHOICE',
    path: 'breathing.state',
    suggestion: 'pneumonia',
  },
  {
    what: 'a state by another name',
    edits: [['breathing.state', 'AECOPD']],
    code: 'UNKNOWN_CHOICE',
    path: 'breathing.state',
    suggestion: 'copd-exacerbation',
  },
  {
    what: 'a state that is a number',
    edits: [['breathing.state', 7]],
    code: 'UNKNOWN_CHOICE',
    path: 'breathing.state',
  },
  {
    what: 'a sex by its letter',
    edits: [['patient.sex', 'F']],
    code: 'UNKNOWN_CHOICE',
    path: 'patient.sex',
    suggestion: 'female',
  },
  {
    what: 'no risk of retention given',
    edits: [['patient.retentionRisk', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.retentionRisk',
  },
  {
    what: 'no airway',
    edits: [['patient.airway', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.airway',
  },
  {
    what: 'an airway as text',
    edits: [['patient.airway', 'natural']],
    code: 'NOT_AN_OBJECT',
    path: 'patient.airway',
  },
  {
    what: 'no route',
    edits: [['patient.airway.route', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.airway.route',
  },
  {
    what: 'a route by another name',
    edits: [['patient.airway.route', 'tracheotomy']],
    code: 'UNKNOWN_CHOICE',
    path: 'patient.airway.route',
    suggestion: 'tracheostomy',
  },
  {
    what: 'no state of the nose',
    edits: [['patient.airway.nose', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.airway.nose',
  },
  {
    what: 'a tube on a natural airway',
    edits: [['patient.airway.tube', { cuff: 'up' }]],
    code: 'UNKNOWN_FIELD',
    path: 'patient.airway.tube',
  },
  {
    what: 'a tracheostomy without a tube',
    edits: [['patient.airway.tube', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.airway.tube',
    from: ADULT_TUBE,
  },
  {
    what: 'a tube without its cuff',
    edits: [['patient.airway.tube.cuff', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.airway.tube.cuff',
    from: ADULT_TUBE,
  },
  {
    what: 'a blood gas without carbon dioxide',
    edits: [['patient.bloodGas', { ph: 7.4 }]],
    code: 'MISSING_FIELD',
    path: 'patient.bloodGas.arterialPco2Kpa',
  },
  {
    what: 'no age',
    edits: [['patient.ageYears', GONE]],
    code: 'MISSING_FIELD',
    path: 'patient.ageYears',
  },
  {
    what: 'what is on now without a set-up',
    edits: [['onNow.setUp', GONE]],
    code: 'MISSING_FIELD',
    path: 'onNow.setUp',
  },
  {
    what: 'a set-up without a flow',
    edits: [['onNow.setUp.flowLpm', GONE]],
    code: 'MISSING_FIELD',
    path: 'onNow.setUp.flowLpm',
  },
  {
    what: 'an interface by its short name',
    edits: [['onNow.setUp.family', 'hfno']],
    code: 'UNKNOWN_CHOICE',
    path: 'onNow.setUp.family',
    suggestion: 'nasal-high-flow',
  },
  {
    what: 'a source nobody knows',
    edits: [['onNow.setUp.sourceKind', 'wall']],
    code: 'UNKNOWN_CHOICE',
    path: 'onNow.setUp.sourceKind',
    suggestion: 'wall-flowmeter',
  },
  {
    what: 'a size the family has not',
    edits: [['onNow.setUp.size', 'adult']],
    code: 'UNKNOWN_CHOICE',
    path: 'onNow.setUp.size',
    from: 'nasal-catheter',
  },
  {
    what: 'a goal of an unknown kind',
    edits: [['goal.kind', 'spo2']],
    code: 'UNKNOWN_CHOICE',
    path: 'goal.kind',
    suggestion: 'saturation',
  },
  {
    what: 'a goal with one end',
    edits: [['goal.highPercent', GONE]],
    code: 'MISSING_FIELD',
    path: 'goal.highPercent',
  },
  {
    what: 'a goal end by another name',
    edits: [['goal.max', 98]],
    code: 'UNKNOWN_FIELD',
    path: 'goal.max',
    suggestion: 'highPercent',
  },
  {
    what: 'as much as possible without a reason',
    edits: [['goal', { kind: 'as-much-as-possible' }]],
    code: 'MISSING_FIELD',
    path: 'goal.reason',
  },
]

const UNITS: readonly Bad[] = [
  {
    what: 'haemoglobin in g/dL',
    edits: [['patient.haemoglobinGpl', 12]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.haemoglobinGpl',
    suggestion: 120,
  },
  {
    what: 'weight in grams',
    edits: [['patient.weightKg', 1100]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.weightKg',
    suggestion: 1.1,
    from: 'preterm',
  },
  {
    what: 'a newborn weighed in pounds',
    edits: [['patient.weightKg', 7.7]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.weightKg',
    suggestion: 3.49,
    from: 'newborn',
  },
  {
    what: 'height in metres',
    edits: [['patient.heightCm', 1.6]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.heightCm',
    suggestion: 160,
  },
  {
    what: 'height in inches',
    edits: [['patient.heightCm', 63]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.heightCm',
    suggestion: 160,
  },
  {
    what: "a child's height in inches",
    edits: [['patient.heightCm', 46]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.heightCm',
    suggestion: 117,
    from: 'child-asthma',
  },
  {
    what: 'temperature in °F',
    edits: [['patient.temperatureC', 101.1]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.temperatureC',
    suggestion: 38.4,
  },
  {
    what: 'carbon dioxide in mmHg',
    edits: [['patient.bloodGas.arterialPco2Kpa', 55]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.bloodGas.arterialPco2Kpa',
    suggestion: 7.33,
    from: 'entrainment-mask',
  },
  {
    what: 'oxygen in mmHg',
    edits: [['patient.bloodGas.arterialPo2Kpa', 140]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.bloodGas.arterialPo2Kpa',
    suggestion: 18.7,
    from: 'entrainment-mask',
  },
  {
    what: 'hydrogen ions for pH',
    edits: [['patient.bloodGas.ph', 40]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.bloodGas.ph',
    suggestion: 7.4,
    from: 'entrainment-mask',
  },
  {
    what: 'carboxyhaemoglobin in percent',
    edits: [['patient.bloodGas.carboxyhaemoglobinFraction', 24]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.bloodGas.carboxyhaemoglobinFraction',
    suggestion: 0.24,
    from: 'carbon-monoxide',
  },
  {
    what: 'a saturation as a fraction',
    edits: [['onNow.saturationPercent', 0.91]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'onNow.saturationPercent',
    suggestion: 91,
  },
  {
    what: 'a goal as a fraction',
    edits: [['goal.lowPercent', 0.94]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'goal.lowPercent',
    suggestion: 94,
  },
  {
    what: 'a setting in percent',
    edits: [['onNow.setUp.setO2Fraction', 28]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'onNow.setUp.setO2Fraction',
    suggestion: 0.28,
    from: 'entrainment-mask',
  },
  {
    what: 'a fraction goal in percent',
    edits: [['goal.high', 45]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'goal.high',
    suggestion: 0.45,
    from: 'fraction-goal',
  },
  {
    what: 'duty in percent',
    edits: [['breathing.dutyFraction', 38]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'breathing.dutyFraction',
    suggestion: 0.38,
  },
  {
    what: 'mouth share in percent',
    edits: [['breathing.mouthShare', 30]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'breathing.mouthShare',
    suggestion: 0.3,
  },
  {
    what: 'flow in mL/min',
    edits: [['onNow.setUp.flowLpm', 100]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'onNow.setUp.flowLpm',
    suggestion: 0.1,
    from: 'preterm',
  },
  {
    what: 'a small flow in mL/min',
    edits: [['onNow.setUp.flowLpm', 25]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'onNow.setUp.flowLpm',
    suggestion: 0.025,
    from: 'preterm',
  },
  {
    what: 'volume in litres',
    edits: [['breathing.tidalVolumeMl', 0.48]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'breathing.tidalVolumeMl',
    suggestion: 480,
  },
  {
    what: 'volume in mL per kg',
    edits: [['breathing.tidalVolumeMl', 7]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'breathing.tidalVolumeMl',
    suggestion: 434,
  },
  {
    what: 'uptake in litres',
    edits: [['patient.oxygenUptakeMlPerMin', 0.25]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.oxygenUptakeMlPerMin',
    suggestion: 250,
  },
  {
    what: 'uptake per kg',
    edits: [['patient.oxygenUptakeMlPerMin', 3.5]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.oxygenUptakeMlPerMin',
    suggestion: 217,
  },
  {
    what: 'age in months',
    edits: [
      [
        'patient',
        {
          ageYears: 18,
          sex: 'male',
          weightKg: 11,
          airway: { route: 'natural', nose: 'open' },
          retentionRisk: 'none',
        },
      ],
    ],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.ageYears',
    suggestion: 1.5,
  },
  {
    what: 'age beyond any life, in months',
    edits: [['patient.ageYears', 150]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.ageYears',
    suggestion: 12.5,
  },
  {
    what: 'gestation in days',
    edits: [['patient.gestationWeeks', 196]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.gestationWeeks',
    suggestion: 28,
    from: 'preterm',
  },
  {
    what: 'altitude in feet, out of range',
    edits: [['site.altitudeM', 7200]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'site.altitudeM',
    suggestion: 2190,
  },
  {
    what: 'altitude in feet, beside the barometer',
    edits: [['site', { altitudeM: 3871, barometricPressureKpa: 88 }]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'site.altitudeM',
    suggestion: 1180,
  },
  {
    what: 'pressure in hPa',
    edits: [['site', { barometricPressureKpa: 1013 }]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'site.barometricPressureKpa',
    suggestion: 101,
  },
  {
    what: 'pressure in mmHg',
    edits: [['site', { barometricPressureKpa: 760 }]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'site.barometricPressureKpa',
    suggestion: 101,
  },
  {
    what: 'pressure in atmospheres',
    edits: [['site', { barometricPressureKpa: 1 }]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'site.barometricPressureKpa',
    suggestion: 101,
  },
]

const RANGES: readonly Bad[] = [
  {
    what: 'a negative age',
    edits: [['patient.ageYears', -1]],
    code: 'AGE_OUT_OF_RANGE',
    path: 'patient.ageYears',
  },
  {
    what: 'no haemoglobin to speak of',
    edits: [['patient.haemoglobinGpl', 1]],
    code: 'HAEMOGLOBIN_OUT_OF_RANGE',
    path: 'patient.haemoglobinGpl',
  },
  {
    what: 'a hyperbaric chamber',
    edits: [['site', { barometricPressureKpa: 240 }]],
    code: 'HYPERBARIC_REFUSED',
    path: 'site.barometricPressureKpa',
  },
  {
    what: 'air too thin',
    edits: [['site', { barometricPressureKpa: 40 }]],
    code: 'BAROMETRIC_PRESSURE_OUT_OF_RANGE',
    path: 'site.barometricPressureKpa',
  },
  {
    what: 'below the lowest dry land',
    edits: [['site.altitudeM', -900]],
    code: 'ALTITUDE_OUT_OF_RANGE',
    path: 'site.altitudeM',
  },
  {
    what: 'a goal below 70 %',
    edits: [['goal.lowPercent', 60]],
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'goal.lowPercent',
  },
  {
    what: 'a goal above 100 %',
    edits: [['goal.highPercent', 101]],
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'goal.highPercent',
  },
  {
    what: 'a fraction below air',
    edits: [['goal.low', 0.15]],
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'goal.low',
    from: 'fraction-goal',
  },
  {
    what: 'a range turned round',
    edits: [['goal', { kind: 'saturation', lowPercent: 98, highPercent: 94 }]],
    code: 'RANGE_REVERSED',
    path: 'goal.highPercent',
    suggestion: 98,
  },
  {
    what: 'a range without width',
    edits: [['goal', { kind: 'saturation', lowPercent: 94, highPercent: 94 }]],
    code: 'RANGE_REVERSED',
    path: 'goal.highPercent',
  },
  {
    what: 'a flow of nothing',
    edits: [['onNow.setUp.flowLpm', 0]],
    code: 'FLOW_OUT_OF_RANGE',
    path: 'onNow.setUp.flowLpm',
  },
  {
    what: 'a negative time',
    edits: [['onNow.sinceMinutes', -5]],
    code: 'DURATION_OUT_OF_RANGE',
    path: 'onNow.sinceMinutes',
  },
  {
    what: 'a rate of 200',
    edits: [['breathing.ratePerMin', 200]],
    code: 'RATE_OUT_OF_RANGE',
    path: 'breathing.ratePerMin',
  },
]

const CONTRADICTIONS: readonly Bad[] = [
  {
    what: 'two ages',
    edits: [['patient.ageMonths', 804]],
    code: 'AGE_GIVEN_TWICE',
    path: 'patient.ageMonths',
  },
  {
    what: 'a preterm infant without a weight',
    edits: [['patient.weightKg', GONE]],
    code: 'WEIGHT_REQUIRED',
    path: 'patient.weightKg',
    from: 'preterm',
  },
  {
    what: 'the preterm state without a weight',
    edits: [
      ['patient.weightKg', GONE],
      ['patient.gestationWeeks', GONE],
    ],
    code: 'WEIGHT_REQUIRED',
    path: 'patient.weightKg',
    from: 'preterm',
  },
  {
    what: 'gestation of an adult',
    edits: [['patient.gestationWeeks', 40]],
    code: 'GESTATION_NOT_FOR_AGE',
    path: 'patient.gestationWeeks',
  },
  {
    what: 'an adult in the preterm state',
    edits: [['breathing.state', 'preterm']],
    code: 'STATE_NOT_FOR_AGE',
    path: 'breathing.state',
  },
  {
    what: 'an adult in the newborn state',
    edits: [['breathing.state', 'newborn']],
    code: 'STATE_NOT_FOR_AGE',
    path: 'breathing.state',
  },
  {
    what: 'an adult with bronchiolitis',
    edits: [['breathing.state', 'bronchiolitis']],
    code: 'STATE_NOT_FOR_AGE',
    path: 'breathing.state',
  },
  {
    what: 'a child with COPD',
    edits: [['breathing.state', 'copd-stable']],
    code: 'STATE_NOT_FOR_AGE',
    path: 'breathing.state',
    from: 'child-asthma',
  },
  {
    what: 'a pregnant man',
    edits: [['patient.sex', 'male']],
    code: 'STATE_NOT_FOR_SEX',
    path: 'breathing.state',
    from: 'pregnancy',
  },
  {
    what: 'the preterm state at term',
    edits: [['patient.gestationWeeks', 40]],
    code: 'STATE_NOT_FOR_GESTATION',
    path: 'breathing.state',
    suggestion: 'newborn',
    from: 'preterm',
  },
  {
    what: 'the newborn state before term',
    edits: [['patient.gestationWeeks', 33]],
    code: 'STATE_NOT_FOR_GESTATION',
    path: 'breathing.state',
    suggestion: 'preterm',
    from: 'newborn',
  },
  {
    what: 'a newborn of 60 kg',
    edits: [['patient.weightKg', 60]],
    code: 'WEIGHT_IMPLAUSIBLE_FOR_AGE',
    path: 'patient.weightKg',
    from: 'newborn',
  },
  {
    what: 'a six-year-old of 4 kg',
    edits: [
      ['patient.weightKg', 4],
      ['patient.heightCm', GONE],
    ],
    code: 'WEIGHT_IMPLAUSIBLE_FOR_AGE',
    path: 'patient.weightKg',
    from: 'child-asthma',
  },
  {
    what: 'a newborn of 1 m',
    edits: [['patient.heightCm', 100]],
    code: 'HEIGHT_IMPLAUSIBLE_FOR_AGE',
    path: 'patient.heightCm',
    from: 'newborn',
  },
  {
    what: 'a speaking valve with the cuff up',
    edits: [['patient.airway.tube.cuff', 'up']],
    code: 'SPEAKING_VALVE_WITH_CUFF_UP',
    path: 'patient.airway.tube.speakingValve',
    from: ADULT_TUBE,
  },
  {
    what: 'a capped tube with the cuff up',
    edits: [['patient.airway.tube.cuff', 'up']],
    code: 'CAPPED_WITH_CUFF_UP',
    path: 'patient.airway.tube.capped',
    from: 'tracheostomy-capped',
  },
  {
    what: 'a capped tube with a valve',
    edits: [['patient.airway.tube.capped', true]],
    code: 'CAPPED_WITH_SPEAKING_VALVE',
    path: 'patient.airway.tube.capped',
    from: ADULT_TUBE,
  },
  {
    what: 'a capped tube with an exchanger',
    edits: [['patient.airway.tube.heatMoistureExchanger', true]],
    code: 'CAPPED_WITH_EXCHANGER',
    path: 'patient.airway.tube.heatMoistureExchanger',
    from: 'tracheostomy-capped',
  },
  {
    what: 'a valve with an exchanger',
    edits: [['patient.airway.tube.heatMoistureExchanger', true]],
    code: 'SPEAKING_VALVE_WITH_EXCHANGER',
    path: 'patient.airway.tube.heatMoistureExchanger',
    from: ADULT_TUBE,
  },
  {
    what: 'a new tracheostomy on a natural airway',
    edits: [['patient.changes', ['new-tracheostomy']]],
    code: 'CHANGE_NOT_FOR_AIRWAY',
    path: 'patient.changes[0]',
  },
  {
    what: 'the age of an opening that is not there',
    edits: [['patient.tracheostomyAgeDays', 5]],
    code: 'CHANGE_NOT_FOR_AIRWAY',
    path: 'patient.tracheostomyAgeDays',
  },
  {
    what: 'a new tracheostomy of a year ago',
    edits: [
      ['patient.changes', ['new-tracheostomy']],
      ['patient.tracheostomyAgeDays', 365],
    ],
    code: 'CONTRADICTION',
    path: 'patient.tracheostomyAgeDays',
    from: ADULT_TUBE,
  },
  {
    what: 'secretions both thin and thick',
    edits: [
      ['patient.changes', ['thick-or-bloody-secretions']],
      ['patient.secretions', 'thin'],
    ],
    code: 'CONTRADICTION',
    path: 'patient.secretions',
  },
  {
    what: 'secretions of a kind nobody lists',
    edits: [['patient.secretions', 'sticky']],
    code: 'UNKNOWN_CHOICE',
    path: 'patient.secretions',
    suggestion: 'thick',
  },
  {
    what: 'altitude and pressure apart',
    edits: [['site', { altitudeM: 1180, barometricPressureKpa: 101 }]],
    code: 'ALTITUDE_AND_PRESSURE_DISAGREE',
    path: 'site.barometricPressureKpa',
  },
  {
    what: 'two rates apart',
    edits: [
      ['breathing.ratePerMin', 12],
      ['onNow.ratePerMin', 40],
    ],
    code: 'RATES_DISAGREE',
    path: 'onNow.ratePerMin',
  },
  {
    what: "an adult at a newborn's rate",
    edits: [
      ['breathing.ratePerMin', 110],
      ['onNow.ratePerMin', 108],
    ],
    code: 'RATE_IMPLAUSIBLE_FOR_AGE',
    path: 'breathing.ratePerMin',
  },
  {
    what: "a newborn's volume for an adult",
    edits: [['patient.weightKg', 5]],
    code: 'WEIGHT_IMPLAUSIBLE_FOR_AGE',
    path: 'patient.weightKg',
  },
  {
    what: 'more volume than the chest holds',
    edits: [['breathing.tidalVolumeMl', 2900]],
    code: 'TIDAL_VOLUME_IMPLAUSIBLE_FOR_SIZE',
    path: 'breathing.tidalVolumeMl',
  },
  {
    what: 'a breath that fills only the dead space',
    edits: [['breathing.tidalVolumeMl', 70]],
    code: 'TIDAL_VOLUME_BELOW_DEAD_SPACE',
    path: 'breathing.tidalVolumeMl',
  },
  {
    what: 'more air than a body moves',
    edits: [
      ['breathing.tidalVolumeMl', 2000],
      ['breathing.ratePerMin', 60],
      ['onNow.ratePerMin', 58],
    ],
    code: 'BREATH_OUT_OF_RANGE',
    path: 'breathing.tidalVolumeMl',
  },
  {
    what: 'more oxygen than a body burns',
    edits: [
      ['patient.oxygenUptakeMlPerMin', 900],
      ['patient.weightKg', 7.4],
    ],
    code: 'UPTAKE_IMPLAUSIBLE_FOR_SIZE',
    path: 'patient.oxygenUptakeMlPerMin',
    from: 'bronchiolitis',
  },
  {
    what: 'an entrainment mask without its setting',
    edits: [['onNow.setUp.setO2Fraction', GONE]],
    code: 'MISSING_FIELD',
    path: 'onNow.setUp.setO2Fraction',
    from: 'entrainment-mask',
  },
  {
    what: 'a setting where nothing is set',
    edits: [['onNow.setUp.setO2Fraction', 0.4]],
    code: 'SETTING_NOT_FOR_SET_UP',
    path: 'onNow.setUp.setO2Fraction',
  },
  {
    what: 'an entrainment mask on a blender',
    edits: [['onNow.setUp.sourceKind', 'blender']],
    code: 'SOURCE_NOT_FOR_INTERFACE',
    path: 'onNow.setUp.sourceKind',
    from: 'entrainment-mask',
  },
  {
    what: 'a nebuliser on a cannula',
    edits: [['onNow.setUp.sourceKind', 'jet-nebuliser']],
    code: 'SOURCE_NOT_FOR_INTERFACE',
    path: 'onNow.setUp.sourceKind',
  },
  {
    what: 'a blender at flush',
    edits: [['onNow.setUp.flowLpm', 'flush']],
    code: 'FLUSH_NOT_ON_SOURCE',
    path: 'onNow.setUp.flowLpm',
    from: 't-piece',
  },
  {
    what: 'a flow no cannula carries',
    edits: [['onNow.setUp.flowLpm', 40]],
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'onNow.setUp.flowLpm',
    suggestion: 0.04,
    from: 'bronchiolitis',
  },
  {
    what: 'a flow ten times rated',
    edits: [['onNow.setUp.flowLpm', 60]],
    code: 'FLOW_IMPLAUSIBLE_FOR_SIZE',
    path: 'onNow.setUp.flowLpm',
  },
  {
    what: 'a mask over a cannula alone',
    edits: [['onNow.setUp.over', { family: 'simple-mask', flowLpm: 6 }]],
    code: 'OVER_MASK_NOT_FOR_INTERFACE',
    path: 'onNow.setUp.over',
    suggestion: 'cannula-under-mask',
  },
  {
    what: 'a cannula under no mask',
    edits: [['onNow.setUp.over', GONE]],
    code: 'MISSING_FIELD',
    path: 'onNow.setUp.over',
    from: 'cannula-under-mask',
  },
]

const REFUSALS: readonly Bad[] = [
  {
    what: 'a patient who does not breathe',
    edits: [['patient.notBreathing', true]],
    code: 'NOT_BREATHING_REFUSED',
    path: 'patient.notBreathing',
  },
  {
    what: 'apnoea as a state',
    edits: [['breathing.state', 'apnoea']],
    code: 'NOT_BREATHING_REFUSED',
    path: 'breathing.state',
  },
  {
    what: 'gasping',
    edits: [['breathing.state', 'gasping']],
    code: 'NOT_BREATHING_REFUSED',
    path: 'breathing.state',
  },
  {
    what: 'a rate of nothing',
    edits: [['breathing.ratePerMin', 0]],
    code: 'NOT_BREATHING_REFUSED',
    path: 'breathing.ratePerMin',
  },
  {
    what: 'a rate of nothing on the set-up',
    edits: [['onNow.ratePerMin', 0]],
    code: 'NOT_BREATHING_REFUSED',
    path: 'onNow.ratePerMin',
  },
  {
    what: 'a ventilated patient',
    edits: [['patient.ventilated', true]],
    code: 'VENTILATED_REFUSED',
    path: 'patient.ventilated',
  },
  {
    what: 'ventilation as a state',
    edits: [['breathing.state', 'ventilated']],
    code: 'VENTILATED_REFUSED',
    path: 'breathing.state',
  },
  {
    what: 'an intubated airway',
    edits: [['patient.airway.route', 'intubated']],
    code: 'VENTILATED_REFUSED',
    path: 'patient.airway.route',
  },
  {
    what: 'CPAP as an interface',
    edits: [['onNow.setUp.family', 'CPAP']],
    code: 'VENTILATED_REFUSED',
    path: 'onNow.setUp.family',
  },
]

const ALL = [...SHAPE, ...UNITS, ...RANGES, ...CONTRADICTIONS, ...REFUSALS]

describe('the case reader refuses', () => {
  it('has at least sixty bad inputs to refuse', () => {
    expect(ALL.length).toBeGreaterThanOrEqual(60)
  })

  it.each(ALL)('$what', (bad) => {
    const input = edited(bad)
    const before = structuredClone(input)
    const read = readCase(input)
    expect(input).toEqual(before)
    const problems = read.ok ? [] : read.problems
    const found = problems.find(({ code, path }) => code === bad.code && path === bad.path)
    expect(found, JSON.stringify(problems)).toBeDefined()
    expect(found?.suggestion).toEqual(bad.suggestion)
  })

  it('says every problem at once, none twice', () => {
    const read = readCase(
      edited({
        what: '',
        code: 'MISSING_FIELD',
        path: '',
        edits: [
          ['patient.weightKg', '62,5'],
          ['patient.haemoglobinGpl', 12],
          ['patient.hieghtCm', 160],
          ['breathing.state', 'pnuemonia'],
          ['site', { barometricPressureKpa: 1013 }],
          ['goal.lowPercent', 99],
          ['onNow.setUp.family', 'prongs'],
          ['onNow.setUp.flowLpm', GONE],
        ],
      }),
    )
    const problems = read.ok ? [] : read.problems
    const places = problems.map(({ code, path }) => `${code} ${path}`)
    expect(places.toSorted()).toEqual([
      'MISSING_FIELD onNow.setUp.flowLpm',
      'NOT_A_NUMBER patient.weightKg',
      'RANGE_REVERSED goal.highPercent',
      'UNIT_SLIP_SUSPECTED patient.haemoglobinGpl',
      'UNIT_SLIP_SUSPECTED site.barometricPressureKpa',
      'UNKNOWN_CHOICE breathing.state',
      'UNKNOWN_CHOICE onNow.setUp.family',
      'UNKNOWN_FIELD patient.hieghtCm',
    ])
  })

  it.each([undefined, null, 3, 'text', [], true])('an input that is no object: %s', (input) => {
    const read = readCase(input)
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['NOT_AN_OBJECT'])
  })
})
