// What is checked and ticked before and on a transfer, in the order it is done; each is a code. Leaves out local lists, which come first.
import type { SupplyCode } from './supply-remark.ts'

export const TRANSFER_CHECKS = [
  'CHECK_VALVE_OPEN',
  'CHECK_GAUGE_READ',
  'CHECK_FLOW_FELT',
  'CHECK_SPARE',
  'CHECK_CHANGE_AT',
  'CHECK_SECURED',
  'CHECK_FIRE',
  'CHECK_OXIMETER',
  'CHECK_BAG_AND_MASK',
] as const satisfies readonly SupplyCode[]
