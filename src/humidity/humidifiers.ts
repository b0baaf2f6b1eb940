// What each humidifier does to the gas that passes it, and the water it gives off. Leaves out dirt, wrong water levels and heating up.
import { evaporationHeatJPerG, dryHeatJPerLK, inBalance, mixedGas, sprayed } from './moist-gas.ts'
import type { MoistGas } from './moist-gas.ts'
import { roomMgPerLBtps, saturatedMgPerLBtps } from './body-litre.ts'
import { VAPOUR_TEMPERATURE_C_MIN } from '../physics/water-vapour.ts'

export interface Room {
  readonly temperatureC: number
  readonly relativeHumidityFraction: number
  readonly barometricKpa: number
}

const G_PER_MG = 1e-3
const S_PER_MIN = 60
const WATER_STEPS = 50

/** Water of an unheated bottle, °C: the temperature at which the heat it takes from the room and from the gas pays for what
 *  evaporates: (k + flow·heat capacity)·(room − water) = flow·(output − input)·heat of evaporation. By bisection between 0 °C and
 *  the room. The heat k is calibrated on one bench; others judge the direction only. */
export function coldWaterTemperatureC(bottle: {
  readonly gas: MoistGas
  readonly room: Room
  readonly saturation: number
  readonly heatWPerK: number
}): number {
  const { gas, room, saturation, heatWPerK } = bottle
  const flowLps = gas.flowLpmBtps / S_PER_MIN
  const gainWPerK = heatWPerK + flowLps * dryHeatJPerLK(room.barometricKpa)
  const surplusW = (temperatureC: number): number => {
    const outMgPerL =
      saturation * saturatedMgPerLBtps({ temperatureC, barometricKpa: room.barometricKpa })
    const spentW =
      flowLps *
      Math.max(0, outMgPerL - gas.vapourMgPerLBtps) *
      G_PER_MG *
      evaporationHeatJPerG(temperatureC)
    return gainWPerK * (room.temperatureC - temperatureC) - spentW
  }
  let low = VAPOUR_TEMPERATURE_C_MIN
  let high = room.temperatureC
  for (let i = 0; i < WATER_STEPS; i += 1) {
    const middle = (low + high) / 2
    if (surplusW(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Bubble and pass-over bottles at room temperature: a share of saturation at the temperature of their own, cooled water.
 *  The gas warms to the room again in the tubing. */
export function coldBottle(
  gas: MoistGas,
  bottle: { readonly room: Room; readonly saturation: number; readonly heatWPerK: number },
): MoistGas {
  const { room, saturation } = bottle
  const waterTemperatureC = coldWaterTemperatureC({ gas, ...bottle })
  const { barometricKpa } = room
  const given = saturation * saturatedMgPerLBtps({ temperatureC: waterTemperatureC, barometricKpa })
  return {
    ...gas,
    temperatureC: room.temperatureC,
    vapourMgPerLBtps: Math.max(gas.vapourMgPerLBtps, given),
  }
}

/** Heated chamber: gas leaves saturated at its outlet temperature, whatever the flow (a bench saw no fall up to 15 L/min). */
export function heatedChamber(
  gas: MoistGas,
  chamber: { readonly outletTemperatureC: number; readonly barometricKpa: number },
): MoistGas {
  const temperatureC = chamber.outletTemperatureC
  const { barometricKpa } = chamber
  const waterMgPerLBtps = Math.max(
    gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps,
    saturatedMgPerLBtps({ temperatureC, barometricKpa }),
  )
  return inBalance({ flowLpmBtps: gas.flowLpmBtps, temperatureC, waterMgPerLBtps, barometricKpa })
}

/** Room air drawn in by a jet, in litres for each litre of gas. */
export function entrained(
  gas: MoistGas,
  drawn: { readonly airPerGas: number; readonly room: Room; readonly saturation?: number },
): MoistGas {
  if (drawn.airPerGas === 0) return gas
  const air = roomAir({ ...drawn, flowLpmBtps: gas.flowLpmBtps * drawn.airPerGas })
  return mixedGas([gas, air], drawn.room.barometricKpa)
}

/** Room air; `saturation` is how far a collar's mist brings it from its own humidity towards saturation, cooling it as it evaporates. */
export function roomAir(options: {
  readonly flowLpmBtps: number
  readonly room: Room
  readonly saturation?: number
}): MoistGas {
  const { room, flowLpmBtps, saturation = 0 } = options
  const { barometricKpa, temperatureC } = room
  const dry: MoistGas = {
    flowLpmBtps,
    temperatureC,
    vapourMgPerLBtps: roomMgPerLBtps(room),
    aerosolMgPerLBtps: 0,
  }
  if (saturation === 0) return dry
  const most = saturatedMgPerLBtps({ temperatureC, barometricKpa })
  const waterMgPerLBtps = dry.vapourMgPerLBtps + saturation * (most - dry.vapourMgPerLBtps)
  return sprayed({ gas: dry, waterMgPerLBtps, waterTemperatureC: temperatureC, barometricKpa })
}

/** Jet nebuliser, cold: droplets up to the water it gives off in all; what evaporates cools the gas. Heated: saturated at the outlet temperature, the rest as droplets. */
export function nebulised(
  gas: MoistGas,
  jet: {
    readonly waterMgPerLBtps: number
    readonly outletTemperatureC: number | null
    readonly room: Room
  },
): MoistGas {
  const { barometricKpa, temperatureC } = jet.room
  const held = gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps
  if (jet.outletTemperatureC === null) {
    const waterTemperatureC = temperatureC
    return sprayed({ gas, waterMgPerLBtps: jet.waterMgPerLBtps, waterTemperatureC, barometricKpa })
  }
  return inBalance({
    flowLpmBtps: gas.flowLpmBtps,
    temperatureC: jet.outletTemperatureC,
    waterMgPerLBtps: Math.max(held, jet.waterMgPerLBtps),
    barometricKpa,
  })
}
