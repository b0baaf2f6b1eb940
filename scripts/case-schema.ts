// Writes schema/case.schema.json from the field tables of src/patient, so that reader and schema cannot drift apart. Leaves out rules between fields, which only the reader knows.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { FAMILY_IDS, FIT_IDS, SIZE_IDS } from '../src/kit/family-id.ts'
import { BREATHING_STATES, CHANGES, SECRETIONS } from '../src/patient/case.ts'
import { AGE_KEYS, KEYS, NUMBERS } from '../src/patient/case-fields.ts'
import type { NumberRule } from '../src/patient/field.ts'
import { CUFFS, NOSE_STATES } from '../src/patient/read-airway.ts'
import { CASE_VERSION } from '../src/patient/read-case.ts'
import { RETENTION_RISKS, SEXES } from '../src/patient/read-patient.ts'
import { OVER_FAMILIES, SOURCE_KINDS } from '../src/patient/read-set-up.ts'

type Json = string | number | boolean | readonly Json[] | { readonly [key: string]: Json }
type Schema = { readonly [key: string]: Json }

const UNIT_NAMES: Readonly<Record<string, string>> = {
  a: 'years',
  mo: 'months',
  d: 'days',
  wk: 'weeks',
  '1': 'fraction, no unit',
}

function number(rule: NumberRule, text: string): Schema {
  const unit = UNIT_NAMES[rule.unit] ?? rule.unit
  const { min: minimum, max: maximum } = rule
  return { type: 'number', minimum, maximum, description: `${text}, ${unit}` }
}

function choice(values: readonly string[], description: string): Schema {
  return { enum: values, description }
}

function text(description: string): Schema {
  return { type: 'string', description }
}

function flag(description: string): Schema {
  return { type: 'boolean', default: false, description }
}

function object(
  keys: readonly string[],
  options: {
    readonly required: readonly string[]
    readonly properties: Schema
    readonly description: string
  },
): Schema {
  const missing = keys.filter((key) => !Object.hasOwn(options.properties, key))
  const surplus = Object.keys(options.properties).filter((key) => !keys.includes(key))
  if (missing.length + surplus.length > 0) throw new Error([...missing, ...surplus].join(' '))
  const { description, required, properties } = options
  return { type: 'object', description, additionalProperties: false, required, properties }
}

const nose = choice(NOSE_STATES, 'Whether air passes the nose')

const airway: Schema = {
  description: 'Through which opening the patient breathes and what sits in it',
  oneOf: [
    object(KEYS.naturalAirway, {
      description: 'Mouth and nose',
      required: ['route', 'nose'],
      properties: { route: { const: 'natural' }, nose },
    }),
    object(KEYS.tracheostomyAirway, {
      description:
        'A tube in the neck; mouth and nose still lead to the lungs when the cuff is not up',
      required: ['route', 'tube', 'nose'],
      properties: {
        route: { const: 'tracheostomy' },
        nose,
        tube: object(KEYS.tube, {
          description: 'The tube and what is on it. A thing not mentioned is not there',
          required: ['cuff'],
          properties: {
            cuff: choice(CUFFS, 'none: a tube without a cuff'),
            speakingValve: flag('One-way valve: in by the tube, out by the mouth'),
            capped: flag('The tube is closed'),
            heatMoistureExchanger: flag('A heat and moisture exchanger is on the tube'),
          },
        }),
      },
    }),
    object(KEYS.laryngectomyAirway, {
      description: 'Neck only: mouth and nose do not lead to the lungs',
      required: ['route'],
      properties: {
        route: { const: 'laryngectomy' },
        heatMoistureExchanger: flag('A heat and moisture exchanger is on the stoma'),
      },
    }),
  ],
}

const bloodGas = object(KEYS.bloodGas, {
  description: 'The last arterial blood gas',
  required: ['arterialPco2Kpa'],
  properties: {
    arterialPco2Kpa: number(NUMBERS.arterialPco2Kpa, 'Arterial carbon dioxide pressure'),
    ph: number(NUMBERS.ph, 'Arterial pH'),
    arterialPo2Kpa: number(NUMBERS.arterialPo2Kpa, 'Arterial oxygen pressure'),
    carboxyhaemoglobinFraction: number(NUMBERS.carboxyhaemoglobinFraction, 'Carboxyhaemoglobin'),
    minutesAgo: number(NUMBERS.minutesAgo, 'How long ago it was drawn'),
  },
})

const patient: Schema = {
  ...object(KEYS.patient, {
    description: 'Who breathes. What is not given is assumed as a spread and shown as assumed',
    required: ['airway', 'retentionRisk'],
    properties: {
      ageYears: number(NUMBERS.ageYears, 'Age'),
      ageMonths: number(NUMBERS.ageMonths, 'Age'),
      ageDays: number(NUMBERS.ageDays, 'Age'),
      gestationWeeks: number(NUMBERS.gestationWeeks, 'Completed gestation at birth, for infants'),
      weightKg: number(NUMBERS.weightKg, 'Weight; required below 37 weeks of gestation'),
      heightCm: number(NUMBERS.heightCm, 'Length or height'),
      sex: choice(SEXES, 'Sex, for the growth tables'),
      airway,
      retentionRisk: choice(RETENTION_RISKS, 'Risk of carbon dioxide retention'),
      haemoglobinGpl: number(NUMBERS.haemoglobinGpl, 'Haemoglobin'),
      temperatureC: number(NUMBERS.temperatureC, 'Body temperature'),
      bloodGas,
      oxygenUptakeMlPerMin: number(NUMBERS.oxygenUptakeMlPerMin, 'Measured oxygen uptake'),
      secretions: choice(SECRETIONS, 'What is coughed up or sucked out; absent: not known'),
      tracheostomyAgeDays: number(
        NUMBERS.tracheostomyAgeDays,
        'Days since the opening at the neck was made',
      ),
      changes: {
        type: 'array',
        uniqueItems: true,
        items: { enum: CHANGES },
        description: 'What changes the interface',
      },
    },
  }),
  oneOf: AGE_KEYS.map((key) => ({ required: [key] })),
}

