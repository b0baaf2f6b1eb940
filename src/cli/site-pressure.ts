// The barometric pressure of a case's site: as typed, else by altitude, else at sea level. Leaves out its spread, which plans carry.
import type { Site } from '../patient/case.ts'
import { barometricPressureKpa } from '../physics/atmosphere.ts'

export function siteKpa(site: Site): number {
  return site.barometricPressureKpa ?? barometricPressureKpa(site.altitudeM ?? 0)
}
