// Physical and physiological constants used in more than one place, each with unit and source. Leaves out what one model alone uses.

/** Oxygen in dry air, fraction. Standard atmosphere 0.20948 [USSA1976], rounded as in bedside arithmetic. Handbook tables that used 0.20, 0.209 or 0.21 pass their own value. */
export const AIR_O2_FRACTION = 0.2095

/** Carbon dioxide in dry outdoor air, fraction. [USSA1976] gives 0.000314; today's outdoor air is about 0.0004 (common practice). */
export const AIR_CO2_FRACTION = 0.0004

/** Standard atmosphere, kPa, by definition. */
export const STANDARD_PRESSURE_KPA = 101.325

/** Absolute zero on the Celsius scale, °C, by definition. */
export const ABSOLUTE_ZERO_C = -273.15

/** Body (core) temperature assumed unless measured, °C (common practice). */
export const BODY_TEMPERATURE_C = 37

/** Saturated water vapour pressure at 37 °C, kPa [IAPWS1997]; bedside texts round it to 47 mmHg = 6.266 kPa. */
export const BODY_WATER_VAPOUR_KPA = 6.282

/** Dry reference temperature of an oxygen flowmeter's scale, °C (common practice: 15 to 23 by maker, 20 usual). */
export const FLOWMETER_REFERENCE_TEMPERATURE_C = 20

/** Specific gas constant of water vapour, J/(kg·K) [IAPWS1997]. */
export const WATER_VAPOUR_GAS_CONSTANT = 461.5

/** Nominal pressure of a wall oxygen outlet, kPa gauge (common practice; national systems run 345 to 500). */
export const WALL_SUPPLY_GAUGE_KPA = 400

/** Barometric pressures the product accepts, kPa: about 5600 m up, down to the lowest dry land. */
export const BAROMETRIC_KPA_MIN = 50
export const BAROMETRIC_KPA_MAX = 107
