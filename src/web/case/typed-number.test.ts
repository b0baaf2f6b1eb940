// What the strict decimal field reads, and what it refuses.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../../test/support/seed.ts'
import { textOfNumber, typedNumber } from './typed-number.ts'

const ANY = { min: -1e9, max: 1e9 }
const FLOW = { min: 0.01, max: 70 }
const ALTITUDE = { min: -450, max: 5800 }

describe('typedNumber', () => {
  it.each([
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 24 ', 24],
    ['0,125', 0.125],
    ['0.125', 0.125],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['-430', -430],
    ['−430', -430],
    ['150', 150],
  ])('reads %j as it says', (text, value) => {
    expect(typedNumber(text, FLOW)).toEqual({ kind: 'number', value })
  })

  it.each([
    '1e1',
    '1E1',
    '1.2.3',
    '1,2,3',
    '1,234.5',
    '1 180',
    "1'180",
    '1_0',
    '0x10',
    '+5',
    '.',
    ',',
    '-',
    'NaN',
    'Infinity',
    '٣',
    '5 L',
  ])('refuses %j and keeps it', (text) => {
    expect(typedNumber(text, FLOW)).toEqual({ kind: 'refused', text })
  })

  it('is empty where nothing is typed', () => {
    expect(typedNumber('  ', FLOW)).toEqual({ kind: 'empty' })
  })

  it('refuses a sign that may part thousands where both readings are allowed, and offers the whole number', () => {
    for (const text of ['1,180', '1.180']) {
      expect(typedNumber(text, ALTITUDE)).toEqual({ kind: 'refused', text, suggestion: 1180 })
    }
  })

  it('reads three decimals where the whole number would not be allowed', () => {
    expect(typedNumber('1,234', FLOW)).toEqual({ kind: 'number', value: 1.234 })
    expect(typedNumber('7.345', { min: 6.5, max: 8 })).toEqual({ kind: 'number', value: 7.345 })
  })

  it('never clamps: what is out of range comes back as typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (value) => {
        expect(typedNumber(String(value), FLOW)).toEqual({ kind: 'number', value })
      }),
      seeded(500),
    )
  })

  it('reads dot and comma alike, to the digit that was typed', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: 99_999 }),
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 4, maxLength: 8 }),
        (whole, digits) => {
          const dot = `${whole}.${digits.join('')}`
          const read = { kind: 'number', value: Number.parseFloat(dot) }
          expect(typedNumber(dot, ANY)).toEqual(read)
          expect(typedNumber(dot.replace('.', ','), ANY)).toEqual(read)
        },
      ),
      seeded(500),
    )
  })

  it('reads a number written for the field as the same number', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-60, max: 1e6, noNaN: true }), (value) => {
        expect(typedNumber(textOfNumber(value), ANY)).toEqual({ kind: 'number', value })
        expect(typedNumber(textOfNumber(-value), ANY)).toEqual({ kind: 'number', value: -value })
      }),
      seeded(500),
    )
  })

  it('gives for any text nothing, exactly what it says, or the text itself', () => {
    const characters = Array.from('0123456789.,-−+eE \u00a0')
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...characters) }), (text) => {
        expect(kindAndValue(typedNumber(text, NEVER_GROUPED))).toEqual(byHand(text.trim()))
      }),
      seeded(2000),
    )
  })
})

/** Bounds that no whole number of four digits or more fits, so that no sign can part thousands. */
const NEVER_GROUPED = { min: -999, max: 999 }

function kindAndValue(read: ReturnType<typeof typedNumber>): readonly unknown[] {
  return read.kind === 'number' ? ['number', read.value] : [read.kind]
}

/** The same by walking the characters: sign, digits, at most one decimal sign, at least one digit. */
function byHand(text: string): readonly unknown[] {
  if (text === '') return ['empty']
  const isNegative = text.startsWith('-') || text.startsWith('−')
  let value = 0
  let digits = 0
  let decimals = -1
  for (const character of isNegative ? text.slice(1) : text) {
    const digit = '0123456789'.indexOf(character)
    if (digit < 0 && (decimals >= 0 || (character !== '.' && character !== ','))) return ['refused']
    if (digit >= 0) {
      value = 10 * value + digit
      digits += 1
    }
    if (digit < 0 || decimals >= 0) decimals += 1
  }
  if (digits === 0) return ['refused']
  const whole = decimals > 0 ? value / 10 ** decimals : value
  return ['number', expect.closeTo(isNegative ? -whole : whole, 9)]
}
