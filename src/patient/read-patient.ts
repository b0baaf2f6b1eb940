// Reads the patient: age, size, airway, blood, what changes the interface. Leaves out breathing.
import { yearsFromMonths, monthsFromDays } from '../units/age.ts'
import {
  CHANGE_ALIASES,
  FIELD_ALIASES,
  RISK_ALIASES,
  SECRETION_ALIASES,
  SEX_ALIASES,
} from './aliases.ts'
import { CHANGES, SECRETIONS, type BloodGas, type Patient } from './case.ts'
import { AGE_KEYS, KEYS, NUMBERS } from './case-fields.ts'
import {
  given,
  isGiven,
  openObject,
  pathOf,
  readChoice,
  readChoices,
  readNumber,
  report,
  reportMissing,
  type Node,
} from './field.ts'
import { checkNeck } from './check-neck.ts'
import { readAirway } from './read-airway.ts'

export const SEXES = ['female', 'male'] as const
export const RETENTION_RISKS = ['none', 'at-risk', 'known-retainer'] as const

export function readPatient(root: Node): Patient | undefined {
  if (!isGiven(root, 'patient')) return reportMissing(root, 'patient')
  const node = openObject({
    reading: root.reading,
    path: pathOf(root, 'patient'),
    value: root.fields.get('patient'),
    keys: KEYS.patient,
    aliases: FIELD_ALIASES,
  })
  return node === undefined ? undefined : patientOf(node)
}

function patientOf(node: Node): Patient | undefined {
  const ageYears = readAge(node)
  const airway = readAirway(node)
  const retentionRisk = readChoice(node, 'retentionRisk', {
    choices: RETENTION_RISKS,
    aliases: RISK_ALIASES,
    isRequired: true,
  })
  const changes = readChoices(node, 'changes', { choices: CHANGES, aliases: CHANGE_ALIASES })
  const optional = given({
    gestationWeeks: readNumber(node, 'gestationWeeks', NUMBERS.gestationWeeks),
    weightKg: readNumber(node, 'weightKg', NUMBERS.weightKg),
    heightCm: readNumber(node, 'heightCm', NUMBERS.heightCm),
    sex: readChoice(node, 'sex', { choices: SEXES, aliases: SEX_ALIASES }),
    haemoglobinGpl: readNumber(node, 'haemoglobinGpl', NUMBERS.haemoglobinGpl),
    temperatureC: readNumber(node, 'temperatureC', NUMBERS.temperatureC),
    bloodGas: readBloodGas(node),
    oxygenUptakeMlPerMin: readNumber(node, 'oxygenUptakeMlPerMin', NUMBERS.oxygenUptakeMlPerMin),
    secretions: readChoice(node, 'secretions', {
      choices: SECRETIONS,
      aliases: SECRETION_ALIASES,
    }),
    tracheostomyAgeDays: readNumber(node, 'tracheostomyAgeDays', NUMBERS.tracheostomyAgeDays),
  })
  checkNeck(node, { airway, changes, ...optional })
  if (ageYears === undefined || airway === undefined || retentionRisk === undefined)
    return undefined
  return { ageYears, ...optional, airway, retentionRisk, changes }
}

/** Exactly one of years, months and days; held as years. */
function readAge(node: Node): number | undefined {
  const typed = AGE_KEYS.filter((key) => isGiven(node, key))
  if (typed.length === 0) return reportMissing(node, 'ageYears', { oneOf: AGE_KEYS })
  if (typed.length > 1) {
    const path = pathOf(node, typed[1] ?? '')
    const value = typed.join(', ')
    return report(node.reading, {
      code: 'AGE_GIVEN_TWICE',
      path,
      value,
      limit: { oneOf: AGE_KEYS },
    })
  }
  const months = readNumber(node, 'ageMonths', NUMBERS.ageMonths)
  if (months !== undefined) return yearsFromMonths(months)
  const days = readNumber(node, 'ageDays', NUMBERS.ageDays)
  if (days !== undefined) return yearsFromMonths(monthsFromDays(days))
  return readNumber(node, 'ageYears', NUMBERS.ageYears)
}

function readBloodGas(patient: Node): BloodGas | undefined {
  if (!isGiven(patient, 'bloodGas')) return undefined
  const node = openObject({
    reading: patient.reading,
    path: pathOf(patient, 'bloodGas'),
    value: patient.fields.get('bloodGas'),
    keys: KEYS.bloodGas,
    aliases: FIELD_ALIASES,
  })
  if (node === undefined) return undefined
  if (!isGiven(node, 'arterialPco2Kpa')) {
    const { min, max } = NUMBERS.arterialPco2Kpa
    reportMissing(node, 'arterialPco2Kpa', { min, max })
  }
  const arterialPco2Kpa = readNumber(node, 'arterialPco2Kpa', NUMBERS.arterialPco2Kpa)
  const optional = given({
    ph: readNumber(node, 'ph', NUMBERS.ph),
    arterialPo2Kpa: readNumber(node, 'arterialPo2Kpa', NUMBERS.arterialPo2Kpa),
    carboxyhaemoglobinFraction: readNumber(
      node,
      'carboxyhaemoglobinFraction',
      NUMBERS.carboxyhaemoglobinFraction,
    ),
    minutesAgo: readNumber(node, 'minutesAgo', NUMBERS.minutesAgo),
  })
  return arterialPco2Kpa === undefined ? undefined : { arterialPco2Kpa, ...optional }
}
