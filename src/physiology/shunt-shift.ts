// From alveolar to arterial oxygen with two parameters, shunt and extra shift, at steady state. Leaves out changes of cardiac output with oxygen and the rise of carbon dioxide that oxygen may cause.
import { assert, requireWithin } from '../errors.ts'
import { KPA_PER_MMHG } from '../units/pressure.ts'
import { alveolarPo2Kpa, type AlveolarSetting } from './alveolar-gas.ts'
import { MEASURED_PAIR, o2CapacityMlPerDl, type CarriagePair } from './contents.ts'
import {
  bloodFromStandard,
  ellis,
  eq1,
  eq1Slope,
  PO2_KPA_MAX,
  SATURATION_MAX,
  STANDARD_CURVE,
  standardFromBlood,
  type BloodCurve,
} from './dissociation.ts'

/** Limits of the two parameters and of oxygen use. */
export const SHUNT_FRACTION_MAX = 0.8
export const EXTRA_SHIFT_KPA_MAX = 30
const ARTERIOVENOUS_MAX = 20
const ML_PER_DL_PER_FRACTION = 10
/** Newton converges in 3 to 8 steps; more means a bug. */
const STEPS_MAX = 60
/** Last Newton step, relative: the error left is its square where the slope is exact, a hundredth of it where the shift moves. */
const TOLERANCE = 1e-6

/** One patient's gas exchange, prepared once and used for every candidate. Build with gasExchange. */
export interface GasExchange {
  readonly shuntFraction: number
  readonly extraShiftKpa: number
  readonly arteriovenousO2MlPerDl: number
  readonly o2CapacityMlPerDl: number
  readonly dissolvedMlPerDlPerMmhg: number
  readonly curve: BloodCurve
}

/** Result of the hot function, written in place. uptakeMet is false where the model's blood cannot carry the
 *  oxygen used (no such person is alive): venous content would be negative. The numbers are then still finite. */
export interface ArterialOxygen {
  endCapillaryPo2Kpa: number
  endCapillarySaturation: number
  arterialPo2Kpa: number
  arterialSaturation: number
  arterialContentMlPerDl: number
  uptakeMet: boolean
}

export function emptyArterialOxygen(): ArterialOxygen {
  return {
    endCapillaryPo2Kpa: 0,
    endCapillarySaturation: 0,
    arterialPo2Kpa: 0,
    arterialSaturation: 0,
    arterialContentMlPerDl: 0,
    uptakeMet: true,
  }
}

/** Prepares a patient. Arteriovenous difference by Fick: VO2/(10·Q) mL/dL with VO2 mL/min, Q L/min.
 *  Valid shunt 0–0.8, extra shift 0–30 kPa, VO2 and Q above 0, Hb 2–27 g/dL. */
export function gasExchange(patient: {
  readonly shuntFraction: number
  readonly extraShiftKpa: number
  readonly o2UptakeMlPerMin: number
  readonly cardiacOutputLpm: number
  readonly haemoglobinGPerDl: number
  readonly carboxyhaemoglobinFraction?: number
  readonly methaemoglobinFraction?: number
  readonly curve?: BloodCurve
  readonly pair?: CarriagePair
}): GasExchange {
  requireWithin({
    code: 'SHUNT_OUT_OF_RANGE',
    path: 'shuntFraction',
    value: patient.shuntFraction,
    min: 0,
    max: SHUNT_FRACTION_MAX,
  })
  requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'extraShiftKpa',
    value: patient.extraShiftKpa,
    min: 0,
    max: EXTRA_SHIFT_KPA_MAX,
    unit: 'kPa',
  })
  const difference = patient.o2UptakeMlPerMin / (ML_PER_DL_PER_FRACTION * patient.cardiacOutputLpm)
  requireWithin({
    code: 'CONTENT_OUT_OF_RANGE',
    path: 'arteriovenousO2MlPerDl',
    value: difference,
    min: Number.MIN_VALUE,
    max: ARTERIOVENOUS_MAX,
    unit: 'mL/dL',
  })
  const pair = patient.pair ?? MEASURED_PAIR
  return {
    shuntFraction: patient.shuntFraction,
    extraShiftKpa: patient.extraShiftKpa,
    arteriovenousO2MlPerDl: difference,
    o2CapacityMlPerDl: o2CapacityMlPerDl({ ...patient, pair }),
    dissolvedMlPerDlPerMmhg: pair.dissolvedMlPerDlPerMmhg,
    curve: patient.curve ?? STANDARD_CURVE,
  }
}

/** Arterial oxygen for an alveolar oxygen, written into `out` and returned; allocates nothing.
 *  Pc′ = PA − extra shift; Cc′ from the curve; Ca = Cc′ − s/(1 − s)·(Ca − Cv); PaO2 by inverting content.
 *  Where Pc′ or Ca would fall below 0 it is 0 and uptakeMet is false. Valid PA 0–107 kPa, else
 *  PARTIAL_PRESSURE_OUT_OF_RANGE. Source: [Sapsford1995] (model), [Severinghaus1979] (curve). Within 0.2 mmHg
 *  and 0.1 %-points of the check tables test/reference/shunt-shift; the solver itself errs by less than 1e-7. */
