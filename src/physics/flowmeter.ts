// What really flows when a flowmeter shows a number: tube, dial and electronic meters under altitude, supply pressure, temperature and back-pressure. Leaves out wrong gas and tilted tubes.
import { requireWithin } from '../errors.ts'
import {
  FLOWMETER_REFERENCE_TEMPERATURE_C,
  STANDARD_PRESSURE_KPA,
  WALL_SUPPLY_GAUGE_KPA,
} from '../units/constants.ts'
import { kelvinFromC } from '../units/temperature.ts'
import { requireBarometricKpa } from './atmosphere.ts'

/**
 * tube-compensated: valve after the tube, which stands at supply pressure. tube-uncompensated: valve before the
 * tube, which stands at ambient plus back-pressure. dial: a row of fixed orifices. electronic: measures mass flow.
 */
export type FlowmeterKind = 'tube-compensated' | 'tube-uncompensated' | 'dial' | 'electronic'

export const FLOWMETER_KINDS = [
  'tube-compensated',
  'tube-uncompensated',
  'dial',
  'electronic',
] as const satisfies readonly FlowmeterKind[]

export interface FlowmeterReading {
  readonly kind: FlowmeterKind
  /** As read on the scale: dry litres at 20 °C and 101.325 kPa per minute. */
  readonly indicatedFlowLpm: number
  readonly barometricKpa: number
  /** Pressure before the meter, gauge. */
  readonly supplyGaugeKpa?: number
  /** Supply pressure for which the scale was made, gauge. */
  readonly calibrationGaugeKpa?: number
  /** Pressure after the meter above ambient, from a bubble bottle, a jet or a long hose. */
  readonly backPressureKpa?: number
  readonly gasTemperatureC?: number
}

/** Below this a tube meter is ruled by viscosity, not density, and its correction is doubtful, L/min (common practice). */
export const TURBULENT_FLOW_LPM_MIN = 1

/** Ratio of specific heats of a diatomic gas, 1, and the downstream/upstream pressure ratio below which an orifice is sonic: exact for it. */
const HEAT_RATIO = 1.4
const CRITICAL_PRESSURE_RATIO = (2 / (HEAT_RATIO + 1)) ** (HEAT_RATIO / (HEAT_RATIO - 1))

/** Pressures accepted, kPa. */
const SUPPLY_GAUGE_KPA_MIN = 100
const SUPPLY_GAUGE_KPA_MAX = 1400
const BACK_PRESSURE_KPA_MAX = 150
const GAS_TEMPERATURE_C_MIN = -20
const GAS_TEMPERATURE_C_MAX = 50
const INDICATED_LPM_MAX = 150

/** Flow that really leaves, in the scale's own litres (dry, 20 °C, 101.325 kPa). Tubes: reading × √(density in the
 *  tube / density at calibration). Dial: reading × upstream pressure ratio while sonic, the isentropic nozzle law
 *  below that. Electronic: the reading. Source: textbook square-root law, checked by arithmetic
 *  (test/reference/flowmeter); tubes are doubtful below 1 L/min: see flowmeterCautions.
 *  Valid 50–107 kPa, supply 100–1400 kPa gauge, back-pressure 0–150 kPa, −20–50 °C, reading 0–150 L/min. */
export function standardFlowLpm(reading: FlowmeterReading): number {
  return reading.indicatedFlowLpm * standardFlowFactor(reading)
}

/** True standard flow per indicated flow. See standardFlowLpm. */
export function standardFlowFactor(reading: FlowmeterReading): number {
  const place = checkedPlace(reading)
  const warmth = kelvinFromC(FLOWMETER_REFERENCE_TEMPERATURE_C) / kelvinFromC(place.gasTemperatureC)
  switch (reading.kind) {
    case 'tube-compensated':
      return Math.sqrt((place.supplyAbsoluteKpa / place.calibrationAbsoluteKpa) * warmth)
    case 'tube-uncompensated':
      return Math.sqrt((place.outletAbsoluteKpa / STANDARD_PRESSURE_KPA) * warmth)
    case 'dial':
      return (
        (place.supplyAbsoluteKpa / place.calibrationAbsoluteKpa) *
        Math.sqrt(warmth) *
        chokedShare(place.outletAbsoluteKpa / place.supplyAbsoluteKpa)
      )
    case 'electronic':
      return 1
  }
}

