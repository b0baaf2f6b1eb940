// Oxygen affinity of blood by age, from newborn fetal haemoglobin to adult. Leaves out diseases of haemoglobin.
import { requireWithin } from '../errors.ts'
import { monthsFromYears } from '../units/age.ts'
import type { Provenance } from '../units/provenance.ts'
import { kpaFromMmhg } from '../units/pressure.ts'
import { fixed, type Spread } from '../units/spread.ts'
import { STANDARD_P50_KPA } from './dissociation.ts'

interface AffinityRow extends Provenance {
  readonly ageMonths: number
  readonly p50Mmhg: number
}

/** P50 at pH 7.40 and 37 °C by age after term birth: 18–19 mmHg in the newborn, past the adult value by 4–6 months,
 *  to about 30; the rows between are remembered from a classic series. */
const ROWS: readonly [AffinityRow, ...AffinityRow[]] = [
  { ageMonths: 0, p50Mmhg: 19, source: 'Oski1972', known: 'secondary' },
  { ageMonths: 0.7, p50Mmhg: 22.7, source: 'Oski1972', known: 'memory' },
  { ageMonths: 1.8, p50Mmhg: 24.4, source: 'Oski1972', known: 'memory' },
  { ageMonths: 3.5, p50Mmhg: 26.5, source: 'Oski1972', known: 'memory' },
  { ageMonths: 6, p50Mmhg: 27.8, source: 'Oski1972', known: 'memory' },
  { ageMonths: 10, p50Mmhg: 30, source: 'Oski1972', known: 'secondary' },
  { ageMonths: 78, p50Mmhg: 29, source: 'Oski1972', known: 'memory' },
  { ageMonths: 126, p50Mmhg: 27.9, source: 'Oski1972', known: 'memory' },
  { ageMonths: 180, p50Mmhg: 26.86, source: 'Severinghaus1979', known: 'seen' },
]
const FETAL_LOG_SD = 0.08
const ADULT_LOG_SD = 0.03
const ADULT_MONTHS = 180
const LOG_SDS = 2.5
const TERM_WEEKS = 40
const WEEKS_PER_MONTH = 4.348

/** P50 of a person's own blood, kPa, as a spread. Age counts from term: a preterm baby before term has the
 *  newborn value. After a large transfusion of adult blood: the adult value exactly. From 15 years: adult.
 *  Valid 0–120 years, gestation 22–45 weeks. Sources: ROWS. Gives the published oxygen pressures of fetal
 *  blood (dissociation.test.ts). */
export function p50SpreadKpa(person: {
  readonly ageYears: number
  readonly gestationWeeks?: number | undefined
  readonly adultBloodTransfused?: boolean | undefined
}): Spread {
  requireWithin({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageYears',
    value: person.ageYears,
    min: 0,
    max: 120,
    unit: 'y',
  })
  const gestationWeeks = requireWithin({
    code: 'GESTATION_OUT_OF_RANGE',
    path: 'gestationWeeks',
    value: person.gestationWeeks ?? TERM_WEEKS,
    min: 22,
    max: 45,
    unit: 'wk',
  })
  if (person.adultBloodTransfused ?? false) return fixed(STANDARD_P50_KPA)
  const earlyMonths = Math.max(0, TERM_WEEKS - gestationWeeks) / WEEKS_PER_MONTH
  const monthsFromTerm = Math.max(0, monthsFromYears(person.ageYears) - earlyMonths)
  const median = kpaFromMmhg(p50AtMonthsMmhg(monthsFromTerm))
  const logSd = monthsFromTerm >= ADULT_MONTHS ? ADULT_LOG_SD : FETAL_LOG_SD
  const reach = Math.exp(LOG_SDS * logSd)
  return { kind: 'lognormal', median, logSd, min: median / reach, max: median * reach }
}

function p50AtMonthsMmhg(ageMonths: number): number {
  const lower = ROWS.findLast((row) => row.ageMonths <= ageMonths) ?? ROWS[0]
  const upper = ROWS.find((row) => row.ageMonths > ageMonths)
  if (upper === undefined) return lower.p50Mmhg
  const share = (ageMonths - lower.ageMonths) / (upper.ageMonths - lower.ageMonths)
  return lower.p50Mmhg + share * (upper.p50Mmhg - lower.p50Mmhg)
}
