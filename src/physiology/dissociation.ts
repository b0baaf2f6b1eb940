// Oxygen–haemoglobin dissociation of adult blood and its shift by pH, temperature and affinity. Leaves out carbon monoxide's own left shift and cooperative effects of dyshaemoglobins.
import { outOfRange, requireWithin } from '../errors.ts'
import { BODY_TEMPERATURE_C } from '../units/constants.ts'
import { KPA_PER_MMHG } from '../units/pressure.ts'

/** Largest oxygen pressure the curve is used for, kPa: pure oxygen at the highest barometric pressure accepted. */
export const PO2_KPA_MAX = 107
/** Largest saturation that has an inverse of use, fraction: about 73 kPa (D from Eq 1). */
export const SATURATION_MAX = 0.9999

/** Eq 1: S = 1/(23400/(P³ + 150·P) + 1), P in mmHg [Severinghaus1979]. */
const EQ1_CONSTANT = 23400
const EQ1_LINEAR = 150
/** Eq 2: ln P = 0.385·ln(1/(1/S − 1)) + 3.32 − 1/(72·S) − S⁶/6 [Severinghaus1979]; first printed with 0.17·S⁶, 0.3 % lower at S 0.99. */
const EQ2 = { slope: 0.385, constant: 3.32, low: 72, high: 1 / 6, power: 6 } as const
/** Eq 3: d ln P/dT = 0.058/((0.243·P/100)^3.88 + 1) + 0.013 per °C [Severinghaus1979]. */
const EQ3 = { slope: 0.058, scale: 0.00243, power: 3.88, floor: 0.013 } as const
/** Eq 4: d ln P/dpH = (P/26.6)^0.184 − 2.2 [Severinghaus1979]. */
const EQ4 = { p50: 26.6, power: 0.184, constant: 2.2 } as const
/** Exact inverse of Eq 1: A = 11700/(1/S − 1), B = √(50³ + A²), P = ∛(A + B) + ∛(A − B) [Ellis1989]. */
const ELLIS_HALF = EQ1_CONSTANT / 2
const ELLIS_ROOT = EQ1_LINEAR / 3
const ELLIS_CUBE = ELLIS_ROOT ** 3

/** pH and temperature of the standard curve, and the ranges in which we shift it. */
export const STANDARD_PH = 7.4
export const PH_MIN = 6.8
export const PH_MAX = 7.8
export const BLOOD_TEMPERATURE_C_MIN = 30
export const BLOOD_TEMPERATURE_C_MAX = 43

/** PO2 at half saturation of the standard curve, kPa: 26.86 mmHg by the exact inverse of Eq 1. */
export const STANDARD_P50_KPA = standardPo2Kpa(1 / 2)
/** P50 values accepted, kPa: 12 to 50 mmHg. */
const P50_KPA_MIN = 1.6
const P50_KPA_MAX = 6.7

/** Saturation of the standard curve (37 °C, pH 7.40), Eq 1. Valid 0–107 kPa, else PARTIAL_PRESSURE_OUT_OF_RANGE.
 *  Source: [Severinghaus1979 Eq 1]. Within 0.56 %-points of the measured table test/reference/severinghaus-1979. */
export function standardSaturation(po2Kpa: number): number {
  if (!(po2Kpa >= 0 && po2Kpa <= PO2_KPA_MAX)) throw po2OutOfRange(po2Kpa)
  return eq1(po2Kpa / KPA_PER_MMHG)
}

/** Exact inverse of standardSaturation. Valid 0 ≤ S ≤ 0.9999, else SATURATION_OUT_OF_RANGE.
 *  Source: [Ellis1989]. Round trip within 1e-9 (dissociation.test.ts). */
export function standardPo2Kpa(saturation: number): number {
  if (!(saturation >= 0 && saturation <= SATURATION_MAX)) throw saturationOutOfRange(saturation)
  return ellis(saturation) * KPA_PER_MMHG
}

/** Severinghaus's own approximate inverse, Eq 2: kept for comparison with published values, not used by the model.
 *  Valid 0.01 ≤ S ≤ 0.9999. Up to 4 % from the exact inverse at S 0.99. */
export function approximatePo2Kpa(saturation: number): number {
  const min = 0.01
  if (!(saturation >= min && saturation <= SATURATION_MAX))
    throw saturationOutOfRange(saturation, min)
  const logPo2 =
    EQ2.slope * Math.log(saturation / (1 - saturation)) +
    EQ2.constant -
    1 / (EQ2.low * saturation) -
    EQ2.high * saturation ** EQ2.power
  return Math.exp(logPo2) * KPA_PER_MMHG
}

