// Barometric pressure at the bed as a spread: measured, from the altitude, or sea level said loudly. Leaves out the hour's weather.
import { barometricPressure } from '../physics/atmosphere.ts'
import {
  BAROMETRIC_KPA_MAX,
  BAROMETRIC_KPA_MIN,
  STANDARD_PRESSURE_KPA,
} from '../units/constants.ts'
import { fixed } from '../units/spread.ts'
import type { Case } from './case.ts'
import { around, assumed, typed, type PatientSpread } from './patient-spread.ts'

/** A barometer's error, and weather at a place (about ±3 kPa at most), kPa (common practice). */
const BAROMETER_SD_KPA = 0.1
const WEATHER_SD_KPA = 1

export function pressureSpread(about: Case): PatientSpread {
  const { altitudeM, barometricPressureKpa } = about.site
  const limits = { min: BAROMETRIC_KPA_MIN, max: BAROMETRIC_KPA_MAX }
  if (barometricPressureKpa !== undefined) {
    return typed(around({ value: barometricPressureKpa, sd: BAROMETER_SD_KPA, ...limits }))
  }
  if (altitudeM === undefined) {
    const spread = fixed(STANDARD_PRESSURE_KPA)
    return assumed({ spread, known: 'common-practice', code: 'SEA_LEVEL_ASSUMED' })
  }
  const { pressureKpa, model } = barometricPressure(altitudeM)
  const source = model === 'west' ? 'West1996' : 'ISO2533'
  return assumed({
    spread: around({ value: pressureKpa, sd: WEATHER_SD_KPA, ...limits }),
    known: 'memory',
    source,
    code: 'PRESSURE_FROM_ALTITUDE',
  })
}
