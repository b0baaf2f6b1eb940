// Gas with vapour and droplets in balance at one temperature, and its heat: mixing, evaporating, cooling. Leaves out droplet size, settling and the time that balance takes.
import { assert } from '../errors.ts'
import { BODY_TEMPERATURE_C, BODY_WATER_VAPOUR_KPA } from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'
import { VAPOUR_TEMPERATURE_C_MAX, VAPOUR_TEMPERATURE_C_MIN } from '../physics/water-vapour.ts'
import { saturatedMgPerLBtps } from './body-litre.ts'

/** A stream of gas; water in mg per body litre of the gas, vapour and droplets apart. */
export interface MoistGas {
  readonly flowLpmBtps: number
  readonly temperatureC: number
  readonly vapourMgPerLBtps: number
  readonly aerosolMgPerLBtps: number
}

/** Molar gas constant, J/(mol·K), by definition. */
const GAS_CONSTANT = 8.314462618
/** Heat capacity of dry oxygen or air, J/(mol·K): 29.1–29.4 (common practice). */
const DRY_HEAT_J_PER_MOL_K = 29.2
/** Heat of water vapour above liquid at 0 °C: 2501 + 1.86·t J/g; of liquid water 4.19·t J/g (common practice). */
const VAPOUR_HEAT_J_PER_G = 2501
const VAPOUR_HEAT_J_PER_G_K = 1.86
const LIQUID_HEAT_J_PER_G_K = 4.19
const G_PER_MG = 1e-3
const TEMPERATURE_TOLERANCE_C = 1e-9
const STEPS = 60

/** Heat capacity of the dry part of one body litre, J/(L·K). */
export function dryHeatJPerLK(barometricKpa: number): number {
  const kpaPerJPerL = (barometricKpa - BODY_WATER_VAPOUR_KPA) / kelvinFromC(BODY_TEMPERATURE_C)
  return (kpaPerJPerL / GAS_CONSTANT) * DRY_HEAT_J_PER_MOL_K
}

/** Heat taken up by a gram of water that evaporates at this temperature, J/g: 2501 − 2.33·t. */
export function evaporationHeatJPerG(temperatureC: number): number {
  return VAPOUR_HEAT_J_PER_G + (VAPOUR_HEAT_J_PER_G_K - LIQUID_HEAT_J_PER_G_K) * temperatureC
}

/** Heat of one body litre with its water, J, counted from dry gas and liquid water at 0 °C. */
export function heatJPerL(gas: Omit<MoistGas, 'flowLpmBtps'>, barometricKpa: number): number {
  const { temperatureC, vapourMgPerLBtps, aerosolMgPerLBtps } = gas
  const vapour = VAPOUR_HEAT_J_PER_G + VAPOUR_HEAT_J_PER_G_K * temperatureC
  return (
    dryHeatJPerLK(barometricKpa) * temperatureC +
    vapourMgPerLBtps * G_PER_MG * vapour +
    aerosolMgPerLBtps * G_PER_MG * LIQUID_HEAT_J_PER_G_K * temperatureC
  )
}

/** Vapour as far as the gas can carry it, the rest as droplets. */
export function inBalance(options: {
  readonly flowLpmBtps: number
  readonly temperatureC: number
  readonly waterMgPerLBtps: number
  readonly barometricKpa: number
}): MoistGas {
  const { flowLpmBtps, temperatureC, waterMgPerLBtps } = options
  const vapourMgPerLBtps = Math.min(waterMgPerLBtps, saturatedMgPerLBtps(options))
  const aerosolMgPerLBtps = waterMgPerLBtps - vapourMgPerLBtps
  return { flowLpmBtps, temperatureC, vapourMgPerLBtps, aerosolMgPerLBtps }
}

/** The state at which this much heat and water are in balance: bisection on temperature, on which heat rises strictly.
 *  Valid between 0 and 60 °C. Agrees with the wet-bulb temperature of psychrolib within 0.2 °C (moist-gas.test.ts). */
export function settled(options: {
  readonly flowLpmBtps: number
  readonly waterMgPerLBtps: number
  readonly heatJPerL: number
  readonly barometricKpa: number
}): MoistGas {
  let low = VAPOUR_TEMPERATURE_C_MIN
  let high = VAPOUR_TEMPERATURE_C_MAX
  const heatAt = (temperatureC: number): number =>
    heatJPerL(inBalance({ ...options, temperatureC }), options.barometricKpa)
  assert(heatAt(low) <= options.heatJPerL, 'humidity/heat above that of 0 °C')
  assert(heatAt(high) >= options.heatJPerL, 'humidity/heat below that of 60 °C')
  for (let i = 0; i < STEPS && high - low > TEMPERATURE_TOLERANCE_C; i += 1) {
    const middle = (low + high) / 2
    if (heatAt(middle) < options.heatJPerL) low = middle
    else high = middle
  }
  return inBalance({ ...options, temperatureC: (low + high) / 2 })
}

/** Streams that meet without heat from outside: flow, water and heat add up. */
export function mixedGas(streams: readonly MoistGas[], barometricKpa: number): MoistGas {
  const flowLpmBtps = sum(streams.map((stream) => stream.flowLpmBtps))
  assert(flowLpmBtps > 0, 'humidity/mix of a flow')
  const mean = (of: (stream: MoistGas) => number): number =>
    sum(streams.map((stream) => stream.flowLpmBtps * of(stream))) / flowLpmBtps
  return settled({
    flowLpmBtps,
    waterMgPerLBtps: mean((one) => one.vapourMgPerLBtps + one.aerosolMgPerLBtps),
    heatJPerL: mean((one) => heatJPerL(one, barometricKpa)),
    barometricKpa,
  })
}

/** Liquid water of the gas's own temperature is sprayed in until the gas holds `waterMgPerLBtps` in all. What can evaporate does, and cools the gas. */
export function sprayed(options: {
  readonly gas: MoistGas
  readonly waterMgPerLBtps: number
  readonly waterTemperatureC: number
  readonly barometricKpa: number
}): MoistGas {
  const { gas, barometricKpa } = options
  const held = gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps
  const addedMg = Math.max(0, options.waterMgPerLBtps - held)
  return settled({
    flowLpmBtps: gas.flowLpmBtps,
    waterMgPerLBtps: held + addedMg,
    heatJPerL:
      heatJPerL(gas, barometricKpa) +
      addedMg * G_PER_MG * LIQUID_HEAT_J_PER_G_K * options.waterTemperatureC,
    barometricKpa,
  })
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