/** Relative change of PO2 at constant saturation per pH unit, Eq 4 (metabolic and respiratory alike). Valid 0–107 kPa. */
export function bohrSlope(po2Kpa: number): number {
  if (!(po2Kpa >= 0 && po2Kpa <= PO2_KPA_MAX)) throw po2OutOfRange(po2Kpa)
  return eq4(po2Kpa / KPA_PER_MMHG)
}

/** Relative change of PO2 at constant saturation per °C, Eq 3. Valid 0–107 kPa. */
export function temperatureSlope(po2Kpa: number): number {
  if (!(po2Kpa >= 0 && po2Kpa <= PO2_KPA_MAX)) throw po2OutOfRange(po2Kpa)
  return eq3(po2Kpa / KPA_PER_MMHG)
}

/** One patient's curve, prepared once. PO2 = x·affinityScale·exp(phShift·Eq4(x) + temperatureShiftC·Eq3(x)),
 *  where x is the pressure on the standard curve at the same saturation. */
export interface BloodCurve {
  readonly affinityScale: number
  readonly phShift: number
  readonly temperatureShiftC: number
}

export const STANDARD_CURVE: BloodCurve = { affinityScale: 1, phShift: 0, temperatureShiftC: 0 }

/** Prepares a curve. p50Kpa is that of the blood at pH 7.40 and 37 °C (fetal haemoglobin lowers it, see
 *  fetal-haemoglobin.ts). Valid pH 6.8–7.8, 30–43 °C, P50 1.6–6.7 kPa. Shifted saturations agree with other
 *  published models within ±2 (8 kPa) to ±4 %-points (5.3 kPa): see dissociation-models.ts. */
export function bloodCurve(blood: {
  readonly ph?: number
  readonly temperatureC?: number
  readonly p50Kpa?: number
}): BloodCurve {
  const ph = requireWithin({
    code: 'PH_OUT_OF_RANGE',
    path: 'ph',
    value: blood.ph ?? STANDARD_PH,
    min: PH_MIN,
    max: PH_MAX,
  })
  const temperatureC = requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'temperatureC',
    value: blood.temperatureC ?? BODY_TEMPERATURE_C,
    min: BLOOD_TEMPERATURE_C_MIN,
    max: BLOOD_TEMPERATURE_C_MAX,
    unit: '°C',
  })
  const p50Kpa = requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'p50Kpa',
    value: blood.p50Kpa ?? STANDARD_P50_KPA,
    min: P50_KPA_MIN,
    max: P50_KPA_MAX,
    unit: 'kPa',
  })
  return {
    affinityScale: p50Kpa / STANDARD_P50_KPA,
    phShift: ph - STANDARD_PH,
    temperatureShiftC: temperatureC - BODY_TEMPERATURE_C,
  }
}

/** Saturation of a patient's blood. Valid 0–107 kPa. Accuracy as bloodCurve. */
export function bloodSaturation(curve: BloodCurve, po2Kpa: number): number {
  if (!(po2Kpa >= 0 && po2Kpa <= PO2_KPA_MAX)) throw po2OutOfRange(po2Kpa)
  return eq1(standardFromBlood(curve, po2Kpa / KPA_PER_MMHG))
}

/** PO2 of a patient's blood at a saturation; exact inverse of bloodSaturation. Valid 0 ≤ S ≤ 0.9999. */
export function bloodPo2Kpa(curve: BloodCurve, saturation: number): number {
  if (!(saturation >= 0 && saturation <= SATURATION_MAX)) throw saturationOutOfRange(saturation)
  return bloodFromStandard(curve, ellis(saturation)) * KPA_PER_MMHG
}

/** P50 of a prepared curve at its own pH and temperature, kPa. */
export function curveP50Kpa(curve: BloodCurve): number {
  return bloodPo2Kpa(curve, 1 / 2)
}

// The functions below work in mmHg, the unit of the published equations, without checks: for the solvers in this folder.

/** Eq 1, mmHg; P ≥ 0. */
export function eq1(po2Mmhg: number): number {
  const u = po2Mmhg * (po2Mmhg * po2Mmhg + EQ1_LINEAR)
  return u / (u + EQ1_CONSTANT)
}

