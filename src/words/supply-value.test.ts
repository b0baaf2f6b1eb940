// Gas volumes and pressures as people read them: the same in every unit to the step shown. Leaves out sentences.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { gasPressureText, gasVolumeText, type GasUnits } from './supply-value.ts'

/** A cubic foot in litres: 0.3048 m to the third power, by definition of the foot. */
const L_PER_FT3 = 3.048 ** 3
/** kPa in a bar and a psi, by definition of the pound-force and the inch. */
const KPA_PER_BAR = 100
const KPA_PER_PSI = (0.45359237 * 9.80665) / 0.0254 ** 2 / 1000

const inUnits = (pressure: GasUnits['pressure'], volume: GasUnits['volume']): GasUnits => ({
  pressure,
  volume,
})
const shown = (text: string): number => Number(text.replace(/[^\d.]/g, '').replace(/\.$/, ''))

describe('gas', () => {
  it('is the same volume in litres and cubic feet, to half of the step shown', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100_000, noNaN: true }), (volumeL) => {
        const litres = shown(gasVolumeText(volumeL, inUnits('bar', 'L')))
        const feet = shown(gasVolumeText(volumeL, inUnits('bar', 'ft³')).replace('ft³', ''))
        expect(Math.abs(litres - volumeL)).toBeLessThanOrEqual((volumeL < 1000 ? 1 : 10) / 2 + 1e-6)
        expect(Math.abs(feet * L_PER_FT3 - volumeL)).toBeLessThanOrEqual(0.05 * L_PER_FT3 + 1e-6)
      }),
      seeded(200),
    )
  })

  it('is the same pressure in bar, psi and kPa, to half of the step shown', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 35_000, noNaN: true }), (pressureKpa) => {
        const off = (unit: GasUnits['pressure'], kpa: number): number =>
          Math.abs(shown(gasPressureText(pressureKpa, inUnits(unit, 'L'))) * kpa - pressureKpa)
        expect(off('bar', KPA_PER_BAR)).toBeLessThanOrEqual(0.5 * KPA_PER_BAR + 1e-6)
        expect(off('psi', KPA_PER_PSI)).toBeLessThanOrEqual(5 * KPA_PER_PSI + 1e-6)
        expect(off('kPa', 1)).toBeLessThanOrEqual(50 + 1e-6)
      }),
      seeded(200),
    )
  })
})
