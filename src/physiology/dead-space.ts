// Anatomical dead space by age and size, split at the larynx. Leaves out alveolar dead space, neck posture and apparatus.
import type { Spread } from '../units/spread.ts'
import { requireAge, requireWeight } from './body.ts'

/** Total VD/kg = 3.28 − 0.56·ln(1 + age); intrathoracic part constant. 7 days to 14 years [Numa1996]. */
const CHILD = { constant: 3.28, slope: 0.56, intrathoracic: 1.03, ageYearsMax: 14 } as const
/** Adult total per kg predicted weight [Numa1996, quoting others]. */
const ADULT_ML_PER_KG = 2.2
/** Extrathoracic 72 ± 32 mL, intrathoracic 66 ± 29 mL in cadavers [Nunn1959]. */
const ADULT_EXTRATHORACIC_SHARE = 72 / (72 + 66)
/** Between the child formula and the adult value, years: linear (our choice). */
const ADULT_AGE_YEARS = 18
/** Spread between people of one size: r 0.95 of the child fit leaves about this CV; cadavers spread more (derived). */
const DEAD_SPACE_LOG_SD = 0.2
const SIZE_FACTOR_MIN = 0.5
const SIZE_FACTOR_MAX = 2

export interface DeadSpace {
  readonly extrathoracicMl: number
  readonly intrathoracicMl: number
  readonly totalMl: number
}

export interface DeadSpaceBody {
  readonly ageYears: number
  /** Actual weight below 14 years; predicted body weight in adults. */
  readonly weightKg: number
}

/** Anatomical dead space. To 14 years: 3.28 − 0.56·ln(1 + age) mL/kg, of which 1.03 intrathoracic. Adults:
 *  2.2 mL/kg of predicted weight, split 72 : 66. Linear between 14 and 18 years. Newborn and preterm use age 0
 *  (the formula starts at 7 days). Valid 0–120 years, 0.3–350 kg. Source: [Numa1996], [Nunn1959] for the adult
 *  split. Reproduces the published values to their last digit (dead-space.test.ts). */
export function anatomicalDeadSpace(body: DeadSpaceBody): DeadSpace {
  requireAge(body.ageYears)
  requireWeight(body.weightKg)
  const child = childMlPerKg(Math.min(body.ageYears, CHILD.ageYearsMax))
  const grown = Math.min(
    1,
    Math.max(0, (body.ageYears - CHILD.ageYearsMax) / (ADULT_AGE_YEARS - CHILD.ageYearsMax)),
  )
  const adultExtrathoracic = ADULT_ML_PER_KG * ADULT_EXTRATHORACIC_SHARE
  const extrathoracic = child.extrathoracic + grown * (adultExtrathoracic - child.extrathoracic)
  const intrathoracic =
    child.intrathoracic + grown * (ADULT_ML_PER_KG - adultExtrathoracic - child.intrathoracic)
  return {
    extrathoracicMl: extrathoracic * body.weightKg,
    intrathoracicMl: intrathoracic * body.weightKg,
    totalMl: (extrathoracic + intrathoracic) * body.weightKg,
  }
}

/** Factor by which one person's dead space differs from the formula's (derived from r 0.95 and the cadaver spread). */
export const DEAD_SPACE_FACTOR: Spread = {
  kind: 'lognormal',
  median: 1,
  logSd: DEAD_SPACE_LOG_SD,
  min: SIZE_FACTOR_MIN,
  max: SIZE_FACTOR_MAX,
}

function childMlPerKg(ageYears: number): {
  readonly extrathoracic: number
  readonly intrathoracic: number
} {
  const total = CHILD.constant - CHILD.slope * Math.log(1 + ageYears)
  return { extrathoracic: total - CHILD.intrathoracic, intrathoracic: CHILD.intrathoracic }
}
