// Airway pressure and upper-airway clearance of nasal high flow in the middle adult, from the family's own numbers. Leaves out the breath.
import { assert } from '../errors.ts'
import { NASAL_HIGH_FLOW } from '../kit/families/high-flow.ts'
import { medianOf, quantile } from '../units/spread.ts'
import type { Spread } from '../units/spread.ts'

function behaviour() {
  const { behaviour: own } = NASAL_HIGH_FLOW
  assert(own.kind === 'high-flow', 'nasal high flow behaves as high flow')
  return own
}

/** Mean pressure in the nasopharynx, cmH2O. Formula: slope × flow, less with an open mouth. Valid 0–60 L/min, linear [Parke2011]. */
export function highFlowPressureCmH2o(setting: {
  readonly flowLpm: number
  readonly isMouthOpen: boolean
  readonly slopePerLpm?: number
}): number {
  const own = behaviour()
  const slope = setting.slopePerLpm ?? medianOf(own.meanPressureCmH2oPerLpm.spread)
  const closedCmH2o = slope * setting.flowLpm
  return setting.isMouthOpen
    ? closedCmH2o * medianOf(own.openMouthPressureShare.spread)
    : closedCmH2o
}

/** Gas cleared from the upper airway, mL/s. Formula: slope × flow [Moeller2015]. Judged by Moeller2017. */
export function highFlowClearanceMlPerS(setting: {
  readonly flowLpm: number
  readonly slopePerLpm?: number
}): number {
  const slope = setting.slopePerLpm ?? medianOf(behaviour().clearanceMlPerSPerLpm.spread)
  return slope * setting.flowLpm
}

/** From the 10th to the 90th centile between adults, mouth closed, cmH2O. */
export function highFlowPressureWidthCmH2o(flowLpm: number): number {
  return width(behaviour().meanPressureCmH2oPerLpm.spread) * flowLpm
}

/** From the 10th to the 90th centile between adults, mL/s. */
export function highFlowClearanceWidthMlPerS(flowLpm: number): number {
  return width(behaviour().clearanceMlPerSPerLpm.spread) * flowLpm
}

function width(spread: Spread): number {
  return quantile(spread, 0.9) - quantile(spread, 0.1)
}
