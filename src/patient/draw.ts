// One whole patient as a draw: body and breath, then blood and lungs, from one stream of numbers. Leaves out the interface and readings.
import { assumePatient } from './assume.ts'
import type { Case } from './case.ts'
import { BODY_DIMENSIONS, drawBody, type BodyDraw } from './draw-body.ts'
import { gasSampler, GAS_DIMENSIONS, lungOf, type GasDraw } from './draw-gas.ts'
import type { GasExchange } from '../physiology/shunt-shift.ts'
import { medianOf } from '../units/spread.ts'

/** How many numbers a whole draw takes: body first, gas exchange after. */
export const PATIENT_DIMENSIONS = BODY_DIMENSIONS.length + GAS_DIMENSIONS.length

export interface PatientDraw extends BodyDraw {
  readonly gas: GasDraw
  readonly lung: GasExchange
  readonly barometricPressureKpa: number
}

/** One patient; u(i) in (0, 1) for i below PATIENT_DIMENSIONS. The barometer stands at its middle: weather is the same for all. */
export function drawPatient(about: Case, u: (index: number) => number): PatientDraw {
  const spreads = assumePatient(about)
  const gas = gasSampler(spreads)((index) => u(BODY_DIMENSIONS.length + index))
  const barometricPressureKpa = medianOf(spreads.values.barometricPressureKpa.spread)
  return { ...drawBody(about, u), gas, lung: lungOf(gas), barometricPressureKpa }
}

/** The middle patient: every number at one half. */
export function middlePatient(about: Case): PatientDraw {
  return drawPatient(about, () => 1 / 2)
}