/** Derivative of Eq 1 per mmHg. */
export function eq1Slope(po2Mmhg: number): number {
  const square = po2Mmhg * po2Mmhg
  const denominator = po2Mmhg * (square + EQ1_LINEAR) + EQ1_CONSTANT
  return (EQ1_CONSTANT * (3 * square + EQ1_LINEAR)) / (denominator * denominator)
}

/** Exact inverse of Eq 1, mmHg; 0 ≤ S < 1. ∛(A − B) is written −50/∛(A + B), the same number without cancellation
 *  near S 1; one Newton step on P³ + 150·P = 2A restores the digits lost near S 0. */
export function ellis(saturation: number): number {
  const a = (ELLIS_HALF * saturation) / (1 - saturation)
  const root = Math.cbrt(a + Math.sqrt(ELLIS_CUBE + a * a))
  const p = root - ELLIS_ROOT / root
  const square = p * p
  return Math.max(0, p - (p * (square + EQ1_LINEAR) - 2 * a) / (3 * square + EQ1_LINEAR))
}

/** Pressure of this blood, mmHg, where the standard curve has x mmHg at the same saturation. */
export function bloodFromStandard(curve: BloodCurve, x: number): number {
  const unshifted = x * curve.affinityScale
  if ((curve.phShift === 0 && curve.temperatureShiftC === 0) || x === 0) return unshifted
  return unshifted * Math.exp(logShift(curve, Math.log(x)))
}

/** Inverse of bloodFromStandard, by Newton on the logarithm; the map is monotone for every curve bloodCurve accepts. */
export function standardFromBlood(curve: BloodCurve, po2Mmhg: number): number {
  const unshifted = po2Mmhg / curve.affinityScale
  if ((curve.phShift === 0 && curve.temperatureShiftC === 0) || po2Mmhg === 0) return unshifted
  const target = Math.log(unshifted)
  // The slope varies so little over the shift that its first value serves every step.
  const slope = 1 + logShiftSlope(curve, target)
  let logX = target
  for (let i = 0; i < INVERSE_STEPS; i += 1) {
    const step = (logX + logShift(curve, logX) - target) / slope
    logX -= step
    if (Math.abs(step) < INVERSE_TOLERANCE) break
  }
  return Math.exp(logX)
}

const INVERSE_STEPS = 60
/** Last step in ln PO2; each is at most a fifth of the one before. */
const INVERSE_TOLERANCE = 1e-9
const EQ3_LOG_SCALE = Math.log(EQ3.scale)
const EQ4_LOG_P50 = Math.log(EQ4.p50)

/** ln of the factor by which pH and temperature move the pressure, from ln of the standard pressure. Written
 *  with exp, not powers, and without the shift that is not there: this is the hot path. */
function logShift(curve: BloodCurve, logX: number): number {
  let sum = 0
  if (curve.phShift !== 0) {
    sum += curve.phShift * (Math.exp(EQ4.power * (logX - EQ4_LOG_P50)) - EQ4.constant)
  }
  if (curve.temperatureShiftC !== 0) {
    const heat = Math.exp(EQ3.power * (logX + EQ3_LOG_SCALE))
    sum += curve.temperatureShiftC * (EQ3.slope / (heat + 1) + EQ3.floor)
  }
  return sum
}

/** d logShift / d ln x. */
function logShiftSlope(curve: BloodCurve, logX: number): number {
  const ph = curve.phShift * EQ4.power * Math.exp(EQ4.power * (logX - EQ4_LOG_P50))
  const heat = Math.exp(EQ3.power * (logX + EQ3_LOG_SCALE))
  const temperature = (-EQ3.slope * EQ3.power * heat) / ((heat + 1) * (heat + 1))
  return ph + curve.temperatureShiftC * temperature
}

function eq3(po2Mmhg: number): number {
  return EQ3.slope / ((EQ3.scale * po2Mmhg) ** EQ3.power + 1) + EQ3.floor
}

function eq4(po2Mmhg: number): number {
  return (po2Mmhg / EQ4.p50) ** EQ4.power - EQ4.constant
}

function po2OutOfRange(po2Kpa: number) {
  return outOfRange({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'po2Kpa',
    value: po2Kpa,
    min: 0,
    max: PO2_KPA_MAX,
    unit: 'kPa',
  })
}

function saturationOutOfRange(saturation: number, min = 0) {
  return outOfRange({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: saturation,
    min,
    max: SATURATION_MAX,
  })
}
