// What the water of a chain depends on and nobody has measured at this bed: each with its spread, source and code. Leaves out how it enters.
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'

export const PARAMETER_IDS = [
  'roomTemperatureC',
  'roomRelativeHumidityFraction',
  'bubbleSaturation',
  'bubbleHeatWPerK',
  'passOverSaturation',
  'heaterTemperatureC',
  'chamberErrorC',
  'nebuliserColdMgPerL',
  'nebuliserHeatedMgPerL',
  'collarSaturation',
  'hoseHeatWPerM2K',
  'heatedWallAboveC',
  'dropletLossShare',
  'exchangerMgPerL',
  'exchangerOverstatedMgPerL',
  'exchangerReturnShare',
  'labelFactor',
] as const
export type ParameterId = (typeof PARAMETER_IDS)[number]

/** One number for each, as used in one run. */
export type ParameterValues = Readonly<Record<ParameterId, number>>

/** Code under which an assumption is told. */
export type AssumptionCode =
  | 'ROOM_TEMPERATURE_ASSUMED'
  | 'ROOM_HUMIDITY_ASSUMED'
  | 'BUBBLE_OUTPUT_MEASURED_ON_OTHERS'
  | 'BUBBLE_WATER_COOLS'
  | 'PASS_OVER_OUTPUT_ASSUMED'
  | 'HEATER_SETTING_ASSUMED'
  | 'CHAMBER_REACHES_SETTING'
  | 'NEBULISER_WATER_FROM_MEMORY'
  | 'COLLAR_EFFECT_ASSUMED'
  | 'HOSE_HEAT_ASSUMED'
  | 'HEATED_WALL_ASSUMED'
  | 'DROPLET_LOSS_ASSUMED'
  | 'EXCHANGER_AS_MEASURED_ON_OTHERS'
  | 'EXCHANGER_LABEL_OVERSTATES'
  | 'EXCHANGER_RETURN_ASSUMED'
  | 'LABEL_OUTPUT_USED'

export interface Parameter extends Provenance {
  readonly code: AssumptionCode
  readonly spread: Spread
  readonly unit: string
}

const PRACTICE = { known: 'common-practice' } as const

export const PARAMETERS: Readonly<Record<ParameterId, Parameter>> = {
  /** Heated wards. */
  roomTemperatureC: {
    code: 'ROOM_TEMPERATURE_ASSUMED',
    spread: { kind: 'triangular', mode: 22, min: 18, max: 27 },
    unit: '°C',
    ...PRACTICE,
  },
  roomRelativeHumidityFraction: {
    code: 'ROOM_HUMIDITY_ASSUMED',
    spread: { kind: 'triangular', mode: 0.45, min: 0.2, max: 0.7 },
    unit: '1',
    ...PRACTICE,
  },
  /** Share of saturation at the temperature of the water. With the heat below it gives 18.8 mg/L at 2 L/min and 26 °C, the
   *  middle of four models; their 17.2–20.4 mg/L set the spread. */
  bubbleSaturation: {
    code: 'BUBBLE_OUTPUT_MEASURED_ON_OTHERS',
    spread: { kind: 'normal', mean: 0.866, sd: 0.06, min: 0.65, max: 1 },
    unit: '1',
    known: 'seen',
    source: 'BubbleBench1982',
  },
  /** Heat a bottle takes from the room: so that its water stands 2 °C below the room at 2 L/min and 6 °C at 8 L/min. */
  bubbleHeatWPerK: {
    code: 'BUBBLE_WATER_COOLS',
    spread: { kind: 'uniform', min: 0.5, max: 1.05 },
    unit: 'W/K',
    known: 'derived',
    source: 'BubbleBench1982',
  },
  passOverSaturation: {
    code: 'PASS_OVER_OUTPUT_ASSUMED',
    spread: { kind: 'uniform', min: 0.4, max: 0.9 },
    unit: '1',
    ...PRACTICE,
  },
  /** Dew points commonly set: 31, 34 or 37 °C. */
  heaterTemperatureC: {
    code: 'HEATER_SETTING_ASSUMED',
    spread: { kind: 'uniform', min: 31, max: 37 },
    unit: '°C',
    known: 'seen',
    source: 'Ni2023',
  },
  /** Dew point of the gas that leaves a chamber, against what is set: the ±1 mg/L of a bench, whatever the flow. */
  chamberErrorC: {
    code: 'CHAMBER_REACHES_SETTING',
    spread: { kind: 'normal', mean: 0, sd: 0.6, min: -2, max: 2 },
    unit: '°C',
    known: 'seen',
    source: 'Chan2009',
  },
  /** Vapour and droplets together, per litre of the whole stream. */
  nebuliserColdMgPerL: {
    code: 'NEBULISER_WATER_FROM_MEMORY',
    spread: { kind: 'uniform', min: 26, max: 35 },
    unit: 'mg/L',
    known: 'memory',
    source: 'Kacmarek2013',
  },
  nebuliserHeatedMgPerL: {
    code: 'NEBULISER_WATER_FROM_MEMORY',
    spread: { kind: 'uniform', min: 33, max: 55 },
    unit: 'mg/L',
    known: 'memory',
    source: 'Kacmarek2013',
  },
  /** How far the air drawn in through a collar comes from the room's humidity towards saturation. */
  collarSaturation: {
    code: 'COLLAR_EFFECT_ASSUMED',
    spread: { kind: 'uniform', min: 0.2, max: 1 },
    unit: '1',
    ...PRACTICE,
  },
  /** Free convection and radiation around a hose in a room, the inner film in series. */
  hoseHeatWPerM2K: {
    code: 'HOSE_HEAT_ASSUMED',
    spread: { kind: 'uniform', min: 4, max: 12 },
    unit: 'W/(m²·K)',
    ...PRACTICE,
  },
  /** A heated hose runs a little above the chamber. */
  heatedWallAboveC: {
    code: 'HEATED_WALL_ASSUMED',
    spread: { kind: 'uniform', min: 0, max: 3 },
    unit: '°C',
    ...PRACTICE,
  },
  dropletLossShare: {
    code: 'DROPLET_LOSS_ASSUMED',
    spread: { kind: 'uniform', min: 0.1, max: 0.6 },
    unit: '1',
    ...PRACTICE,
  },
  /** A third (34 %) of 71 exchangers gave more than 28 mg/L; the middle is what labels declare less what they overstate. */
  exchangerMgPerL: {
    code: 'EXCHANGER_AS_MEASURED_ON_OTHERS',
    spread: { kind: 'normal', mean: 26, sd: 4.85, min: 12, max: 40 },
    unit: 'mg/L',
    known: 'derived',
    source: 'ExchangerBench2025',
  },
  /** Declared less measured: median 6.0, middle half 3.8–8.7 mg/L. */
  exchangerOverstatedMgPerL: {
    code: 'EXCHANGER_LABEL_OVERSTATES',
    spread: { kind: 'normal', mean: 6, sd: 3.63, min: -3, max: 15 },
    unit: 'mg/L',
    known: 'seen',
    source: 'ExchangerBench2025',
  },
  /** Share of the breath that comes back through the exchanger where the cuff is not up. */
  exchangerReturnShare: {
    code: 'EXCHANGER_RETURN_ASSUMED',
    spread: { kind: 'uniform', min: 0.5, max: 1 },
    unit: '1',
    ...PRACTICE,
  },
  /** A label's figure, as far as it can be trusted. */
  labelFactor: {
    code: 'LABEL_OUTPUT_USED',
    spread: { kind: 'normal', mean: 1, sd: 0.1, min: 0.7, max: 1.1 },
    unit: '1',
    ...PRACTICE,
  },
}
