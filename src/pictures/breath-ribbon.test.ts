// The breath ribbon by structure and numbers: areas, lines, labels, text equivalent. Leaves out how it looks, which people judge.
import { describe, expect, it } from 'vitest'
import { maskBreath } from '../../test/support/breath-data.ts'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml, textOf } from '../../test/support/xml.ts'
import { ORIGIN_ORDER } from '../words/breath-text.ts'
import { compareRibbonsSvg, ribbonSvg, ribbonText } from './breath-ribbon.ts'
import { ribbonShape } from './ribbon-shape.ts'

const CALM = {
  breath: maskBreath({ flowLpm: 6, ratePerMin: 16 }),
  printedO2Fraction: { low: 0.4, high: 0.6 },
  isChecked: true,
  title: 'simple mask, adult, 6 L/min & <more>',
}
const FAST = { ...CALM, breath: maskBreath({ flowLpm: 6, ratePerMin: 34 }) }
const WIDTHS = [358, 560, 720, 1000]

/** Areas between each upper and lower line over time, L. */
function areaL(origin: (typeof ORIGIN_ORDER)[number]): number {
  const { moments } = ribbonShape(CALM.breath)
  let sum = 0
  for (let i = 1; i < moments.length; i++) {
    const a = moments[i - 1]
    const b = moments[i]
    if (a === undefined || b === undefined) continue
    const height = (m: typeof a) => m.upperLpm[origin] - m.lowerLpm[origin]
    sum += ((height(a) + height(b)) / 2) * ((b.timeS - a.timeS) / 60)
  }
  return sum
}

describe('breath ribbon', () => {
  it.each(WIDTHS)(
    'is well-formed at %i px, with all numbers and no text over another',
    (widthPx) => {
      for (const svg of [
        ribbonSvg({ ...CALM, widthPx }),
        ribbonSvg({ ...CALM, isChecked: false, widthPx }),
        compareRibbonsSvg({ before: CALM, after: FAST, widthPx }),
      ]) {
        const picture = parseXml(svg)
        expect(svg).not.toMatch(/NaN|undefined|Infinity/)
        expect(picture.attributes['role']).toBe('img')
        const boxes = textBoxes(picture)
        expect(boxes.length).toBeGreaterThan(12)
        expect(overlaps(boxes)).toEqual([])
        expect(outside(boxes, picture)).toEqual([])
      }
    },
  )

  it('paints each origin over the volume that came from it', () => {
    const tidalL = ORIGIN_ORDER.reduce((sum, origin) => sum + areaL(origin), 0)
    // The polygon through the middles of the steps: within 2 % of the half-sine's exact 0.5 L.
    expect(tidalL).toBeGreaterThan(0.49)
    expect(tidalL).toBeLessThan(0.51)
    for (const origin of ORIGIN_ORDER) {
      expect(areaL(origin) / tidalL).toBeCloseTo(CALM.breath.origins[origin], 1)
    }
  })

  it('knows the peak of the flow and the stream of the device between the steps', () => {
    const { peakFlowLpm, streamLpm } = ribbonShape(CALM.breath)
    // Half-sine: π/2 × 0.5 L / (60/16 s × 0.36).
    expect(peakFlowLpm).toBeCloseTo(34.907, 1)
    expect(streamLpm).toBeCloseTo(6, 1)
  })

  it('gives each origin a pattern of its own besides its colour', () => {
    const picture = parseXml(ribbonSvg({ ...CALM, id: 'one' }))
    const patterns = elementsIn(picture, 'pattern').map(({ element }) => element)
    expect(patterns.map(({ attributes }) => attributes['id'])).toEqual(
      ORIGIN_ORDER.map((origin) => `one-${origin}`),
    )
    const marks = patterns.map(({ children }) =>
      children.map((child) =>
        typeof child === 'string' ? '' : (child.attributes['d'] ?? child.name),
      ),
    )
    expect(new Set(marks.map((mark) => mark.join(' '))).size).toBe(ORIGIN_ORDER.length)
    const areas = elementsIn(picture, 'path').map(({ element }) => element.attributes['fill'])
    for (const origin of ORIGIN_ORDER) expect(areas).toContain(`url(#one-${origin})`)
  })

  it('shows printed and effective fraction with their values', () => {
    const picture = parseXml(ribbonSvg(CALM))
    const labels = elementsIn(picture, 'text').map(({ element }) => textOf(element))
    expect(labels).toContain('printed 0.4–0.6')
    expect(labels.some((label) => /^effective in this breath 0\.\d+$/.test(label))).toBe(true)
    const without = parseXml(ribbonSvg({ ...CALM, printedO2Fraction: null }))
    const fewer = elementsIn(without, 'text').map(({ element }) => textOf(element))
    expect(fewer.some((label) => label.startsWith('printed'))).toBe(false)
  })

  it('says that no measurement checks it, in the legend and in words', () => {
    const unchecked = { ...CALM, isChecked: false }
    const labels = elementsIn(parseXml(ribbonSvg(unchecked)), 'text').map(({ element }) =>
      textOf(element),
    )
    expect(labels).toContain('* not checked against measurements')
    expect(labels.some((label) => /^effective in this breath 0\.\d+ \*$/.test(label))).toBe(true)
    expect(ribbonText(unchecked)[0]).toContain('(not checked against measurements)')
    expect(ribbonSvg(CALM)).not.toContain('not checked')
  })

  it('draws two breaths on one scale', () => {
    const peaks = [CALM, FAST].map((ribbon) => ribbonShape(ribbon.breath).peakFlowLpm)
    const picture = parseXml(compareRibbonsSvg({ before: CALM, after: FAST, widthPx: 900 }))
    const outlines = elementsIn(picture, 'path')
      .map(({ element }) => element)
      .filter(
        ({ attributes }) => attributes['stroke-width'] === '1.5' && attributes['fill'] === 'none',
      )
    const heights = outlines.map(({ attributes }) => heightOf(attributes['d'] ?? ''))
    expect(heights).toHaveLength(2)
    expect((heights[0] ?? 0) / (heights[1] ?? 1)).toBeCloseTo((peaks[0] ?? 0) / (peaks[1] ?? 1), 1)
  })

  it('has plain colours in a file and variables on a page', () => {
    expect(ribbonSvg({ ...CALM, mode: 'file' })).not.toContain('var(')
    expect(ribbonSvg(CALM)).toContain('var(--ox-ink, #1b1b1b)')
  })

  it('is told in words, the answer first', () => {
    const lines = ribbonText(CALM)
    expect(lines[0]).toBe(`${CALM.title}.`)
    expect(lines[1]).toMatch(/^Effective inspired oxygen fraction 0\.\d+; printed 0\.4–0\.6\.$/)
    expect(lines[2]).toMatch(/from the device now, \d+ %; stored .*; room air .*; breathed out/)
    expect(
      parseXml(ribbonSvg(CALM))
        .children.map((child) => (typeof child === 'string' ? '' : child.name))
        .slice(0, 2),
    ).toEqual(['title', 'desc'])
  })
})

function heightOf(d: string): number {
  const ys = [...d.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y))
  return Math.max(...ys) - Math.min(...ys)
}
