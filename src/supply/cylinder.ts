// One oxygen cylinder by water volume and gauge: what is in it and what can be used. Leaves out letters of sizes, which differ between countries.
import { requireWithin } from '../errors.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import {
  equationUse,
  freeOxygenMolPerL,
  oxygenDensityMolPerL,
  type EquationUse,
} from '../physics/real-gas-oxygen.ts'
import { FLOWMETER_REFERENCE_TEMPERATURE_C } from '../units/constants.ts'

export interface Cylinder {
  readonly waterVolumeL: number
  readonly gaugeKpa: number
  /** Of the gas when the gauge was read. */
  readonly readAtC: number
  readonly isValveOpen: boolean
  /** The ward's own marking, read by nobody. */
  readonly marking?: string
}

export interface CylinderUse {
  readonly barometricKpa: number
  /** Of the gas while it is used; as when read where absent. A cylinder filled warm and used cold gives less. */
  readonly usedAtC?: number
  /** Gauge pressure left in the cylinder on purpose. */
  readonly leftGaugeKpa: number
  /** Below this the regulator no longer keeps its flow; 0 where absent. */
  readonly regulatorMinimumGaugeKpa?: number
  /** How far the gauge may read wrong, either way; 0 where absent. */
  readonly gaugeErrorKpa?: number
  /** Temperature at which the litres of the flow are counted; the flowmeter's 20 °C where absent. */
  readonly litresAtC?: number
}

export interface UsableContents {
  readonly usableL: number
  /** With the gauge wrong on the unsafe and on the safe side. */
  readonly usableLowL: number
  readonly usableHighL: number
  readonly equation: EquationUse
  /** Why nothing can be used, where nothing can. */
  readonly nothing: 'VALVE_CLOSED' | 'AT_OR_BELOW_FLOOR' | null
}

const WATER_VOLUME_L_MIN = 0.1
const WATER_VOLUME_L_MAX = 150
const GAUGE_KPA_MAX = 35_000

/** Litres that leave before the floor (the larger of what is left and the regulator's minimum): V·(ρ(read) − ρ(floor at use))/ρ(free).
 *  A closed valve gives 0. Valid 0.1–150 L, gauge 0–35 000 kPa, −40–50 °C (above 27 °C marked extrapolated), else DomainError.
 *  Source: [Stewart1991]; worked examples in cylinder.test.ts within 0.3 %. */
export function usableContents(cylinder: Cylinder, use: CylinderUse): UsableContents {
  requireCylinder(cylinder)
  requireBarometricKpa(use.barometricKpa)
  const usedAtC = use.usedAtC ?? cylinder.readAtC
  const floorKpa = Math.max(
    requireGauge('leftGaugeKpa', use.leftGaugeKpa),
    requireGauge('regulatorMinimumGaugeKpa', use.regulatorMinimumGaugeKpa ?? 0),
  )
  const errorKpa = requireGauge('gaugeErrorKpa', use.gaugeErrorKpa ?? 0)
  const leavingL = (gaugeKpa: number): number => {
    const heldMolPerL = density(Math.max(0, gaugeKpa) + use.barometricKpa, cylinder.readAtC)
    const leftMolPerL = density(floorKpa + use.barometricKpa, usedAtC)
    const freeMolPerL = freeOxygenMolPerL(use.litresAtC ?? FLOWMETER_REFERENCE_TEMPERATURE_C)
    // Gas below the floor does not flow back in: nothing leaves, and `nothing` says so.
    return (cylinder.waterVolumeL * Math.max(0, heldMolPerL - leftMolPerL)) / freeMolPerL
  }
  const equation = equationUse(Math.max(usedAtC, cylinder.readAtC))
  if (!cylinder.isValveOpen)
    return { usableL: 0, usableLowL: 0, usableHighL: 0, equation, nothing: 'VALVE_CLOSED' }
  const usableL = leavingL(cylinder.gaugeKpa)
  return {
    usableL,
    usableLowL: leavingL(cylinder.gaugeKpa - errorKpa),
    usableHighL: leavingL(cylinder.gaugeKpa + errorKpa),
    equation,
    nothing: usableL > 0 ? null : 'AT_OR_BELOW_FLOOR',
  }
}

function density(pressureKpa: number, temperatureC: number): number {
  return oxygenDensityMolPerL({ pressureKpa, temperatureC })
}

function requireCylinder(cylinder: Cylinder): void {
  requireWithin({
    code: 'VOLUME_OUT_OF_RANGE',
    path: 'waterVolumeL',
    value: cylinder.waterVolumeL,
    min: WATER_VOLUME_L_MIN,
    max: WATER_VOLUME_L_MAX,
    unit: 'L',
  })
  requireGauge('gaugeKpa', cylinder.gaugeKpa)
}

function requireGauge(path: string, value: number): number {
  const bounds = { path, value, min: 0, max: GAUGE_KPA_MAX, unit: 'kPa' }
  return requireWithin({ ...bounds, code: 'PRESSURE_OUT_OF_RANGE' })
}
