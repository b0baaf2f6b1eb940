// The evidence plot by its structure: every point where its numbers say, no text over another, the same in words.
import { describe, expect, it } from 'vitest'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml } from '../../test/support/xml.ts'
import type { FractionPoint } from '../evidence/fraction-points.ts'
import { evidencePlotSvg, evidencePlotText } from './evidence-plot.ts'

/** Invented points: one within its spread, one beyond it, one without a rule. */
const POINTS: readonly FractionPoint[] = [
  {
    rowId: 'within',
    family: 'nasal-cannula',
    publishedO2Fraction: 0.3,
    spread: 0.05,
    ourO2Fraction: 0.32,
    ruleO2Fraction: 0.4,
    isMiss: false,
  },
  {
    rowId: 'beyond',
    family: 'simple-mask',
    publishedO2Fraction: 0.5,
    spread: 0.02,
    ourO2Fraction: 0.6,
    ruleO2Fraction: 0.51,
    isMiss: true,
  },
  {
    rowId: 'no-rule',
    family: 'simple-mask',
    publishedO2Fraction: 0.7,
    spread: 0.1,
    ourO2Fraction: 0.65,
    ruleO2Fraction: null,
    isMiss: false,
  },
]

describe('evidence plot', () => {
  it.each([300, 420, 720, 1000])('keeps its texts apart and inside at %d pixels', (widthPx) => {
    const picture = parseXml(evidencePlotSvg({ points: POINTS, widthPx }))
    const boxes = textBoxes(picture)
    expect(overlaps(boxes)).toEqual([])
    expect(outside(boxes, picture)).toEqual([])
  })

  it('draws each point once for ours and once for its rule, and rings only what is within', () => {
    const picture = parseXml(evidencePlotSvg({ points: POINTS }))
    // Ours: two rings; the rule: one. One ring more in the legend.
    expect(elementsIn(picture, 'circle')).toHaveLength(4)
    // Beyond: one of ours, one of the rule, one in the legend.
    expect(elementsIn(picture, 'path')).toHaveLength(3)
  })

  it('puts equal numbers on the line of equality', () => {
    const equal = POINTS.slice(0, 1).map((point) => ({ ...point, ourO2Fraction: 0.3 }))
    const picture = parseXml(evidencePlotSvg({ points: equal }))
    const ring = elementsIn(picture, 'circle')[0]?.element.attributes
    const diagonal = elementsIn(picture, 'line').find(
      ({ element }) => element.attributes['stroke-dasharray'] !== undefined,
    )?.element.attributes
    const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((key) => Number(diagonal?.[key]))
    const share = (Number(ring?.['cx']) - (x1 ?? 0)) / ((x2 ?? 0) - (x1 ?? 0))
    expect(share).toBeCloseTo((0.3 - 0.2) / 0.8, 3)
    expect((Number(ring?.['cy']) - (y1 ?? 0)) / ((y2 ?? 0) - (y1 ?? 0))).toBeCloseTo(share, 3)
  })

  it('says the same in words', () => {
    const said = evidencePlotText(POINTS).join('\n')
    // (0.02 + 0.1 − 0.05) / 3 = 0.0233; √((0.0004 + 0.01 + 0.0025) / 3) = 0.0656.
    expect(said).toContain('3 rows, bias +0.023, RMS 0.066')
    expect(said).toContain('beyond, published 0.5, ours 0.6')
    expect(evidencePlotSvg({ points: POINTS })).toContain('3 rows, bias +0.023')
    expect(evidencePlotText([])).toHaveLength(1)
  })

  it('is the same text for the same points', () => {
    expect(evidencePlotSvg({ points: POINTS })).toBe(evidencePlotSvg({ points: [...POINTS] }))
    expect(evidencePlotSvg({ points: POINTS, mode: 'file' })).not.toContain('var(')
  })
})
