// Barometric pressure by altitude: two published model atmospheres and which one we use where people live. Leaves out weather (about ±3 kPa) and season.
import { outOfRange, requireWithin } from '../errors.ts'
import {
  BAROMETRIC_KPA_MAX,
  BAROMETRIC_KPA_MIN,
  STANDARD_PRESSURE_KPA,
} from '../units/constants.ts'
import { kpaFromMmhg } from '../units/pressure.ts'

/** Standard atmosphere, troposphere [ISO1975]: sea-level temperature K, lapse rate K/m, exponent g/(R·lapse). */
const ISA_TEMPERATURE_K = 288.15
const ISA_LAPSE_K_PER_M = 0.0065
const ISA_EXPONENT = 5.2559
const ISA_ALTITUDE_M_MIN = -500
const ISA_ALTITUDE_M_MAX = 11000

/** ln mmHg = 6.63268 − 0.1112·h − 0.00149·h², h in km [West1996]. */
const WEST_CONSTANT = 6.63268
const WEST_LINEAR_PER_KM = 0.1112
const WEST_SQUARE_PER_KM2 = 0.00149
const WEST_ALTITUDE_M_MIN = 0
const WEST_ALTITUDE_M_MAX = 9000
const M_PER_KM = 1000

/** Altitudes the product accepts, m: below the lowest dry land, and up to where pressure nears 50 kPa. */
export const ALTITUDE_M_MIN = -450
export const ALTITUDE_M_MAX = 5800

export type AtmosphereModel = 'isa' | 'west'

/** Standard atmosphere: 101.325·(1 − 0.0065·h/288.15)^5.2559 kPa. Valid −500–11000 m, else ALTITUDE_OUT_OF_RANGE.
 *  Source: [ISO1975]. Within 5 Pa of psychrolib (atmosphere.test.ts). */
export function isaPressureKpa(altitudeM: number): number {
  requireAltitude(altitudeM, ISA_ALTITUDE_M_MIN, ISA_ALTITUDE_M_MAX)
  return (
    STANDARD_PRESSURE_KPA *
    (1 - (ISA_LAPSE_K_PER_M * altitudeM) / ISA_TEMPERATURE_K) ** ISA_EXPONENT
  )
}

/** Model atmosphere of high inhabited and climbed places (warmer air near the equator): exp(6.63268 − 0.1112h −
 *  0.00149h²) mmHg, h in km. Valid 0–9000 m, else ALTITUDE_OUT_OF_RANGE. Source: [West1996], from memory;
 *  gives 252.7 mmHg at 8848 m against the accepted 253 (atmosphere.test.ts). */
export function westPressureKpa(altitudeM: number): number {
  requireAltitude(altitudeM, WEST_ALTITUDE_M_MIN, WEST_ALTITUDE_M_MAX)
  const h = altitudeM / M_PER_KM
  return kpaFromMmhg(Math.exp(WEST_CONSTANT - WEST_LINEAR_PER_KM * h - WEST_SQUARE_PER_KM2 * h * h))
}

/** Barometric pressure where people live, and the model it came from: the larger of the two models, which is the
 *  standard atmosphere up to about 90 m and below the sea, and West's above. The standard atmosphere reads
 *  up to 4 % low at high inhabited places. Valid −450–5800 m, where it stays within 50–107 kPa. */
export function barometricPressure(altitudeM: number): {
  readonly pressureKpa: number
  readonly model: AtmosphereModel
} {
  requireAltitude(altitudeM, ALTITUDE_M_MIN, ALTITUDE_M_MAX)
  const isaKpa = isaPressureKpa(altitudeM)
  const westKpa = altitudeM < WEST_ALTITUDE_M_MIN ? 0 : westPressureKpa(altitudeM)
  return westKpa > isaKpa
    ? { pressureKpa: westKpa, model: 'west' }
    : { pressureKpa: isaKpa, model: 'isa' }
}

/** barometricPressure without the model's name. */
export function barometricPressureKpa(altitudeM: number): number {
  return barometricPressure(altitudeM).pressureKpa
}

/** A given barometric pressure, unchanged, if the product accepts it: 50–107 kPa. Above: HYPERBARIC_REFUSED;
 *  below: BAROMETRIC_PRESSURE_OUT_OF_RANGE. */
export function requireBarometricKpa(pressureKpa: number, path = 'barometricKpa'): number {
  const bounds = {
    path,
    value: pressureKpa,
    min: BAROMETRIC_KPA_MIN,
    max: BAROMETRIC_KPA_MAX,
    unit: 'kPa',
  }
  const code =
    pressureKpa > BAROMETRIC_KPA_MAX ? 'HYPERBARIC_REFUSED' : 'BAROMETRIC_PRESSURE_OUT_OF_RANGE'
  return requireWithin({ ...bounds, code })
}

function requireAltitude(altitudeM: number, min: number, max: number): void {
  if (altitudeM >= min && altitudeM <= max) return
  throw outOfRange({
    code: 'ALTITUDE_OUT_OF_RANGE',
    path: 'altitudeM',
    value: altitudeM,
    min,
    max,
    unit: 'm',
  })
}
