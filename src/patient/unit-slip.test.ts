// Suggested units: what is offered would be accepted.
import { describe, expect, it } from 'vitest'
import { NUMBERS } from './case-fields.ts'
import type { NumberRule } from './field.ts'
import { suggestedBySlip } from './unit-slip.ts'

const RULES: readonly (readonly [string, NumberRule])[] = Object.entries(NUMBERS)

describe('unit slips', () => {
  it.each(RULES)('%s: what is offered would be accepted', (_name, rule) => {
    expect(rule.min).toBeLessThan(rule.max)
    for (let power = -4; power <= 6; power += 0.05) {
      const suggestion = suggestedBySlip(10 ** power, rule)
      expect(suggestion ?? rule.min).toBeGreaterThanOrEqual(rule.min)
      expect(suggestion ?? rule.max).toBeLessThanOrEqual(rule.max)
    }
  })

  it.each(RULES.filter(([, rule]) => rule.slips !== undefined))(
    '%s: has a slip that is found',
    (_name, rule) => {
      const powers = Array.from({ length: 400 }, (_, i) => -4 + i / 40)
      const outside = powers.map((power) => 10 ** power).filter((x) => x < rule.min || x > rule.max)
      expect(outside.some((value) => suggestedBySlip(value, rule) !== undefined)).toBe(true)
    },
  )

  it('offers the first unit that fits, to three figures, and nothing when none fits', () => {
    const rule = NUMBERS.barometricPressureKpa
    expect(suggestedBySlip(760, rule)).toBe(101)
    expect(suggestedBySlip(870, rule)).toBe(87)
    expect(suggestedBySlip(14.7, rule)).toBe(101)
    expect(suggestedBySlip(29.92, rule)).toBe(101)
    expect(suggestedBySlip(101_325, rule)).toBe(101)
    expect(suggestedBySlip(300, rule)).toBeUndefined()
  })
})
