// Single values of a sheet's address as text and back, and the sum that shows a cut address. Leaves out which fields there are.
import { DomainError } from '../errors.ts'
import type { FragmentField } from './fragment-fields.ts'
import { wallTime } from './wall-clock.ts'

const RADIX = 36
const SUM_DIGITS = 7

export function written(field: FragmentField, value: unknown): string {
  switch (field.kind) {
    case 'number':
      return numberText(value)
    case 'flow':
      return value === 'flush' ? FLUSH : numberText(value)
    case 'flag':
      return value === true ? '1' : '0'
    case 'moment':
      return String(value).replaceAll(/[-T:]/g, '')
    case 'text':
      return escaped(String(value))
    case 'choice':
      return letterOf(field.of, value)
    case 'choices':
      return Array.isArray(value) ? value.map((one) => letterOf(field.of, one)).join('') : ''
  }
}

const FLUSH = 'F'
const NUMBER = /^-?\d+(\.\d+)?(e[+-]\d+)?$/
const MOMENT = /^(\d{4})(\d{2})(\d{2})(\d{2})(\d{2})$/

export function readValue(field: FragmentField, text: string): unknown {
  switch (field.kind) {
    case 'number':
      return numberOf(text)
    case 'flow':
      return text === FLUSH ? 'flush' : numberOf(text)
    case 'flag':
      return text === '1'
    case 'moment':
      return momentOf(field, text)
    case 'text':
      return unescaped(field, text)
    case 'choice':
      return field.of[Number.parseInt(text, RADIX)] ?? text
    case 'choices':
      return Array.from(text, (letter) => field.of[Number.parseInt(letter, RADIX)] ?? letter)
  }
}

/** As people type it; a number of many digits, which only arithmetic makes, as its 64 bits in eleven signs. */
function numberText(value: unknown): string {
  const text = String(value)
  if (text.length <= PACKED_SIGNS || typeof value !== 'number') return text
  BITS.setFloat64(0, value)
  let rest = BITS.getBigUint64(0)
  let signs = ''
  for (let at = 0; at < PACKED_SIGNS; at++) {
    signs += PACKED[Number(rest % 64n)] ?? ''
    rest /= 64n
  }
  return PACKED_MARK + signs
}

/** What is no number stays as it is, for the case reader to refuse. */
function numberOf(text: string): number | string {
  if (NUMBER.test(text)) return Number(text)
  if (!PACKED_NUMBER.test(text)) return text
  const bits = Array.from(text.slice(1)).reduceRight(
    (sum, sign) => sum * 64n + BigInt(PACKED.indexOf(sign)),
    0n,
  )
  BITS.setBigUint64(0, bits)
  return BITS.getFloat64(0)
}

const PACKED = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
const PACKED_MARK = '~'
const PACKED_SIGNS = 11
const PACKED_NUMBER = /^~[\w-]{11}$/
const BITS = new DataView(new ArrayBuffer(8))

function momentOf(field: FragmentField, text: string): string {
  const iso = text.replace(MOMENT, '$1-$2-$3T$4:$5')
  wallTime(iso, field.path)
  return iso
}

function letterOf(list: readonly string[], value: unknown): string {
  return list.findIndex((one) => one === value).toString(RADIX)
}

/** As an address allows it; the signs of set-up ids stay as they are. */
function escaped(text: string): string {
  if (/\p{Surrogate}/u.test(text)) {
    throw new DomainError({ code: 'UNREADABLE_TEXT', path: 'fragment', value: null })
  }
  return encodeURIComponent(text)
    .replaceAll(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)
    .replaceAll(/%2F|%40|%3A/g, (sign) => decodeURIComponent(sign))
}

function unescaped(field: FragmentField, text: string): string {
  try {
    return decodeURIComponent(text)
  } catch (thrown) {
    if (!(thrown instanceof URIError)) throw thrown
    throw new DomainError({ code: 'UNREADABLE_TEXT', path: field.path, value: null })
  }
}

/** FNV-1a over the text, which is plain ASCII: finds every cut and every slip of a hand that is not made on purpose. */
export function sumOf(text: string): string {
  let sum = FNV_START
  for (let at = 0; at < text.length; at++) {
    sum = Math.imul(sum ^ text.charCodeAt(at), FNV_PRIME)
  }
  return (sum >>> 0).toString(RADIX).padStart(SUM_DIGITS, '0')
}

const FNV_START = 0x811c9dc5
const FNV_PRIME = 0x01000193
