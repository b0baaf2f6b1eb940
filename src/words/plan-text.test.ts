// A plan in words: answer first, chances with whose they are, reasons with their number. Leaves out the numbers' making.
import { describe, expect, it } from 'vitest'
import { NO_READING_USE, planData, rankedData, SECOND_DATA } from '../../test/support/plan-data.ts'
import { assumedText } from './assumed-text.ts'
import {
  answerText,
  averagesText,
  chanceHeadingText,
  chanceLineText,
  excludedGroups,
  excludedGroupText,
  givesText,
  guidelineText,
  holdsUntilText,
  notesOf,
  readingText,
  twinsText,
  whyFirstLines,
} from './plan-text.ts'
import { reasonText, remarkText } from './remark-text.ts'

describe('a plan in words', () => {
  it('gives the answer first, then the number with its spread, then the chance', () => {
    expect(answerText(planData())).toBe('nasal cannula, adult, 2 L/min (Flowmeter 1–15 L/min)')
    expect(whyFirstLines(planData())).toEqual([
      'Inspired fraction about 0.28, 0.26–0.31; printed 0.28.',
      'Saturation about 91 %, 88–94 %.',
      'Chance in range about 75 %, below about 10 %, above about 20 %.',
    ])
  })

  it('says that set-ups count as equal', () => {
    const two = planData({ ranked: [rankedData(), rankedData({ id: 'other' })] })
    expect(whyFirstLines(two).at(-1)).toMatch(/^One more set-up counts as equal/)
  })

  it('says beside every chance when no reading stands behind it', () => {
    const plan = planData({ reading: NO_READING_USE })
    expect(chanceLineText(rankedData(), plan)).toMatch(/; no reading: from averages only$/)
    expect(chanceHeadingText(plan)).toContain('averages only')
    expect(readingText(plan.reading)).toBe('no reading: from averages only')
    const aside = {
      ...NO_READING_USE,
      remarks: [{ code: 'READING_NOT_TRUSTED', values: { saturationPercent: 99 } }],
    }
    expect(averagesText(aside)).toBe('reading put aside: from averages only')
  })

  it('says wherever numbers of an unchecked family stand that nothing checks them', () => {
    expect(givesText(SECOND_DATA)).toMatch(/; not checked against measurements$/)
    expect(notesOf(SECOND_DATA)[0]).toBe('not checked against measurements')
    expect(givesText(rankedData())).not.toContain('not checked')
  })

  it('gives the reason and the number that would flip it', () => {
    expect(SECOND_DATA.whyNotFirst === null ? '' : reasonText(SECOND_DATA.whyNotFirst)).toBe(
      'more likely above the goal than the first: saturation about 95 %, chance in range about 40 %; changes with goal: 93–97 %',
    )
    const flow = { flowLpm: 4, limitLpm: 5, family: 'simple-mask' }
    expect(
      reasonText({
        code: 'BELOW_RATED_FLOW',
        values: flow,
        flip: { path: 'setUp.flowLpm', value: 5, unit: 'L/min' },
      }),
    ).toBe(
      '4 L/min is below the least flow for this simple mask, 5 L/min: rebreathing or an empty bag; changes with flow: 5 L/min',
    )
    expect(
      reasonText({
        code: 'HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE',
        values: {},
        flip: { path: 'patient.changes', value: 'base-of-skull-fracture' },
      }),
    ).toContain('changes without “base-of-skull fracture”')
  })

  it('tells until which breathing rate it holds', () => {
    expect(holdsUntilText({ ratePerMin: 31, side: 'below' })).toBe('31/min, then below')
    expect(holdsUntilText({ ratePerMin: null, side: null })).toBe('at every rate')
    expect(holdsUntilText({ ratePerMin: null, side: 'above' })).toBe('above the goal already')
  })

  it('counts what is ruled out by its first reason', () => {
    const excluded = (code: string) => ({
      id: code,
      setUp: rankedData().setUp,
      reasons: [{ code, values: {}, flip: null }],
    })
    const plan = planData({
      excluded: [excluded('NOSE_BLOCKED'), excluded('BAG_COLLAPSES'), excluded('NOSE_BLOCKED')],
    })
    expect(excludedGroups(plan).map(excludedGroupText)).toEqual([
      '2: nose blocked',
      '1: the bag would collapse',
    ])
  })

  it('names a few other sources and counts the rest', () => {
    const { source } = rankedData().setUp
    const twins = ['A', 'B', 'C', 'D', 'D'].map((label) => ({
      id: label,
      source: { ...source, label },
    }))
    expect(twinsText(rankedData({ twins }))).toBe('as well on: A; B; C; and 1 more')
    expect(twinsText(rankedData())).toBeNull()
  })

  it('says what is assumed and how that is known', () => {
    const rate = { key: 'ratePerMin', unit: '/min', median: 18, low: 13, high: 24 } as const
    expect(
      assumedText({ ...rate, known: 'seen', source: 'ODriscoll2017', code: 'FROM_STATE' }),
    ).toBe(
      'breathing rate about 18/min, 13–24/min (from the breathing state; read in the source; ODriscoll2017)',
    )
  })

  it('says what a guideline starts with, and whether the shelf has it', () => {
    const start = {
      code: 'START_CANNULA_2_6',
      values: { family: 'nasal-cannula', flowLpmMin: 2, flowLpmMax: 6 },
      known: 'seen',
      source: 'ODriscoll2017',
    } as const
    expect(guidelineText({ ...start, setUpIds: ['a'] })).toBe(
      'acutely ill, not critical: nasal cannula, 2–6 L/min (preferred) (ODriscoll2017, read in the source)',
    )
    expect(guidelineText({ ...start, setUpIds: [] })).toMatch(/; not on this shelf$/)
  })

  it('never speaks for a code it does not know, nor without its numbers', () => {
    expect(() => remarkText({ code: 'NOT_A_CODE', values: {} })).toThrow('words/text of NOT_A_CODE')
    expect(() => remarkText({ code: 'DEMAND_EXCEEDS_STREAM', values: {} })).toThrow('marginLpm')
  })
})
