// Mixing by mass balance against handbook ratios and total flows, and laws on random streams.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  expectWithin,
  expectWithinRelative,
  numberIn,
  referenceRows,
} from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import {
  dilutedO2Fraction,
  entrainedO2Fraction,
  entrainmentRatio,
  entrainmentTotalFlowLpm,
  mixedStream,
} from './gas-mixing.ts'

const HANDBOOK_AIR = 0.209
const ratios = referenceRows('entrainment-ratios/ratios.csv', [
  'o2_fraction',
  'ratio_exact',
  'ratio_handbook',
])
const totals = referenceRows('entrainment-ratios/total-flow.csv', [
  'o2_fraction',
  'driving_l_min',
  'total_l_min',
])

const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true })

function handbookRatio(targetO2Fraction: number): number {
  return entrainmentRatio({ targetO2Fraction, airO2Fraction: HANDBOOK_AIR })
}

function lowFlow(deviceFlowLpm: number, demandFlowLpm: number): number {
  return dilutedO2Fraction({ deviceFlowLpm, demandFlowLpm, airO2Fraction: 0.21 })
}

describe('entrainment', () => {
  it('gives the exact ratios to their printed digits, and the handbook ratios within their rounding', () => {
    expect(ratios).toHaveLength(12)
    expectWithin(
      ratios.map((row) => ({
        label: row['o2_fraction'] ?? '',
        ours: handbookRatio(numberIn(row, 'o2_fraction')),
        theirs: numberIn(row, 'ratio_exact'),
      })),
      0.051,
    )
    expectWithin(
      ratios.map((row) => ({
        label: row['o2_fraction'] ?? '',
        ours: handbookRatio(numberIn(row, 'o2_fraction')),
        theirs: numberIn(row, 'ratio_handbook'),
      })),
      0.5,
    )
  })

  it('gives the total flows within 0.5 %', () => {
    expect(totals).toHaveLength(24)
    expectWithinRelative(
      totals.map((row) => ({
        label: `${row['o2_fraction']} at ${row['driving_l_min']}`,
        ours: entrainmentTotalFlowLpm({
          targetO2Fraction: numberIn(row, 'o2_fraction'),
          airO2Fraction: HANDBOOK_AIR,
          drivingFlowLpm: numberIn(row, 'driving_l_min'),
        }),
        theirs: numberIn(row, 'total_l_min'),
      })),
      0.005,
    )
  })

  it('gives the published sensitivity to the fraction of oxygen in air', () => {
    // Five usual valves at their usual flow: 51.8/44.9/45.0/41.5/30.4 with 0.2095, 52.7/45.1/45.1/41.6/30.4 with 0.21.
    const usual = [
      [0.24, 2],
      [0.28, 4],
      [0.35, 8],
      [0.4, 10],
      [0.6, 15],
    ] as const
    const totalsWith = (airO2Fraction: number) =>
      usual.map(([targetO2Fraction, drivingFlowLpm]) =>
        Number(
          entrainmentTotalFlowLpm({ targetO2Fraction, airO2Fraction, drivingFlowLpm }).toFixed(1),
        ),
      )
    expect(totalsWith(0.2095)).toEqual([51.8, 44.9, 45, 41.5, 30.4])
    expect(totalsWith(0.21)).toEqual([52.7, 45.1, 45.1, 41.6, 30.4])
  })

  it('is undone by mixing at its own ratio, on any source', () => {
    fc.assert(
      fc.property(fraction(0.5, 1), fraction(0.22, 0.5), (sourceO2Fraction, targetO2Fraction) => {
        const ratio = entrainmentRatio({ targetO2Fraction, sourceO2Fraction })
        expect(entrainedO2Fraction({ ratio, sourceO2Fraction })).toBeCloseTo(targetO2Fraction, 12)
        const mixed = mixedStream([
          { flowLpm: 5, o2Fraction: sourceO2Fraction },
          { flowLpm: 5 * ratio, o2Fraction: 0.2095 },
        ])
        expect(mixed.o2Fraction).toBeCloseTo(targetO2Fraction, 12)
        expect(mixed.flowLpm).toBeCloseTo(
          entrainmentTotalFlowLpm({ targetO2Fraction, sourceO2Fraction, drivingFlowLpm: 5 }),
          9,
        )
      }),
      seeded(300),
    )
  })

  it('refuses targets no mixture can reach', () => {
    expect(() => entrainmentRatio({ targetO2Fraction: 0.95, sourceO2Fraction: 0.93 })).toThrow(
      'TARGET_ABOVE_SOURCE',
    )
    expect(() => entrainmentRatio({ targetO2Fraction: 0.2095 })).toThrow('FRACTION_OUT_OF_RANGE')
    expect(() => entrainmentRatio({ targetO2Fraction: 24 })).toThrow('FRACTION_OUT_OF_RANGE')
    expect(() => entrainmentTotalFlowLpm({ targetO2Fraction: 0.4, drivingFlowLpm: -1 })).toThrow(
      'FLOW_OUT_OF_RANGE',
    )
    expect(() => entrainedO2Fraction({ ratio: -1, sourceO2Fraction: 1 })).toThrow(
      'VALUE_OUT_OF_RANGE',
    )
  })
})

describe('mixture and dilution', () => {
  it('keeps a mixture between its streams', () => {
    const stream = fc.record({ flowLpm: fraction(0.01, 60), o2Fraction: fraction(0, 1) })
    fc.assert(
      fc.property(fc.array(stream, { minLength: 1, maxLength: 4 }), (streams) => {
        const fractions = streams.map((s) => s.o2Fraction)
        const mixed = mixedStream(streams)
        expect(mixed.o2Fraction).toBeGreaterThanOrEqual(Math.min(...fractions) - 1e-12)
        expect(mixed.o2Fraction).toBeLessThanOrEqual(Math.max(...fractions) + 1e-12)
      }),
      seeded(300),
    )
    expect(() => mixedStream([])).toThrow('FLOW_OUT_OF_RANGE')
    expect(() => mixedStream([{ flowLpm: 1, o2Fraction: 40 }])).toThrow('FRACTION_OUT_OF_RANGE')
  })

  it('gives corners of the low-flow formula and of the fresh-gas bound', () => {
    // Ti/Ttot 0.33, VE 10: 2 L/min 0.262, 6 L/min 0.366; 0.50, VE 5, 6 L/min 0.684 (air 0.21) [Duprez2018].
    expect(lowFlow(2, 10 / 0.33)).toBeCloseTo(0.262, 3)
    expect(lowFlow(6, 10 / 0.33)).toBeCloseTo(0.366, 3)
    expect(lowFlow(6, 5 / 0.5)).toBeCloseTo(0.684, 3)
    expect(dilutedO2Fraction({ deviceFlowLpm: 15, demandFlowLpm: 9 })).toBe(1)
    expect(dilutedO2Fraction({ deviceFlowLpm: 0, demandFlowLpm: 9 })).toBe(0.2095)
    expect(() => dilutedO2Fraction({ deviceFlowLpm: 1, demandFlowLpm: 0 })).toThrow(
      'FLOW_OUT_OF_RANGE',
    )
  })
})