/** Flow of dry gas at room temperature and barometric pressure per indicated flow. See standardFlowLpm. */
export function ambientFlowFactor(reading: FlowmeterReading): number {
  const roomK = kelvinFromC(reading.gasTemperatureC ?? FLOWMETER_REFERENCE_TEMPERATURE_C)
  const expansion =
    (STANDARD_PRESSURE_KPA / reading.barometricKpa) *
    (roomK / kelvinFromC(FLOWMETER_REFERENCE_TEMPERATURE_C))
  return standardFlowFactor(reading) * expansion
}

export type FlowmeterCaution =
  | 'BELOW_TURBULENT_RANGE'
  | 'BACK_PRESSURE_READS_LOW'
  | 'DIAL_NOT_SONIC'

/** Reasons to doubt a reading, as codes. */
export function flowmeterCautions(reading: FlowmeterReading): readonly FlowmeterCaution[] {
  const place = checkedPlace(reading)
  const cautions: FlowmeterCaution[] = []
  const tube = reading.kind === 'tube-compensated' || reading.kind === 'tube-uncompensated'
  if (tube && reading.indicatedFlowLpm < TURBULENT_FLOW_LPM_MIN)
    cautions.push('BELOW_TURBULENT_RANGE')
  if (reading.kind === 'tube-uncompensated' && (reading.backPressureKpa ?? 0) > 0) {
    cautions.push('BACK_PRESSURE_READS_LOW')
  }
  const sonic = place.outletAbsoluteKpa / place.supplyAbsoluteKpa <= CRITICAL_PRESSURE_RATIO
  if (reading.kind === 'dial' && !sonic) cautions.push('DIAL_NOT_SONIC')
  return cautions
}

/** Isentropic nozzle flow as a share of sonic flow at the same upstream state; 1 below the critical ratio, 0 without a pressure drop. */
function chokedShare(pressureRatio: number): number {
  if (pressureRatio <= CRITICAL_PRESSURE_RATIO) return 1
  if (pressureRatio >= 1) return 0
  return nozzleFunction(pressureRatio) / nozzleFunction(CRITICAL_PRESSURE_RATIO)
}

function nozzleFunction(pressureRatio: number): number {
  return Math.sqrt(
    pressureRatio ** (2 / HEAT_RATIO) - pressureRatio ** ((HEAT_RATIO + 1) / HEAT_RATIO),
  )
}

function checkedPlace(reading: FlowmeterReading): {
  readonly supplyAbsoluteKpa: number
  readonly calibrationAbsoluteKpa: number
  readonly outletAbsoluteKpa: number
  readonly gasTemperatureC: number
} {
  const supplyGaugeKpa = reading.supplyGaugeKpa ?? WALL_SUPPLY_GAUGE_KPA
  const calibrationGaugeKpa = reading.calibrationGaugeKpa ?? WALL_SUPPLY_GAUGE_KPA
  const backPressureKpa = reading.backPressureKpa ?? 0
  const gasTemperatureC = reading.gasTemperatureC ?? FLOWMETER_REFERENCE_TEMPERATURE_C
  requireBarometricKpa(reading.barometricKpa)
  requireIndicated(reading.indicatedFlowLpm)
  requirePressure('supplyGaugeKpa', supplyGaugeKpa, SUPPLY_GAUGE_KPA_MIN, SUPPLY_GAUGE_KPA_MAX)
  requirePressure(
    'calibrationGaugeKpa',
    calibrationGaugeKpa,
    SUPPLY_GAUGE_KPA_MIN,
    SUPPLY_GAUGE_KPA_MAX,
  )
  requirePressure('backPressureKpa', backPressureKpa, 0, BACK_PRESSURE_KPA_MAX)
  requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'gasTemperatureC',
    value: gasTemperatureC,
    min: GAS_TEMPERATURE_C_MIN,
    max: GAS_TEMPERATURE_C_MAX,
    unit: '°C',
  })
  return {
    supplyAbsoluteKpa: supplyGaugeKpa + reading.barometricKpa,
    calibrationAbsoluteKpa: calibrationGaugeKpa + STANDARD_PRESSURE_KPA,
    outletAbsoluteKpa: backPressureKpa + reading.barometricKpa,
    gasTemperatureC,
  }
}

function requireIndicated(indicatedFlowLpm: number): void {
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'indicatedFlowLpm',
    value: indicatedFlowLpm,
    min: 0,
    max: INDICATED_LPM_MAX,
    unit: 'L/min',
  })
}

function requirePressure(path: string, value: number, min: number, max: number): void {
  requireWithin({ code: 'PRESSURE_OUT_OF_RANGE', path, value, min, max, unit: 'kPa' })
}
