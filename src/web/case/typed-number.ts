// Reads one decimal as typed: dot or comma, no group signs, no exponent. Leaves out bounds, which the case reader judges.
import { decimalSign } from '../../words/say.ts'

export type TypedNumber =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  /** Not one decimal number; the text goes on to the case reader as it is. */
  | { readonly kind: 'refused'; readonly text: string; readonly suggestion?: number }

/** A sign, digits, and at most one decimal sign. */
const DECIMAL = /^[-−]?(?:\d+[.,]?\d*|[.,]\d+)$/
/** One decimal sign before exactly three digits, as in 1,180: a thousand and more, or one and a bit? */
const MAY_BE_GROUPED = /^[-−]?[1-9]\d{0,2}[.,]\d{3}$/

/** Reads the text, never more or less than it says. Where the sign may part thousands and both readings are allowed, it is refused. */
export function typedNumber(
  typed: string,
  bounds: { readonly min: number; readonly max: number },
): TypedNumber {
  const text = typed.trim()
  if (text === '') return { kind: 'empty' }
  if (!DECIMAL.test(text)) return { kind: 'refused', text }
  const plain = text.replace('−', '-')
  if (MAY_BE_GROUPED.test(text)) {
    const grouped = Number(plain.replace(/[.,]/, ''))
    if (grouped >= bounds.min && grouped <= bounds.max)
      return { kind: 'refused', text, suggestion: grouped }
  }
  // Adding zero makes a typed -0 a plain zero.
  return { kind: 'number', value: Number(plain.replace(',', '.')) + 0 }
}

const DIGITS_MOST = 100

/** A number as one would type it in the language spoken, read back as the same number: no exponent, nothing that may part thousands. */
export function textOfNumber(value: number): string {
  const text = String(value).includes('e')
    ? value.toFixed(DIGITS_MOST).replace(/\.?0+$/, '')
    : String(value)
  return (MAY_BE_GROUPED.test(text) ? `${text}0` : text).replace('.', decimalSign())
}
