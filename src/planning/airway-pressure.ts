// Mean airway pressure that nasal high flow brings. Leaves out its swing within the breath.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import { medianOf } from '../units/spread.ts'
import type { Band } from './plan-types.ts'

/** Mean airway pressure of nasal high flow, mouth closed to open, as a band around the family's slope; null elsewhere. */
export function meanAirwayPressure(setUp: SetUp): Band | null {
  const { behaviour } = INTERFACE_FAMILIES[setUp.family]
  if (behaviour.kind !== 'high-flow' || setUp.flow.kind === 'flush') return null
  const closed = medianOf(behaviour.meanPressureCmH2oPerLpm.spread) * setUp.flow.flowLpm
  const open = closed * medianOf(behaviour.openMouthPressureShare.spread)
  return { median: (closed + open) / 2, low: open, high: closed }
}
