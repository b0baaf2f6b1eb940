// Size of the patient as spreads: weight and height, typed or from age and sex. Leaves out composition.
import {
  HEIGHT_CM_MAX,
  HEIGHT_CM_MIN,
  heightSpreadCm,
  WEIGHT_KG_MAX,
  WEIGHT_KG_MIN,
  weightSpreadKg,
  type Body,
} from '../physiology/body.ts'
import { GROWTH_AGE_YEARS_MAX, GROWTH_SOURCES, weightZ, type Sex } from '../physiology/growth.ts'
import { monthsFromYears } from '../units/age.ts'
import { normalProbability, normalQuantile } from '../units/normal.ts'
import type { Provenance } from '../units/provenance.ts'
import { medianOf, quantile, type Spread } from '../units/spread.ts'
import type { Breathing, Case, Patient } from './case.ts'
import { isPreterm } from './check-size.ts'
import { around, assumed, typed, type PatientSpread } from './patient-spread.ts'

/** Error of a bedside scale and of a measured height (common practice). */
const WEIGHT_ERROR_RELATIVE = 0.02
const HEIGHT_ERROR_CM = 1.5

/** Heavier children of an age are taller: correlation of weight and height for age (common practice; surveys find 0.6–0.8). */
const WEIGHT_HEIGHT_CORRELATION = 0.7

/** Length of a baby born early from its weight: a term boy's 49.9 cm at 3.35 kg, same build (derived from WHO2006). */
const TERM = { lengthCm: 49.9, weightKg: 3.35 } as const
const PRETERM_LENGTH_LOG_SD = 0.05
/** From this age a child born early is taken to be as tall as others of its weight for age (common practice). */
const CATCH_UP_AGE_YEARS = 0.5

/** Whoever breathes is of one sex; unknown, either is as likely. */
export function sexAt(patient: Patient, u: number): Sex {
  return patient.sex ?? (u <= 1 / 2 ? 'female' : 'male')
}

export function weightSpread(patient: Patient, heightCm: number): PatientSpread {
  const { weightKg } = patient
  if (weightKg !== undefined) {
    const sd = WEIGHT_ERROR_RELATIVE * weightKg
    return typed(around({ value: weightKg, sd, min: WEIGHT_KG_MIN, max: WEIGHT_KG_MAX }))
  }
  const isTyped = patient.heightCm !== undefined
  const spread = weightSpreadKg({ ...patient, heightCm })
  const code = isTyped ? ('SIZE_FROM_OTHER_SIZE' as const) : ('SIZE_FROM_AGE' as const)
  return assumed({ spread, ...growthProvenance(patient), code })
}

export function heightSpread(about: Pick<Case, 'patient' | 'breathing'>): PatientSpread {
  const { patient, breathing } = about
  const { heightCm, weightKg } = patient
  if (heightCm !== undefined) {
    return typed(
      around({ value: heightCm, sd: HEIGHT_ERROR_CM, min: HEIGHT_CM_MIN, max: HEIGHT_CM_MAX }),
    )
  }
  const isSmall = patient.ageYears < CATCH_UP_AGE_YEARS && isPreterm(patient, breathing)
  if (weightKg !== undefined && isSmall) return pretermLength(weightKg)
  const spread = heightSpreadCm({ ...patient, gestationWeeks: undefined })
  return assumed({ spread, ...growthProvenance(patient), code: 'SIZE_FROM_AGE' })
}

function pretermLength(weightKg: number): PatientSpread {
  const median = Math.max(HEIGHT_CM_MIN, TERM.lengthCm * Math.cbrt(weightKg / TERM.weightKg))
  const reach = Math.exp(2 * PRETERM_LENGTH_LOG_SD)
  const spread: Spread = {
    kind: 'lognormal',
    median,
    logSd: PRETERM_LENGTH_LOG_SD,
    min: Math.max(HEIGHT_CM_MIN, median / reach),
    max: median * reach,
  }
  return assumed({ spread, known: 'derived', source: 'WHO2006', code: 'SIZE_FROM_OTHER_SIZE' })
}

function growthProvenance(patient: Patient): Provenance {
  if (patient.ageYears >= GROWTH_AGE_YEARS_MAX) return { known: 'common-practice' }
  const months = monthsFromYears(patient.ageYears)
  const row = GROWTH_SOURCES.findLast(({ fromMonths }) => fromMonths <= months)
  return row === undefined ? { known: 'common-practice' } : { known: row.known, ...sourceOf(row) }
}

function sourceOf(row: Provenance): { readonly source?: string } {
  return row.source === undefined ? {} : { source: row.source }
}

/** One body. The numbers between 0 and 1 choose sex, height and weight; what is typed varies by its error only. */
export function bodyAt(
  about: Case,
  u: { readonly sex: number; readonly height: number; readonly weight: number },
): Body {
  const { patient } = about
  const sex = sexAt(patient, u.sex)
  const known = { ...patient, sex }
  const height = heightSpread({ ...about, patient: known })
  const heightCm = quantile(height.spread, heightU(known, u))
  const weight = weightSpread(known, heightCm)
  return {
    ageYears: patient.ageYears,
    sex,
    heightCm,
    weightKg: quantile(weight.spread, weightU(known, u)),
  }
}

/** The middle body. */
export function middleBody(about: Patient, breathing: Breathing): Body {
  const sex = sexAt(about, 0)
  const patient = { ...about, sex }
  const heightCm = medianOf(heightSpread({ patient, breathing }).spread)
  const weightKg = medianOf(weightSpread(patient, heightCm).spread)
  return { ageYears: patient.ageYears, sex, heightCm, weightKg }
}

interface SizeNumbers {
  readonly height: number
  readonly weight: number
}

/** In a child neither of whose sizes is typed, weight goes with height; an adult's weight comes from the height itself. */
function weightU(patient: Patient, u: SizeNumbers): number {
  const isFree = patient.weightKg === undefined && patient.heightCm === undefined
  return isFree && isChild(patient) ? together(normalQuantile(u.height), u.weight) : u.weight
}

/** A child's height goes with the typed weight. */
function heightU(patient: Patient & { readonly sex: Sex }, u: SizeNumbers): number {
  const { weightKg, heightCm, ageYears, sex } = patient
  if (weightKg === undefined || heightCm !== undefined || !isChild(patient)) return u.height
  return together(weightZ({ ageYears, sex, weightKg }), u.height)
}

function isChild(patient: Patient): boolean {
  return patient.ageYears < GROWTH_AGE_YEARS_MAX
}

/** Least and greatest probability passed on, so that no typed size however extreme leaves the open interval. */
const TAIL = 1e-6

function together(zOther: number, u: number): number {
  const free = Math.sqrt(1 - WEIGHT_HEIGHT_CORRELATION ** 2)
  const z = WEIGHT_HEIGHT_CORRELATION * zOther + free * normalQuantile(u)
  return Math.min(1 - TAIL, Math.max(TAIL, normalProbability(z)))
}
