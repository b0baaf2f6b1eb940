// What is said of bad input: got, allowed, did you mean. Leaves out which inputs are bad.
import { describe, expect, it } from 'vitest'
import { ERROR_CODES } from '../errors.ts'
import type { ErrorCode, Problem } from '../errors.ts'
import { problemText } from './problem-text.ts'

// Safe: the keys of the table are its codes.
const CODES = Object.keys(ERROR_CODES) as readonly ErrorCode[]

describe('problems in words', () => {
  it('say what was got, what is allowed and what may have been meant', () => {
    expect(
      problemText({
        code: 'UNIT_SLIP_SUSPECTED',
        path: 'patient.haemoglobinGpl',
        value: 12,
        limit: { min: 30, max: 250 },
        unit: 'g/L',
        suggestion: 120,
      }),
    ).toBe('haemoglobin 12 g/L outside 30–250 g/L; did you mean 120 g/L?')
    expect(
      problemText({
        code: 'FLOW_OUT_OF_RANGE',
        path: 'flowLpm',
        value: 70,
        limit: { min: 1, max: 60 },
        unit: 'L/min',
      }),
    ).toBe('flow 70 L/min outside 1–60 L/min')
    expect(
      problemText({
        code: 'UNKNOWN_CHOICE',
        path: 'breathing.state',
        value: 'rset',
        limit: { oneOf: ['rest', 'sleep'] },
        suggestion: 'rest',
      }),
    ).toBe('breathing state: unknown choice “rset” (allowed: rest, sleep); did you mean rest?')
  })

  it('show the number as typed, never rounded', () => {
    const text = problemText({
      code: 'RATE_OUT_OF_RANGE',
      path: 'breathing.ratePerMin',
      value: 1234.56789,
      limit: { max: 150 },
      unit: '/min',
    })
    expect(text).toBe('breathing rate 1234.56789/min outside at most 150/min')
  })

  it('name a list entry by its field', () => {
    const problem: Problem = { code: 'DUPLICATE_ID', path: 'patient.changes[2]', value: 'beard' }
    expect(problemText(problem)).toBe('what changes the interface: “beard” stands here twice')
  })

  it('say what to do where the patient must not be planned for', () => {
    const path = 'breathing.state'
    expect(problemText({ code: 'NOT_BREATHING_REFUSED', path, value: 'gasping' })).toContain(
      'bag and mask',
    )
    expect(problemText({ code: 'VENTILATED_REFUSED', path, value: 'cpap' })).toContain(
      'breathe by themselves',
    )
  })

  it.each(CODES)('have a text for %s in lower case without a code in it', (code) => {
    const problems: readonly Problem[] = [
      { code, path: 'patient.weightKg', value: 12, limit: { min: 30, max: 250 }, unit: 'kg' },
      { code, path: 'somewhere.new', value: 'abc', limit: { oneOf: ['one', 'two'] } },
      { code, path: '', value: null },
    ]
    for (const problem of problems) {
      const text = problemText(problem)
      expect(text.length).toBeGreaterThan(8)
      expect(text).not.toMatch(/[A-Z]+_[A-Z_]+|undefined|\[object|NaN/)
      expect(text).toBe(text.trim())
      expect(text.at(-1)).not.toBe('.')
    }
  })
})
