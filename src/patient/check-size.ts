// Judges weight, height and gestation against age: what no body of that age weighs is refused, what few weigh is named. Leaves out what the weight is when not given.
import type { ErrorCode } from '../errors.ts'
import { heightZ, weightZ, GROWTH_AGE_YEARS_MAX } from '../physiology/growth.ts'
import { yearsFromMonths } from '../units/age.ts'
import type { Breathing, Patient, Sex } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { checkNumber, report, type Reading } from './field.ts'
import { roundForSuggestion, type UnitSlip } from './unit-slip.ts'
import type { WarningCode } from './warnings.ts'

/** Gestation matters and is asked for up to this age, years (common practice). */
const GESTATION_AGE_YEARS_MAX = 2
/** Born earlier than this counts as preterm, weeks. */
export const PRETERM_BELOW_WEEKS = 37

/** Standard deviations for age. suspect: values flagged as implausible in growth surveys [WHO2006, from memory]:
 *  another unit that fits is then offered. refused: no living child. */
interface Bands {
  readonly unusual: number
  readonly suspectBelow: number
  readonly suspectAbove: number
  readonly refused: number
}
const WEIGHT_BANDS: Bands = { unusual: 3, suspectBelow: -6, suspectAbove: 5, refused: 8 }
const HEIGHT_BANDS: Bands = { unusual: 3, suspectBelow: -6, suspectAbove: 6, refused: 8 }
/** Another unit or age is offered only when it makes the value this usual. */
const FITS_WITHIN = 2

/** Adults, beyond the growth tables: what is believable, and what is usual (common practice). */
const ADULT_WEIGHT_KG = { min: 20, max: 350, usualMin: 35, usualMax: 200 }
const ADULT_HEIGHT_CM = { min: 85, max: 230, usualMin: 130, usualMax: 210 }

interface Measure {
  readonly key: 'weightKg' | 'heightCm'
  readonly implausible: ErrorCode
  readonly unusual: WarningCode
  readonly bands: Bands
  readonly adult: typeof ADULT_WEIGHT_KG
  readonly zOf: (options: {
    readonly ageYears: number
    readonly sex: Sex
    readonly value: number
  }) => number
}

const MEASURES: readonly Measure[] = [
  {
    key: 'weightKg',
    implausible: 'WEIGHT_IMPLAUSIBLE_FOR_AGE',
    unusual: 'WEIGHT_UNUSUAL_FOR_AGE',
    bands: WEIGHT_BANDS,
    adult: ADULT_WEIGHT_KG,
    zOf: ({ ageYears, sex, value }) => weightZ({ ageYears, sex, weightKg: value }),
  },
  {
    key: 'heightCm',
    implausible: 'HEIGHT_IMPLAUSIBLE_FOR_AGE',
    unusual: 'HEIGHT_UNUSUAL_FOR_AGE',
    bands: HEIGHT_BANDS,
    adult: ADULT_HEIGHT_CM,
    zOf: ({ ageYears, sex, value }) => heightZ({ ageYears, sex, heightCm: value }),
  },
]

export function checkSize(
  reading: Reading,
  patient: Patient,
  breathing: Breathing | undefined,
): void {
  checkGestation(reading, patient)
  checkWeightGiven(reading, patient, breathing)
  for (const measure of MEASURES) {
    const value = patient[measure.key]
    if (value === undefined) continue
    if (patient.ageYears > GROWTH_AGE_YEARS_MAX)
      checkAdult(reading, patient, { ...measure, value, noLowerEnd: false })
    else
      checkChild(reading, patient, { ...measure, value, noLowerEnd: isPreterm(patient, breathing) })
  }
}

export function isPreterm(patient: Patient, breathing: Breathing | undefined): boolean {
  const { gestationWeeks } = patient
  return (
    breathing?.state === 'preterm' ||
    (gestationWeeks !== undefined && gestationWeeks < PRETERM_BELOW_WEEKS)
  )
}

function checkGestation(reading: Reading, patient: Patient): void {
  if (patient.gestationWeeks === undefined || patient.ageYears <= GESTATION_AGE_YEARS_MAX) return
  report(reading, {
    code: 'GESTATION_NOT_FOR_AGE',
    path: 'patient.gestationWeeks',
    value: patient.gestationWeeks,
    limit: { max: GESTATION_AGE_YEARS_MAX },
    unit: 'a',
  })
}

