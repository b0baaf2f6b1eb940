// Concentrators, liquid oxygen and pulse settings: what the label tells and what nobody knows. Leaves out the breath.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { oxygenContentsLitres } from '../physics/real-gas-oxygen.ts'
import { entrainedO2Fraction } from '../physics/gas-mixing.ts'
import { concentratorPurity, fractionWithPurity, pulseSettingAsFlow } from './home-concentrator.ts'
import { GAS_L_PER_KG_AT_20C, gasFromLiquidL, liquidAnswer } from './liquid-oxygen.ts'

const codes = (answer: { readonly remarks: readonly { readonly code: string }[] }) =>
  answer.remarks.map(({ code }) => code)

describe('concentrator', () => {
  const plain = { ratedFlowLpm: 5, warmUpMinutes: 5 }
  const labelled = {
    ...plain,
    purityTable: [
      { flowLpm: 1, o2Fraction: 0.95 },
      { flowLpm: 5, o2Fraction: 0.87 },
    ],
  }

  it('gives 0.93, 0.90 to 0.96, up to its rated flow, and its label’s table where typed', () => {
    const answer = concentratorPurity(plain, { flowLpm: 3 })
    expect(answer.o2Fraction).toBeCloseTo(0.93, 2)
    expect(answer).toMatchObject({ lowO2Fraction: 0.9, highO2Fraction: 0.96 })
    expect(concentratorPurity(labelled, { flowLpm: 3 }).o2Fraction).toBeCloseTo(0.91, 9)
  })

  it('gives no number while it warms up, above its rated flow or altitude, or beyond its table', () => {
    const cases = [
      [plain, { flowLpm: 2, minutesOn: 2 }, 'STILL_WARMING_UP'],
      [plain, { flowLpm: 6 }, 'ABOVE_RATED_FLOW'],
      [
        { ...plain, ratedAltitudeM: 2000 },
        { flowLpm: 2, altitudeM: 2500 },
        'ALTITUDE_ABOVE_RATING',
      ],
      [labelled, { flowLpm: 0.5 }, 'OUTSIDE_PURITY_TABLE'],
    ] as const
    for (const [machine, use, code] of cases) {
      const answer = concentratorPurity(machine, use)
      expect(answer.o2Fraction).toBeNull()
      expect(codes(answer)).toContain(code)
    }
  })

  it('carries its purity into the fraction as the mass balance of a valve does', () => {
    for (const ratio of [25, 10, 5, 1]) {
      const pure = entrainedO2Fraction({ ratio, sourceO2Fraction: 1 })
      const ours = fractionWithPurity({ fractionWithPureOxygen: pure, purity: 0.93 })
      expect(ours).toBeCloseTo(entrainedO2Fraction({ ratio, sourceO2Fraction: 0.93 }), 9)
    }
    expect(() => fractionWithPurity({ fractionWithPureOxygen: 0.1, purity: 1 })).toThrow(
      DomainError,
    )
  })

  it('has no flow for a pulse setting', () => {
    expect(pulseSettingAsFlow().flowLpm).toBeNull()
    expect(pulseSettingAsFlow().remark.code).toBe('PULSE_IS_NO_FLOW')
  })
})

describe('liquid oxygen', () => {
  it('gives 857.3 L of gas at 20 °C, which is 842.6 L at 15 °C', () => {
    const colder = 1 / oxygenContentsLitres({ temperatureC: 20, pressureKpa: 101.325 })
    expect(Math.abs(gasFromLiquidL(1) / colder / 842.6 - 1)).toBeLessThan(0.001)
    // 754 L/kg at 21.1 °C, 738 at 15 °C.
    expect(GAS_L_PER_KG_AT_20C).toBeGreaterThan(738)
    expect(GAS_L_PER_KG_AT_20C).toBeLessThan(754)
  })

  it('lasts no longer for evaporating, empties by itself at rest, and says what is not known', () => {
    const vessel = { liquidL: 20, evaporationLPerDay: 1 }
    const used = liquidAnswer(vessel, 2)
    expect(used.shortestMinutes).toBeLessThan(used.longestMinutes ?? 0)
    expect(used.longestMinutes).toBeCloseTo((20 * 857.3) / 2, 6)
    const resting = liquidAnswer(vessel, 0)
    expect(resting.holdDays).toBe(20)
    expect(resting.longestMinutes).toBeCloseTo(20 * 1440, 6)
    expect(codes(resting)).toContain('EVAPORATION_RULES')
    expect(codes(liquidAnswer({ liquidL: 20 }, 2))).toContain('EVAPORATION_NOT_STATED')
    expect(liquidAnswer({ liquidL: 20 }, 0).longestMinutes).toBeNull()
    // Who does not know the loss knows only the most.
    expect(liquidAnswer({ liquidL: 20 }, 2)).toMatchObject({
      shortestMinutes: null,
      longestMinutes: gasFromLiquidL(20) / 2,
    })
  })

  it('lasts shorter at a higher flow, never a negative time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        (liquidL, evaporationLPerDay, drawLpm) => {
          const one = liquidAnswer({ liquidL, evaporationLPerDay }, drawLpm).shortestMinutes ?? -1
          const two = liquidAnswer({ liquidL, evaporationLPerDay }, drawLpm * 2).shortestMinutes
          expect(one).toBeGreaterThanOrEqual(0)
          expect(two).toBeLessThanOrEqual(one)
        },
      ),
      seeded(60),
    )
  })
})
