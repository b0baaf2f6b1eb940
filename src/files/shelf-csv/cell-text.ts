// Text of single cells: items in one cell, numbers with point or comma, and cells a spreadsheet would run as a formula. Leaves out what the cells mean.
import type { NumberRule } from '../../kit/read-fields.ts'

export type CellBounds = Pick<NumberRule, 'min' | 'max'>

/** Between the items of one cell; neither separator nor decimal sign of any spreadsheet. */
const BETWEEN_ITEMS = ' | '
/** Stands for a list with nothing in it; an empty cell says nothing about the list. */
export const NO_ITEMS = 'none'

const PLAIN_NUMBER = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/
const COMMA_NUMBER = /^-?\d+,\d+$/
/** Digits that one country reads as thousands and another as thousandths. */
const GROUPED = /^-?[1-9]\d{0,2}[.,]\d{3}$/
/** What makes a spreadsheet take a cell for a formula, and our own mark against it. */
const FORMULA_LIKE = /^\s*[=+\-@\t\r\n'＝＋－＠]/u
const GUARD = "'"

/** A cell that no spreadsheet runs as a formula; plain numbers stay numbers. */
export function guarded(text: string): string {
  return FORMULA_LIKE.test(text) && !PLAIN_NUMBER.test(text) ? GUARD + text : text
}

/** The text as it was before `guarded`. */
export function unguarded(cell: string): string {
  const inner = cell.slice(GUARD.length)
  return cell.startsWith(GUARD) && FORMULA_LIKE.test(inner) ? inner : cell
}

/** The number, or the text as it stands where it is none or could mean two numbers that are both allowed. */
export function numberIn(text: string, bounds: CellBounds): number | string {
  const typed = text.trim()
  if (isAmbiguous(typed, bounds)) return typed
  if (PLAIN_NUMBER.test(typed)) return Number(typed)
  return COMMA_NUMBER.test(typed) ? Number(typed.replace(',', '.')) : typed
}

/** Whether sign and three digits could be thousands as well: 1.180 m and 1180 m are both altitudes. */
export function isAmbiguous(typed: string, { min, max }: CellBounds): boolean {
  const whole = GROUPED.test(typed) ? inThousands(typed) : Number.NaN
  return whole >= min && whole <= max
}

export function inThousands(typed: string): number {
  return Number(typed.replace(/[.,]/, ''))
}

/** As JavaScript writes it; with a zero behind it where it would be ambiguous, which changes no value. */
export function numberText(value: number, bounds: CellBounds): string {
  const text = String(value)
  return isAmbiguous(text, bounds) ? `${text}0` : text
}

export function joinItems(items: readonly string[]): string {
  return items.length === 0 ? NO_ITEMS : items.map(escaped).join(BETWEEN_ITEMS)
}

/** The items of a cell without the blanks around them; a backslash takes away the meaning of the sign behind it. */
export function splitItems(text: string): readonly string[] {
  if (text.trim() === NO_ITEMS) return []
  const items = ['']
  for (const [sign] of text.matchAll(/\\[\s\S]|[\s\S]/g)) {
    if (sign === '|') items.push('')
    else items[items.length - 1] += sign
  }
  return items.map((item) => unescaped(trimmed(item)))
}

/** Signs of ours, and blanks at either end, keep their place behind a backslash; so does the word for no items. */
function escaped(item: string): string {
  const signs = item.replaceAll(/[\\|]|^\s|\s$/g, (sign) => `\\${sign}`)
  return signs === NO_ITEMS ? `\\${signs}` : signs
}

function trimmed(item: string): string {
  const start = item.trimStart()
  const end = start.trimEnd()
  const [backslashes = ''] = /\\*$/.exec(end) ?? []
  const isBlankKept = backslashes.length % 2 === 1 && end.length < start.length
  return isBlankKept ? start.slice(0, end.length + 1) : end
}

function unescaped(item: string): string {
  return item.replaceAll(/\\([\s\S])/g, '$1')
}
