// The dissociation curve against its measured table and published check values; shifts and inverses as laws.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { KPA_PER_MMHG, kpaFromMmhg, mmhgFromKpa } from '../units/pressure.ts'
import {
  approximatePo2Kpa,
  bloodCurve,
  bloodPo2Kpa,
  bloodSaturation,
  bohrSlope,
  curveP50Kpa,
  standardPo2Kpa,
  standardSaturation,
  STANDARD_P50_KPA,
  temperatureSlope,
} from './dissociation.ts'

const measured = referenceRows('severinghaus-1979/data.csv', ['po2_mmhg', 'so2_percent'])
const standard = referenceRows('dissociation-models/standard.csv', [
  'po2_mmhg',
  'kelman_percent',
  'dash_percent',
  'eq1_percent',
])
const inverse = referenceRows('dissociation-models/inverse.csv', [
  'saturation',
  'exact_mmhg',
  'eq2_mmhg',
])

const percentAt = (po2Mmhg: number) => 100 * standardSaturation(kpaFromMmhg(po2Mmhg))
const anyCurve = fc
  .record({
    ph: fc.double({ min: 6.8, max: 7.8, noNaN: true }),
    temperatureC: fc.double({ min: 30, max: 43, noNaN: true }),
    p50Kpa: fc.double({ min: 1.6, max: 6.7, noNaN: true }),
  })
  .map(bloodCurve)

describe('standard dissociation curve', () => {
  it('lies within 0.56 %-points of the measured standard curve [Severinghaus1979]', () => {
    expect(measured).toHaveLength(51)
    expectWithin(
      measured.map((row) => ({
        label: `${row['po2_mmhg']} mmHg`,
        ours: percentAt(numberIn(row, 'po2_mmhg')),
        theirs: numberIn(row, 'so2_percent'),
      })),
      0.56,
    )
  })

  it('gives the published values of Eq 1 to their last digit', () => {
    expect(standard).toHaveLength(14)
    expectWithin(
      standard.map((row) => ({
        label: `${row['po2_mmhg']} mmHg`,
        ours: percentAt(numberIn(row, 'po2_mmhg')),
        theirs: numberIn(row, 'eq1_percent'),
      })),
      0.00501,
    )
  })

  it('gives the published exact and approximate inverses', () => {
    expect(inverse).toHaveLength(12)
    const against = (column: string, ours: (saturation: number) => number) =>
      inverse.map((row) => ({
        label: `${row['saturation']} ${column}`,
        ours: mmhgFromKpa(ours(numberIn(row, 'saturation'))),
        theirs: numberIn(row, column),
      }))
    expectWithin(against('exact_mmhg', standardPo2Kpa), 0.00501)
    expectWithin(against('eq2_mmhg', approximatePo2Kpa), 0.00501)
    expect(mmhgFromKpa(STANDARD_P50_KPA)).toBeCloseTo(26.857, 3)
  })

  it('gives the published slopes of Eqs 3 and 4', () => {
    // Eq 4 at 27/40/60/100 mmHg; Eq 3 at 27/100/300 mmHg.
    const bohr = [27, 40, 60, 100].map((p) => bohrSlope(kpaFromMmhg(p)))
    expect(bohr.map((slope) => Number(slope.toFixed(3)))).toEqual([-1.197, -1.122, -1.039, -0.924])
    const heat = [27, 100, 300].map((p) => temperatureSlope(kpaFromMmhg(p)))
    expect(heat.map((slope) => Number(slope.toFixed(4)))).toEqual([0.071, 0.0708, 0.0578])
  })

  it('is undone by its exact inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.9999, noNaN: true }), (saturation) => {
        expect(standardSaturation(standardPo2Kpa(saturation))).toBeCloseTo(saturation, 10)
      }),
      seeded(500),
    )
    expect(standardPo2Kpa(0)).toBe(0)
    expect(standardSaturation(0)).toBe(0)
  })

  it('refuses what it does not cover', () => {
    expect(() => standardSaturation(-0.1)).toThrow('PARTIAL_PRESSURE_OUT_OF_RANGE')
    expect(() => standardSaturation(108)).toThrow('PARTIAL_PRESSURE_OUT_OF_RANGE')
    expect(() => standardSaturation(Number.NaN)).toThrow('NOT_A_NUMBER')
    expect(() => standardPo2Kpa(1)).toThrow('SATURATION_OUT_OF_RANGE')
    expect(() => standardPo2Kpa(97)).toThrow('SATURATION_OUT_OF_RANGE')
    expect(() => approximatePo2Kpa(0)).toThrow('SATURATION_OUT_OF_RANGE')
    expect(() => bloodCurve({ ph: 6.5 })).toThrow('PH_OUT_OF_RANGE')
    expect(() => bloodCurve({ temperatureC: 99 })).toThrow('TEMPERATURE_OUT_OF_RANGE')
    expect(() => bloodCurve({ p50Kpa: 26.8 })).toThrow('PARTIAL_PRESSURE_OUT_OF_RANGE')
  })
})

