// Pressure along a tube against the exact laminar law, the smooth-tube law of Prandtl and a worked example by hand. Leaves out chains of parts.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { seeded } from '../../test/support/seed.ts'
import { frictionFactor, reynolds, tubePressureDropKpa } from './tube-flow.ts'

const SEA_LEVEL = { barometricKpa: 101.325, o2Fraction: 1 } as const

/** Prandtl's implicit law for smooth tubes: 1/√f = 2·log10(Re·√f) − 0.8, solved by repetition. */
function prandtl(re: number): number {
  let f = 0.03
  for (let i = 0; i < 60; i += 1) f = (2 * Math.log10(re * Math.sqrt(f)) - 0.8) ** -2
  return f
}

describe('pressure along a tube', () => {
  it('is 128·µ·L·Q/(π·d⁴) while the flow is laminar', () => {
    const drop = tubePressureDropKpa({ ...SEA_LEVEL, lengthM: 2, boreMm: 5, flowLpm: 3 })
    const exactPa = (128 * 20.4e-6 * 2 * (3 / 60_000)) / (Math.PI * 0.005 ** 4)
    expect(Math.abs(drop * 1000 - exactPa) / exactPa).toBeLessThan(0.002)
  })

  it('keeps within 3 % of the smooth-tube law of Prandtl from Re 4000 to 100 000', () => {
    const misses = [4000, 6000, 1e4, 2e4, 5e4, 1e5].map(
      (re) => Math.abs(frictionFactor(re) - prandtl(re)) / prandtl(re),
    )
    expect(Math.max(...misses)).toBeLessThan(0.03)
  })

  it('gives about 2.2 kPa for 15 L/min of oxygen in 2.1 m of 4.8 mm, as worked by hand', () => {
    // v 13.82 m/s, Re 4323, f 0.0390, L/d 437.5, ½ρv² 127 Pa: 2.17 kPa; less 1 % for expansion.
    const drop = tubePressureDropKpa({ ...SEA_LEVEL, lengthM: 2.1, boreMm: 4.8, flowLpm: 15 })
    expect(drop).toBeCloseTo(2.15, 1)
  })

  it('rises with flow and length and falls with bore', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 99, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 2, max: 24, noNaN: true }),
        (flowLpm, lengthM, boreMm) => {
          const drop = (more: object) =>
            tubePressureDropKpa({ ...SEA_LEVEL, flowLpm, lengthM, boreMm, ...more })
          expect(drop({ flowLpm: flowLpm * 1.1 })).toBeGreaterThan(drop({}))
          expect(drop({ lengthM: lengthM * 1.1 })).toBeGreaterThan(drop({}))
          expect(drop({ boreMm: boreMm * 1.1 })).toBeLessThan(drop({}))
        },
      ),
      seeded(300),
    )
  })

  it('is nothing without flow', () => {
    expect(tubePressureDropKpa({ ...SEA_LEVEL, lengthM: 2, boreMm: 5, flowLpm: 0 })).toBe(0)
    expect(reynolds({ boreMm: 5, flowLpm: 0, o2Fraction: 1 })).toBe(0)
  })

  it.each([
    ['lengthM', -1],
    ['boreMm', 0],
    ['flowLpm', Number.NaN],
    ['o2Fraction', 1.1],
    ['barometricKpa', 20],
    ['outletGaugeKpa', -1],
  ])('refuses a bad %s', (key, value) => {
    const good = { ...SEA_LEVEL, lengthM: 2, boreMm: 5, flowLpm: 3 }
    expect(() => tubePressureDropKpa({ ...good, [key]: value })).toThrow(DomainError)
  })
})
