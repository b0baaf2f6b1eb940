// Oxygen as a real gas: density, compressibility and contents of a cylinder, from the published equation of state. Leaves out the liquid and impurities.
import { assert, requireWithin } from '../errors.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'
import { OXYGEN_TERMS } from './real-gas-oxygen-terms.ts'

/** Critical temperature K, critical density mol/L, gas constant J/(mol·K). Source: Stewart1991. */
const CRITICAL_K = 154.581
const CRITICAL_MOL_PER_L = 13.63
const GAS_CONSTANT = 8.31434

/** Temperatures accepted, °C, and up to where the equation was fitted: 300 K, in whole degrees. */
export const OXYGEN_C_MIN = -40
export const OXYGEN_C_MAX = 50
export const OXYGEN_FITTED_C_MAX = 27
/** Pressures accepted, kPa absolute: beyond any cylinder in use and half of what the equation was fitted to. */
export const OXYGEN_KPA_MAX = 40_000

/** Whether a temperature lies inside the fit of the equation or beyond it. */
export type EquationUse = 'within-fit' | 'extrapolated'

export interface OxygenState {
  readonly temperatureC: number
  /** Absolute. */
  readonly pressureKpa: number
}

/** Temperature at which cylinder contents are usually stated, °C (common practice). */
export const CONTENTS_REFERENCE_C = 15

/** Above 27 °C the equation is extrapolated; the number is given and must be marked. */
export function equationUse(temperatureC: number): EquationUse {
  return temperatureC > OXYGEN_FITTED_C_MAX ? 'extrapolated' : 'within-fit'
}

/** Pressure of oxygen at a density: ρRT(1 + δ·∂αʳ/∂δ), 32 terms. Valid above the critical point's temperature as used here.
 *  Source: [Stewart1991], fitted 54–300 K, to 80 MPa. Liquid density and second virial coefficient in real-gas-oxygen.test.ts. */
export function oxygenPressureKpa(state: {
  readonly temperatureK: number
  readonly densityMolPerL: number
}): number {
  const delta = state.densityMolPerL / CRITICAL_MOL_PER_L
  const tau = CRITICAL_K / state.temperatureK
  let slope = 0
  for (const { n, d, t, l } of OXYGEN_TERMS) {
    const power = n * delta ** d * tau ** t
    slope += l === 0 ? d * power : (d - l * delta ** l) * power * Math.exp(-(delta ** l))
  }
  return state.densityMolPerL * GAS_CONSTANT * state.temperatureK * (1 + slope)
}

/** Density, mol/L, at temperature and absolute pressure. Valid −40–50 °C (above 27 °C extrapolated) and 0–40 000 kPa, else
 *  TEMPERATURE_OUT_OF_RANGE or PRESSURE_OUT_OF_RANGE. Source: [Stewart1991]; accuracy as oxygenContentsLitres. */
export function oxygenDensityMolPerL(state: OxygenState): number {
  requireOxygenState(state)
  const temperatureK = kelvinFromC(state.temperatureC)
  let low = 0
  let high = (2 * state.pressureKpa) / (GAS_CONSTANT * temperatureK)
  assert(
    oxygenPressureKpa({ temperatureK, densityMolPerL: high }) >= state.pressureKpa,
    'real-gas-oxygen bracket',
  )
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2
    if (oxygenPressureKpa({ temperatureK, densityMolPerL: middle }) < state.pressureKpa)
      low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Halvings of the bracket: 2⁻⁵⁰ of it is below rounding. */
const BISECTIONS = 50

/** Compressibility p/(ρRT), 1 at zero pressure. Valid as oxygenDensityMolPerL. Source: [Stewart1991]; within 1e-4 of
 *  test/reference/stewart-1991/contents.csv. */
export function oxygenCompressibility(state: OxygenState): number {
  if (state.pressureKpa === 0) return 1
  const idealMolPerL = state.pressureKpa / (GAS_CONSTANT * kelvinFromC(state.temperatureC))
  return idealMolPerL / oxygenDensityMolPerL(state)
}

/** Litres of free gas held by each litre of water volume: density over density at the reference (15 °C, 101.325 kPa, as printed
 *  on cylinders, unless another temperature is given). All gas in it, what cannot leave included. Valid as oxygenDensityMolPerL.
 *  Source: [Stewart1991]; within 0.1 % of test/reference/stewart-1991/contents.csv. */
export function oxygenContentsLitres(
  state: OxygenState & { readonly referenceC?: number },
): number {
  return oxygenDensityMolPerL(state) / freeOxygenMolPerL(state.referenceC ?? CONTENTS_REFERENCE_C)
}

/** Moles in a litre of free oxygen at 101.325 kPa. */
export function freeOxygenMolPerL(referenceC: number): number {
  return oxygenDensityMolPerL({ temperatureC: referenceC, pressureKpa: STANDARD_PRESSURE_KPA })
}

/** Pressure of an unchanged filling at another temperature, absolute kPa. Valid as oxygenDensityMolPerL, and the pressure found
 *  within the accepted range too. Source: [Stewart1991]; within 0.2 % of test/reference/stewart-1991/gauge-temperature.csv. */
export function oxygenPressureAtKpa(filling: OxygenState & { readonly atC: number }): number {
  const densityMolPerL = oxygenDensityMolPerL(filling)
  const pressureKpa = oxygenPressureKpa({ temperatureK: kelvinFromC(filling.atC), densityMolPerL })
  requireOxygenState({ temperatureC: filling.atC, pressureKpa })
  return pressureKpa
}

function requireOxygenState(state: OxygenState): void {
  requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'temperatureC',
    value: state.temperatureC,
    min: OXYGEN_C_MIN,
    max: OXYGEN_C_MAX,
    unit: '°C',
  })
  requireWithin({
    code: 'PRESSURE_OUT_OF_RANGE',
    path: 'pressureKpa',
    value: state.pressureKpa,
    min: 0,
    max: OXYGEN_KPA_MAX,
    unit: 'kPa',
  })
}
