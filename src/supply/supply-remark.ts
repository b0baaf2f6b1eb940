// What the gas answers say by code, with the numbers and names that each text needs. Leaves out the texts, which words/ holds.
import type { Provenance } from '../units/provenance.ts'

export const SUPPLY_CODES = [
  // One cylinder.
  'OPEN_THE_VALVE',
  'AT_OR_BELOW_FLOOR',
  'NOTHING_DRAWN',
  'EQUATION_EXTRAPOLATED',
  'FILLED_WARM_USED_COLD',
  'GAUGE_MAY_READ_HIGH',
  'HANDBOOK_DIFFERS',
  'HANDBOOK_HAS_NO_SUCH_SIZE',
  // What is drawn.
  'BIAS_FLOW_UNKNOWN',
  'BIAS_FLOW_NONE_BY_SHELF',
  'FLUSH_DRAW_UNCERTAIN',
  'BLEND_NEEDS_AIR',
  // Store and choice.
  'NONE_LEFT',
  'OTHER_PLACE',
  'NOT_MR_CONDITIONAL',
  'MR_SAFETY_UNKNOWN',
  'FLOW_ABOVE_REGULATOR',
  'NOTHING_USABLE',
  'STORE_TOO_SMALL',
  'MANY_CYLINDERS',
  // The way.
  'LOCAL_POLICY_FIRST',
  'MOVED_TO_CYLINDER',
  'STEP_NOT_ON_REGULATOR',
  'NO_HIGHER_STEP',
  'WORST_CASE_NOT_COVERED',
  'RESERVE_NOT_COVERED',
  'RUNS_OUT_ON_THE_WAY',
  'PLACE_SUPPLY_TO_CHECK',
  'CYLINDER_MAY_ENTER',
  'GAS_STAYS_OUTSIDE',
  'TUBE_LENGTH_UNKNOWN',
  'TUBE_FROM_CHAIN',
  'TUBE_DELAYS_GAS',
  'TUBE_MAKES_METER_READ_LOW',
  'THIN_AIR',
  'DENSER_AIR',
  'FRACTION_ON_THE_WAY_NOT_MODELLED',
  'CABIN_PRESSURE_ASSUMED',
  'CONCENTRATOR_NEEDS_POWER',
  // The printable transfer sheet.
  'CHECK_VALVE_OPEN',
  'CHECK_GAUGE_READ',
  'CHECK_FLOW_FELT',
  'CHECK_SPARE',
  'CHECK_CHANGE_AT',
  'CHECK_SECURED',
  'CHECK_FIRE',
  'CHECK_BAG_AND_MASK',
  'CHECK_OXIMETER',
  'CHECK_MR_ITEMS',
  // Concentrator and liquid.
  'PURITY_BY_CLASS',
  'ABOVE_RATED_FLOW',
  'STILL_WARMING_UP',
  'WARM_UP_NOT_STATED',
  'ALTITUDE_ABOVE_RATING',
  'OUTSIDE_PURITY_TABLE',
  'PULSE_IS_NO_FLOW',
  'EVAPORATION_NOT_STATED',
  'EVAPORATION_RULES',
  'LIQUID_BURNS_SKIN',
  // When something fails.
  'WORKS_ON',
  'ON_BED_CYLINDER',
  'NO_CYLINDER_AT_BED',
  'ON_BATTERY',
  'BATTERY_NOT_STATED',
  'PLANT_NOT_STATED',
  'PLANT_STOPS',
  'MIXER_DRIVE_NOT_STATED',
  'SET_UP_NOT_KNOWN',
  'GIVES_AIR_ONLY',
  'GIVES_OXYGEN_ONLY',
  'NO_GAS_AT_ALL',
  'BREATHES_ROOM_AIR',
  'CYLINDER_NOT_STATED',
  'DRAW_AT_RESERVOIR_MASK',
  'HEATER_STOPS',
  'DO_TAKE_MASK_OFF',
  'DO_MOVE_TO_CYLINDER',
  'DO_MOVE_TO_FLOWMETER',
  'DO_FETCH_CYLINDER',
  'DO_OPEN_CYLINDER',
  'DO_WATCH_FOR_TOO_MUCH_OXYGEN',
  'DO_CALL_FOR_HELP',
  'DO_BRING_POWER',
  'DO_FIND_OUT',
  'DO_NOTHING_BUT_WATCH',
  'NOT_COMPUTED_YET',
  // The ward.
  'DIVERSITY_FROM_MEMORY',
  'DEMAND_ABOVE_FORMULA',
  'DEMAND_ABOVE_BRANCH',
  'BRANCH_LIMIT_UNKNOWN',
  'FLOW_ABOVE_OUTLET',
  'OUTLETS_SHORT',
  'AIR_OUTLETS_SHORT',
  'OUTLETS_NOT_STATED',
  'BEDS_NOT_COUNTED',
  'AUTONOMY_UNKNOWN',
  'SIMULATION_ASSUMES',
  'ONE_MORE_BREAKS_FORMULA',
  'ONE_MORE_BREAKS_BRANCH',
  'SUPPLY_WARD_INVENTED',
  // The room.
  'ROOM_IS_A_MEAN',
  'NEAR_FIELD_HIGHER',
  'ABOVE_ENRICHED_LIMIT',
  'REACHES_LIMIT',
  'STAYS_BELOW_LIMIT',
  'ASIDE_RUNNING',
  'NO_VENTILATION',
  'ROOM_DEFAULTS_ASSUMED',
  // Stock.
  'REORDER_NOW',
  'OUT_BEFORE_DELIVERY',
  'STOCK_FORMULA',
  'NO_USE_SEEN',
] as const

export type SupplyCode = (typeof SUPPLY_CODES)[number]

export interface SupplyRemark extends Partial<Provenance> {
  readonly code: SupplyCode
  readonly values: Readonly<Record<string, number | string>>
}

/** A remark with the values its text needs, and how its numbers are known where they are not ours. */
export function supplyRemark(
  code: SupplyCode,
  values: SupplyRemark['values'] = {},
  provenance: Partial<Provenance> = {},
): SupplyRemark {
  return { code, values, ...provenance }
}
