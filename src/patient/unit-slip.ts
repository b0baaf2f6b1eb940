// Numbers typed in another unit: what each field may have been typed in, and the value it would then be. Offers, never converts.
import { cmFromInches, metresFromFeet } from '../units/length.ts'
import { kgFromG, kgFromLb } from '../units/mass.ts'
import { lpmFromMlPerMin } from '../units/flow.ts'
import { kpaFromMmhg, kpaFromPsi } from '../units/pressure.ts'
import { celsiusFromF } from '../units/temperature.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { yearsFromMonths } from '../units/age.ts'

/** Another unit, and the range in our unit within which the converted value is believable. */
export interface UnitSlip {
  readonly from: string
  readonly convert: (value: number) => number
  readonly min: number
  readonly max: number
}

const SUGGESTED_DIGITS = 3

/** The first believable conversion that the field would accept, to three figures; undefined when there is none. */
export function suggestedBySlip(
  value: number,
  field: { readonly min: number; readonly max: number; readonly slips?: readonly UnitSlip[] },
): number | undefined {
  for (const slip of field.slips ?? []) {
    const converted = roundForSuggestion(slip.convert(value))
    const isBelievable = converted >= slip.min && converted <= slip.max
    if (isBelievable && converted >= field.min && converted <= field.max) return converted
  }
  return undefined
}

export function roundForSuggestion(value: number): number {
  return Number(value.toPrecision(SUGGESTED_DIGITS))
}

const KPA_PER_INHG = 3.386389
const PER_CENT = 100
const PER_MILLE = 1000
const DAYS_PER_YEAR = 365.25

const times =
  (factor: number) =>
  (value: number): number =>
    value * factor

/** pH from hydrogen ion concentration in nmol/L: 9 − log10(c). */
const phFromNmolPerL = (value: number): number => 9 - Math.log10(value)

export const SLIPS = {
  ageYears: [
    { from: 'months', convert: yearsFromMonths, min: 0.1, max: 21 },
    { from: 'days', convert: times(1 / DAYS_PER_YEAR), min: 0.1, max: 21 },
  ],
  gestationWeeks: [
    { from: 'days', convert: times(1 / 7), min: 22, max: 44 },
    { from: 'months', convert: times(4.345), min: 22, max: 44 },
  ],
  weightKg: [
    { from: 'g', convert: kgFromG, min: 0.35, max: 20 },
    { from: 'lb', convert: kgFromLb, min: 0.3, max: 300 },
  ],
  heightCm: [
    { from: 'm', convert: times(PER_CENT), min: 30, max: 230 },
    { from: 'mm', convert: times(1 / 10), min: 30, max: 230 },
    { from: 'in', convert: cmFromInches, min: 30, max: 230 },
  ],
  haemoglobinGpl: [
    { from: 'g/dL', convert: times(10), min: 30, max: 250 },
    { from: 'kg/L', convert: times(PER_MILLE), min: 30, max: 250 },
  ],
  temperatureC: [
    { from: '°F', convert: celsiusFromF, min: 28, max: 43 },
    { from: 'K', convert: (value) => value - 273.15, min: 28, max: 43 },
  ],
  arterialPco2Kpa: [
    { from: 'mmHg', convert: kpaFromMmhg, min: 2, max: 24 },
    { from: 'hPa', convert: times(1 / 10), min: 2, max: 24 },
  ],
  arterialPo2Kpa: [{ from: 'mmHg', convert: kpaFromMmhg, min: 2, max: 80 }],
  ph: [{ from: 'nmol/L', convert: phFromNmolPerL, min: 6.8, max: 7.8 }],
  fraction: [{ from: '%', convert: times(1 / PER_CENT), min: 0.21, max: 1 }],
  share: [{ from: '%', convert: times(1 / PER_CENT), min: 0.011, max: 1 }],
  percent: [{ from: '1', convert: times(PER_CENT), min: 40, max: 100 }],
  barometricPressureKpa: [
    { from: 'mmHg', convert: kpaFromMmhg, min: 50, max: 107 },
    { from: 'hPa', convert: times(1 / 10), min: 50, max: 107 },
    { from: 'Pa', convert: times(1 / PER_MILLE), min: 50, max: 107 },
    { from: 'inHg', convert: times(KPA_PER_INHG), min: 50, max: 107 },
    { from: 'psi', convert: kpaFromPsi, min: 50, max: 107 },
    { from: 'atm', convert: times(STANDARD_PRESSURE_KPA), min: 50, max: 107 },
  ],
  altitudeM: [{ from: 'ft', convert: metresFromFeet, min: 1700, max: 5800 }],
  flowLpm: [{ from: 'mL/min', convert: lpmFromMlPerMin, min: 0.01, max: 6 }],
  tidalVolumeMl: [{ from: 'L', convert: times(PER_MILLE), min: 20, max: 3000 }],
  oxygenUptakeMlPerMin: [{ from: 'L/min', convert: times(PER_MILLE), min: 20, max: 3000 }],
} as const satisfies Record<string, readonly UnitSlip[]>
