// Water vapour in gas: saturated pressure over water, absolute and relative humidity, dew point. Leaves out ice, aerosol droplets and real-gas terms.
import { outOfRange, requireWithin } from '../errors.ts'
import { WATER_VAPOUR_GAS_CONSTANT } from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'

/** Temperatures covered, °C: from cold tubing to above any heated hose. */
export const VAPOUR_TEMPERATURE_C_MIN = 0
export const VAPOUR_TEMPERATURE_C_MAX = 60

/** Coefficients of the formula over water [Buck1996]: kPa, 1, °C, °C. */
const BUCK_PRESSURE_KPA = 0.61121
const BUCK_SLOPE = 18.678
const BUCK_CURVATURE_C = 234.5
const BUCK_OFFSET_C = 257.14
/** g/m³ (= mg/L) per kPa·kg/J: 1000 Pa per kPa times 1000 g per kg. */
const MG_PER_L_SCALE = 1e6
const DEW_POINT_TOLERANCE_C = 1e-10
const DEW_POINT_STEPS = 60

/** Saturated vapour pressure over water: 0.61121·exp((18.678 − t/234.5)·t/(257.14 + t)) kPa.
 *  Valid 0–60 °C, else TEMPERATURE_OUT_OF_RANGE. Source: [Buck1996]. Within 0.1 % of the 1997 industrial steam
 *  formulation at 15–41 °C (test/reference/water-vapour) and of psychrolib at 0–60 °C (water-vapour.test.ts). */
export function saturatedVapourPressureKpa(temperatureC: number): number {
  if (!(temperatureC >= VAPOUR_TEMPERATURE_C_MIN && temperatureC <= VAPOUR_TEMPERATURE_C_MAX)) {
    throw outOfRange({ ...TEMPERATURE_BOUNDS, value: temperatureC })
  }
  const exponent =
    ((BUCK_SLOPE - temperatureC / BUCK_CURVATURE_C) * temperatureC) / (BUCK_OFFSET_C + temperatureC)
  return BUCK_PRESSURE_KPA * Math.exp(exponent)
}

const TEMPERATURE_BOUNDS = {
  code: 'TEMPERATURE_OUT_OF_RANGE',
  path: 'temperatureC',
  min: VAPOUR_TEMPERATURE_C_MIN,
  max: VAPOUR_TEMPERATURE_C_MAX,
  unit: '°C',
} as const

/** Mass of water vapour per volume of gas, p/(461.5·T). Ideal gas: 0.3 % below the real vapour at 37 °C.
 *  Valid as saturatedVapourPressureKpa, relative humidity 0–1. Source: [IAPWS1997] (gas constant). */
export function absoluteHumidityMgPerL(gas: {
  readonly temperatureC: number
  readonly relativeHumidityFraction: number
}): number {
  requireFraction(gas.relativeHumidityFraction)
  const vapourPressureKpa =
    saturatedVapourPressureKpa(gas.temperatureC) * gas.relativeHumidityFraction
  return humidityFromPressure(vapourPressureKpa, gas.temperatureC)
}

/** Absolute humidity of saturated gas. See absoluteHumidityMgPerL. */
export function saturatedHumidityMgPerL(temperatureC: number): number {
  return humidityFromPressure(saturatedVapourPressureKpa(temperatureC), temperatureC)
}

/** Share of saturation that a given absolute humidity is at a temperature; above 1 it would condense,
 *  and the number says by how much. Valid as saturatedVapourPressureKpa, humidity ≥ 0. */
export function relativeHumidityFraction(gas: {
  readonly absoluteHumidityMgPerL: number
  readonly temperatureC: number
}): number {
  requireHumidity(gas.absoluteHumidityMgPerL)
  return gas.absoluteHumidityMgPerL / saturatedHumidityMgPerL(gas.temperatureC)
}

/** Temperature at which gas of this absolute humidity is just saturated. Inverts saturatedHumidityMgPerL by
 *  bisection to 1e-10 °C. Valid 4.85–130 mg/L (0–60 °C), else HUMIDITY_OUT_OF_RANGE. */
export function saturationTemperatureC(absoluteHumidityMgPerL: number): number {
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'absoluteHumidityMgPerL',
    value: absoluteHumidityMgPerL,
    min: saturatedHumidityMgPerL(VAPOUR_TEMPERATURE_C_MIN),
    max: saturatedHumidityMgPerL(VAPOUR_TEMPERATURE_C_MAX),
    unit: 'mg/L',
  })
  let low = VAPOUR_TEMPERATURE_C_MIN
  let high = VAPOUR_TEMPERATURE_C_MAX
  for (let i = 0; i < DEW_POINT_STEPS && high - low > DEW_POINT_TOLERANCE_C; i += 1) {
    const middle = (low + high) / 2
    if (saturatedHumidityMgPerL(middle) < absoluteHumidityMgPerL) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Water that drops out when saturated gas cools, mg per litre of the warm gas; 0 when it warms.
 *  Follows the reference tables in ignoring the small shrinkage of the gas. Valid as saturatedVapourPressureKpa. */
export function condensateMgPerL(gas: {
  readonly fromTemperatureC: number
  readonly toTemperatureC: number
}): number {
  const lost =
    saturatedHumidityMgPerL(gas.fromTemperatureC) - saturatedHumidityMgPerL(gas.toTemperatureC)
  return Math.max(0, lost)
}

function humidityFromPressure(vapourPressureKpa: number, temperatureC: number): number {
  return (
    (vapourPressureKpa * MG_PER_L_SCALE) / (WATER_VAPOUR_GAS_CONSTANT * kelvinFromC(temperatureC))
  )
}

function requireFraction(relativeHumidityFraction: number): void {
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'relativeHumidityFraction',
    value: relativeHumidityFraction,
    min: 0,
    max: 1,
  })
}

function requireHumidity(humidityMgPerL: number): void {
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'absoluteHumidityMgPerL',
    value: humidityMgPerL,
    min: 0,
    max: saturatedHumidityMgPerL(VAPOUR_TEMPERATURE_C_MAX),
    unit: 'mg/L',
  })
}
