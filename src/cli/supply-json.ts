// Parts that the JSON answers of the gas verbs share: remarks with their texts in the units asked for, a set-up by its source. Leaves out the answers.
import type { SetUp } from '../kit/set-up.ts'
import type { GasDrawn } from '../supply/gas-drawn.ts'
import type { SupplyRemark } from '../supply/supply-remark.ts'
import { supplyText } from '../words/supply-text.ts'
import { GAS_UNITS, type GasUnits } from '../words/supply-value.ts'
import { toldSetUp } from './json-parts.ts'

export function toldRemarks(
  remarks: readonly SupplyRemark[],
  units: GasUnits = GAS_UNITS,
): readonly object[] {
  return remarks.map((remark) => ({ ...remark, text: supplyText(remark, units) }))
}

/** What is on and what it draws; null is room air, an empty bed, or not known. */
export function toldBody(body: {
  readonly setUp: SetUp | null
  readonly drawn: GasDrawn | null
}): object | null {
  const { setUp, drawn } = body
  if (setUp === null || drawn === null) return null
  const { remarks: _, ...numbers } = drawn
  return { ...toldSetUp(setUp), drawn: numbers }
}