/** No growth table of ours reaches below term: a preterm infant's weight cannot be assumed. */
function checkWeightGiven(
  reading: Reading,
  patient: Patient,
  breathing: Breathing | undefined,
): void {
  if (patient.weightKg !== undefined || !isPreterm(patient, breathing)) return
  const { min, max } = NUMBERS.weightKg
  if (reading.problems.some((problem) => problem.path === 'patient.weightKg')) return
  report(reading, {
    code: 'WEIGHT_REQUIRED',
    path: 'patient.weightKg',
    value: null,
    limit: { min, max },
    unit: 'kg',
  })
}

/** noLowerEnd: born before term, when being small for the days since birth says nothing. */
type Measured = Measure & { readonly value: number; readonly noLowerEnd: boolean }

function checkChild(reading: Reading, patient: Patient, measured: Measured): void {
  const { bands, key } = measured
  const fromMedian = leastExtremeZ(measured, patient, measured.value)
  const z = measured.noLowerEnd ? Math.max(0, fromMedian) : fromMedian
  const isSuspect = z < bands.suspectBelow || z > bands.suspectAbove
  if (isSuspect && offerOther(reading, patient, measured)) return
  const path = `patient.${key}`
  const { unit } = NUMBERS[key]
  if (Math.abs(z) > bands.refused) {
    report(reading, { code: measured.implausible, path, value: measured.value, unit })
  } else if (Math.abs(z) > bands.unusual) {
    reading.warnings.push({ code: measured.unusual, path, value: measured.value, unit })
  }
}

function checkAdult(reading: Reading, patient: Patient, measured: Measured): void {
  const { adult, key, value } = measured
  const path = `patient.${key}`
  const { unit } = NUMBERS[key]
  if (value < adult.min && offerAge(reading, patient, measured)) return
  const slips = NUMBERS[key].slips.map((slip) => ({
    ...slip,
    min: adult.usualMin,
    max: adult.usualMax,
  }))
  const rule = { code: measured.implausible, unit, min: adult.min, max: adult.max, slips }
  if (checkNumber({ reading, path, value, rule }) === undefined) return
  if (value >= adult.usualMin && value <= adult.usualMax) return
  const limit = { min: adult.usualMin, max: adult.usualMax }
  reading.warnings.push({ code: measured.unusual, path, value, limit, unit })
}

/** The value in another unit, or the age in another unit, whichever makes it usual. */
function offerOther(reading: Reading, patient: Patient, measured: Measured): boolean {
  const slips: readonly UnitSlip[] = NUMBERS[measured.key].slips
  const fitting = slips
    .map((slip) => slip.convert(measured.value))
    .find((value) => Math.abs(leastExtremeZ(measured, patient, value)) <= FITS_WITHIN)
  if (fitting === undefined) return offerAge(reading, patient, measured)
  const { min, max, unit } = NUMBERS[measured.key]
  report(reading, {
    code: 'UNIT_SLIP_SUSPECTED',
    path: `patient.${measured.key}`,
    value: measured.value,
    limit: { min, max },
    unit,
    suggestion: roundForSuggestion(fitting),
  })
  return true
}

function offerAge(reading: Reading, patient: Patient, measured: Measured): boolean {
  const ageYears = yearsFromMonths(patient.ageYears)
  if (ageYears > GROWTH_AGE_YEARS_MAX) return false
  const z = leastExtremeZ(measured, { ...patient, ageYears }, measured.value)
  if (Math.abs(z) > FITS_WITHIN) return false
  const { min, max } = NUMBERS.ageYears
  if (reading.problems.some(({ path }) => path === 'patient.ageYears')) return true
  report(reading, {
    code: 'UNIT_SLIP_SUSPECTED',
    path: 'patient.ageYears',
    value: patient.ageYears,
    limit: { min, max },
    unit: 'a',
    suggestion: roundForSuggestion(ageYears),
  })
  return true
}

/** Where the sex is not known, that of the two which makes the value less extreme. */
function leastExtremeZ(measure: Measure, patient: Patient, value: number): number {
  const sexes: readonly Sex[] = patient.sex === undefined ? ['female', 'male'] : [patient.sex]
  const all = sexes.map((sex) => measure.zOf({ ageYears: patient.ageYears, sex, value }))
  return all.reduce((least, z) => (Math.abs(z) < Math.abs(least) ? z : least))
}
