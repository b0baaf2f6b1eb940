// Water vapour against the industrial steam formulation and a general-purpose psychrometric library.
import { createRequire } from 'node:module'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithinRelative, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { BODY_WATER_VAPOUR_KPA } from '../units/constants.ts'
import {
  absoluteHumidityMgPerL,
  condensateMgPerL,
  relativeHumidityFraction,
  saturatedHumidityMgPerL,
  saturatedVapourPressureKpa,
  saturationTemperatureC,
} from './water-vapour.ts'

interface Psychrolib {
  readonly SI: number
  SetUnitSystem(system: number): void
  GetSatVapPres(temperatureC: number): number
}
// The library has no types; these are the three members used here.
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrolib

const rows = referenceRows('water-vapour/data.csv', [
  'temperature_c',
  'saturated_kpa',
  'saturated_mg_l',
])

function room(temperatureC: number): number {
  return absoluteHumidityMgPerL({ temperatureC, relativeHumidityFraction: 0.5 })
}

describe('water vapour', () => {
  it('agrees with the industrial steam formulation [IAPWS1997] within 0.1 % in pressure and 0.3 % in humidity', () => {
    expect(rows).toHaveLength(16)
    expectWithinRelative(
      rows.map((row) => ({
        label: `${row['temperature_c']} °C kPa`,
        ours: saturatedVapourPressureKpa(numberIn(row, 'temperature_c')),
        theirs: numberIn(row, 'saturated_kpa'),
      })),
      0.001,
    )
    expectWithinRelative(
      rows.map((row) => ({
        label: `${row['temperature_c']} °C mg/L`,
        ours: saturatedHumidityMgPerL(numberIn(row, 'temperature_c')),
        theirs: numberIn(row, 'saturated_mg_l'),
      })),
      0.003,
    )
  })

  it('agrees with psychrolib from 1 to 60 °C within 0.1 %', () => {
    psychrolib.SetUnitSystem(psychrolib.SI)
    const compared = Array.from({ length: 60 }, (_, i) => ({
      label: `${i + 1} °C`,
      ours: saturatedVapourPressureKpa(i + 1),
      theirs: psychrolib.GetSatVapPres(i + 1) / 1000,
    }))
    expectWithinRelative(compared, 0.001)
    expectWithinRelative(
      [{ label: 'body', ours: BODY_WATER_VAPOUR_KPA, theirs: psychrolib.GetSatVapPres(37) / 1000 }],
      0.0005,
    )
  })

  it('gives the room humidities and the 12 and 33 mg/L dew points of the handbooks', () => {
    // 20 °C/50 % 8.6, 22/50 9.7, 23/50 10.3, 25/50 11.5 mg/L; 12 mg/L saturates at 13.9 °C, 33 mg/L at 31.6 °C.
    expect(room(20)).toBeCloseTo(8.6, 1)
    expect(room(22)).toBeCloseTo(9.7, 1)
    expect(room(23)).toBeCloseTo(10.3, 1)
    expect(room(25)).toBeCloseTo(11.5, 1)
    expect(saturationTemperatureC(12)).toBeCloseTo(13.9, 1)
    expect(saturationTemperatureC(33)).toBeCloseTo(31.6, 1)
    expect(relativeHumidityFraction({ absoluteHumidityMgPerL: 33, temperatureC: 37 })).toBeCloseTo(
      0.75,
      2,
    )
  })

  it('gives the published condensate of cooling 37 °C gas', () => {
    // To 34/31/28/25/22 °C: 6.3/11.9/16.7/20.9/24.5 mg/L.
    for (const [toTemperatureC, lost] of [
      [34, 6.3],
      [31, 11.9],
      [28, 16.7],
      [25, 20.9],
      [22, 24.5],
    ] as const) {
      expect(
        Math.abs(condensateMgPerL({ fromTemperatureC: 37, toTemperatureC }) - lost),
      ).toBeLessThan(0.1)
    }
    expect(condensateMgPerL({ fromTemperatureC: 20, toTemperatureC: 37 })).toBe(0)
  })

  it('returns to the temperature it started from', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 59.999, noNaN: true }), (temperatureC) => {
        expect(saturationTemperatureC(saturatedHumidityMgPerL(temperatureC))).toBeCloseTo(
          temperatureC,
          8,
        )
      }),
      seeded(300),
    )
  })

  it('refuses what it does not cover', () => {
    expect(() => saturatedVapourPressureKpa(-1)).toThrow('TEMPERATURE_OUT_OF_RANGE')
    expect(() => saturatedVapourPressureKpa(61)).toThrow('TEMPERATURE_OUT_OF_RANGE')
    expect(() => saturatedVapourPressureKpa(Number.NaN)).toThrow('NOT_A_NUMBER')
    expect(() =>
      absoluteHumidityMgPerL({ temperatureC: 20, relativeHumidityFraction: 1.2 }),
    ).toThrow('HUMIDITY_OUT_OF_RANGE')
    expect(() => saturationTemperatureC(200)).toThrow('HUMIDITY_OUT_OF_RANGE')
    expect(() =>
      relativeHumidityFraction({ absoluteHumidityMgPerL: -1, temperatureC: 20 }),
    ).toThrow('HUMIDITY_OUT_OF_RANGE')
  })
})
