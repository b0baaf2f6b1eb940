// Which air pressure a chain and its water are worked out at, and what is said where it is assumed. Leaves out the pressure law itself.
import { describe, expect, it } from 'vitest'
import { placePressure, restingOn } from './place-pressure.ts'

describe('the pressure of the place', () => {
  // ISO 2533 gives 87.9 kPa at 1 180 m to the next 0.05 kPa, and West's law 88.8 kPa.
  const SHELF = { altitudeM: 1180 }

  it('is the one the case gives, and nothing is assumed', () => {
    const site = { barometricPressureKpa: 95 }
    expect(placePressure(site, SHELF)).toEqual({ barometricKpa: 95, assumed: null })
    const high = placePressure({ altitudeM: 1180 }, {})
    expect(high.assumed).toBeNull()
    expect(high.barometricKpa).toBeGreaterThan(87.8)
    expect(high.barometricKpa).toBeLessThan(88.9)
  })

  it('is that of the shelf where the case gives none, and said as assumed', () => {
    const { barometricKpa, assumed } = placePressure({}, SHELF)
    expect(barometricKpa).toBe(placePressure({ altitudeM: 1180 }, {}).barometricKpa)
    expect(assumed).toMatchObject({ code: 'PLACE_OF_SHELF', values: { altitudeM: 1180 } })
  })

  it('is sea level where neither gives one, and said as assumed', () => {
    const place = placePressure({}, {})
    expect(place.barometricKpa).toBe(101.325)
    expect(restingOn({ assumptions: [] }, place).assumptions).toEqual([
      { code: 'PLACE_AT_SEA_LEVEL', values: {}, known: 'common-practice' },
    ])
  })
})
