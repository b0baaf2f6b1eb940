// The oxygen share of a room over time as a line, with the limit. Leaves out where in the room it is higher.
import type { RoomCourse } from '../supply/room-answer.ts'
import { numberText } from '../words/number-text.ts'
import { ROOM_PICTURE, roomPictureText, shareOfOxygenText } from '../words/gas-room-text.ts'
import { textWidthPx } from './measure.ts'
import { niceStep, scaleOf, ticksOf } from './scale.ts'
import { element, linePath, paintsFor, picture, text } from './svg.ts'
import type { PaintMode } from './svg.ts'

export interface RoomPictureOptions {
  readonly course: Pick<RoomCourse, 'points' | 'limitO2Fraction'>
  readonly widthPx?: number
  readonly mode?: PaintMode
  readonly id?: string
}

const WIDTH_PX = 720
const HEIGHT_PX = 300
const LEFT_PX = 52
const RIGHT_PX = 14
const TOP_PX = 34
const BOTTOM_PX = 50
const TEXT_PX = 14
const PER_CENT = 100
/** A flat course still shows where the limit is. */
const HEADROOM = 0.005

export function roomSvg(options: RoomPictureOptions): string {
  const { course } = options
  const widthPx = options.widthPx ?? WIDTH_PX
  const mode = options.mode ?? 'page'
  const paints = paintsFor(mode)
  const { points, limitO2Fraction } = course
  const lowest = Math.min(...points.map((point) => point.o2Fraction))
  const highest = Math.max(limitO2Fraction, ...points.map((point) => point.o2Fraction))
  const min = lowest - HEADROOM
  const max = highest + HEADROOM
  const lastMinute = points.at(-1)?.minute ?? 1
  const time = scaleOf({ min: 0, max: lastMinute, fromPx: LEFT_PX, toPx: widthPx - RIGHT_PX })
  const share = scaleOf({ min, max, fromPx: HEIGHT_PX - BOTTOM_PX, toPx: TOP_PX })
  const axis = { stroke: paints.muted }
  const shareTicks = ticksOf(
    { min: min * PER_CENT, max: max * PER_CENT },
    niceStep((max - min) * PER_CENT, 5),
  ).flatMap((tick) => {
    const y = share.at(tick / PER_CENT)
    return [
      element('line', {
        x1: LEFT_PX,
        x2: widthPx - RIGHT_PX,
        y1: y,
        y2: y,
        stroke: paints.line,
      }),
      text(numberText(tick, 0.1), {
        x: LEFT_PX - 8,
        y: y + 5,
        'text-anchor': 'end',
        fill: paints.muted,
      }),
    ]
  })
  const tickPx = textWidthPx(numberText(lastMinute, 1), TEXT_PX) + 18
  const most = Math.max(1, Math.floor((widthPx - LEFT_PX - RIGHT_PX) / tickPx))
  const timeTicks = ticksOf(
    { min: 0, max: lastMinute },
    niceStep(lastMinute, Math.min(8, most)),
  ).map((tick) =>
    text(numberText(tick, 0.1), {
      x: time.at(tick),
      y: HEIGHT_PX - BOTTOM_PX + 20,
      'text-anchor': tick === lastMinute ? 'end' : 'middle',
      fill: paints.muted,
    }),
  )
  const limitY = share.at(limitO2Fraction)
  const lines = [
    element('line', {
      x1: LEFT_PX,
      x2: widthPx - RIGHT_PX,
      y1: HEIGHT_PX - BOTTOM_PX,
      y2: HEIGHT_PX - BOTTOM_PX,
      ...axis,
    }),
    element('line', {
      x1: LEFT_PX,
      x2: widthPx - RIGHT_PX,
      y1: limitY,
      y2: limitY,
      stroke: paints.ink,
      'stroke-width': 2,
      'stroke-dasharray': '6 4',
    }),
    element('path', {
      d: linePath(
        points.map(({ minute, o2Fraction }) => ({ x: time.at(minute), y: share.at(o2Fraction) })),
      ),
      fill: 'none',
      stroke: paints.accent,
      'stroke-width': 3,
    }),
  ]
  const labels = [
    text(ROOM_PICTURE.share(), { x: 8, y: 18, fill: paints.muted }),
    text(ROOM_PICTURE.limit(shareOfOxygenText(limitO2Fraction)), {
      x: widthPx - RIGHT_PX,
      y: 18,
      'text-anchor': 'end',
      fill: paints.ink,
    }),
    text(ROOM_PICTURE.time(), { x: LEFT_PX, y: HEIGHT_PX - 8, fill: paints.muted }),
  ]
  return picture({
    widthPx,
    heightPx: HEIGHT_PX,
    title: ROOM_PICTURE.title(),
    description: roomText(options),
    id: options.id ?? 'ox-room',
    mode,
    children: [...shareTicks, ...timeTicks, ...lines, ...labels],
  })
}

/** The same in one sentence. */
export function roomText({ course }: RoomPictureOptions): string {
  const { points, limitO2Fraction } = course
  return roomPictureText({
    startO2Fraction: points[0]?.o2Fraction ?? limitO2Fraction,
    endO2Fraction: points.at(-1)?.o2Fraction ?? limitO2Fraction,
    minutes: points.at(-1)?.minute ?? 0,
    limitO2Fraction,
  })
}