const breathing = object(KEYS.breathing, {
  description: 'How the patient breathes now: a state, and what was counted or seen',
  required: ['state'],
  properties: {
    state: choice(BREATHING_STATES, 'The state that fits best'),
    ratePerMin: number(NUMBERS.ratePerMin, 'Counted breathing rate'),
    tidalVolumeMl: number(NUMBERS.tidalVolumeMl, 'Measured tidal volume'),
    dutyFraction: number(NUMBERS.dutyFraction, 'Inspiratory time over whole breath'),
    mouthShare: number(NUMBERS.mouthShare, 'Share of the breath drawn by mouth'),
    fit: choice(FIT_IDS, 'How the interface lies on this face'),
  },
})

const site = object(KEYS.site, {
  description: 'Where the patient is. Neither given: sea level is assumed, and said so loudly',
  required: [],
  properties: {
    altitudeM: number(NUMBERS.altitudeM, 'Altitude'),
    barometricPressureKpa: number(
      NUMBERS.barometricPressureKpa,
      'Measured pressure of this place, not reduced to sea level',
    ),
  },
})

const reason = text('Why, as a code of the table of reasons')

const goal: Schema = {
  description: 'What is to be reached',
  oneOf: [
    object(KEYS.saturationGoal, {
      description: 'A saturation range; low below high',
      required: ['kind', 'lowPercent', 'highPercent'],
      properties: {
        kind: { const: 'saturation' },
        lowPercent: number(NUMBERS.goalPercent, 'Lower end'),
        highPercent: number(NUMBERS.goalPercent, 'Upper end'),
        reason,
      },
    }),
    object(KEYS.fractionGoal, {
      description: 'A range of inspired oxygen fraction; low below high',
      required: ['kind', 'low', 'high'],
      properties: {
        kind: { const: 'fraction' },
        low: number(NUMBERS.inspiredFraction, 'Lower end'),
        high: number(NUMBERS.inspiredFraction, 'Upper end'),
        reason,
      },
    }),
    object(KEYS.otherGoal, {
      description: 'Highest fraction; the oximeter is not to be trusted',
      required: ['kind', 'reason'],
      properties: { kind: { const: 'as-much-as-possible' }, reason },
    }),
    object(KEYS.otherGoal, {
      description: 'Comfort: no saturation goal',
      required: ['kind'],
      properties: { kind: { const: 'comfort' }, reason },
    }),
  ],
}

const flow: Schema = {
  description: 'Flow as read on the meter, L/min, or flush: opened beyond its scale',
  oneOf: [number(NUMBERS.flowLpm, 'Flow'), { const: 'flush' }],
}

const setUp: Schema = object(KEYS.setUp, {
  description: 'The set-up in force, as seen at the bed',
  required: ['family', 'sourceKind', 'flowLpm'],
  properties: {
    family: choice(FAMILY_IDS, 'Kind of interface'),
    size: choice(SIZE_IDS, 'Size of the interface'),
    fit: choice(FIT_IDS, 'How it lies on the face'),
    sourceKind: choice(SOURCE_KINDS, 'What the gas comes from'),
    flowLpm: flow,
    setO2Fraction: number(
      NUMBERS.inspiredFraction,
      'Fraction set on the valve, nebuliser, blender or ventilator',
    ),
    over: object(KEYS.over, {
      description: 'The mask worn over a cannula, with its own flow',
      required: ['family', 'flowLpm'],
      properties: { family: choice(OVER_FAMILIES, 'Kind of mask'), flowLpm: flow },
    }),
  },
})

const onNow = object(KEYS.onNow, {
  description: 'What is on now and what it reads; set-up null means room air',
  required: ['setUp'],
  properties: {
    setUp: { oneOf: [setUp, { type: 'null' }] },
    sinceMinutes: number(NUMBERS.sinceMinutes, 'Minutes since the last change'),
    saturationPercent: number(NUMBERS.saturationPercent, 'Saturation read on it'),
    ratePerMin: number(NUMBERS.ratePerMin, 'Breathing rate counted on it'),
  },
})

export function caseSchema(): Schema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'https://oxwright.invalid/schema/case.schema.json',
    title: 'Oxwright case',
    ...object(KEYS.case, {
      description: 'A patient, a goal, and what is on now. Written by scripts/case-schema.ts',
      required: ['version', 'patient', 'breathing', 'goal'],
      properties: {
        version: { const: CASE_VERSION },
        note: text('Anything the writer wants to keep beside the case'),
        bed: text('Bed, as the ward names it'),
        code: text('Code of the case; never a name'),
        patient,
        breathing,
        site,
        goal,
        onNow,
      },
    }),
  }
}

export function caseSchemaText(): string {
  return `${JSON.stringify(caseSchema(), null, 2)}\n`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL('../schema/case.schema.json', import.meta.url), caseSchemaText())
}
