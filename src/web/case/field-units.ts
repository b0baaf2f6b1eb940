// Fields whose unit a reader chooses: what was typed keeps its unit and its digits, and is shown in the unit chosen. Leaves out judging.
import type { Limit, Problem } from '../../errors.ts'
import { CHOOSABLE_UNITS, fromInside, INSIDE_UNITS, toInside } from '../../units/choosable.ts'
import type { ChoosableQuantity, ChoosableUnit } from '../../units/choosable.ts'
import { quantityAt } from '../../words/shown-unit.ts'
import { withText } from './draft.ts'
import type { Draft } from './draft.ts'
import { textOfNumber, typedNumber } from './typed-number.ts'
import type { TypedNumber } from './typed-number.ts'

interface Bounds {
  readonly min: number
  readonly max: number
}

const ANY: Bounds = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY }

/** The unit in which the field was typed; undefined for a field that has one unit everywhere. */
export function typedUnit(draft: Draft, field: string): ChoosableUnit | undefined {
  const quantity = quantityAt(field)
  return quantity === undefined ? undefined : (draft.units?.[field] ?? INSIDE_UNITS[quantity])
}

/** The draft with this text, typed in this unit. */
export function withEntry(
  draft: Draft,
  entry: { readonly field: string; readonly text: string; readonly unit: ChoosableUnit },
): Draft {
  const { field, text, unit } = entry
  const quantity = quantityAt(field)
  const { [field]: _, ...others } = draft.units ?? {}
  const isInside = quantity === undefined || unit === INSIDE_UNITS[quantity]
  const units = isInside || text.trim() === '' ? others : { ...others, [field]: unit }
  const { units: __, ...rest } = withText(draft, field, text)
  return Object.keys(units).length === 0 ? rest : { ...rest, units }
}

/** Reads a text typed in this unit as a value inside; bounds are those inside. */
export function typedInside(
  text: string,
  how: { readonly unit: ChoosableUnit; readonly bounds: Bounds },
): TypedNumber {
  const { unit, bounds } = how
  const read = typedNumber(text, {
    min: fromInside(bounds.min, unit),
    max: fromInside(bounds.max, unit),
  })
  return read.kind === 'number' ? { ...read, value: toInside(read.value, unit) } : read
}

/** What stands in the field; `typedAs` where that is not what was typed. */
export interface ShownEntry {
  readonly text: string
  readonly unit: ChoosableUnit
  readonly typedAs?: { readonly text: string; readonly unit: ChoosableUnit }
}

const SHOWN_DIGITS = 4

/** What was typed, in the unit chosen. What is refused, and what reads as no number, stands as it was typed, in its unit. */
export function shownEntry(entry: {
  readonly text: string
  readonly unit: ChoosableUnit
  readonly chosen: ChoosableUnit
  readonly isRefused: boolean
}): ShownEntry {
  const { text, unit, chosen, isRefused } = entry
  if (text.trim() === '') return { text, unit: chosen }
  const read = typedNumber(text, ANY)
  // With no bounds every sign that may part thousands is doubtful; where it was accepted, it is the decimal sign.
  const isDecimal =
    read.kind === 'number' || (read.kind === 'refused' && read.suggestion !== undefined)
  const value = isDecimal ? decimalOf(text) : undefined
  if (unit === chosen || isRefused || value === undefined) return { text, unit }
  const converted = fromInside(toInside(value, unit), chosen)
  const shown = textOfNumber(Number(converted.toPrecision(SHOWN_DIGITS)))
  return { text: shown, unit: chosen, typedAs: { text: text.trim(), unit } }
}

function decimalOf(text: string): number | undefined {
  const value = Number(text.trim().replace('−', '-').replace(',', '.'))
  return Number.isFinite(value) ? value : undefined
}

/** A problem of a case in the unit its field was typed in: value as typed, limits inside what is allowed. */
export function inTypedUnit(
  problem: Problem,
  typed: { readonly text: string; readonly unit: ChoosableUnit },
): Problem {
  const { text, unit } = typed
  const quantity = quantityAt(problem.path)
  if (quantity === undefined || unit === INSIDE_UNITS[quantity]) return problem
  const { suggestion: _, ...rest } = problem
  const { limit } = problem
  const value =
    typeof problem.value === 'number' ? (decimalOf(text) ?? problem.value) : problem.value
  const meant = limit === undefined ? undefined : meantIn({ value, unit, quantity, limit })
  const isSlip = problem.code === 'UNIT_SLIP_SUSPECTED' || problem.code.endsWith('_OUT_OF_RANGE')
  return {
    ...rest,
    value,
    unit,
    ...(limit === undefined ? {} : { limit: limitIn(limit, unit) }),
    ...(isSlip && meant !== undefined ? { suggestion: meant } : {}),
  }
}

const LIMIT_DIGITS = 4

/** Rounded towards the inside, so that what is printed as allowed is allowed. */
function limitIn(limit: Limit, unit: ChoosableUnit): Limit {
  if ('oneOf' in limit) return limit
  const { min, max } = limit
  return {
    ...(min === undefined ? {} : { min: rounded(fromInside(min, unit), Math.ceil) }),
    ...(max === undefined ? {} : { max: rounded(fromInside(max, unit), Math.floor) }),
  }
}

function rounded(value: number, round: (value: number) => number): number {
  const digits = LIMIT_DIGITS - 1 - Math.floor(Math.log10(Math.abs(value) || 1))
  return Number((round(value * 10 ** digits) / 10 ** digits).toPrecision(LIMIT_DIGITS))
}

const MEANT_DIGITS = 3

/** The number typed may belong to another unit of the quantity; offered in the unit of the field. */
function meantIn(typed: {
  readonly value: Problem['value']
  readonly unit: ChoosableUnit
  readonly quantity: ChoosableQuantity
  readonly limit: Limit
}): number | undefined {
  const { value, unit, quantity, limit } = typed
  if (typeof value !== 'number' || 'oneOf' in limit) return undefined
  const { min = ANY.min, max = ANY.max } = limit
  return CHOOSABLE_UNITS[quantity]
    .filter((other) => other !== unit)
    .map((other) => toInside(value, other))
    .filter((inside) => inside >= min && inside <= max)
    .map((inside) => Number(fromInside(inside, unit).toPrecision(MEANT_DIGITS)))
    .at(0)
}
