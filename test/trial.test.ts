// A trial is the plan's own answer at another flow or rate: the same draws, the same numbers where nothing is changed. Leaves out the page.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { readCase } from '../src/patient/read-case.ts'
import type { Case } from '../src/patient/case.ts'
import { makePlan } from '../src/planning/plan.ts'
import { openTrials } from '../src/planning/trial.ts'
import { parsedExample } from './support/examples.ts'

const DRAWS = 128

function caseOf(name: string): Case {
  const read = readCase(parsedExample(name))
  if (!read.ok) throw new Error(`${name} is refused`)
  return read.case
}

function asked(name: string) {
  return { case: caseOf(name), shelf: DEMO_SHELF, wardId: 'heron', draws: DRAWS }
}

describe('a trial', () => {
  it('with nothing changed says what the plan says, for ranked set-ups and for what is on now', () => {
    const question = asked('nasal-cannula')
    const plan = makePlan(question)
    const trials = openTrials(question)
    const { onNow } = plan
    if (onNow === null) throw new Error('something is on')
    for (const row of [...plan.ranked.slice(0, 6), onNow]) {
      const trial = trials.at({ setUp: row.setUp })
      expect(trial.effectiveO2Fraction).toEqual(row.effectiveO2Fraction)
      expect(trial.saturationPercent).toEqual(row.saturationPercent)
      expect(trial.chance).toEqual(row.chance)
      expect(trial.oxygenUsedLpm).toBeCloseTo(row.oxygenUsedLpm, 6)
      expect(trial.against).toEqual([])
    }
    expect(trials.onNow).toEqual(onNow.setUp)
  })

  it('gives more at a higher flow, and less the faster the patient breathes on a low flow', () => {
    const trials = openTrials(asked('nasal-cannula'))
    const setUp = trials.onNow
    if (setUp === null) throw new Error('something is on')
    const atFlow = [1, 2, 3].map(
      (flowLpm) =>
        trials.at({ setUp: { ...setUp, flow: { kind: 'scale', flowLpm } } }).effectiveO2Fraction
          .median,
    )
    expect(atFlow).toEqual(atFlow.toSorted((a, b) => a - b))
    expect(new Set(atFlow).size).toBe(3)
    const atRate = [12, 20, 30, 40].map((ratePerMin) => trials.at({ setUp, ratePerMin }))
    const medians = atRate.map((trial) => trial.effectiveO2Fraction.median)
    expect(medians).toEqual(medians.toSorted((a, b) => b - a))
    expect(new Set(medians).size).toBe(4)
    const shares = atRate.map((trial) => trial.breath?.origins.room ?? 0)
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
  })

  it('of room air gives room air and no breath to draw', () => {
    const trial = openTrials(asked('nasal-cannula')).at({ setUp: null })
    expect(trial.effectiveO2Fraction).toEqual({ median: 0.2095, low: 0.2095, high: 0.2095 })
    expect(trial.breath).toBeNull()
  })

  it('says what the plan would rule out, and what the shelf does not hold', () => {
    const question = asked('simple-mask')
    const trials = openTrials(question)
    const setUp = trials.onNow
    if (setUp === null) throw new Error('something is on')
    const low = trials.at({ setUp: { ...setUp, flow: { kind: 'scale', flowLpm: 2 } } })
    expect(low.isOnShelf === false || low.against.length > 0).toBe(true)
    const high = trials.at({ setUp: { ...setUp, flow: { kind: 'scale', flowLpm: 15 } } })
    expect(high.isOnShelf === false || high.against.length > 0).toBe(true)
  })

  it('keeps the rates it may be dragged over round the one in force', () => {
    const { rates } = openTrials(asked('nasal-cannula'))
    expect(rates.isTyped).toBe(true)
    expect(rates.middlePerMin).toBeGreaterThanOrEqual(rates.minPerMin)
    expect(rates.middlePerMin).toBeLessThanOrEqual(rates.maxPerMin)
  })
})