export function arterialFromAlveolar(
  lung: GasExchange,
  alveolarO2Kpa: number,
  out: ArterialOxygen,
): ArterialOxygen {
  if (!(alveolarO2Kpa >= 0 && alveolarO2Kpa <= PO2_KPA_MAX)) refuseAlveolar(alveolarO2Kpa)
  const capillaryKpa = Math.max(0, alveolarO2Kpa - lung.extraShiftKpa)
  const capillaryMmhg = capillaryKpa / KPA_PER_MMHG
  const capillarySaturation = eq1(standardFromBlood(lung.curve, capillaryMmhg))
  const capillaryContent =
    lung.o2CapacityMlPerDl * capillarySaturation + lung.dissolvedMlPerDlPerMmhg * capillaryMmhg
  const arterialContent =
    capillaryContent - (lung.shuntFraction / (1 - lung.shuntFraction)) * lung.arteriovenousO2MlPerDl
  const x = standardFromContent(lung, Math.max(0, arterialContent))
  out.endCapillaryPo2Kpa = capillaryKpa
  out.endCapillarySaturation = capillarySaturation
  out.arterialPo2Kpa = bloodFromStandard(lung.curve, x) * KPA_PER_MMHG
  out.arterialSaturation = eq1(x)
  out.arterialContentMlPerDl = Math.max(0, arterialContent)
  out.uptakeMet = arterialContent > lung.arteriovenousO2MlPerDl
  return out
}

/** arterialFromAlveolar after the full alveolar gas equation, for one-off use. Allocates. */
export function arterialFromInspired(
  lung: GasExchange,
  gas: AlveolarSetting & { readonly inspiredO2Fraction: number },
): ArterialOxygen {
  return arterialFromAlveolar(lung, alveolarPo2Kpa(gas), emptyArterialOxygen())
}

/** Alveolar oxygen needed for an arterial saturation, kPa: the inverse of arterialFromAlveolar. undefined when no
 *  alveolar oxygen up to 107 kPa reaches it (large shunt). Valid 0.01–0.9999. */
export function alveolarForSaturationKpa(
  lung: GasExchange,
  arterialSaturation: number,
): number | undefined {
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'arterialSaturation',
    value: arterialSaturation,
    min: 0.01,
    max: SATURATION_MAX,
  })
  const arterialMmhg = bloodFromStandard(lung.curve, ellis(arterialSaturation))
  const arterialContent =
    lung.o2CapacityMlPerDl * arterialSaturation + lung.dissolvedMlPerDlPerMmhg * arterialMmhg
  const capillaryContent =
    arterialContent + (lung.shuntFraction / (1 - lung.shuntFraction)) * lung.arteriovenousO2MlPerDl
  const capillaryMmhg = bloodFromStandard(lung.curve, standardFromContent(lung, capillaryContent))
  const neededKpa = capillaryMmhg * KPA_PER_MMHG + lung.extraShiftKpa
  return neededKpa <= PO2_KPA_MAX ? neededKpa : undefined
}

/** Arterial PO2 from content, kPa: the inverse of capacity·S + dissolved. Valid content 0–60 mL/dL. */
export function po2FromContentKpa(lung: GasExchange, contentMlPerDl: number): number {
  requireWithin({
    code: 'CONTENT_OUT_OF_RANGE',
    path: 'contentMlPerDl',
    value: contentMlPerDl,
    min: 0,
    max: 60,
    unit: 'mL/dL',
  })
  return bloodFromStandard(lung.curve, standardFromContent(lung, contentMlPerDl)) * KPA_PER_MMHG
}

/** Pressure x on the standard curve, mmHg, at which this blood holds `content`: Newton kept inside a bracket,
 *  since content rises with x without a bound. */
function standardFromContent(lung: GasExchange, content: number): number {
  if (content <= 0) return 0
  const capacity = lung.o2CapacityMlPerDl
  const dissolved = lung.dissolvedMlPerDlPerMmhg
  let low = 0
  let high = Number.POSITIVE_INFINITY
  let x = firstGuess(lung, content)
  for (let i = 0; i < STEPS_MAX; i += 1) {
    const blood = bloodFromStandard(lung.curve, x)
    const excess = capacity * eq1(x) + dissolved * blood - content
    if (excess > 0) high = x
    else low = x
    // blood/x is the slope of the dissolved part up to the slow change of the shift with x.
    const step = excess / (capacity * eq1Slope(x) + (dissolved * blood) / x)
    const next = x - step
    if (Math.abs(step) < TOLERANCE * (1 + x)) return next > 0 ? next : x
    x =
      next > low && next < high
        ? next
        : high === Number.POSITIVE_INFINITY
          ? 2 * x
          : (low + high) / 2
  }
  assert(false, 'content inversion converges')
}

/** Curve's own inverse with the dissolved share taken off, for Newton to start from; any positive start would do. */
function firstGuess(lung: GasExchange, content: number): number {
  const dissolved = lung.dissolvedMlPerDlPerMmhg * lung.curve.affinityScale
  const bound = Math.min(GUESS_SATURATION_MAX, content / lung.o2CapacityMlPerDl)
  const rough = ellis(bound)
  const left = (content - dissolved * rough) / lung.o2CapacityMlPerDl
  if (left < GUESS_SATURATION_MAX) return Math.max(GUESS_MMHG_MIN, ellis(Math.max(0, left)))
  // Above, the dissolved part carries the difference.
  return Math.max(rough, (content - lung.o2CapacityMlPerDl) / dissolved)
}

const GUESS_SATURATION_MAX = 0.985
const GUESS_MMHG_MIN = 1e-6

function refuseAlveolar(alveolarO2Kpa: number): never {
  requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'alveolarO2Kpa',
    value: alveolarO2Kpa,
    min: 0,
    max: PO2_KPA_MAX,
    unit: 'kPa',
  })
  assert(false, 'refused pressure is outside its range')
}
