// Oxygen as a real gas against a second implementation of the published equation, and against the liquid and the virial coefficient.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  expectWithin,
  expectWithinRelative,
  numberIn,
  referenceRows,
} from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { kpaFromBar } from '../units/pressure.ts'
import { OXYGEN_TERMS } from './real-gas-oxygen-terms.ts'
import {
  equationUse,
  freeOxygenMolPerL,
  oxygenCompressibility,
  oxygenContentsLitres,
  oxygenDensityMolPerL,
  oxygenPressureAtKpa,
  oxygenPressureKpa,
} from './real-gas-oxygen.ts'

const absoluteKpa = (gaugeBar: number): number => kpaFromBar(gaugeBar) + STANDARD_PRESSURE_KPA
const GRAMS_PER_MOL = 31.9988

describe('real-gas oxygen', () => {
  it('uses the 32 published terms', () => {
    const rows = referenceRows('stewart-1991/coefficients.csv', ['n', 'd', 't', 'l'])
    expect(rows).toHaveLength(32)
    expect(OXYGEN_TERMS).toEqual(
      rows.map((row) => ({
        n: numberIn(row, 'n'),
        d: numberIn(row, 'd'),
        t: numberIn(row, 't'),
        l: numberIn(row, 'l'),
      })),
    )
  })

  it('gives the contents at 15 and 20 °C within 0.1 %, and Z within 0.0001', () => {
    const header = ['gauge_bar', 'temperature_c', 'z', 'litres_per_litre']
    const rows = referenceRows('stewart-1991/contents.csv', header)
    expect(rows).toHaveLength(18)
    const states = rows.map((row) => ({
      row,
      label: `${row['gauge_bar']} bar ${row['temperature_c']} °C`,
      state: {
        temperatureC: numberIn(row, 'temperature_c'),
        pressureKpa: absoluteKpa(numberIn(row, 'gauge_bar')),
      },
    }))
    expectWithinRelative(
      states.map(({ row, label, state }) => ({
        label,
        ours: oxygenContentsLitres(state),
        theirs: numberIn(row, 'litres_per_litre'),
      })),
      0.001,
    )
    expectWithin(
      states.map(({ row, label, state }) => ({
        label,
        ours: oxygenCompressibility(state),
        theirs: numberIn(row, 'z'),
      })),
      1e-4,
    )
  })

  it('gives what the gauge shows of the same filling at another temperature within 0.2 %', () => {
    const header = ['filled_gauge_bar', 'filled_c', 'read_c', 'read_gauge_bar']
    const rows = referenceRows('stewart-1991/gauge-temperature.csv', header)
    expect(rows).toHaveLength(10)
    expectWithinRelative(
      rows.map((row) => ({
        label: `${row['filled_gauge_bar']} bar read at ${row['read_c']} °C`,
        ours:
          (oxygenPressureAtKpa({
            temperatureC: numberIn(row, 'filled_c'),
            pressureKpa: absoluteKpa(numberIn(row, 'filled_gauge_bar')),
            atC: numberIn(row, 'read_c'),
          }) -
            STANDARD_PRESSURE_KPA) /
          kpaFromBar(1),
        theirs: numberIn(row, 'read_gauge_bar'),
      })),
      0.002,
    )
  })

  it('finds the liquid and the second virial coefficient where they are known', () => {
    // 1141.2 kg/m³ boils at 90.188 K and 101.325 kPa; the liquid is stiff, so the pressure is compared as the density it moves.
    const temperatureK = 90.188
    const densityMolPerL = 1141.2 / GRAMS_PER_MOL
    const p = (rho: number): number => oxygenPressureKpa({ temperatureK, densityMolPerL: rho })
    const slope = (p(densityMolPerL * 1.0001) - p(densityMolPerL)) / (densityMolPerL * 0.0001)
    const miss = (p(densityMolPerL) - STANDARD_PRESSURE_KPA) / slope / densityMolPerL
    expect(Math.abs(miss)).toBeLessThan(0.001)
    const rho = 0.001
    const z = oxygenPressureKpa({ temperatureK: 300, densityMolPerL: rho }) / (rho * 8.31434 * 300)
    expect(((z - 1) / rho) * 1000).toBeCloseTo(-15.5, 0)
  })

  it('is the ideal gas at zero pressure and rises with pressure', () => {
    expect(oxygenCompressibility({ temperatureC: 20, pressureKpa: 0 })).toBe(1)
    expect(oxygenDensityMolPerL({ temperatureC: 20, pressureKpa: 0 })).toBe(0)
    expect(oxygenCompressibility({ temperatureC: 20, pressureKpa: 1 })).toBeCloseTo(1, 4)
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 39_000, noNaN: true }),
        (temperatureC, pressureKpa) => {
          const densityMolPerL = oxygenDensityMolPerL({ temperatureC, pressureKpa })
          const more = oxygenDensityMolPerL({ temperatureC, pressureKpa: pressureKpa + 100 })
          expect(more).toBeGreaterThan(densityMolPerL)
          const back = oxygenPressureKpa({ temperatureK: temperatureC + 273.15, densityMolPerL })
          expect(back / pressureKpa).toBeCloseTo(1, 9)
        },
      ),
      seeded(100),
    )
  })

  it('marks what lies beyond the fit and refuses what lies beyond use', () => {
    expect(equationUse(27)).toBe('within-fit')
    expect(equationUse(27.1)).toBe('extrapolated')
    expect(freeOxygenMolPerL(15)).toBeGreaterThan(freeOxygenMolPerL(20))
    const at = (temperatureC: number, pressureKpa: number) => (): number =>
      oxygenDensityMolPerL({ temperatureC, pressureKpa })
    expect(at(51, 1000)).toThrow(DomainError)
    expect(at(-41, 1000)).toThrow(DomainError)
    expect(at(20, 40_001)).toThrow(DomainError)
    expect(at(20, -1)).toThrow(DomainError)
    expect(at(Number.NaN, 1000)).toThrow(DomainError)
    const heated = (): number =>
      oxygenPressureAtKpa({ temperatureC: -40, pressureKpa: 39_000, atC: 50 })
    expect(heated).toThrow(DomainError)
  })
})
