// The picture of a room filling with oxygen, by structure and numbers. Leaves out how it looks, which people judge.
import { describe, expect, it } from 'vitest'
import { outside, overlaps, textBoxes } from '../../test/support/text-boxes.ts'
import { elementsIn, parseXml } from '../../test/support/xml.ts'
import { roomCourse } from '../supply/room-answer.ts'
import { roomSvg, roomText } from './gas-room.ts'

const COURSE = roomCourse({ volumeM3: 30, airChangesPerHour: 1, oxygenLpm: 60, minutes: 120 })

describe('share of oxygen in a room', () => {
  it.each([260, 358, 720, 860])('is well-formed at %i px, no text over another', (widthPx) => {
    for (const minutes of [5, 60, 600]) {
      const course = roomCourse({ volumeM3: 30, airChangesPerHour: 6, oxygenLpm: 15, minutes })
      const svg = roomSvg({ course, widthPx })
      const drawn = parseXml(svg)
      expect(svg).not.toMatch(/NaN|undefined|Infinity/)
      expect(overlaps(textBoxes(drawn))).toEqual([])
      expect(outside(textBoxes(drawn), drawn)).toEqual([])
    }
  })

  it('crosses the limit when the core says so', () => {
    const svg = parseXml(roomSvg({ course: COURSE, widthPx: 1066 }))
    const path = elementsIn(svg, 'path')[0]?.element.attributes['d'] ?? ''
    const points = [...path.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => ({
      x: Number(x),
      y: Number(y),
    }))
    const limit = elementsIn(svg, 'line').find(
      ({ element }) => element.attributes['stroke-dasharray'] !== undefined,
    )
    const limitY = Number(limit?.element.attributes['y1'])
    // 1000 px for 120 min from x = 52; above the limit is a smaller y.
    const crossed = points.find(({ y }) => y <= limitY)
    const minute = ((crossed?.x ?? 0) - 52) * 0.12
    expect(Math.abs(minute - (COURSE.minutesToLimit ?? 0))).toBeLessThan(2)
  })

  it('is told in words', () => {
    expect(roomText({ course: COURSE })).toMatch(
      /^From 2(?:0\.9|1) % to 28\.5 % in 2 h; limit 23\.5 %\.$/,
    )
  })
})
