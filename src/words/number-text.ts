// Numbers as people read them: leading zero, no trailing zeros, never finer than the step or the spread they have. Leaves out what the numbers mean.
import { assert } from '../errors.ts'
import type { Band } from '../planning/plan-types.ts'
import { fromInside } from '../units/choosable.ts'
import type { UnitOf } from '../units/choosable.ts'
import { decimalSign, say } from './say.ts'

/** Steps at which each kind of number is shown. */
export const SHOWN_STEPS = {
  o2Fraction: 0.01,
  saturationPercent: 1,
  chancePercent: 5,
  flowLpm: 0.01,
  pressureKpa: 0.1,
  pressureMmhg: 1,
} as const

export type PressureUnit = UnitOf<'pressure'>

const MINUS = '−'
/** More digits than any step here has. */
const DIGITS_MAX = 12
const PER_CENT = 100

/** The number at the given step: 0.5, 2, −3. A number that is none is a bug, never printed. */
export function numberText(value: number, step: number): string {
  assert(Number.isFinite(value), 'words/number finite')
  assert(step > 0, 'words/step positive')
  const rounded = Math.round(value / step) * step
  const text = trimmed(Math.abs(rounded), decimalsOf(step))
  return rounded < 0 && text !== '0' ? MINUS + text : text
}

/** The number with the digits it was typed or stored with, at most six of them significant. */
export function plainNumberText(value: number): string {
  assert(Number.isFinite(value), 'words/number finite')
  const text = trimmed(Math.abs(Number(value.toPrecision(6))), DIGITS_MAX)
  return value < 0 && text !== '0' ? MINUS + text : text
}

export function rangeText(range: {
  readonly low: number
  readonly high: number
  readonly step: number
  readonly unit?: string
}): string {
  const low = numberText(range.low, range.step)
  const high = numberText(range.high, range.step)
  return withUnit(low === high ? low : `${low}–${high}`, range.unit)
}

/** A number with its unit; the unit 1 is not printed, and a rate stands without a gap: 22/min. */
export function withUnit(text: string, unit: string | undefined): string {
  if (unit === undefined || unit === '' || unit === '1') return text
  return unit.startsWith('/') ? text + unit : `${text} ${UNIT_TEXTS[unit] ?? unit}`
}

const TIME_UNIT_TEXTS = { a: say('years'), mo: say('months'), wk: say('weeks'), d: say('days') }

/** Unit codes that print otherwise. */
const UNIT_TEXTS: Readonly<Record<string, string>> = { ...TIME_UNIT_TEXTS, cmH2O: 'cmH₂O' }

/** Words that stand behind a number like a unit. */
export const TIME_WORDS: readonly string[] = Object.values(TIME_UNIT_TEXTS)

/** The largest power of ten of which at least four fit into the width: no finer than the spread deserves. */
export function stepForWidth(width: number): number {
  assert(width > 0, 'words/width positive')
  return 10 ** Math.floor(Math.log10(width / 4))
}

export function fractionText(fraction: number): string {
  return numberText(fraction, SHOWN_STEPS.o2Fraction)
}

/** A share 0–1 as a whole percentage. */
export function percentText(share: number, stepPercent = 1): string {
  return `${numberText(PER_CENT * share, stepPercent)} %`
}

/** "about 0.45, 0.38–0.54"; one number where the spread is below the step. */
export function fractionBandText(band: Band): string {
  return bandText(band, { step: SHOWN_STEPS.o2Fraction })
}

/** "about 91 %, 87–94 %" */
export function saturationBandText(band: Band): string {
  return bandText(band, { step: SHOWN_STEPS.saturationPercent, unit: '%' })
}

export function bandText(
  band: Band,
  shown: { readonly step: number; readonly unit?: string },
): string {
  const { step, unit } = shown
  const middle = withUnit(numberText(band.median, step), unit)
  const spread = rangeText({ low: band.low, high: band.high, ...shown })
  return spread === middle
    ? say('about {value}', { value: middle })
    : say('about {middle}, {spread}', { middle, spread })
}

const CHANCE_SHOWN_MIN = 0.05
const CHANCE_SHOWN_MAX = 0.95

/** A chance in steps of 5 %: "about 65 %", "under 5 %", "over 95 %". */
export function chanceText(share: number): string {
  assert(share >= 0 && share <= 1 + 1e-9, 'words/chance within 0–1')
  if (share < CHANCE_SHOWN_MIN)
    return say('under {value}', { value: percentText(CHANCE_SHOWN_MIN) })
  if (share > CHANCE_SHOWN_MAX) return say('over {value}', { value: percentText(CHANCE_SHOWN_MAX) })
  return say('about {value}', { value: percentText(share, SHOWN_STEPS.chancePercent) })
}

/** Stored in kPa, shown in the unit the ward uses. */
export function pressureText(pressure: {
  readonly pressureKpa: number
  readonly unit: PressureUnit
}): string {
  return pressure.unit === 'kPa'
    ? `${numberText(pressure.pressureKpa, SHOWN_STEPS.pressureKpa)} kPa`
    : `${numberText(fromInside(pressure.pressureKpa, pressure.unit), SHOWN_STEPS.pressureMmhg)} ${pressure.unit}`
}

/** "about 9.2 kPa, 7.8–11 kPa" */
export function pressureBandText(band: Band, unit: PressureUnit): string {
  const inUnit = (pressureKpa: number): number => fromInside(pressureKpa, unit)
  const shown = { median: inUnit(band.median), low: inUnit(band.low), high: inUnit(band.high) }
  const step = unit === 'kPa' ? SHOWN_STEPS.pressureKpa : SHOWN_STEPS.pressureMmhg
  return bandText(shown, { step: Math.max(step, stepForBand(shown)), unit })
}

function stepForBand(band: Band): number {
  return band.high > band.low ? stepForWidth(band.high - band.low) : 0
}

/** A flow as set on a meter; meters in mL/min have steps of 0.01 L/min. */
export function flowText(flowLpm: number, stepLpm: number = SHOWN_STEPS.flowLpm): string {
  return `${numberText(flowLpm, stepLpm)} L/min`
}

const MINUTES_PER_HOUR = 60

/** "40 min", "1 h 20 min", "3 h" */
export function durationText(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / MINUTES_PER_HOUR)
  const rest = whole % MINUTES_PER_HOUR
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}

/** Twenty-four hours, two digits each: 07:05. */
export function clockText(time: { readonly hour: number; readonly minute: number }): string {
  return `${twoDigits(time.hour)}:${twoDigits(time.minute)}`
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0')
}

function decimalsOf(step: number): number {
  for (let digits = 0; digits < DIGITS_MAX; digits++) {
    const scaled = step * 10 ** digits
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6 && Math.round(scaled) > 0) return digits
  }
  return DIGITS_MAX
}

function trimmed(magnitude: number, decimals: number): string {
  const text = magnitude.toFixed(decimals)
  if (!text.includes('.')) return text
  return text.replace(/0+$/, '').replace(/\.$/, '').replace('.', decimalSign())
}
