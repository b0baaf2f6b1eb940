// Oxygen uptake and carbon dioxide output at rest by age and size, and cardiac output. Leaves out the change of output with disease and of uptake with drugs.
import { assert, requireWithin } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { scaled, type Spread } from '../units/spread.ts'
import { RESPIRATORY_QUOTIENT } from './alveolar-gas.ts'
import {
  bodySurfaceM2,
  predictedBodyWeightKg,
  requireAge,
  requireWeight,
  type Body,
} from './body.ts'

interface UptakeRow extends Provenance {
  readonly ageYears: number
  readonly mlPerKgPerMin: number
}

/** Resting oxygen uptake per kg by age; linear between rows. */
export const UPTAKE_ROWS: readonly UptakeRow[] = [
  // 4.6 is the minimum of the first hours, rising over days; awake babies use more.
  { ageYears: 0, mlPerKgPerMin: 6.5, source: 'Scopes1966', known: 'derived' },
  { ageYears: 1 / 12, mlPerKgPerMin: 9.3, source: 'Verma2019', known: 'seen' },
  { ageYears: 2 / 12, mlPerKgPerMin: 8.1, source: 'Verma2019', known: 'seen' },
  // 171 mL/min/m² at 3 to 12 months, for 8 kg and 0.4 m².
  { ageYears: 0.6, mlPerKgPerMin: 8.5, source: 'Lundell1996', known: 'derived' },
  // 0.79·HR − 7.4·BSA + 108.1 (boys) and 0.77·HR − 5.2·BSA + 106.8 (girls) mL/min/m² at usual sizes and heart rates.
  { ageYears: 3, mlPerKgPerMin: 7.8, source: 'Lundell1996', known: 'derived' },
  { ageYears: 6, mlPerKgPerMin: 6.9, source: 'Lundell1996', known: 'derived' },
  { ageYears: 10, mlPerKgPerMin: 5.5, source: 'Lundell1996', known: 'derived' },
  { ageYears: 15, mlPerKgPerMin: 4.4, source: 'Lundell1996', known: 'derived' },
  { ageYears: 20, mlPerKgPerMin: 3.5, known: 'common-practice' },
]
/** CV between people of one age and size: 2.0/9.3 and 2.2/8.1 [Verma2019], 37/171 [Lundell1996]. */
const UPTAKE_LOG_SD = 0.2
const UPTAKE_FACTOR_MIN = 0.6
const UPTAKE_FACTOR_MAX = 1.8
/** Share of the weight above predicted that counts for uptake in adults (common practice in drug dosing and nutrition). */
const EXCESS_WEIGHT_SHARE = 0.4
const ADULT_AGE_YEARS = 18
const PREDICTED_HEIGHT_CM_MIN = 130

/** Rise of uptake per °C of fever, fraction (common practice: 10 to 13 %). */
export const FEVER_UPTAKE_PER_C = 0.1
const NORMAL_TEMPERATURE_C = 37

/** Cardiac index, L/min/m²: mean 3.38 from 0.2 to 2.0 m² [Jegier1963]; 4.874 − 0.023·age above 20 years [Katori1979]. */
const CARDIAC_INDEX = {
  young: { value: 3.38, source: 'Jegier1963', known: 'seen' },
  adult: { constant: 4.874, perYear: 0.023, source: 'Katori1979', known: 'seen' },
  adultAgeYears: 20,
  /** ±30 % counts as normal: taken as two SD. */
  logSd: 0.15,
  factorMin: 0.5,
  factorMax: 2,
} as const

/** Weight that counts for metabolism and tidal volume: actual in children, predicted plus 0.4 of the excess in adults. */
export function metabolicWeightKg(body: Body): number {
  requireAge(body.ageYears)
  requireWeight(body.weightKg)
  if (body.ageYears < ADULT_AGE_YEARS || body.heightCm < PREDICTED_HEIGHT_CM_MIN)
    return body.weightKg
  const predictedKg = predictedBodyWeightKg(body)
  const excessKg = body.weightKg - predictedKg
  return excessKg > 0 ? predictedKg + EXCESS_WEIGHT_SHARE * excessKg : body.weightKg
}

/** Resting oxygen uptake, mL/min STPD, at 37 °C or the temperature given: rate per kg by age × metabolic weight ×
 *  (1 + 0.1 per °C above 37). Spread 20 % between people. Valid 0–120 years, 0.3–350 kg, 30–43 °C.
 *  Sources: UPTAKE_ROWS. Checked for plausible carbon dioxide with the breathing presets (breathing-states.test.ts). */
export function oxygenUptakeSpread(body: Body & { readonly temperatureC?: number }): Spread {
  const medianMlPerMin =
    uptakeMlPerKgPerMin(body.ageYears) * metabolicWeightKg(body) * feverFactor(body.temperatureC)
  return scaled(
    {
      kind: 'lognormal',
      median: 1,
      logSd: UPTAKE_LOG_SD,
      min: UPTAKE_FACTOR_MIN,
      max: UPTAKE_FACTOR_MAX,
    },
    medianMlPerMin,
  )
}

/** Carbon dioxide output for an uptake, same unit. R 0.8 unless given; infants measured 0.83 and 0.79 [Verma2019]. */
export function co2OutputMlPerMin(gas: {
  readonly o2UptakeMlPerMin: number
  readonly respiratoryQuotient?: number
}): number {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'o2UptakeMlPerMin',
    value: gas.o2UptakeMlPerMin,
    min: 0,
    max: Number.MAX_VALUE,
    unit: 'mL/min',
  })
  return gas.o2UptakeMlPerMin * (gas.respiratoryQuotient ?? RESPIRATORY_QUOTIENT)
}

/** Cardiac output, L/min: index by age × body surface, spread 15 %. Valid 0–120 years.
 *  Sources: CARDIAC_INDEX. Adult 70 years, 1.8 m²: 5.9 L/min. */
export function cardiacOutputSpread(body: Body): Spread {
  requireAge(body.ageYears)
  const adult = CARDIAC_INDEX.adult
  const index =
    body.ageYears >= CARDIAC_INDEX.adultAgeYears
      ? adult.constant - adult.perYear * body.ageYears
      : CARDIAC_INDEX.young.value
  return scaled(
    {
      kind: 'lognormal',
      median: 1,
      logSd: CARDIAC_INDEX.logSd,
      min: CARDIAC_INDEX.factorMin,
      max: CARDIAC_INDEX.factorMax,
    },
    index * bodySurfaceM2(body),
  )
}

/** Resting uptake per kg at an age, linear between UPTAKE_ROWS, constant from 20 years. */
export function uptakeMlPerKgPerMin(ageYears: number): number {
  requireAge(ageYears)
  const upper = UPTAKE_ROWS.find((row) => row.ageYears >= ageYears)
  const lower = UPTAKE_ROWS.findLast((row) => row.ageYears <= ageYears)
  assert(lower !== undefined, 'uptake rows start at birth')
  if (upper === undefined || upper === lower) return lower.mlPerKgPerMin
  const share = (ageYears - lower.ageYears) / (upper.ageYears - lower.ageYears)
  return lower.mlPerKgPerMin + share * (upper.mlPerKgPerMin - lower.mlPerKgPerMin)
}

function feverFactor(temperatureC: number | undefined): number {
  const value = requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'temperatureC',
    value: temperatureC ?? NORMAL_TEMPERATURE_C,
    min: 30,
    max: 43,
    unit: '°C',
  })
  return 1 + FEVER_UPTAKE_PER_C * Math.max(0, value - NORMAL_TEMPERATURE_C)
}
