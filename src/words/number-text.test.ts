// Numbers as people read them. Leaves out the sentences they stand in.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import {
  bandText,
  chanceText,
  clockText,
  durationText,
  flowText,
  fractionBandText,
  fractionText,
  numberText,
  percentText,
  plainNumberText,
  pressureBandText,
  pressureText,
  rangeText,
  saturationBandText,
  stepForWidth,
  withUnit,
} from './number-text.ts'

describe('numbers in words', () => {
  it('have a leading zero and no trailing zeros', () => {
    expect(numberText(0.5, 0.01)).toBe('0.5')
    expect(numberText(2, 0.01)).toBe('2')
    expect(numberText(0.125, 0.025)).toBe('0.125')
    expect(numberText(20, 10)).toBe('20')
    expect(numberText(-0.004, 0.01)).toBe('0')
    expect(numberText(-3.2, 1)).toBe('−3')
    expect(plainNumberText(0.030000000000000002)).toBe('0.03')
    expect(plainNumberText(1200)).toBe('1200')
  })

  it('are never finer than their step', () => {
    const step = fc.constantFrom(0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 5, 10)
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), step, (value, stepSize) => {
        const shown = Number(numberText(value, stepSize).replace('−', '-'))
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(stepSize / 2 + 1e-6)
        expect(Math.abs(shown / stepSize - Math.round(shown / stepSize))).toBeLessThan(1e-6)
      }),
      seeded(300),
    )
  })

  it('that are no numbers are never printed', () => {
    expect(() => numberText(Number.NaN, 1)).toThrow('words/number')
    expect(() => chanceText(1.2)).toThrow('words/chance')
    expect(() => fractionText(Number.POSITIVE_INFINITY)).toThrow('words/number')
  })

  it('carry their unit', () => {
    expect(withUnit('22', '/min')).toBe('22/min')
    expect(withUnit('7.4', '1')).toBe('7.4')
    expect(withUnit('12', 'g/L')).toBe('12 g/L')
    expect(flowText(0.125, 0.025)).toBe('0.125 L/min')
    expect(rangeText({ low: 88, high: 92, step: 1, unit: '%' })).toBe('88–92 %')
    expect(rangeText({ low: 5.01, high: 4.99, step: 1 })).toBe('5')
  })

  it('follow the ward in pressure', () => {
    expect(pressureText({ pressureKpa: 8, unit: 'kPa' })).toBe('8 kPa')
    expect(pressureText({ pressureKpa: 8, unit: 'mmHg' })).toBe('60 mmHg')
    const band = { median: 9.23, low: 7.8, high: 11.04 }
    expect(pressureBandText(band, 'kPa')).toBe('about 9.2 kPa, 7.8–11 kPa')
    expect(pressureBandText(band, 'mmHg')).toBe('about 69 mmHg, 59–83 mmHg')
    expect(pressureBandText({ median: 31, low: 25, high: 36 }, 'kPa')).toBe(
      'about 31 kPa, 25–36 kPa',
    )
  })

  it('show a middle and its spread', () => {
    expect(fractionBandText({ median: 0.447, low: 0.381, high: 0.543 })).toBe(
      'about 0.45, 0.38–0.54',
    )
    expect(saturationBandText({ median: 91.2, low: 87, high: 94.4 })).toBe('about 91 %, 87–94 %')
    expect(bandText({ median: 1, low: 1, high: 1 }, { step: 0.01 })).toBe('about 1')
  })

  it('take no digit the spread does not carry', () => {
    expect(stepForWidth(10)).toBe(1)
    expect(stepForWidth(240)).toBe(10)
    expect(stepForWidth(0.16)).toBe(0.01)
  })

  it('tell chances in steps of 5 %', () => {
    expect(chanceText(0)).toBe('under 5 %')
    expect(chanceText(0.049)).toBe('under 5 %')
    expect(chanceText(0.05)).toBe('about 5 %')
    expect(chanceText(0.637)).toBe('about 65 %')
    expect(chanceText(0.95)).toBe('about 95 %')
    expect(chanceText(0.951)).toBe('over 95 %')
    expect(percentText(0.4567)).toBe('46 %')
  })

  it('tell times', () => {
    expect(durationText(40)).toBe('40 min')
    expect(durationText(80)).toBe('1 h 20 min')
    expect(durationText(179.9)).toBe('3 h')
    expect(clockText({ hour: 7, minute: 5 })).toBe('07:05')
  })
})
