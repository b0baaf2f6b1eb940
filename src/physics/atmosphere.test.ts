// Barometric pressure against a general-purpose library and the published points of the two model atmospheres.
import { createRequire } from 'node:module'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { mmhgFromKpa } from '../units/pressure.ts'
import {
  ALTITUDE_M_MAX,
  ALTITUDE_M_MIN,
  barometricPressure,
  barometricPressureKpa,
  isaPressureKpa,
  requireBarometricKpa,
  westPressureKpa,
} from './atmosphere.ts'

interface Psychrolib {
  readonly SI: number
  SetUnitSystem(system: number): void
  GetStandardAtmPressure(altitudeM: number): number
}
// The library has no types; these are the three members used here.
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrolib

const rows = referenceRows('atmosphere/data.csv', ['altitude_m', 'isa_kpa', 'west_mmhg'])

describe('atmosphere', () => {
  it('agrees with psychrolib within 5 Pa and with the printed points of both models', () => {
    expect(rows).toHaveLength(13)
    psychrolib.SetUnitSystem(psychrolib.SI)
    expectWithin(
      Array.from({ length: 115 }, (_, i) => {
        const altitudeM = -400 + 100 * i
        return {
          label: `${altitudeM} m`,
          ours: isaPressureKpa(altitudeM),
          theirs: psychrolib.GetStandardAtmPressure(altitudeM) / 1000,
        }
      }),
      0.005,
    )
    const point = (column: string, ours: (altitudeM: number) => number) =>
      rows.map((row) => ({
        label: `${row['altitude_m']} m ${column}`,
        ours: ours(numberIn(row, 'altitude_m')),
        theirs: numberIn(row, column),
      }))
    expectWithin(point('isa_kpa', isaPressureKpa), 0.005)
    expectWithin(
      point('west_mmhg', (altitudeM) => mmhgFromKpa(westPressureKpa(altitudeM))),
      0.051,
    )
  })

  it('gives the accepted pressure on the highest summit within 0.5 mmHg', () => {
    expect(Math.abs(mmhgFromKpa(westPressureKpa(8848)) - 253)).toBeLessThan(0.5)
  })

  it('uses the standard atmosphere at sea level and West above', () => {
    expect(barometricPressure(0)).toEqual({ pressureKpa: 101.325, model: 'isa' })
    expect(barometricPressure(-400).model).toBe('isa')
    expect(barometricPressure(2240)).toEqual({ pressureKpa: westPressureKpa(2240), model: 'west' })
  })

  it('falls without a step and stays within the accepted pressures', () => {
    fc.assert(
      fc.property(
        fc.double({ min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX - 1, noNaN: true }),
        (altitudeM) => {
          const fall = barometricPressureKpa(altitudeM) - barometricPressureKpa(altitudeM + 1)
          expect(fall).toBeGreaterThan(0)
          expect(fall).toBeLessThan(0.015)
          expect(requireBarometricKpa(barometricPressureKpa(altitudeM))).toBeGreaterThan(50)
        },
      ),
      seeded(500),
    )
  })

  it('refuses chambers, space and nonsense', () => {
    expect(requireBarometricKpa(107)).toBe(107)
    expect(() => requireBarometricKpa(107.1)).toThrow(
      'HYPERBARIC_REFUSED barometricKpa 107.1 (50–107 kPa)',
    )
    expect(() => requireBarometricKpa(49.9, 'site.pressureKpa')).toThrow(
      'BAROMETRIC_PRESSURE_OUT_OF_RANGE site.pressureKpa',
    )
    expect(() => requireBarometricKpa(Number.NaN)).toThrow('NOT_A_NUMBER')
    expect(() => barometricPressure(5801)).toThrow('ALTITUDE_OUT_OF_RANGE')
    expect(() => barometricPressure(-451)).toThrow('ALTITUDE_OUT_OF_RANGE')
    expect(() => westPressureKpa(-1)).toThrow('ALTITUDE_OUT_OF_RANGE')
    expect(() => isaPressureKpa(12000)).toThrow('ALTITUDE_OUT_OF_RANGE')
  })
})
