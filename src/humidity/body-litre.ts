// Water in gas counted per litre at body conditions (37 °C, saturated, at the pressure of the place): conversions from and to the gas's own litre. Leaves out aerosol and real-gas terms.
import { BODY_TEMPERATURE_C, WATER_VAPOUR_GAS_CONSTANT } from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'
import { btps, conditionFactor } from '../physics/gas-condition.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import {
  saturatedHumidityMgPerL,
  saturatedVapourPressureKpa,
  VAPOUR_TEMPERATURE_C_MAX,
  VAPOUR_TEMPERATURE_C_MIN,
} from '../physics/water-vapour.ts'
import { requireWithin } from '../errors.ts'

/** mg/L per kPa·kg/J. */
const MG_PER_L_SCALE = 1e6
const DEW_POINT_TOLERANCE_C = 1e-9
const DEW_POINT_STEPS = 60

/** Gas with its water as a hygrometer states it: mass per litre of the gas as it is. */
export interface OwnLitre {
  readonly absoluteHumidityMgPerL: number
  readonly temperatureC: number
  readonly barometricKpa: number
}

/** The same water per litre of that gas once warmed to 37 °C and saturated: the basis on which humidifiers are required
 *  to be stated, and the litre a patient breathes in. Humidity × ((p − w)/T)body / ((p − w)/T)gas. Valid 0–60 °C up to
 *  saturation, 50–107 kPa. Exact for ideal gas; agrees with psychrolib within 0.2 % (body-litre.test.ts). */
export function perBodyLitreMg(gas: OwnLitre): number {
  const { absoluteHumidityMgPerL, temperatureC, barometricKpa } = gas
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'absoluteHumidityMgPerL',
    value: absoluteHumidityMgPerL,
    min: 0,
    max: saturatedHumidityMgPerL(temperatureC) * (1 + ROUNDING),
    unit: 'mg/L',
  })
  return (
    absoluteHumidityMgPerL / toBodyFactor({ temperatureC, barometricKpa, absoluteHumidityMgPerL })
  )
}

/** Rounding of binary numbers at saturation. */
const ROUNDING = 1e-9

function toBodyFactor(gas: OwnLitre): number {
  const waterVapourKpa =
    (gas.absoluteHumidityMgPerL * WATER_VAPOUR_GAS_CONSTANT * kelvinFromC(gas.temperatureC)) /
    MG_PER_L_SCALE
  return conditionFactor({
    from: { pressureKpa: placeKpa(gas), temperatureC: gas.temperatureC, waterVapourKpa },
    to: btps({ barometricKpa: gas.barometricKpa }),
  })
}

/** Most water that gas of this temperature can carry as vapour, per body litre. 43.9 mg/L at 37 °C at any pressure;
 *  lower down the scale it depends a little on pressure. Valid 0–60 °C, 50–107 kPa. */
export function saturatedMgPerLBtps(gas: {
  readonly temperatureC: number
  readonly barometricKpa: number
}): number {
  const vapourKpa = saturatedVapourPressureKpa(gas.temperatureC)
  return bodyMgOfVapour({ vapourKpa, barometricKpa: placeKpa(gas) })
}

/** Water in room air, per body litre. Relative humidity 0–1. */
export function roomMgPerLBtps(room: {
  readonly temperatureC: number
  readonly relativeHumidityFraction: number
  readonly barometricKpa: number
}): number {
  const { relativeHumidityFraction } = room
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'relativeHumidityFraction',
    value: relativeHumidityFraction,
    min: 0,
    max: 1,
  })
  const vapourKpa = saturatedVapourPressureKpa(room.temperatureC) * relativeHumidityFraction
  return bodyMgOfVapour({ vapourKpa, barometricKpa: placeKpa(room) })
}

/** e/(461.5·310.15) × (p − 6.28)/(p − e), in mg/L. */
function bodyMgOfVapour(gas: {
  readonly vapourKpa: number
  readonly barometricKpa: number
}): number {
  const { waterVapourKpa } = btps({ barometricKpa: gas.barometricKpa })
  const perKpa = MG_PER_L_SCALE / (WATER_VAPOUR_GAS_CONSTANT * kelvinFromC(BODY_TEMPERATURE_C))
  const dryShare = (gas.barometricKpa - waterVapourKpa) / (gas.barometricKpa - gas.vapourKpa)
  return gas.vapourKpa * perKpa * dryShare
}

/** What a hygrometer in gas of this temperature would state, mg per litre of the gas as it is. Inverts perBodyLitreMg;
 *  water beyond saturation is not vapour: HUMIDITY_OUT_OF_RANGE. */
export function perOwnLitreMg(gas: {
  readonly vapourMgPerLBtps: number
  readonly temperatureC: number
  readonly barometricKpa: number
}): number {
  const { vapourMgPerLBtps, temperatureC } = gas
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'vapourMgPerLBtps',
    value: vapourMgPerLBtps,
    min: 0,
    max: saturatedMgPerLBtps(gas) * (1 + ROUNDING),
    unit: 'mg/L',
  })
  const vapourKpa = vapourPressureKpa(gas)
  return (vapourKpa * MG_PER_L_SCALE) / (WATER_VAPOUR_GAS_CONSTANT * kelvinFromC(temperatureC))
}

/** Solves bodyMgOfVapour for e. */
function vapourPressureKpa(gas: {
  readonly vapourMgPerLBtps: number
  readonly barometricKpa: number
}): number {
  const { waterVapourKpa } = btps({ barometricKpa: placeKpa(gas) })
  const perKpa = MG_PER_L_SCALE / (WATER_VAPOUR_GAS_CONSTANT * kelvinFromC(BODY_TEMPERATURE_C))
  const share = gas.vapourMgPerLBtps / (perKpa * (gas.barometricKpa - waterVapourKpa))
  return (gas.barometricKpa * share) / (1 + share)
}

/** Temperature at which water first drops out, °C; null where it would be below 0 °C. Valid up to what gas of 60 °C
 *  carries, else HUMIDITY_OUT_OF_RANGE. By bisection to 1e-9 °C. */
export function dewPointC(gas: {
  readonly vapourMgPerLBtps: number
  readonly barometricKpa: number
}): number | null {
  const barometricKpa = placeKpa(gas)
  const at = (temperatureC: number): number => saturatedMgPerLBtps({ temperatureC, barometricKpa })
  requireWithin({
    code: 'HUMIDITY_OUT_OF_RANGE',
    path: 'vapourMgPerLBtps',
    value: gas.vapourMgPerLBtps,
    min: 0,
    max: at(VAPOUR_TEMPERATURE_C_MAX),
    unit: 'mg/L',
  })
  if (gas.vapourMgPerLBtps < at(VAPOUR_TEMPERATURE_C_MIN)) return null
  let low = VAPOUR_TEMPERATURE_C_MIN
  let high = VAPOUR_TEMPERATURE_C_MAX
  for (let i = 0; i < DEW_POINT_STEPS && high - low > DEW_POINT_TOLERANCE_C; i += 1) {
    const middle = (low + high) / 2
    if (at(middle) < gas.vapourMgPerLBtps) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function placeKpa(gas: { readonly barometricKpa: number }): number {
  return requireBarometricKpa(gas.barometricKpa, 'barometricKpa')
}
