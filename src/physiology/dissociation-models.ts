// Two other published dissociation curves, kept to show how far models differ. Not used to forecast: the model's curve is in dissociation.ts.
import { outOfRange } from '../errors.ts'
import { BODY_TEMPERATURE_C } from '../units/constants.ts'
import { KPA_PER_MMHG } from '../units/pressure.ts'
import { bloodCurve, bloodSaturation, PO2_KPA_MAX, STANDARD_PH } from './dissociation.ts'

/** Blood for which a curve is asked; what is absent is standard (pH 7.40, PCO2 40 mmHg, 37 °C, DPG 4.65 mmol/L). */
export interface BloodState {
  readonly po2Kpa: number
  readonly ph?: number
  readonly pco2Kpa?: number
  readonly temperatureC?: number
  readonly dpgMmolPerL?: number
}

/** Coefficients a1 to a7 [Kelman1966] and the exponents of its virtual pressure. */
const KELMAN = {
  a: [-8532.2289, 2121.401, -67.073989, 935960.87, -31346.258, 2396.1674, -67.104406],
  temperature: 0.024,
  ph: 0.4,
  pco2: 0.06,
  pco2Mmhg: 40,
} as const
/** Below this Kelman's polynomial is not valid, mmHg. */
const KELMAN_MMHG_MIN = 10

/** Constants of the simplified Hill form [Dash2016 Table 1, Eqs 9–11]. */
const DASH = {
  p50: 26.8,
  hill: { top: 2.82, fall: 1.2, scaleMmhg: 29.25 },
  red: { slope: 0.795, offset: 1.357, standard: 7.24 },
  ph: [-25.535, 10.646, -1.764],
  co2: [0.1273, 1.083e-4],
  co2Mmhg: 40,
  dpg: [795.63, -19660.89],
  dpgMolPerL: 4.65e-3,
  temperature: [1.435, 4.163e-2, 6.86e-4],
} as const
const MMOL_PER_MOL = 1000

/** Kelman's curve. Valid from 10 mmHg (1.33 kPa), below which his polynomial goes astray, to 107 kPa.
 *  Source: [Kelman1966]. Reproduces the published check values to 1e-4 (dissociation-models.test.ts). */
export function kelmanSaturation(blood: BloodState): number {
  const po2Mmhg = checkedPo2Mmhg(blood.po2Kpa, KELMAN_MMHG_MIN)
  const pco2Mmhg = (blood.pco2Kpa ?? KELMAN.pco2Mmhg * KPA_PER_MMHG) / KPA_PER_MMHG
  const exponent =
    KELMAN.temperature * (BODY_TEMPERATURE_C - (blood.temperatureC ?? BODY_TEMPERATURE_C)) +
    KELMAN.ph * ((blood.ph ?? STANDARD_PH) - STANDARD_PH) +
    KELMAN.pco2 * (Math.log10(KELMAN.pco2Mmhg) - Math.log10(pco2Mmhg))
  const x = po2Mmhg * 10 ** exponent
  const [a1, a2, a3, a4, a5, a6, a7] = KELMAN.a
  return (x * (a1 + x * (a2 + x * (a3 + x)))) / (a4 + x * (a5 + x * (a6 + x * (a7 + x))))
}

/** P50 of Dash's model, mmHg: 26.8 times the product of the four single-factor P50 over 26.8. */
export function dashP50Mmhg(blood: Omit<BloodState, 'po2Kpa'>): number {
  const redPh = DASH.red.slope * (blood.ph ?? STANDARD_PH) + DASH.red.offset
  const pco2Mmhg = (blood.pco2Kpa ?? DASH.co2Mmhg * KPA_PER_MMHG) / KPA_PER_MMHG
  const dpgMolPerL = (blood.dpgMmolPerL ?? DASH.dpgMolPerL * MMOL_PER_MOL) / MMOL_PER_MOL
  const temperatureC = blood.temperatureC ?? BODY_TEMPERATURE_C
  const factor = (terms: readonly number[], difference: number) =>
    1 + terms.reduceRight((sum, term) => (sum + term) * difference, 0) / DASH.p50
  return (
    DASH.p50 *
    factor(DASH.ph, redPh - DASH.red.standard) *
    factor(DASH.co2, pco2Mmhg - DASH.co2Mmhg) *
    factor(DASH.dpg, dpgMolPerL - DASH.dpgMolPerL) *
    factor(DASH.temperature, temperatureC - BODY_TEMPERATURE_C)
  )
}

/** Dash, Korman and Bassingthwaighte's curve. Valid 0–107 kPa.
 *  Source: [Dash2016]. Reproduces the published check values to 1e-4 (dissociation-models.test.ts). */
export function dashSaturation(blood: BloodState): number {
  const po2Mmhg = checkedPo2Mmhg(blood.po2Kpa, 0)
  const n = DASH.hill.top - DASH.hill.fall * 10 ** (-po2Mmhg / DASH.hill.scaleMmhg)
  const power = (po2Mmhg / dashP50Mmhg(blood)) ** n
  return power / (1 + power)
}

/** Lowest and highest saturation of the three curves for one blood: how well the curve itself is known.
 *  Valid 1.33–107 kPa and the pH and temperatures of bloodCurve. */
export function modelSpread(blood: BloodState): { readonly min: number; readonly max: number } {
  const curve = bloodCurve({
    ph: blood.ph ?? STANDARD_PH,
    temperatureC: blood.temperatureC ?? BODY_TEMPERATURE_C,
  })
  const all = [bloodSaturation(curve, blood.po2Kpa), kelmanSaturation(blood), dashSaturation(blood)]
  return { min: Math.min(...all), max: Math.max(...all) }
}

function checkedPo2Mmhg(po2Kpa: number, minMmhg: number): number {
  const min = minMmhg * KPA_PER_MMHG
  // A hair's width lets the published lower limit itself through after unit conversion.
  if (po2Kpa >= min - 1e-12 && po2Kpa <= PO2_KPA_MAX) return po2Kpa / KPA_PER_MMHG
  throw outOfRange({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'po2Kpa',
    value: po2Kpa,
    min,
    max: PO2_KPA_MAX,
    unit: 'kPa',
  })
}
