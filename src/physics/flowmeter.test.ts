// Flowmeter corrections against independently worked factors; limits and signs of each kind.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, referenceRows, numberIn } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { isaPressureKpa } from './atmosphere.ts'
import {
  ambientFlowFactor,
  FLOWMETER_KINDS,
  flowmeterCautions,
  standardFlowFactor,
  standardFlowLpm,
  type FlowmeterKind,
} from './flowmeter.ts'

const rows = referenceRows('flowmeter/data.csv', [
  'kind',
  'altitude_m',
  'supply_gauge_kpa',
  'calibration_gauge_kpa',
  'back_pressure_kpa',
  'temperature_c',
  'standard_factor',
  'ambient_factor',
])

function readingOf(row: (typeof rows)[number]) {
  const kind = FLOWMETER_KINDS.find((known) => known === row['kind'])
  if (kind === undefined) throw new Error(`unknown kind ${row['kind']}`)
  return {
    kind,
    indicatedFlowLpm: 5,
    barometricKpa: isaPressureKpa(numberIn(row, 'altitude_m')),
    supplyGaugeKpa: numberIn(row, 'supply_gauge_kpa'),
    calibrationGaugeKpa: numberIn(row, 'calibration_gauge_kpa'),
    backPressureKpa: numberIn(row, 'back_pressure_kpa'),
    gasTemperatureC: numberIn(row, 'temperature_c'),
  }
}

const seaLevel = (kind: FlowmeterKind) => ({ kind, indicatedFlowLpm: 5, barometricKpa: 101.325 })

describe('flowmeter', () => {
  it('gives the worked factors for altitude, supply, back-pressure and temperature', () => {
    expect(rows).toHaveLength(19)
    const standard = rows.filter((row) => row['standard_factor'] !== '')
    const ambient = rows.filter((row) => row['ambient_factor'] !== '')
    expect([standard.length, ambient.length]).toEqual([15, 12])
    expectWithin(
      standard.map((row) => ({
        label: JSON.stringify(row),
        ours: standardFlowFactor(readingOf(row)),
        theirs: numberIn(row, 'standard_factor'),
      })),
      0.001,
    )
    // Two decimals are printed for compensated tubes.
    expectWithin(
      ambient.map((row) => ({
        label: JSON.stringify(row),
        ours: ambientFlowFactor(readingOf(row)),
        theirs: numberIn(row, 'ambient_factor'),
      })),
      0.005,
    )
  })

  it('reads true at its own calibration, whatever the kind', () => {
    for (const kind of FLOWMETER_KINDS) expect(standardFlowLpm(seaLevel(kind))).toBeCloseTo(5, 12)
  })

  it('keeps a sonic dial independent of back-pressure until the critical ratio, then falls to nothing', () => {
    const dial = (backPressureKpa: number) =>
      standardFlowFactor({
        ...seaLevel('dial'),
        backPressureKpa,
        supplyGaugeKpa: 150,
        calibrationGaugeKpa: 150,
      })
    expect(dial(0)).toBe(1)
    expect(dial(30)).toBe(1)
    expect(dial(40)).toBeLessThan(1)
    expect(dial(140)).toBeLessThan(dial(100))
    expect(dial(150)).toBe(0)
    expect(
      flowmeterCautions({ ...seaLevel('dial'), backPressureKpa: 40, supplyGaugeKpa: 150 }),
    ).toEqual(['DIAL_NOT_SONIC'])
    expect(flowmeterCautions(seaLevel('dial'))).toEqual([])
  })

  it('leaves an electronic meter alone at any altitude', () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 107, noNaN: true }), (barometricKpa) => {
        expect(standardFlowFactor({ kind: 'electronic', indicatedFlowLpm: 5, barometricKpa })).toBe(
          1,
        )
        const uncompensated = standardFlowFactor({
          kind: 'tube-uncompensated',
          indicatedFlowLpm: 5,
          barometricKpa,
        })
        const compensated = standardFlowFactor({
          kind: 'tube-compensated',
          indicatedFlowLpm: 5,
          barometricKpa,
        })
        // The tube at supply pressure feels altitude less.
        expect(Math.abs(compensated - 1)).toBeLessThanOrEqual(Math.abs(uncompensated - 1))
      }),
      seeded(200),
    )
  })

  it('names the readings to doubt', () => {
    expect(flowmeterCautions({ ...seaLevel('tube-compensated'), indicatedFlowLpm: 0.5 })).toEqual([
      'BELOW_TURBULENT_RANGE',
    ])
    expect(flowmeterCautions({ ...seaLevel('tube-uncompensated'), backPressureKpa: 5 })).toEqual([
      'BACK_PRESSURE_READS_LOW',
    ])
    expect(flowmeterCautions({ ...seaLevel('tube-compensated'), backPressureKpa: 5 })).toEqual([])
    expect(flowmeterCautions({ ...seaLevel('electronic'), indicatedFlowLpm: 0.1 })).toEqual([])
  })

  it('refuses impossible readings', () => {
    expect(() => standardFlowLpm({ ...seaLevel('dial'), indicatedFlowLpm: -1 })).toThrow(
      'FLOW_OUT_OF_RANGE',
    )
    expect(() => standardFlowLpm({ ...seaLevel('dial'), indicatedFlowLpm: Number.NaN })).toThrow(
      'NOT_A_NUMBER',
    )
    expect(() => standardFlowLpm({ ...seaLevel('dial'), supplyGaugeKpa: 4 })).toThrow(
      'PRESSURE_OUT_OF_RANGE',
    )
    expect(() => standardFlowLpm({ ...seaLevel('dial'), barometricKpa: 200 })).toThrow(
      'HYPERBARIC_REFUSED',
    )
    expect(() => standardFlowLpm({ ...seaLevel('dial'), gasTemperatureC: 80 })).toThrow(
      'TEMPERATURE_OUT_OF_RANGE',
    )
  })
})
