// The text of every remark of the gas answers, by code, its numbers in the units chosen. Leaves out numbers and tables.
import type { SupplyCode, SupplyRemark } from '../supply/supply-remark.ts'
import { KNOWN_NAMES } from './names.ts'
import { CYLINDER_TEXTS, type SupplyText } from './supply-cylinder-texts.ts'
import { OUTAGE_TEXTS } from './supply-outage-texts.ts'
import { TRANSFER_TEXTS } from './supply-transfer-texts.ts'
import { WARD_TEXTS } from './supply-ward-texts.ts'
import type { GasUnits } from './supply-value.ts'

const SUPPLY_TEXTS: Readonly<Record<SupplyCode, SupplyText>> = {
  ...CYLINDER_TEXTS,
  ...TRANSFER_TEXTS,
  ...OUTAGE_TEXTS,
  ...WARD_TEXTS,
}

/** With how its numbers are known, where they are not ours. */
export function supplyText(remark: SupplyRemark, units: GasUnits): string {
  const text = SUPPLY_TEXTS[remark.code](remark.values, units)
  return remark.known === undefined ? text : `${text} (${KNOWN_NAMES[remark.known]})`
}

/** Several at once, in their order. */
export function supplyTexts(remarks: readonly SupplyRemark[], units: GasUnits): readonly string[] {
  return remarks.map((remark) => supplyText(remark, units))
}
