// Every rule of the case reader, one bad input each, as listed in support/bad-cases.ts. Leaves out how a page shows it.
import { describe, expect, it } from 'vitest'
import { readCase } from '../src/patient/read-case.ts'
import { BAD_CASES, edited, GONE } from './support/bad-cases.ts'

describe('the case reader refuses', () => {
  it('has at least sixty bad inputs to refuse', () => {
    expect(BAD_CASES.length).toBeGreaterThanOrEqual(60)
  })

  it.each(BAD_CASES)('$what', (bad) => {
    const input = edited(bad)
    const before = structuredClone(input)
    const read = readCase(input)
    expect(input).toEqual(before)
    const problems = read.ok ? [] : read.problems
    const found = problems.find(({ code, path }) => code === bad.code && path === bad.path)
    expect(found, JSON.stringify(problems)).toBeDefined()
    expect(found?.suggestion).toEqual(bad.suggestion)
  })

  it('says every problem at once, none twice', () => {
    const read = readCase(
      edited({
        what: '',
        code: 'MISSING_FIELD',
        path: '',
        edits: [
          ['patient.weightKg', '62,5'],
          ['patient.haemoglobinGpl', 12],
          ['patient.hieghtCm', 160],
          ['breathing.state', 'pnuemonia'],
          ['site', { barometricPressureKpa: 1013 }],
          ['goal.lowPercent', 99],
          ['onNow.setUp.family', 'prongs'],
          ['onNow.setUp.flowLpm', GONE],
        ],
      }),
    )
    const problems = read.ok ? [] : read.problems
    const places = problems.map(({ code, path }) => `${code} ${path}`)
    expect(places.toSorted()).toEqual([
      'MISSING_FIELD onNow.setUp.flowLpm',
      'NOT_A_NUMBER patient.weightKg',
      'RANGE_REVERSED goal.highPercent',
      'UNIT_SLIP_SUSPECTED patient.haemoglobinGpl',
      'UNIT_SLIP_SUSPECTED site.barometricPressureKpa',
      'UNKNOWN_CHOICE breathing.state',
      'UNKNOWN_CHOICE onNow.setUp.family',
      'UNKNOWN_FIELD patient.hieghtCm',
    ])
  })

  it.each([undefined, null, 3, 'text', [], true])('an input that is no object: %s', (input) => {
    const read = readCase(input)
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['NOT_AN_OBJECT'])
  })
})
