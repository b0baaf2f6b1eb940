// How long a plan may stand, case by case. Leaves out the clock of the page.
import { describe, expect, it } from 'vitest'
import { readCase } from '../src/patient/read-case.ts'
import { reassessment } from '../src/planning/reassess.ts'
import { EXAMPLE_FILES, parsedFile } from './support/examples.ts'

const CASES = EXAMPLE_FILES.flatMap((file) => {
  const read = readCase(parsedFile(file))
  return read.ok ? [read.case] : []
})

describe('a plan', () => {
  it('never outlasts the time for a blood gas in a patient at risk', () => {
    const atRisk = CASES.filter(({ patient }) => patient.retentionRisk !== 'none')
    expect(atRisk.length).toBeGreaterThan(3)
    // ODriscoll2017: blood gas within 30–60 minutes.
    for (const about of atRisk) expect(reassessment(about).withinMin).toBeLessThanOrEqual(60)
  })

  it('stands shortest where as much as possible is wanted, and longest for comfort', () => {
    const minutes = (kind: string): readonly number[] =>
      CASES.filter(({ goal }) => goal.kind === kind).map((one) => reassessment(one).withinMin)
    const all = CASES.map((one) => reassessment(one).withinMin)
    expect(Math.max(...minutes('as-much-as-possible'))).toBe(Math.min(...all))
    expect(minutes('comfort').length).toBeGreaterThan(0)
    expect(Math.max(...all)).toBe(Math.max(...minutes('comfort')))
  })

  it('says why, with a source or as common practice', () => {
    for (const about of CASES) {
      const { why } = reassessment(about)
      expect(why.known === 'common-practice' || why.source !== undefined).toBe(true)
    }
  })
})
