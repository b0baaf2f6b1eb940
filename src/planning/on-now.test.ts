// The set-up in force made whole from the shelf. Leaves out its breath.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { nextStep } from '../kit/flow-steps.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { setUpOfOnNow } from './on-now.ts'

const ADULT = { ageYears: 67, weightKg: 62, heightCm: 170 }
const CANNULA: SetUpOnNow = {
  family: 'nasal-cannula',
  sourceKind: 'wall-flowmeter',
  flowLpm: 3,
}

describe('the source of what is on now', () => {
  it('is the meter that the shelf holds most of, so that 3 L/min can be turned up', () => {
    const { source, flow } = setUpOfOnNow(CANNULA, DEMO_SHELF, ADULT)
    expect(source.id).toBe('wall-15')
    expect(nextStep(source, flow, 'up')).toEqual({ kind: 'scale', flowLpm: 4 })
  })

  it('is a finer meter where only that has the mark', () => {
    const { source } = setUpOfOnNow({ ...CANNULA, flowLpm: 0.02 }, DEMO_SHELF, ADULT)
    expect(source.id).toBe('wall-200-ml')
  })

  it('is a plain meter set to just that flow where no meter of the shelf has the mark', () => {
    const { source, flow } = setUpOfOnNow({ ...CANNULA, flowLpm: 3.33 }, DEMO_SHELF, ADULT)
    expect(source.id).toBe('typed')
    expect(flow).toEqual({ kind: 'scale', flowLpm: 3.33 })
  })
})
