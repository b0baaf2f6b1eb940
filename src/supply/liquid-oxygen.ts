// Liquid oxygen as gas, and how long a vessel lasts that also evaporates by itself. Leaves out filling losses.
import { requireWithin } from '../errors.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

/** Litres of gas at 20 °C and 101.325 kPa from a litre of liquid at its boiling point; 842.6 at 15 °C, so that 860 to 1 is for 21 °C.
 *  Derived from the equation of state [Stewart1991]. */
export const GAS_PER_LIQUID_AT_20C = 857.3
/** From a kilogram, L at 20 °C: the same equation, 1141.2 kg/m³. */
export const GAS_L_PER_KG_AT_20C = (GAS_PER_LIQUID_AT_20C / 1141.2) * 1000

const LIQUID_L_MAX = 1_000_000
const MINUTES_PER_DAY = 1440

/** Gas of so much liquid, L at 20 °C and 101.325 kPa: liquid × GAS_PER_LIQUID_AT_20C. Valid 0–1 000 000 L, else VOLUME_OUT_OF_RANGE. Derived
 *  [Stewart1991]; sources.test.ts. */
export function gasFromLiquidL(liquidL: number): number {
  const bounds = { path: 'liquidL', value: liquidL, min: 0, max: LIQUID_L_MAX, unit: 'L' }
  return requireWithin({ ...bounds, code: 'VOLUME_OUT_OF_RANGE' }) * GAS_PER_LIQUID_AT_20C
}

export interface LiquidVessel {
  readonly liquidL: number
  /** Loss while nothing is drawn, L of liquid a day, from its label. */
  readonly evaporationLPerDay?: number
}

export interface LiquidAnswer {
  readonly gasL: number
  /** Where all that evaporates is lost beside the draw. Null: the loss is not known, or nothing leaves. */
  readonly shortestMinutes: number | null
  /** Where all that evaporates is drawn, and the most there can be where the loss is not known. Null: nothing leaves, as far as is known. */
  readonly longestMinutes: number | null
  /** How long it holds when nothing is drawn; null where the loss is not known. */
  readonly holdDays: number | null
  readonly remarks: readonly SupplyRemark[]
}

/** How long a vessel lasts at a draw: gas over draw, and over draw and loss together. Valid as gasFromLiquidL, draw 0–60 L/min, else FLOW_OUT_OF_RANGE. Exact
 *  arithmetic; sources.test.ts. */
export function liquidAnswer(vessel: LiquidVessel, drawLpm: number): LiquidAnswer {
  const bounds = { path: 'drawLpm', value: drawLpm, min: 0, max: 60, unit: 'L/min' }
  requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
  const gasL = gasFromLiquidL(vessel.liquidL)
  const { evaporationLPerDay } = vessel
  const evaporationLpm = gasFromLiquidL(evaporationLPerDay ?? 0) / MINUTES_PER_DAY
  const longestMinutes = over(gasL, Math.max(drawLpm, evaporationLpm))
  return {
    gasL,
    longestMinutes,
    shortestMinutes: evaporationLPerDay === undefined ? null : over(gasL, drawLpm + evaporationLpm),
    holdDays:
      evaporationLPerDay === undefined || evaporationLPerDay === 0
        ? null
        : vessel.liquidL / evaporationLPerDay,
    remarks: [
      ...(evaporationLPerDay === undefined ? [supplyRemark('EVAPORATION_NOT_STATED')] : []),
      ...(evaporationLpm > drawLpm && longestMinutes !== null
        ? [supplyRemark('EVAPORATION_RULES', { evaporationLpm, minutes: longestMinutes })]
        : []),
      supplyRemark('LIQUID_BURNS_SKIN'),
    ],
  }
}

function over(litres: number, lpm: number): number | null {
  return lpm === 0 ? null : litres / lpm
}
