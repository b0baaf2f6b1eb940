// Haemoglobin of a hospital patient by age, sex and state. Leaves out the causes of anaemia.
import type { Spread } from '../units/spread.ts'
import { yearsFromMonths } from '../units/age.ts'
import type { Case } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { isPreterm } from './check-size.ts'
import { around, assumed, typed, type PatientSpread } from './patient-spread.ts'

/** Laboratory and sampling error, g/L (common practice). */
const LABORATORY_SD_GPL = 3

interface HaemoglobinRow {
  readonly untilYears: number
  readonly mean: number
  readonly sd: number
}

/** Means by age, g/L, a little below those of health and with a wider spread, as in hospital (common practice; the fall to
 *  the lowest value at two to three months is that of every textbook). */
const CHILD_ROWS: readonly HaemoglobinRow[] = [
  { untilYears: yearsFromMonths(0.5), mean: 170, sd: 22 },
  { untilYears: yearsFromMonths(1.5), mean: 135, sd: 18 },
  { untilYears: yearsFromMonths(4), mean: 112, sd: 13 },
  { untilYears: 2, mean: 116, sd: 12 },
  { untilYears: 12, mean: 124, sd: 12 },
]
const ADULT = {
  female: { mean: 124, sd: 17 },
  male: { mean: 134, sd: 20 },
  unknown: { mean: 129, sd: 19.5 },
} as const
const PREGNANT = { mean: 113, sd: 12 } as const
const PRETERM = { mean: 132, sd: 25 } as const

const LOWEST_GPL = 65
const HIGHEST_GPL = 230

export function haemoglobinSpread(about: Case): PatientSpread {
  const { haemoglobinGpl } = about.patient
  if (haemoglobinGpl !== undefined) {
    const { min, max } = NUMBERS.haemoglobinGpl
    return typed(around({ value: haemoglobinGpl, sd: LABORATORY_SD_GPL, min, max }))
  }
  const { mean, sd } = usual(about)
  const spread: Spread = { kind: 'normal', mean, sd, min: LOWEST_GPL, max: HIGHEST_GPL }
  return assumed({ spread, known: 'common-practice', code: 'FROM_SIZE' })
}

function usual(about: Case): { readonly mean: number; readonly sd: number } {
  const { patient, breathing } = about
  if (breathing.state === 'pregnancy') return PREGNANT
  if (isPreterm(patient, breathing)) return PRETERM
  const child = CHILD_ROWS.find(({ untilYears }) => patient.ageYears < untilYears)
  return child ?? ADULT[patient.sex ?? 'unknown']
}
