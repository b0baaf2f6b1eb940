// The pressure of the air where gas is used, and where it is known from. Leaves out the pressures of a way.
import { barometricPressureKpa } from '../../physics/atmosphere.ts'
import { STANDARD_PRESSURE_KPA } from '../../units/constants.ts'
import type { AirFrom } from '../../words/gas-cylinder-basis.ts'
import type { BedsideDraw } from './bedside-draw.ts'

export interface AirAround {
  readonly barometricKpa: number
  readonly from: AirFrom
}

/** By the altitude typed, else where the patient of Bedside is if that set-up is taken, else by the settings, else of sea level. */
export function airAround(given: {
  readonly typedAltitudeM: number | undefined
  readonly isBedsideTaken: boolean
  readonly bedside: BedsideDraw
  readonly siteAltitudeM: number | undefined
}): AirAround {
  const { typedAltitudeM, isBedsideTaken, bedside, siteAltitudeM } = given
  if (typedAltitudeM !== undefined)
    return { barometricKpa: barometricPressureKpa(typedAltitudeM), from: 'typed' }
  const bedsideKpa = bedside.kind === 'drawn' ? bedside.barometricKpa : undefined
  if (isBedsideTaken && bedsideKpa !== undefined)
    return { barometricKpa: bedsideKpa, from: 'bedside' }
  return siteAltitudeM === undefined
    ? { barometricKpa: STANDARD_PRESSURE_KPA, from: 'nowhere' }
    : { barometricKpa: barometricPressureKpa(siteAltitudeM), from: 'settings' }
}
