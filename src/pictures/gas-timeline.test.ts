// The picture of cylinders over the way, by structure and numbers. Leaves out how it looks, which people judge.
import { describe, expect, it } from 'vitest'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml } from '../../test/support/xml.ts'
import { timelineSvg, timelineText } from './gas-timeline.ts'
import type { TimelineOptions } from './gas-timeline.ts'

const WAY: TimelineOptions = {
  legs: [
    { kind: 'corridor', fromMinute: 0, untilMinute: 5 },
    { kind: 'lift', fromMinute: 5, untilMinute: 10 },
    { kind: 'ambulance', fromMinute: 10, untilMinute: 40 },
  ],
  course: {
    runs: [
      { cylinder: 1, rowId: 'a', label: '3 L', fromMinute: 0, untilMinute: 30 },
      { cylinder: 2, rowId: 'a', label: '3 L', fromMinute: 30, untilMinute: 90 },
    ],
    wayEndsMinute: 40,
    changeAtMinutes: [30],
    emptyAtMinute: 90,
    missingL: 0,
  },
  reservedMinutes: 80,
  leaveAt: { hour: 13, minute: 50 },
}

describe('timeline of a transfer', () => {
  it.each([260, 358, 560, 860])('is well-formed at %i px, no text over another', (widthPx) => {
    const svg = timelineSvg({ ...WAY, widthPx })
    const drawn = parseXml(svg)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    expect(overlaps(textBoxes(drawn))).toEqual([])
    expect(outside(textBoxes(drawn), drawn)).toEqual([])
  })

  it('draws legs and cylinders to one scale of minutes', () => {
    // 900 px for 90 min.
    const bars = elementsIn(parseXml(timelineSvg({ ...WAY, widthPx: 916 })), 'rect').map(
      ({ element }) => [element.attributes['x'], element.attributes['width']],
    )
    expect(bars).toEqual([
      ['8', '50'],
      ['58', '50'],
      ['108', '300'],
      ['8', '300'],
      ['308', '600'],
    ])
  })

  it('cuts off a cylinder that lasts for days, so that the way stays visible', () => {
    const course = { ...WAY.course, emptyAtMinute: 5000 }
    const bars = elementsIn(parseXml(timelineSvg({ ...WAY, course, widthPx: 916 })), 'rect')
    // 900 px for 100 min: five quarters of the reserved time.
    expect(bars[2]?.element.attributes['width']).toBe('270')
  })

  it('is told in words with clock times', () => {
    expect(timelineText(WAY)).toEqual([
      'Corridor: 13:50 to 13:55.',
      'Lift: 13:55 to 14:00.',
      'Ambulance: 14:00 to 14:30.',
      'cylinder 1, 3 L: from 13:50, change at 14:20.',
      'cylinder 2, 3 L: from 14:20, down to the reserve at 15:20.',
      'arrive at 14:30.',
      'reserve until 15:10.',
    ])
  })

  it('draws a way on which nothing is drawn', () => {
    const course = { ...WAY.course, runs: [], changeAtMinutes: [], emptyAtMinute: null }
    expect(timelineText({ ...WAY, course }).join(' ')).toMatch(/Nothing is drawn/)
    expect(timelineSvg({ ...WAY, course })).not.toMatch(/NaN|Infinity/)
  })
})
