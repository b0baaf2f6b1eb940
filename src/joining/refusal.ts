// Why a chain is refused, as codes with values and the place. Leaves out the words (words/joining-refusals.ts).
import type { NeedCode, OrderCode } from './order-rules.ts'

export const CHAIN_FAULTS = [
  // Ends.
  'ENDS_DO_NOT_MATE',
  'ENDS_MEET_NOWHERE',
  'NEVER_FOR_GAS',
  'INLET_NOT_FED',
  'INLET_FED_TWICE',
  'OUTLET_LEADS_NOWHERE',
  'OUTLET_SPLIT',
  'NO_AIR_PORTS',
  'SPLIT_TO_TWO_PATIENTS',
  'NO_PATIENT',
  'NO_GAS_OUTLET',
  'GOES_IN_A_CIRCLE',
  // Gas.
  'AIR_INSTEAD_OF_OXYGEN',
  'GAS_NOT_FOR_PATIENT',
  'GASES_MIXED_BY_Y',
  'COLLAR_FED_WITH_OXYGEN',
  'WRONG_GAS_AT_MIXER',
  // Ways out.
  'CLOSED_CIRCUIT',
  'CLOSED_CIRCUIT_CAPPED',
  'OPEN_BEFORE_PATIENT',
  // Settings and limits.
  'MODE_CYCLES_PRESSURE',
  'NO_EVEN_MODE',
  'FLOW_NOT_ON_METER',
  'FRACTION_NOT_ON_SCALE',
  'FLOW_BELOW_RATED',
  'FLOW_ABOVE_RATED',
  'TUBE_ABOVE_ITS_FLOW',
  'TUBE_ABOVE_ITS_LABEL',
  'DRIVE_ABOVE_JET',
  'RELIEF_VALVE_OPENS',
  'SOURCE_CANNOT_PUSH',
  'DOES_NOT_REACH',
  // The patient.
  'WRONG_SIZE',
  'OPENING_NOT_IN_USE',
  'EXCHANGER_WORN_WITH_HUMIDIFIER',
  'DRY_GAS_TO_NECK',
] as const

export type RefusalCode = (typeof CHAIN_FAULTS)[number] | OrderCode | NeedCode

export interface Refusal {
  readonly code: RefusalCode
  readonly values: Readonly<Record<string, number | string>>
  /** Place in the chain's parts. */
  readonly part?: number
  /** Place in the chain's joins. */
  readonly join?: number
}

/** A fault met on several lines of one chain, as of both gases before a mixer, is one fault. */
export function toldOnce(faults: readonly Refusal[]): readonly Refusal[] {
  return faults.filter(
    (fault, i) =>
      faults.findIndex(({ code, part }) => code === fault.code && part === fault.part) === i,
  )
}
