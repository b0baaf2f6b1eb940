// The oximeter as a random display: probabilities, rounding, carbon monoxide, and its accuracy class.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomStream, seeded } from '../../test/support/seed.ts'
import { normalQuantile } from '../units/normal.ts'
import { limitsOf, quantile } from '../units/spread.ts'
import {
  ACCURACY_CLASSES,
  biasSpreadPercent,
  displayedPercent,
  meanReadingPercent,
  oximeterCautions,
  readingLikelihood,
} from './oximeter.ts'

const READINGS = Array.from({ length: 100 }, (_, i) => i + 1)
const saturation = fc.double({ min: 0, max: 1, noNaN: true })
const meter = fc.record({
  armsPercent: fc.double({ min: 0.5, max: 6, noNaN: true }),
  biasPercent: fc.double({ min: -0.45, max: 0.45, noNaN: true }),
  carboxyhaemoglobinFraction: fc.double({ min: 0, max: 0.5, noNaN: true }),
})

describe('oximeter', () => {
  it('gives probabilities that sum to one over every display', () => {
    fc.assert(
      fc.property(meter, saturation, (oximeter, truth) => {
        const chances = READINGS.map((readingPercent) =>
          readingLikelihood(oximeter, { readingPercent, saturation: truth }),
        )
        expect(chances.every((chance) => chance >= 0)).toBe(true)
        expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10)
      }),
      seeded(300),
    )
  })

  it('displays readings as often as their probability says', () => {
    const oximeter = { armsPercent: 3, biasPercent: 1 }
    const next = randomStream(7)
    const counts = new Map<number, number>()
    const n = 20_000
    for (let i = 0; i < n; i += 1) {
      const shown = displayedPercent(oximeter, {
        saturation: 0.9,
        z: normalQuantile(next() || 0.5),
      })
      counts.set(shown, (counts.get(shown) ?? 0) + 1)
    }
    for (const readingPercent of [88, 90, 91, 93, 96]) {
      const chance = readingLikelihood(oximeter, { readingPercent, saturation: 0.9 })
      const bound = 4.5 * Math.sqrt((chance * (1 - chance)) / n)
      expect(Math.abs((counts.get(readingPercent) ?? 0) / n - chance)).toBeLessThan(bound)
    }
  })

  it('keeps the root mean square of its class whatever the bias', () => {
    // Two thirds of readings lie within ±Arms: 68 % for a normal error.
    const n = 4000
    for (const biasPercent of [0, 1.5, -2]) {
      let square = 0
      for (let i = 0; i < n; i += 1) {
        const shown = displayedPercent(
          { armsPercent: 3, biasPercent },
          { saturation: 0.82, z: normalQuantile((i + 0.5) / n) },
        )
        square += (shown - 82) ** 2
      }
      // Rounding adds 1/12.
      expect(Math.sqrt(square / n - 1 / 12)).toBeCloseTo(3, 1)
    }
  })

  it('reads carbon monoxide as saturated', () => {
    // 30 % COHb, the rest 80 % saturated: 0.7·80 + 30 = 86 %.
    expect(meanReadingPercent({ carboxyhaemoglobinFraction: 0.3 }, 0.8)).toBeCloseTo(86, 10)
    expect(meanReadingPercent({ biasPercent: 3 }, 0.99)).toBe(100)
    expect(displayedPercent({ armsPercent: 3 }, { saturation: 0.99, z: 3 })).toBe(100)
    expect(displayedPercent({ armsPercent: 3 }, { saturation: 0, z: -3 })).toBe(1)
  })

  it('names the readings to doubt, and the classes', () => {
    expect(oximeterCautions({ readingPercent: 65 })).toEqual(['BELOW_TESTED_RANGE'])
    expect(oximeterCautions({ readingPercent: 98, carbonMonoxideSuspected: true })).toEqual([
      'CARBON_MONOXIDE_READS_SATURATED',
      'FLAT_PART_OF_CURVE',
    ])
    expect(oximeterCautions({ readingPercent: 90 })).toEqual([])
    expect(Object.values(ACCURACY_CLASSES).map((row) => row.armsPercent)).toEqual([3, 3.5, 4])
    const bias = biasSpreadPercent(4)
    expect(limitsOf(bias)).toEqual({ min: -3.6, max: 3.6 })
    expect(quantile(bias, 0.5)).toBeCloseTo(0, 10)
  })

  it('refuses readings no display shows', () => {
    const seen = { readingPercent: 90, saturation: 0.9 }
    for (const readingPercent of [0, 101, 90.5, Number.NaN]) {
      expect(() => readingLikelihood({ armsPercent: 3 }, { ...seen, readingPercent })).toThrow(
        'readingPercent',
      )
    }
    expect(() => readingLikelihood({ armsPercent: 3 }, { ...seen, saturation: 90 })).toThrow(
      'SATURATION_OUT_OF_RANGE',
    )
    expect(() => readingLikelihood({ armsPercent: 0 }, seen)).toThrow('VALUE_OUT_OF_RANGE')
    expect(() => readingLikelihood({ armsPercent: 3, biasPercent: 4 }, seen)).toThrow(
      'VALUE_OUT_OF_RANGE',
    )
  })
})
