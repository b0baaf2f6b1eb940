// The air pressure where a chain stands: as the case gives it, else at the altitude of the shelf, else at sea level, each stand-in said as assumed. Leaves out weather.
import type { Assumption } from '../humidity/assumptions.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Site } from '../patient/case.ts'
import { barometricPressureKpa } from '../physics/atmosphere.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'

export interface PlacePressure {
  readonly barometricKpa: number
  /** What stands in for a place that the case does not give; null where it does. */
  readonly assumed: Assumption | null
}

/** Pressure at a bed, kPa. A case's own pressure or altitude wins over the altitude of the shelf. */
export function placePressure(site: Site, { altitudeM }: Pick<Shelf, 'altitudeM'>): PlacePressure {
  if (site.barometricPressureKpa !== undefined)
    return { barometricKpa: site.barometricPressureKpa, assumed: null }
  if (site.altitudeM !== undefined)
    return { barometricKpa: barometricPressureKpa(site.altitudeM), assumed: null }
  const known = 'common-practice' as const
  if (altitudeM === undefined)
    return {
      barometricKpa: STANDARD_PRESSURE_KPA,
      assumed: { code: 'PLACE_AT_SEA_LEVEL', values: {}, known },
    }
  return {
    barometricKpa: barometricPressureKpa(altitudeM),
    assumed: { code: 'PLACE_OF_SHELF', values: { altitudeM }, known },
  }
}

/** The answer with what stands in for the place beside what else it rests on. */
export function restingOn<A extends { readonly assumptions: readonly Assumption[] }>(
  answer: A,
  { assumed }: PlacePressure,
): A {
  return assumed === null ? answer : { ...answer, assumptions: [assumed, ...answer.assumptions] }
}
