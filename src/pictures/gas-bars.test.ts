// The picture of a ward's demand, by structure and numbers. Leaves out how it looks, which people judge.
import { describe, expect, it } from 'vitest'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml } from '../../test/support/xml.ts'
import { wardDemandSvg, wardDemandText } from './gas-bars.ts'

const DEMAND = {
  drawnLpm: 180,
  designLpm: 32.5,
  simulation: { percentilesLpm: { p95: 210 } },
  oneMore: { drawnLpm: 240 },
}

describe('demand of a ward', () => {
  it.each([260, 358, 720, 860])('is well-formed at %i px, no text over another', (widthPx) => {
    const svg = wardDemandSvg({ demand: DEMAND, branchLpmMax: 150, widthPx })
    const drawn = parseXml(svg)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    expect(overlaps(textBoxes(drawn))).toEqual([])
    expect(outside(textBoxes(drawn), drawn)).toEqual([])
  })

  it('draws every flow to one scale', () => {
    // 480 px for 240 L/min.
    const svg = wardDemandSvg({ demand: DEMAND, branchLpmMax: 150, widthPx: 496 })
    const widths = elementsIn(parseXml(svg), 'rect').map(
      ({ element }) => element.attributes['width'],
    )
    expect(widths).toEqual(['360', '420', '480', '65', '300'])
  })

  it('is told in words, with the branch only where it is known', () => {
    const lines = wardDemandText({ demand: DEMAND })
    expect(lines[0]).toBe('drawn now: 180 L/min.')
    expect(lines).toHaveLength(4)
    expect(wardDemandText({ demand: DEMAND, branchLpmMax: 150 }).at(-1)).toMatch(/150/)
  })
})
