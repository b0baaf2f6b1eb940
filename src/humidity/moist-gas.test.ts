// Balance of vapour, droplets and heat against the wet-bulb temperature of a general-purpose library, and its laws.
import { createRequire } from 'node:module'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { roomMgPerLBtps, saturatedMgPerLBtps } from './body-litre.ts'
import { heatJPerL, inBalance, mixedGas, sprayed } from './moist-gas.ts'
import type { MoistGas } from './moist-gas.ts'

interface Psychrolib {
  readonly SI: number
  SetUnitSystem(system: number): void
  GetTWetBulbFromRelHum(temperatureC: number, relative: number, pressurePa: number): number
}
// The library has no types; these are the members used here.
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrolib
psychrolib.SetUnitSystem(psychrolib.SI)

function moist(barometricKpa: number): fc.Arbitrary<MoistGas> {
  return fc
    .record({
      flowLpmBtps: fc.double({ min: 0.1, max: 80, noNaN: true }),
      temperatureC: fc.double({ min: 15, max: 40, noNaN: true }),
      waterMgPerLBtps: fc.double({ min: 0, max: 60, noNaN: true }),
    })
    .map((drawn) => inBalance({ ...drawn, barometricKpa }))
}

describe('moist gas', () => {
  it('cools to the wet-bulb temperature that psychrolib gives when water is sprayed in, within 0.25 °C', () => {
    let worst = 0
    for (const barometricKpa of [62, 80, 101.325]) {
      for (const temperatureC of [15, 20, 25, 30, 40]) {
        for (const relativeHumidityFraction of [0.1, 0.3, 0.5, 0.8]) {
          const room = { temperatureC, relativeHumidityFraction, barometricKpa }
          const theirs = psychrolib.GetTWetBulbFromRelHum(
            temperatureC,
            relativeHumidityFraction,
            barometricKpa * 1000,
          )
          const gas = {
            flowLpmBtps: 1,
            temperatureC,
            vapourMgPerLBtps: roomMgPerLBtps(room),
            aerosolMgPerLBtps: 0,
          }
          // Just as much water, at the wet-bulb temperature itself, as saturates the gas: what a wet bulb is.
          const wet = sprayed({
            gas,
            waterMgPerLBtps: saturatedMgPerLBtps({ temperatureC: theirs, barometricKpa }),
            waterTemperatureC: theirs,
            barometricKpa,
          })
          worst = Math.max(worst, Math.abs(wet.temperatureC - theirs))
        }
      }
    }
    expect(worst).toBeLessThan(0.25)
  })

  it('mixes without making or losing water or heat, and is never beyond saturation', () => {
    const barometricKpa = 101.325
    fc.assert(
      fc.property(moist(barometricKpa), moist(barometricKpa), (a, b) => {
        const mix = mixedGas([a, b], barometricKpa)
        const water = (gas: MoistGas): number =>
          gas.flowLpmBtps * (gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps)
        expect(water(mix)).toBeCloseTo(water(a) + water(b), 6)
        const heat = (gas: MoistGas): number => gas.flowLpmBtps * heatJPerL(gas, barometricKpa)
        expect(heat(mix)).toBeCloseTo(heat(a) + heat(b), 4)
        expect(mix.vapourMgPerLBtps).toBeLessThanOrEqual(
          saturatedMgPerLBtps({ ...mix, barometricKpa }) + 1e-9,
        )
        expect(mix.aerosolMgPerLBtps).toBeGreaterThanOrEqual(0)
      }),
      seeded(200),
    )
  })
})
