// Picks the quantity a source measured out of a steady breath. Leaves out time within the breath.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import { arterialFromInspired, gasExchange } from '../physiology/shunt-shift.ts'
import { AIR_O2_FRACTION, STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { kpaFromMmhg } from '../units/pressure.ts'
import { assert } from '../errors.ts'
import { runEffective, runEngine } from './engine-case.ts'
import type { EngineCase } from './engine-case.ts'
import type { Quantity } from './evidence-row.ts'

/** Value of the quantity for a case. */
export function quantityIn(engine: EngineCase, quantity: Quantity): number {
  return quantity === 'effective' ? runEffective(engine) : quantityOf(quantity, runEngine(engine))
}

/** Value of the quantity in the unit of the row. Quantities that no breath holds are a bug. */
export function quantityOf(quantity: Quantity, breath: DeliveredBreath): number {
  switch (quantity) {
    case 'effective':
      return breath.effectiveO2Fraction
    case 'opening':
      return breath.openingO2Fraction
    case 'trachea':
      return breath.tracheaO2Fraction
    case 'pharynx':
      return (breath.openingO2Fraction + breath.tracheaO2Fraction) / 2
    case 'in-mask':
      return breath.pocketO2Fraction
    case 'end-expired':
      return breath.alveolarO2Fraction
    case 'air-share':
      return (1 - breath.effectiveO2Fraction) / (1 - AIR_O2_FRACTION)
    case 'inspired-co2':
      return breath.inspiredCo2Fraction
    case 'fresh-ventilation':
      return breath.alveolarVentilationLpm
    case 'demand-margin':
      return breath.demandMarginLpm
    case 'lowest-bag':
      assert(breath.lowestBagL !== null, 'lowest bag asked of a set-up with a bag')
      return breath.lowestBagL
    case 'arterial-po2-rise':
      return healthyPo2Kpa(breath.effectiveO2Fraction) - healthyPo2Kpa(AIR_O2_FRACTION)
    default:
      assert(false, 'quantity of a steady breath')
  }
}

/** Arterial PO2 of a healthy adult breathing a constant fraction at sea level, kPa. */
function healthyPo2Kpa(inspiredO2Fraction: number): number {
  const gas = {
    inspiredO2Fraction,
    barometricKpa: STANDARD_PRESSURE_KPA,
    arterialPco2Kpa: kpaFromMmhg(HEALTHY.pco2Mmhg),
  }
  const lung = gasExchange({
    shuntFraction: HEALTHY.shuntFraction,
    extraShiftKpa: 0,
    o2UptakeMlPerMin: HEALTHY.uptakeMlPerMin,
    cardiacOutputLpm: HEALTHY.outputLpm,
    haemoglobinGPerDl: HEALTHY.haemoglobinGPerDl,
  })
  return arterialFromInspired(lung, gas).arterialPo2Kpa
}

/** Healthy adult at rest: shunt 2 %, uptake 250 mL/min, output 5 L/min, Hb 14 g/dL, PaCO2 40 mmHg (common practice). */
const HEALTHY = {
  shuntFraction: 0.02,
  uptakeMlPerMin: 250,
  outputLpm: 5,
  haemoglobinGPerDl: 14,
  pco2Mmhg: 40,
} as const
