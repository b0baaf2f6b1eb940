// Water per body litre against a general-purpose psychrometric library, over temperature and pressure.
import { createRequire } from 'node:module'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithinRelative } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { absoluteHumidityMgPerL } from '../physics/water-vapour.ts'
import {
  dewPointC,
  perBodyLitreMg,
  perOwnLitreMg,
  roomMgPerLBtps,
  saturatedMgPerLBtps,
} from './body-litre.ts'

interface Psychrolib {
  readonly SI: number
  SetUnitSystem(system: number): void
  GetHumRatioFromRelHum(temperatureC: number, relative: number, pressurePa: number): number
  GetTDewPointFromHumRatio(temperatureC: number, ratio: number, pressurePa: number): number
}
// The library has no types; these are the members used here.
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrolib
psychrolib.SetUnitSystem(psychrolib.SI)

const PRESSURES_KPA = [54, 62, 70, 80, 87.9, 101.325, 106]
const TEMPERATURES_C = Array.from({ length: 45 }, (_, i) => i + 1)

/** Dry air in one body litre, mg: molar mass 28.966 g/mol. */
function dryAirMg(barometricKpa: number): number {
  return ((barometricKpa - 6.282) / (8.314462618 * 310.15)) * 28.966 * 1000
}

const place = fc.record({
  temperatureC: fc.double({ min: 0, max: 60, noNaN: true }),
  barometricKpa: fc.double({ min: 50, max: 107, noNaN: true }),
})

describe('water per body litre', () => {
  it('agrees with psychrolib over 1–45 °C, 54–106 kPa and five relative humidities within 0.2 %', () => {
    const compared = PRESSURES_KPA.flatMap((barometricKpa) =>
      TEMPERATURES_C.flatMap((temperatureC) =>
        [0.1, 0.3, 0.5, 0.8, 1].map((relativeHumidityFraction) => ({
          label: `${temperatureC} °C ${relativeHumidityFraction} ${barometricKpa} kPa`,
          ours: roomMgPerLBtps({ temperatureC, relativeHumidityFraction, barometricKpa }),
          theirs:
            psychrolib.GetHumRatioFromRelHum(
              temperatureC,
              relativeHumidityFraction,
              barometricKpa * 1000,
            ) * dryAirMg(barometricKpa),
        })),
      ),
    )
    expect(compared).toHaveLength(7 * 45 * 5)
    expectWithinRelative(compared, 0.002)
  })

  it('finds the dew point that psychrolib finds, within 0.1 °C', () => {
    for (const barometricKpa of PRESSURES_KPA) {
      for (const temperatureC of [10, 20, 30, 40]) {
        const vapourMgPerLBtps = roomMgPerLBtps({
          temperatureC,
          relativeHumidityFraction: 0.6,
          barometricKpa,
        })
        const ratio = vapourMgPerLBtps / dryAirMg(barometricKpa)
        const theirs = psychrolib.GetTDewPointFromHumRatio(
          temperatureC,
          ratio,
          barometricKpa * 1000,
        )
        expect(
          Math.abs((dewPointC({ vapourMgPerLBtps, barometricKpa }) ?? 0) - theirs),
        ).toBeLessThan(0.1)
      }
    }
  })

  it('is 43.9 mg/L for saturated gas of 37 °C at any pressure', () => {
    for (const barometricKpa of PRESSURES_KPA)
      expect(saturatedMgPerLBtps({ temperatureC: 37, barometricKpa })).toBeCloseTo(43.89, 1)
  })

  it('goes to the own litre of the gas and back', () => {
    fc.assert(
      fc.property(place, fc.double({ min: 0, max: 1, noNaN: true }), (at, share) => {
        const vapourMgPerLBtps = share * saturatedMgPerLBtps(at)
        const absoluteHumidity = perOwnLitreMg({ ...at, vapourMgPerLBtps })
        const back = perBodyLitreMg({ ...at, absoluteHumidityMgPerL: absoluteHumidity })
        expect(back).toBeCloseTo(vapourMgPerLBtps, 8)
      }),
      seeded(200),
    )
  })

  it('is the hygrometer value of room air, changed only by the litre it is counted in', () => {
    const room = { temperatureC: 22, relativeHumidityFraction: 0.5, barometricKpa: 101.325 }
    const own = absoluteHumidityMgPerL(room)
    expect(perOwnLitreMg({ ...room, vapourMgPerLBtps: roomMgPerLBtps(room) })).toBeCloseTo(own, 8)
    expect(perBodyLitreMg({ ...room, absoluteHumidityMgPerL: own })).toBeLessThan(own)
  })

  it('rises with temperature and has a dew point at that temperature', () => {
    fc.assert(
      fc.property(place, (at) => {
        const most = saturatedMgPerLBtps(at)
        const cooler = { ...at, temperatureC: at.temperatureC / 2 }
        expect(saturatedMgPerLBtps(cooler)).toBeLessThanOrEqual(most)
        const dewC = dewPointC({ vapourMgPerLBtps: most, barometricKpa: at.barometricKpa })
        expect(dewC ?? 0).toBeCloseTo(at.temperatureC, 5)
      }),
      seeded(200),
    )
  })

  it('refuses water beyond saturation, impossible rooms and places', () => {
    const at = { temperatureC: 20, barometricKpa: 101.325 }
    expect(() => perOwnLitreMg({ ...at, vapourMgPerLBtps: 30 })).toThrow('HUMIDITY_OUT_OF_RANGE')
    expect(() => perBodyLitreMg({ ...at, absoluteHumidityMgPerL: -1 })).toThrow(
      'HUMIDITY_OUT_OF_RANGE',
    )
    expect(() => roomMgPerLBtps({ ...at, relativeHumidityFraction: 1.1 })).toThrow(
      'HUMIDITY_OUT_OF_RANGE',
    )
    expect(() => saturatedMgPerLBtps({ ...at, barometricKpa: 40 })).toThrow(
      'BAROMETRIC_PRESSURE_OUT_OF_RANGE',
    )
    expect(dewPointC({ vapourMgPerLBtps: 1, barometricKpa: 101.325 })).toBeNull()
  })
})
