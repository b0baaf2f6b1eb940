// What a pulse oximeter shows for a true saturation, and how likely a reading is. Leaves out motion, poor perfusion and averaging time.
import { requireWithin } from '../errors.ts'
import { normalProbability } from '../units/normal.ts'
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'

/** Root-mean-square error that each accuracy class may have over 70–100 %, in % points. */
export const ACCURACY_CLASSES = {
  /** Finger, wrap and other transmitted-light probes. */
  transmittance: { armsPercent: 3, source: 'FDA2013', known: 'memory' },
  /** Ear clip and reflected-light probes. */
  reflectance: { armsPercent: 3.5, source: 'FDA2013', known: 'memory' },
  /** The most that the standard allows. */
  standard: { armsPercent: 4, source: 'ISO2017', known: 'memory' },
} as const satisfies Readonly<Record<string, Provenance & { readonly armsPercent: number }>>

export type AccuracyClass = keyof typeof ACCURACY_CLASSES

/** Oximeters are tested from 70 %; below, their error is not known. */
export const TESTED_PERCENT_MIN = 70
const DISPLAY_PERCENT_MIN = 1
const DISPLAY_PERCENT_MAX = 100
const PERCENT = 100
const HALF_STEP = 1 / 2

export interface Oximeter {
  readonly armsPercent: number
  /** Mean of displayed minus true, % points; positive reads high. */
  readonly biasPercent?: number
  /** Reads as saturated in a two-wavelength oximeter. */
  readonly carboxyhaemoglobinFraction?: number
}

/** Mean reading for a true functional saturation, %, before rounding: two-wavelength oximeters see carbon monoxide's
 *  haemoglobin as oxygenated: S·(1 − COHb) + COHb, plus bias. Capped at 100 as displays are. Valid S 0–1,
 *  COHb 0–0.9, bias ±15. Source: [Barker1987]. */
export function meanReadingPercent(
  meter: Omit<Oximeter, 'armsPercent'>,
  saturation: number,
): number {
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: saturation,
    min: 0,
    max: 1,
  })
  return Math.min(DISPLAY_PERCENT_MAX, uncappedMean(meter, saturation))
}

/** Reading that one draw of error gives, % as displayed: whole numbers, 1–100. z is a standard normal draw. */
export function displayedPercent(
  meter: Oximeter,
  draw: { readonly saturation: number; readonly z: number },
): number {
  const sd = errorSdPercent(meter)
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: draw.saturation,
    min: 0,
    max: 1,
  })
  const raw = Math.round(uncappedMean(meter, draw.saturation) + sd * draw.z)
  return Math.min(DISPLAY_PERCENT_MAX, Math.max(DISPLAY_PERCENT_MIN, raw))
}

/** Probability that a display shows `readingPercent` when the true saturation is S: the normal error over the
 *  rounding step; everything above 99.5 shows as 100, everything below 1.5 as 1. Sums to 1 over 1–100 (oximeter.test.ts).
 *  Valid whole readings 1–100, S 0–1, Arms 0.1–10 with |bias| ≤ Arms. */
export function readingLikelihood(
  meter: Oximeter,
  seen: { readonly readingPercent: number; readonly saturation: number },
): number {
  const sd = errorSdPercent(meter)
  const reading = requireReading(seen.readingPercent)
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: seen.saturation,
    min: 0,
    max: 1,
  })
  const mean = uncappedMean(meter, seen.saturation)
  const upper = (reading + HALF_STEP - mean) / sd
  const lower = (reading - HALF_STEP - mean) / sd
  if (reading === DISPLAY_PERCENT_MAX) return normalProbability(-lower)
  if (reading === DISPLAY_PERCENT_MIN) return normalProbability(upper)
  // In the upper tail, differences of small complements keep their digits.
  return lower > 0
    ? normalProbability(-lower) - normalProbability(-upper)
    : normalProbability(upper) - normalProbability(lower)
}

export type OximeterCaution =
  | 'CARBON_MONOXIDE_READS_SATURATED'
  | 'BELOW_TESTED_RANGE'
  | 'FLAT_PART_OF_CURVE'

/** From here one % point spans 1 to 3.7 kPa of oxygen (derived from the curve: 97 to 98 % is 12.1 to 13.9 kPa). */
const FLAT_PERCENT = 97

/** Reasons not to trust a reading, as codes. */
export function oximeterCautions(seen: {
  readonly readingPercent: number
  readonly carbonMonoxideSuspected?: boolean
}): readonly OximeterCaution[] {
  const reading = requireReading(seen.readingPercent)
  const cautions: OximeterCaution[] = []
  if (seen.carbonMonoxideSuspected ?? false) cautions.push('CARBON_MONOXIDE_READS_SATURATED')
  if (reading < TESTED_PERCENT_MIN) cautions.push('BELOW_TESTED_RANGE')
  if (reading >= FLAT_PERCENT) cautions.push('FLAT_PART_OF_CURVE')
  return cautions
}

/** True saturation below 88 % while the oximeter showed 92 % or more, on general wards: a caution, never a correction. */
export const MISSED_HYPOXAEMIA = {
  blackFraction: 0.196,
  hispanicFraction: 0.162,
  whiteFraction: 0.156,
  source: 'Valbuena2022',
  known: 'seen',
} as const satisfies Provenance & { readonly [name: string]: unknown }

/** Bias of one probe on one patient, % points: half of the class error, so that bias and random error together keep
 *  the class's root mean square (derived: the classes do not say how error divides). */
export function biasSpreadPercent(armsPercent: number): Spread {
  requireArms(armsPercent)
  return {
    kind: 'normal',
    mean: 0,
    sd: armsPercent * BIAS_SHARE,
    min: -armsPercent * BIAS_LIMIT,
    max: armsPercent * BIAS_LIMIT,
  }
}

const BIAS_SHARE = 0.5
const BIAS_LIMIT = 0.9

/** SD left after the bias is taken out of the root-mean-square error. */
function errorSdPercent(meter: Oximeter): number {
  requireArms(meter.armsPercent)
  const bias = meter.biasPercent ?? 0
  // At least a tenth of the class is random: a meter that only errs by its bias does not exist.
  const limit = 0.995 * meter.armsPercent
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'biasPercent',
    value: bias,
    min: -limit,
    max: limit,
    unit: '%',
  })
  return Math.sqrt(meter.armsPercent * meter.armsPercent - bias * bias)
}

function requireArms(armsPercent: number): void {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'armsPercent',
    value: armsPercent,
    min: 0.1,
    max: 10,
    unit: '%',
  })
}

function uncappedMean(meter: Omit<Oximeter, 'armsPercent'>, saturation: number): number {
  const carboxy = requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'carboxyhaemoglobinFraction',
    value: meter.carboxyhaemoglobinFraction ?? 0,
    min: 0,
    max: 0.9,
  })
  return PERCENT * (saturation * (1 - carboxy) + carboxy) + (meter.biasPercent ?? 0)
}

function requireReading(readingPercent: number): number {
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'readingPercent',
    value: Number.isInteger(readingPercent) ? readingPercent : Number.NaN,
    min: DISPLAY_PERCENT_MIN,
    max: DISPLAY_PERCENT_MAX,
    unit: '%',
  })
  return readingPercent
}
