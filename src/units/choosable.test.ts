// Every unit a reader may choose against its exact definition, and there and back again.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import {
  CHOOSABLE_QUANTITIES,
  CHOOSABLE_UNITS,
  fromInside,
  INSIDE_UNITS,
  toInside,
  USUAL_UNITS,
} from './choosable.ts'
import type { ChoosableUnit } from './choosable.ts'

/** One of each in the unit inside: the defined factors [UCUM2024], foot and inch from 0.3048 m, pound from 0.45359237 kg and 9.80665 m/s². */
const DEFINED: Readonly<Record<ChoosableUnit, number>> = {
  kPa: 1,
  mmHg: 0.133322387415,
  Torr: 101.325 / 760,
  bar: 100,
  psi: (0.45359237 * 9.80665) / (0.0254 * 0.0254) / 1000,
  cm: 1,
  in: 2.54,
  kg: 1,
  lb: 0.45359237,
  L: 1,
  'ft³': 3.048 ** 3,
}
const UNITS = [...new Set(CHOOSABLE_QUANTITIES.flatMap((quantity) => CHOOSABLE_UNITS[quantity]))]

describe('units a reader may choose', () => {
  it('are as many as are defined', () => {
    expect(UNITS.toSorted()).toEqual(Object.keys(DEFINED).toSorted())
  })

  it.each(UNITS)('%s has the defined size', (unit) => {
    expect(toInside(1, unit) / DEFINED[unit]).toBeCloseTo(1, 14)
    expect(fromInside(DEFINED[unit], unit)).toBeCloseTo(1, 14)
  })

  it.each(UNITS)('%s there and back gives the same number', (unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const back = fromInside(toInside(value, unit), unit)
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)))
      }),
      seeded(200),
    )
  })

  it('count the unit inside and the usual one among each quantity’s units', () => {
    for (const quantity of CHOOSABLE_QUANTITIES) {
      expect(CHOOSABLE_UNITS[quantity]).toContain(INSIDE_UNITS[quantity])
      expect(CHOOSABLE_UNITS[quantity][0]).toBe(USUAL_UNITS[quantity])
    }
  })
})