describe('shifted curve', () => {
  it('is the standard curve for standard blood', () => {
    for (const po2Kpa of [1, 5, 8, 13, 60]) {
      expect(bloodSaturation(bloodCurve({}), po2Kpa)).toBe(standardSaturation(po2Kpa))
    }
  })

  it('round trips for any accepted blood', () => {
    fc.assert(
      fc.property(
        anyCurve,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (curve, saturation) => {
          const po2Kpa = bloodPo2Kpa(curve, saturation)
          fc.pre(po2Kpa <= 107)
          expect(bloodSaturation(curve, po2Kpa)).toBeCloseTo(saturation, 8)
        },
      ),
      seeded(2000),
    )
  })

  it('rises with oxygen; falls with acid, fever and a higher P50', () => {
    const po2 = fc.double({ min: 0.5, max: 60, noNaN: true })
    fc.assert(
      fc.property(anyCurve, po2, po2, (curve, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6)
        expect(bloodSaturation(curve, Math.max(a, b))).toBeGreaterThan(
          bloodSaturation(curve, Math.min(a, b)),
        )
      }),
      seeded(500),
    )
    fc.assert(
      fc.property(po2, (po2Kpa) => {
        const normal = standardSaturation(po2Kpa)
        expect(bloodSaturation(bloodCurve({ ph: 7.2 }), po2Kpa)).toBeLessThan(normal)
        expect(bloodSaturation(bloodCurve({ temperatureC: 40 }), po2Kpa)).toBeLessThan(normal)
        expect(bloodSaturation(bloodCurve({ p50Kpa: 2.5 }), po2Kpa)).toBeGreaterThan(normal)
      }),
      seeded(200),
    )
  })

  it('moves by Eq 4 and Eq 3 at constant saturation', () => {
    const p60 = kpaFromMmhg(60)
    const saturation = standardSaturation(p60)
    const acid = bloodPo2Kpa(bloodCurve({ ph: 7.3 }), saturation)
    expect(Math.log(acid / p60)).toBeCloseTo(-0.1 * bohrSlope(p60), 9)
    const hot = bloodPo2Kpa(bloodCurve({ temperatureC: 39 }), saturation)
    expect(Math.log(hot / p60)).toBeCloseTo(2 * temperatureSlope(p60), 9)
  })

  it('gives the published oxygen pressures of fetal blood', () => {
    // P50 19 mmHg: 35/39/41/45/54 mmHg at 85/88/90/92/95 %; P50 21: 39/43/46/50/59.
    const levels = [0.85, 0.88, 0.9, 0.92, 0.95]
    const pressures = (p50Mmhg: number) => {
      const curve = bloodCurve({ p50Kpa: kpaFromMmhg(p50Mmhg) })
      return levels.map((saturation) => Math.round(mmhgFromKpa(bloodPo2Kpa(curve, saturation))))
    }
    expect(pressures(19)).toEqual([35, 39, 41, 45, 54])
    expect(pressures(21)).toEqual([39, 43, 46, 50, 59])
    expect(curveP50Kpa(bloodCurve({ p50Kpa: 2.5 })) / KPA_PER_MMHG).toBeCloseTo(
      2.5 / KPA_PER_MMHG,
      9,
    )
  })
})
