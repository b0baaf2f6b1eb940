// Gas in a hose that gives off heat to its wall: temperature, what condenses, where. Leaves out droplets that settle in bends, warming of the wall by the sun, and water re-evaporating.
import { requireWithin } from '../errors.ts'
import { saturatedMgPerLBtps } from './body-litre.ts'
import { dryHeatJPerLK, evaporationHeatJPerG, inBalance } from './moist-gas.ts'
import type { MoistGas } from './moist-gas.ts'

/** What surrounds the gas: the room through a bare wall, or a wire that holds the wall at a temperature. */
export interface Hose {
  readonly lengthM: number
  readonly boreMm: number
  readonly wallTemperatureC: number
  /** Heat passed for each m² of inner wall and degree. */
  readonly heatTransferWPerM2K: number
}

export interface HoseEnd {
  readonly gas: MoistGas
  readonly condensateMgPerMin: number
}

const SLICES = 80
const M_PER_MM = 1e-3
const S_PER_MIN = 60
const G_PER_MG = 1e-3
const SLOPE_STEP_C = 0.05
const NEARLY_SATURATED = 0.999

export const HOSE_LENGTH_M_MAX = 10
export const HOSE_BORE_MM_MIN = 2
export const HOSE_BORE_MM_MAX = 40

/** Gas at the far end, in balance. In each of 80 slices the gas nears the wall temperature by 1 − exp(−k·area/heat
 *  capacity of the flow); where it is saturated, the heat of the water that drops out counts to its heat capacity.
 *  Droplets evaporate again as long as the gas warms; vapour that drops out runs off as condensate.
 *  Laws (hose.test.ts): never beyond saturation; water is neither made nor lost; nothing condenses while the wall is at or
 *  above the dew point. No published measurement judges the heat passed: it is an assumption with a wide spread. */
export function throughHose(gas: MoistGas, hose: Hose, barometricKpa: number): HoseEnd {
  requireHose(hose)
  if (hose.lengthM === 0) return { gas, condensateMgPerMin: 0 }
  const areaM2 = (Math.PI * hose.boreMm * M_PER_MM * hose.lengthM) / SLICES
  let end: HoseEnd = { gas, condensateMgPerMin: 0 }
  for (let i = 0; i < SLICES; i += 1) end = throughSlice(end, { hose, areaM2, barometricKpa })
  return end
}

function throughSlice(
  before: HoseEnd,
  slice: { readonly hose: Hose; readonly areaM2: number; readonly barometricKpa: number },
): HoseEnd {
  const { hose, areaM2, barometricKpa } = slice
  const { gas } = before
  const passedWPerK = hose.heatTransferWPerM2K * areaM2
  const carriedWPerK = (gas.flowLpmBtps / S_PER_MIN) * heatCapacityJPerLK(gas, barometricKpa)
  const nearing = -Math.expm1(-passedWPerK / carriedWPerK)
  const temperatureC = gas.temperatureC + (hose.wallTemperatureC - gas.temperatureC) * nearing
  const waterMgPerLBtps = gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps
  const after = inBalance({ ...gas, temperatureC, waterMgPerLBtps, barometricKpa })
  const droppedMgPerL = Math.max(0, gas.vapourMgPerLBtps - after.vapourMgPerLBtps)
  return {
    gas: { ...after, aerosolMgPerLBtps: after.aerosolMgPerLBtps - droppedMgPerL },
    condensateMgPerMin: before.condensateMgPerMin + droppedMgPerL * gas.flowLpmBtps,
  }
}

/** With the heat of evaporation where water drops out or droplets can evaporate. */
function heatCapacityJPerLK(gas: MoistGas, barometricKpa: number): number {
  const dry = dryHeatJPerLK(barometricKpa)
  if (!isSaturated(gas, barometricKpa)) return dry
  const { temperatureC } = gas
  const low = Math.max(0, temperatureC - SLOPE_STEP_C)
  const slope =
    (saturatedMgPerLBtps({ temperatureC, barometricKpa }) -
      saturatedMgPerLBtps({ temperatureC: low, barometricKpa })) /
    Math.max(temperatureC - low, Number.MIN_VALUE)
  return dry + slope * G_PER_MG * evaporationHeatJPerG(temperatureC)
}

function isSaturated(gas: MoistGas, barometricKpa: number): boolean {
  const { temperatureC } = gas
  const mostMgPerL = saturatedMgPerLBtps({ temperatureC, barometricKpa })
  return gas.aerosolMgPerLBtps > 0 || gas.vapourMgPerLBtps > mostMgPerL * NEARLY_SATURATED
}

function requireHose(hose: Hose): void {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'lengthM',
    value: hose.lengthM,
    min: 0,
    max: HOSE_LENGTH_M_MAX,
    unit: 'm',
  })
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'boreMm',
    value: hose.boreMm,
    min: HOSE_BORE_MM_MIN,
    max: HOSE_BORE_MM_MAX,
    unit: 'mm',
  })
}
