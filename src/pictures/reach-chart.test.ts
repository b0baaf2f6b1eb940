// The reach chart by structure and numbers: rows, intervals, goal, labels. Leaves out how it looks, which people judge.
import { describe, expect, it } from 'vitest'
import { NO_READING_USE, planData, rankedData, SECOND_DATA } from '../../test/support/plan-data.ts'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml, textOf } from '../../test/support/xml.ts'
import { reachSvg, reachText } from './reach-chart.ts'
import { reachShape } from './reach-rows.ts'

const WIDTHS = [320, 358, 560, 720, 1000]

const FRACTION_PLAN = planData({ goal: { kind: 'fraction', low: 0.35, high: 0.45 } })
const ALL_PLAN = planData({
  goal: { kind: 'as-much-as-possible', reason: 'carbon-monoxide' },
  ranked: [rankedData({ saturationPercent: null, chance: null })],
})

describe('reach chart', () => {
  it.each(WIDTHS)(
    'is well-formed at %i px, with all numbers and no text over another',
    (widthPx) => {
      for (const plan of [planData(), FRACTION_PLAN, ALL_PLAN, planData({ ranked: [] })]) {
        const svg = reachSvg({ plan, widthPx })
        const picture = parseXml(svg)
        expect(svg).not.toMatch(/NaN|undefined|Infinity/)
        const boxes = textBoxes(picture)
        expect(overlaps(boxes)).toEqual([])
        expect(outside(boxes, picture)).toEqual([])
      }
    },
  )

  it('puts intervals and goal on one axis', () => {
    const { rows, axis } = reachShape(planData(), 10)
    expect(axis).toMatchObject({
      kind: 'saturation',
      min: 80,
      max: 100,
      goal: { low: 88, high: 92 },
    })
    expect(rows.map((row) => row.band.low)).toEqual([88, 92.6, 94])
    const bars = elementsIn(parseXml(reachSvg({ plan: planData(), widthPx: 416 })), 'rect')
      .map(({ element }) => element.attributes)
      .filter((attributes) => attributes['rx'] === '3')
    // 400 px for 20 %: 88–94 % lies 160 px from the left edge and is 120 px wide.
    expect(bars[0]).toMatchObject({ x: '168', width: '120' })
  })

  it('ticks the other steps of the same set-up', () => {
    const { rows } = reachShape(planData(), 10)
    expect(rows.map((row) => row.otherSteps)).toEqual([[96], [], [91.2]])
  })

  it('reaches down to the lowest interval, never cutting it off', () => {
    const low = rankedData({ saturationPercent: { median: 60, low: 41, high: 75 } })
    const { axis } = reachShape(planData({ ranked: [low] }), 10)
    expect(axis.min).toBe(40)
    expect(axis.tick).toBe(10)
  })

  it('takes fractions for a goal of fractions, and draws no goal where there is none', () => {
    expect(reachShape(FRACTION_PLAN, 10).axis).toMatchObject({
      kind: 'fraction',
      goal: { low: 0.35, high: 0.45 },
    })
    expect(reachShape(ALL_PLAN, 10).axis).toMatchObject({ kind: 'fraction', goal: null })
  })

  it('draws the first rows only, as many as asked', () => {
    const labels = elementsIn(parseXml(reachSvg({ plan: planData(), rows: 1 })), 'text')
      .map(({ element }) => textOf(element))
      .filter((label) => label.includes('nasal cannula'))
    expect(labels).toEqual(['1. nasal cannula, adult, 2 L/min'])
  })

  it('marks what no measurement checks, and says so', () => {
    const labels = (plan: ReturnType<typeof planData>): readonly string[] =>
      elementsIn(parseXml(reachSvg({ plan })), 'text').map(({ element }) => textOf(element))
    expect(labels(planData())).toContain('* not checked against measurements')
    expect(labels(planData()).filter((label) => label.endsWith(' *'))).toHaveLength(1)
    expect(labels(planData({ ranked: [rankedData()] })).join()).not.toContain('*')
  })

  it('is told in words, with what must stand beside the numbers', () => {
    const lines = reachText({ plan: planData({ reading: NO_READING_USE }) })
    expect(lines[0]).toContain('no reading: from averages only')
    expect(lines[1]).toBe(
      'Rank 1, nasal cannula, adult, 2 L/min: saturation about 91 %, 88–94 %; chance in range about 75 %, below about 10 %, above about 20 %; no reading: from averages only.',
    )
    expect(lines[2]).toContain('not checked against measurements')
    expect(SECOND_DATA.isChecked).toBe(false)
  })
})
