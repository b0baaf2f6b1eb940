// Cylinders over the way of a transfer: legs, each cylinder in use, where the way and its reserve end. Leaves out litres and the worst case.
import { clockAfter } from '../supply/duration.ts'
import type { Course } from '../supply/transfer.ts'
import type { LegKind } from '../supply/transport.ts'
import { TIMELINE_TEXT, timelineLegText, timelineRunText } from '../words/gas-transfer-text.ts'
import { legName } from '../words/supply-names.ts'
import { clockTimeText } from '../words/supply-value.ts'
import { textWidthPx, wrapped } from './measure.ts'
import { niceStep, scaleOf, ticksOf } from './scale.ts'
import type { Scale } from './scale.ts'
import { stacked } from './stack.ts'
import type { Block } from './stack.ts'
import { element, paintsFor, picture, text } from './svg.ts'
import type { PaintMode, Paints } from './svg.ts'

export interface TimelineOptions {
  readonly legs: readonly {
    readonly kind: LegKind
    readonly fromMinute: number
    readonly untilMinute: number
  }[]
  readonly course: Course
  /** Minutes from the start for which oxygen is wanted. */
  readonly reservedMinutes: number
  /** Time of day at which the way begins. */
  readonly leaveAt: { readonly hour: number; readonly minute: number }
  readonly widthPx?: number
  readonly mode?: PaintMode
  readonly id?: string
}

const WIDTH_PX = 720
const SIDE_PX = 8
const TOP_PX = 8
const TEXT_PX = 14
const LINE_PX = 19
const BAR_PX = 12
const MARK_PX = 4
const ROW_GAP_PX = 9
const AXIS_PX = 30
const LEGEND_ROW_PX = 24
/** Beyond this many times the reserved time a long-lasting cylinder is drawn as going on. */
const SHOWN_TIMES = 1.25

interface Look {
  readonly widthPx: number
  readonly paints: Paints
  readonly scale: Scale
  readonly leaveAt: TimelineOptions['leaveAt']
}

interface Bar {
  readonly label: string
  readonly fromMinute: number
  readonly untilMinute: number
  readonly kind: 'leg' | 'cylinder'
}

/** Rows one below the other, each label above its own bar, so that nothing overlaps at any width. */
export function timelineSvg(options: TimelineOptions): string {
  const widthPx = options.widthPx ?? WIDTH_PX
  const mode = options.mode ?? 'page'
  const lastMinute = shownUntil(options)
  const scale = scaleOf({ min: 0, max: lastMinute, fromPx: SIDE_PX, toPx: widthPx - SIDE_PX })
  const look = { widthPx, paints: paintsFor(mode), scale, leaveAt: options.leaveAt }
  const rows = barsOf(options).map((bar) => barBlock(look, bar, options))
  const blocks = [...rows, axisBlock(look), ...legendBlocks(look, options)]
  const { svg, heightPx } = stacked(blocks, TOP_PX)
  return picture({
    widthPx,
    heightPx,
    title: TIMELINE_TEXT.title(),
    description: timelineText(options).join(' '),
    id: options.id ?? 'ox-timeline',
    mode,
    children: [svg],
  })
}

/** The same in words, in the order of the rows. */
export function timelineText(options: TimelineOptions): readonly string[] {
  const clock = clockOf(options.leaveAt)
  const lines = barsOf(options).map(({ label }) => `${label}.`)
  return [
    ...lines,
    ...(options.course.runs.length === 0 ? [TIMELINE_TEXT.empty()] : []),
    `${TIMELINE_TEXT.wayEnds(clock(options.course.wayEndsMinute))}.`,
    `${TIMELINE_TEXT.reserveEnds(clock(options.reservedMinutes))}.`,
  ]
}

function shownUntil({ course, reservedMinutes }: TimelineOptions): number {
  const most = SHOWN_TIMES * Math.max(1, reservedMinutes)
  const ends = [course.wayEndsMinute, reservedMinutes, course.emptyAtMinute ?? 0]
  return Math.min(most, Math.max(1, ...ends))
}

function barsOf({ legs, course, leaveAt }: TimelineOptions): readonly Bar[] {
  const clock = clockOf(leaveAt)
  const legBars = legs.map(({ kind, fromMinute, untilMinute }): Bar => {
    const label = timelineLegText({
      name: legName(kind),
      from: clock(fromMinute),
      until: clock(untilMinute),
    })
    return { label, fromMinute, untilMinute, kind: 'leg' }
  })
  const runBars = course.runs.map((run, i): Bar => {
    const { fromMinute, untilMinute } = run
    const label = timelineRunText({
      cylinder: run.cylinder,
      label: run.label,
      from: clock(fromMinute),
      until: clock(untilMinute),
      isLast: i === course.runs.length - 1,
    })
    return { label, fromMinute, untilMinute, kind: 'cylinder' }
  })
  return [...legBars, ...runBars]
}

