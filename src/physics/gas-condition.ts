// Volume of the same amount of dry gas at another temperature, pressure and humidity (ATPD, ATPS, BTPS, STPD). Ideal gas; leaves out real-gas terms, under 0.1 % here.
import { requireWithin } from '../errors.ts'
import {
  ABSOLUTE_ZERO_C,
  BODY_TEMPERATURE_C,
  BODY_WATER_VAPOUR_KPA,
  FLOWMETER_REFERENCE_TEMPERATURE_C,
  STANDARD_PRESSURE_KPA,
} from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'
import { saturatedVapourPressureKpa } from './water-vapour.ts'

/** State at which a gas volume or flow is stated: total pressure, temperature and the water vapour in it. */
export interface GasCondition {
  readonly pressureKpa: number
  readonly temperatureC: number
  readonly waterVapourKpa: number
}

/** Standard temperature and pressure, dry: 0 °C, 101.325 kPa. */
export const STPD: GasCondition = {
  pressureKpa: STANDARD_PRESSURE_KPA,
  temperatureC: 0,
  waterVapourKpa: 0,
}

/** What an oxygen flowmeter's scale usually means: dry gas at 20 °C and 101.325 kPa (common practice). */
export const FLOWMETER_SCALE: GasCondition = {
  pressureKpa: STANDARD_PRESSURE_KPA,
  temperatureC: FLOWMETER_REFERENCE_TEMPERATURE_C,
  waterVapourKpa: 0,
}

/** Ambient temperature and pressure, dry. */
export function atpd(room: {
  readonly temperatureC: number
  readonly barometricKpa: number
}): GasCondition {
  return { pressureKpa: room.barometricKpa, temperatureC: room.temperatureC, waterVapourKpa: 0 }
}

/** Ambient temperature and pressure, saturated with water. Valid 0–60 °C. */
export function atps(room: {
  readonly temperatureC: number
  readonly barometricKpa: number
}): GasCondition {
  return { ...atpd(room), waterVapourKpa: saturatedVapourPressureKpa(room.temperatureC) }
}

/** Body temperature, ambient pressure, saturated. Without a temperature: 37 °C and 6.282 kPa of vapour. */
export function btps(body: {
  readonly barometricKpa: number
  readonly temperatureC?: number
}): GasCondition {
  const temperatureC = body.temperatureC ?? BODY_TEMPERATURE_C
  const waterVapourKpa =
    temperatureC === BODY_TEMPERATURE_C
      ? BODY_WATER_VAPOUR_KPA
      : saturatedVapourPressureKpa(temperatureC)
  return { pressureKpa: body.barometricKpa, temperatureC, waterVapourKpa }
}

/** Factor that turns a volume or flow stated at `from` into the same amount of dry gas stated at `to`:
 *  ((p − w)/T)from / ((p − w)/T)to. Valid where both dry pressures are above 0, else PRESSURE_OUT_OF_RANGE.
 *  Exact for ideal gas; dry 20 °C to BTPS 1.1279, STPD to BTPS 1.2105 at 101.325 kPa (gas-condition.test.ts). */
export function conditionFactor(change: {
  readonly from: GasCondition
  readonly to: GasCondition
}): number {
  return dryDensity(change.from) / dryDensity(change.to)
}

/** Factor from a flowmeter's dry standard litres to BTPS at a barometric pressure: 1.1279 at sea level, rising
 *  with altitude. Valid as conditionFactor. */
export function flowmeterToBtpsFactor(place: {
  readonly barometricKpa: number
  readonly scale?: GasCondition
}): number {
  return conditionFactor({ from: place.scale ?? FLOWMETER_SCALE, to: btps(place) })
}

/** Proportional to moles of dry gas per volume. */
function dryDensity(condition: GasCondition): number {
  const dryKpa = condition.pressureKpa - condition.waterVapourKpa
  requireWithin({
    code: 'PRESSURE_OUT_OF_RANGE',
    path: 'dryPressureKpa',
    value: dryKpa,
    min: Number.MIN_VALUE,
    max: Number.MAX_VALUE,
    unit: 'kPa',
  })
  requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'temperatureC',
    value: condition.temperatureC,
    min: ABSOLUTE_ZERO_C + 1,
    max: Number.MAX_VALUE,
    unit: '°C',
  })
  return dryKpa / kelvinFromC(condition.temperatureC)
}
