// What is said of one cylinder: times, remarks, handbooks beside. Leaves out contents, which cylinder.test.ts judges.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { kpaFromBar, kpaFromPsi, barFromKpa } from '../units/pressure.ts'
import { cylinderAnswer } from './cylinder-answer.ts'
import type { Cylinder } from './cylinder.ts'
import { HANDBOOK_ROWS } from './handbook.ts'

const full: Cylinder = {
  waterVolumeL: 4.68,
  gaugeKpa: kpaFromPsi(2000),
  readAtC: 15,
  isValveOpen: true,
}
const use = { barometricKpa: 101.325, leftGaugeKpa: kpaFromPsi(200), litresAtC: 15 }
const codes = (answer: ReturnType<typeof cylinderAnswer>): readonly string[] =>
  answer.remarks.map(({ code }) => code)

describe('one cylinder', () => {
  it('sets the American factor of 0.28 L/psi beside ours: about 18 % shorter', () => {
    const { handbooks } = cylinderAnswer({ cylinder: full, use, drawLpm: 2 })
    const american = handbooks.find(({ row }) => row.country === 'US')
    expect(american?.row.letter).toBe('E')
    expect(american?.minutes).toBeCloseTo(252, 6)
    expect(Math.abs((american?.differenceShare ?? 0) + 0.18)).toBeLessThan(0.015)
  })

  it('sets the same letter of another country beside it with another factor', () => {
    const ofLetterE = HANDBOOK_ROWS.filter(({ letter }) => letter === 'E')
    expect(ofLetterE.map(({ factorLPerPsi }) => factorLPerPsi)).toEqual([0.28, 0.34])
  })

  it('lasts 24.6 and 280 min by water volume times bar, which is on the safe side', () => {
    const metric = (waterVolumeL: number, bar: number, left: number, drawLpm: number) =>
      cylinderAnswer({
        cylinder: { ...full, waterVolumeL, gaugeKpa: kpaFromBar(bar) },
        use: { ...use, leftGaugeKpa: kpaFromBar(left) },
        drawLpm,
      })
    const small = metric(2, 137, 14, 10)
    expect(small.ruleOfThumbMinutes).toBeCloseTo(24.6, 6)
    expect(small.change?.middleMinutes).toBeGreaterThan(24.6)
    expect(metric(10, 150, 10, 5).ruleOfThumbMinutes).toBeCloseTo(280, 6)
  })

  it.each([
    { letter: 'D', litres: 339 },
    { letter: 'E', litres: 684 },
    { letter: 'F', litres: 1379 },
    { letter: 'G', litres: 3451 },
    { letter: 'J', litres: 6903 },
    { letter: 'CD', litres: 485 },
    { letter: 'HX', litres: 2425 },
  ])('holds $litres L where the handbook size $letter is filled', ({ letter, litres }) => {
    const row = HANDBOOK_ROWS.find((one) => one.country === 'GB' && one.letter === letter)
    const { contentsL } = cylinderAnswer({
      cylinder: { ...full, waterVolumeL: volumeOf(letter), gaugeKpa: row?.fillGaugeKpa ?? 0 },
      use,
      drawLpm: 1,
    })
    expect(Math.abs(contentsL / litres - 1)).toBeLessThan(0.002)
  })

  it('gives 0 minutes and says so while the valve is closed', () => {
    const answer = cylinderAnswer({ cylinder: { ...full, isValveOpen: false }, use, drawLpm: 2 })
    expect(answer.change).toEqual({ lowMinutes: 0, middleMinutes: 0, highMinutes: 0 })
    expect(answer.empty?.middleMinutes).toBe(0)
    expect(codes(answer)).toContain('OPEN_THE_VALVE')
  })

  it('says that it was filled warm and is used cold, and what the gauge will show', () => {
    const cylinder = { ...full, gaugeKpa: kpaFromBar(200), readAtC: 20 }
    const answer = cylinderAnswer({ cylinder, use: { ...use, usedAtC: -10 }, drawLpm: 2 })
    expect(Math.abs(barFromKpa(answer.gaugeAtUseKpa) / 168.1 - 1)).toBeLessThan(0.002)
    expect(codes(answer)).toContain('FILLED_WARM_USED_COLD')
    const hot = cylinderAnswer({ cylinder: { ...full, readAtC: 40 }, use, drawLpm: 2 })
    expect(codes(hot)).toContain('EQUATION_EXTRAPOLATED')
  })

  it('is never said to last for a time when nothing is drawn', () => {
    const answer = cylinderAnswer({ cylinder: full, use, drawLpm: 0 })
    expect(answer.change).toBeNull()
    expect(answer.ruleOfThumbMinutes).toBeNull()
    expect(codes(answer)).toContain('NOTHING_DRAWN')
  })

  it('keeps its ends in order, and the same answer in any unit of pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (bar, drawLpm, error, gaugeErrorKpa) => {
          const ask = (gaugeKpa: number) =>
            cylinderAnswer({
              cylinder: { ...full, gaugeKpa },
              use: { ...use, gaugeErrorKpa },
              drawLpm,
              drawLowLpm: drawLpm * (1 - error),
              drawHighLpm: drawLpm * (1 + error),
            })
          const one = ask(kpaFromBar(bar))
          const { lowMinutes = 0, middleMinutes = 0, highMinutes = 0 } = one.change ?? {}
          expect(lowMinutes).toBeGreaterThanOrEqual(0)
          expect(lowMinutes).toBeLessThanOrEqual(middleMinutes + 1e-9)
          expect(middleMinutes).toBeLessThanOrEqual(highMinutes + 1e-9)
          const psi = kpaFromBar(bar) / kpaFromPsi(1)
          const again = ask(kpaFromPsi(psi)).change?.middleMinutes ?? -1
          expect(Math.abs(again - middleMinutes)).toBeLessThan(1e-6 * (1 + middleMinutes))
        },
      ),
      seeded(40),
    )
  })
})

/** Finer water volumes than the handbook rows round to, as the check figures used. */
function volumeOf(letter: string): number {
  const volumes: Readonly<Record<string, number>> = {
    D: 2.32,
    E: 4.68,
    F: 9.43,
    G: 23.6,
    J: 47.2,
    CD: 2,
    HX: 10,
  }
  return volumes[letter] ?? 0
}