function clockOf(leaveAt: TimelineOptions['leaveAt']): (minutes: number) => string {
  return (minutes) => clockTimeText(clockAfter(leaveAt, minutes))
}

function barBlock(look: Look, bar: Bar, options: TimelineOptions): Block {
  const { paints, scale, widthPx } = look
  const lines = wrapped(bar.label, { widthPx: widthPx - 2 * SIDE_PX, fontPx: TEXT_PX })
  const topPx = lines.length * LINE_PX + MARK_PX
  const from = scale.at(Math.min(bar.fromMinute, scale.max))
  const until = scale.at(Math.min(bar.untilMinute, scale.max))
  const isCylinder = bar.kind === 'cylinder'
  const rect = element('rect', {
    x: from,
    y: topPx,
    width: Math.max(2, until - from),
    height: BAR_PX,
    rx: isCylinder ? 3 : 0,
    fill: isCylinder ? paints.accent : paints.band,
    stroke: paints.ink,
    'stroke-width': isCylinder ? 0 : 1,
  })
  return {
    svg: [
      ...lines.map((line, i) =>
        text(line, { x: SIDE_PX, y: (i + 0.75) * LINE_PX, fill: paints.ink }),
      ),
      element('line', {
        x1: SIDE_PX,
        x2: widthPx - SIDE_PX,
        y1: topPx + BAR_PX / 2,
        y2: topPx + BAR_PX / 2,
        stroke: paints.line,
      }),
      rect,
      markLines(look, options, { fromPx: topPx - MARK_PX, toPx: topPx + BAR_PX + MARK_PX }),
    ].join(''),
    heightPx: topPx + BAR_PX + ROW_GAP_PX,
  }
}

/** Solid where the way ends, dashed where its reserve does; beside the bars alone, so that no label is crossed. */
function markLines(
  look: Look,
  { course, reservedMinutes }: TimelineOptions,
  span: { readonly fromPx: number; readonly toPx: number },
): string {
  const at = (minute: number, dash: string): string => {
    const x = look.scale.at(Math.min(minute, look.scale.max))
    const stroke = { stroke: look.paints.ink, 'stroke-width': 2, 'stroke-dasharray': dash }
    return element('line', { x1: x, x2: x, y1: span.fromPx, y2: span.toPx, ...stroke })
  }
  return at(course.wayEndsMinute, 'none') + at(reservedMinutes, '4 3')
}

const TICK_GAP_PX = 14

function axisBlock(look: Look): Block {
  const { scale, paints, leaveAt, widthPx } = look
  const tickPx = textWidthPx('00:00', TEXT_PX) + TICK_GAP_PX
  const most = Math.max(1, Math.floor((widthPx - 2 * SIDE_PX) / tickPx) - 1)
  const step = niceMinutes(niceStep(scale.max, most))
  const clock = clockOf(leaveAt)
  const halfPx = textWidthPx('00:00', TEXT_PX) / 2
  const marks = ticksOf({ min: 0, max: scale.max }, step).flatMap((tick) => {
    const x = scale.at(tick)
    const label = clock(tick).slice(0, 5)
    const anchor = tick === 0 ? 'start' : x + halfPx > widthPx ? 'end' : 'middle'
    return [
      element('line', { x1: x, x2: x, y1: 0, y2: 5, stroke: paints.muted }),
      text(label, { x, y: 20, 'text-anchor': anchor, fill: paints.muted, 'font-size': TEXT_PX }),
    ]
  })
  const line = { x1: SIDE_PX, x2: widthPx - SIDE_PX, y1: 0, y2: 0, stroke: paints.muted }
  return { svg: [element('line', line), ...marks].join(''), heightPx: AXIS_PX }
}

const CLOCK_STEPS = [1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440]

/** A step that clocks have, at least as wide as asked. */
function niceMinutes(least: number): number {
  return CLOCK_STEPS.find((step) => step >= least) ?? Math.ceil(least / 1440) * 1440
}

function legendBlocks(look: Look, options: TimelineOptions): readonly Block[] {
  const { paints } = look
  const clock = clockOf(options.leaveAt)
  const row = (mark: string, label: string): Block => ({
    svg: mark + text(label, { x: SIDE_PX + 34, y: LEGEND_ROW_PX / 2 + 5, fill: paints.ink }),
    heightPx: LEGEND_ROW_PX,
  })
  const line = (dash: string): string =>
    element('line', {
      x1: SIDE_PX + 12,
      x2: SIDE_PX + 12,
      y1: 3,
      y2: LEGEND_ROW_PX - 3,
      stroke: paints.ink,
      'stroke-width': 2,
      'stroke-dasharray': dash,
    })
  return [
    row(line('none'), TIMELINE_TEXT.wayEnds(clock(options.course.wayEndsMinute))),
    row(line('4 3'), TIMELINE_TEXT.reserveEnds(clock(options.reservedMinutes))),
  ]
}
