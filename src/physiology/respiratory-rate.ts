// Breathing rate of a quiet person by age, awake or asleep. Leaves out illness (breathing-states.ts).
import { requireWithin } from '../errors.ts'
import { monthsFromYears, yearsFromMonths } from '../units/age.ts'
import type { Provenance } from '../units/provenance.ts'
import { normalQuantile } from '../units/normal.ts'
import type { Spread } from '../units/spread.ts'
import { requireAge } from './body.ts'

/** log10 rate = (a + b·z) − (c + d·z)·m + e·m², m months, 15 days to 3 years [Rusconi1994]. */
const RUSCONI = {
  awake: { a: 1.6801, b: 0.08592, c: 0.01189, d: 0.0004301, e: 0.00013401 },
  asleep: { a: 1.5773, b: 0.09196, c: 0.01314, d: 0.0005155, e: 0.00017646 },
} as const
const RUSCONI_MONTHS_MIN = 0.5
const RUSCONI_MONTHS_MAX = 36

/** Rate at the 10th, 50th and 90th centile by age band, years [Fleming2011]: from memory, so never a check. */
const FLEMING = [
  { toYears: 4, low: 21, middle: 25, high: 29 },
  { toYears: 6, low: 20, middle: 23, high: 27 },
  { toYears: 8, low: 18, middle: 21, high: 24 },
  { toYears: 12, low: 16, middle: 19, high: 22 },
  { toYears: 15, low: 15, middle: 18, high: 21 },
  { toYears: 18, low: 13, middle: 16, high: 19 },
] as const
/** z of the 90th centile. */
const CENTILE_90 = 0.9

/** Newborns to 15 days: median between 44 (all states [Fleming2011]) and 59 (awake [Herbert2020]); asleep 41 [Herbert2020]. */
const NEWBORN = { awake: { median: 50, logSd: 0.22 }, asleep: { median: 41, logSd: 0.22 } } as const
/** Adults: 12–20 is the normal band [RCP2017]; mean 16.6, SD 2.8 [Tobin1983]. Asleep about 5 % slower (common practice). */
const ADULT = { median: 16.5, logSd: 0.17, asleepFactor: 0.95 } as const
const CHILD_ASLEEP_FACTOR = 0.88
const LOG_SDS = 3

/** Error of a count: limits of agreement −7.1 to 7.0/min between two at once, −10.2 to 17.7/min for routine counts (169 children [Daw2017]), as SD. */
export const COUNTING_ERROR = {
  simultaneousSdPerMin: 3.6,
  routineSdPerMin: 7.1,
  source: 'Daw2017',
  known: 'derived',
} as const satisfies Provenance & { readonly [name: string]: unknown }

/** Rate of a quiet person, as a lognormal. 15 days to 3 years: [Rusconi1994], exact. Younger: between [Fleming2011]
 *  and [Herbert2020] (derived). 3–18 years: [Fleming2011] from memory. Adults: [Tobin1983] from memory, inside the
 *  band 12–20 [RCP2017]. Valid 0–120 years. */
export function restingRateSpread(person: {
  readonly ageYears: number
  readonly asleep?: boolean
}): Spread {
  requireAge(person.ageYears)
  const asleep = person.asleep ?? false
  const months = monthsFromYears(person.ageYears)
  if (months < RUSCONI_MONTHS_MIN) return lognormal(asleep ? NEWBORN.asleep : NEWBORN.awake)
  if (months <= RUSCONI_MONTHS_MAX) return rusconiSpread(months, asleep)
  return olderSpread(person.ageYears, asleep)
}

/** Rate at a z-score, [Rusconi1994] itself. Valid 0.5–36 months, |z| ≤ 4. Reproduces the published centiles to the
 *  breath (respiratory-rate.test.ts). */
export function rusconiRatePerMin(child: {
  readonly ageMonths: number
  readonly z: number
  readonly asleep?: boolean
}): number {
  requireWithin({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageMonths',
    value: child.ageMonths,
    min: RUSCONI_MONTHS_MIN,
    max: RUSCONI_MONTHS_MAX,
    unit: 'mo',
  })
  requireWithin({ code: 'Z_SCORE_OUT_OF_RANGE', path: 'z', value: child.z, min: -4, max: 4 })
  const { log, logSd } = rusconiLog(child.ageMonths, child.asleep ?? false)
  return 10 ** (log + logSd * child.z)
}

/** How each part of restingRateSpread is known. */
export function restingRateProvenance(ageYears: number): Provenance {
  requireAge(ageYears)
  if (ageYears < yearsFromMonths(RUSCONI_MONTHS_MIN))
    return { source: 'Herbert2020', known: 'derived' }
  if (ageYears <= yearsFromMonths(RUSCONI_MONTHS_MAX))
    return { source: 'Rusconi1994', known: 'secondary' }
  return ageYears < 18
    ? { source: 'Fleming2011', known: 'memory' }
    : { source: 'Tobin1983', known: 'memory' }
}

function rusconiLog(
  ageMonths: number,
  asleep: boolean,
): { readonly log: number; readonly logSd: number } {
  const k = asleep ? RUSCONI.asleep : RUSCONI.awake
  return {
    log: k.a - k.c * ageMonths + k.e * ageMonths * ageMonths,
    logSd: k.b - k.d * ageMonths,
  }
}

function rusconiSpread(ageMonths: number, asleep: boolean): Spread {
  const { log, logSd } = rusconiLog(ageMonths, asleep)
  return lognormal({ median: 10 ** log, logSd: logSd * Math.LN10 })
}

function olderSpread(ageYears: number, asleep: boolean): Spread {
  const band = FLEMING.find((row) => ageYears < row.toYears)
  if (band === undefined) {
    return lognormal({
      median: ADULT.median * (asleep ? ADULT.asleepFactor : 1),
      logSd: ADULT.logSd,
    })
  }
  const logSd = Math.log(band.high / band.low) / (2 * normalQuantile(CENTILE_90))
  return lognormal({ median: band.middle * (asleep ? CHILD_ASLEEP_FACTOR : 1), logSd })
}

function lognormal(shape: { readonly median: number; readonly logSd: number }): Spread {
  const reach = Math.exp(LOG_SDS * shape.logSd)
  return { kind: 'lognormal', ...shape, min: shape.median / reach, max: shape.median * reach }
}
