// Errors as data: code, path, value, limit and the compact message.
import { describe, expect, it } from 'vitest'
import { assert, BugError, DomainError, isDomainError, problemOf, requireWithin } from './errors.ts'

describe('errors', () => {
  it('puts code and fields, no sentence, in the message', () => {
    const error = new DomainError({
      code: 'FLOW_OUT_OF_RANGE',
      path: 'flowLpm',
      value: 70,
      limit: { min: 1, max: 60 },
      unit: 'L/min',
    })
    expect(error.message).toBe('FLOW_OUT_OF_RANGE flowLpm 70 (1–60 L/min)')
    const choice = new DomainError({
      code: 'UNKNOWN_CHOICE',
      path: 'sex',
      value: 'm',
      limit: { oneOf: ['male', 'female'] },
      suggestion: 'male',
    })
    expect(choice.message).toBe('UNKNOWN_CHOICE sex m (male|female) ~ male')
    expect(new DomainError({ code: 'MISSING_FIELD', path: 'weightKg', value: null }).message).toBe(
      'MISSING_FIELD weightKg null',
    )
    expect(
      new DomainError({ code: 'VALUE_OUT_OF_RANGE', path: 'x', value: -1, limit: { min: 0 } })
        .message,
    ).toBe('VALUE_OUT_OF_RANGE x -1 (≥0)')
  })

  it('gives back the problem it was made from', () => {
    const problem = {
      code: 'AGE_OUT_OF_RANGE',
      path: 'ageYears',
      value: 140,
      limit: { max: 120 },
      unit: 'y',
    } as const
    const error = new DomainError(problem)
    expect(problemOf(error)).toEqual(problem)
    expect(JSON.parse(JSON.stringify(problemOf(error)))).toEqual(problem)
    expect(isDomainError(error)).toBe(true)
    expect(isDomainError(new Error('other'))).toBe(false)
  })

  it('lets values inside the limits through and refuses the rest, NaN included', () => {
    const bounds = {
      code: 'RATE_OUT_OF_RANGE',
      path: 'ratePerMin',
      min: 3,
      max: 120,
      unit: '/min',
    } as const
    expect(requireWithin({ ...bounds, value: 3 })).toBe(3)
    expect(() => requireWithin({ ...bounds, value: 121 })).toThrow(
      'RATE_OUT_OF_RANGE ratePerMin 121 (3–120 /min)',
    )
    expect(() => requireWithin({ ...bounds, value: Number.NaN })).toThrow(
      'NOT_A_NUMBER ratePerMin NaN',
    )
    expect(() => requireWithin({ ...bounds, value: Number.POSITIVE_INFINITY })).toThrow(
      'NOT_A_NUMBER',
    )
  })

  it('keeps a bug apart from bad input', () => {
    expect(() => assert(true, 'holds')).not.toThrow()
    expect(() => assert(false, 'tracers sum to one')).toThrow(BugError)
  })
})
