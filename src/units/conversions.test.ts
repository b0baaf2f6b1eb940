// Every conversion against its defined value, and there and back again.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import * as age from './age.ts'
import * as concentration from './concentration.ts'
import * as flow from './flow.ts'
import * as length from './length.ts'
import * as mass from './mass.ts'
import * as pressure from './pressure.ts'
import * as temperature from './temperature.ts'
import * as volume from './volume.ts'

type Convert = (value: number) => number
const PAIRS: readonly (readonly [string, Convert, Convert])[] = [
  ['kPa mmHg', pressure.kpaFromMmhg, pressure.mmhgFromKpa],
  ['kPa torr', pressure.kpaFromTorr, pressure.torrFromKpa],
  ['kPa cmH2O', pressure.kpaFromCmh2o, pressure.cmh2oFromKpa],
  ['kPa bar', pressure.kpaFromBar, pressure.barFromKpa],
  ['kPa psi', pressure.kpaFromPsi, pressure.psiFromKpa],
  ['L/s L/min', flow.lpsFromLpm, flow.lpmFromLps],
  ['L/min mL/min', flow.lpmFromMlPerMin, flow.mlPerMinFromLpm],
  ['L/s mL/s', flow.lpsFromMlPerS, flow.mlPerSFromLps],
  ['L mL', volume.litresFromMl, volume.mlFromLitres],
  ['L ft³', volume.litresFromCubicFeet, volume.cubicFeetFromLitres],
  ['K °C', temperature.kelvinFromC, temperature.celsiusFromK],
  ['°C °F', temperature.celsiusFromF, temperature.fahrenheitFromC],
  ['cm in', length.cmFromInches, length.inchesFromCm],
  ['m cm', length.metresFromCm, length.cmFromMetres],
  ['m ft', length.metresFromFeet, length.feetFromMetres],
  ['kg lb', mass.kgFromLb, mass.lbFromKg],
  ['kg g', mass.kgFromG, mass.gramsFromKg],
  ['g/dL g/L', concentration.gramsPerDlFromGramsPerL, concentration.gramsPerLFromGramsPerDl],
  [
    'g/dL mmol/L',
    concentration.haemoglobinGPerDlFromMmolPerL,
    concentration.haemoglobinMmolPerLFromGPerDl,
  ],
  ['% fraction', concentration.percentFromFraction, concentration.fractionFromPercent],
  ['mo y', age.monthsFromYears, age.yearsFromMonths],
  ['d mo', age.daysFromMonths, age.monthsFromDays],
  ['wk d', age.weeksFromDays, age.daysFromWeeks],
]

describe('unit conversions', () => {
  it.each(PAIRS)('%s there and back gives the same number', (_, there, back) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(back(there(value)) - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value))
      }),
      seeded(200),
    )
  })

  it('has the defined or published factors', () => {
    // 1 kPa = 7.50064 mmHg, 1 bar = 14.5038 psi, 1 psi = 6.89476 kPa, 1 cmH2O = 0.0980665 kPa [UCUM2024].
    expect(pressure.mmhgFromKpa(1)).toBeCloseTo(7.50064, 4)
    expect(pressure.psiFromKpa(pressure.kpaFromBar(1))).toBeCloseTo(14.5038, 4)
    expect(pressure.kpaFromPsi(1)).toBeCloseTo(6.89476, 5)
    expect(pressure.kpaFromCmh2o(1)).toBeCloseTo(0.0980665, 12)
    expect(pressure.kpaFromTorr(760)).toBeCloseTo(101.325, 10)
    expect(temperature.kelvinFromC(37)).toBeCloseTo(310.15, 10)
    expect(temperature.celsiusFromF(98.6)).toBeCloseTo(37, 10)
    expect(length.cmFromInches(60)).toBeCloseTo(152.4, 10)
    expect(length.metresFromFeet(8000)).toBeCloseTo(2438.4, 10)
    expect(mass.kgFromLb(100)).toBeCloseTo(45.359237, 10)
    // 1 ft = 0.3048 m exactly, so 1 ft³ = 28.316846592 L.
    expect(volume.litresFromCubicFeet(1)).toBeCloseTo(3.048 ** 3, 12)
    expect(flow.lpsFromLpm(6)).toBeCloseTo(0.1, 12)
    expect(age.daysFromMonths(12)).toBeCloseTo(365.25, 10)
    expect(concentration.haemoglobinGPerDlFromMmolPerL(9.3)).toBeCloseTo(15, 1)
  })
})
