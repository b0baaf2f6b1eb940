// The two panels of a breath ribbon: stacked flow above, fraction below, on axes that several ribbons may share. Leaves out titles and legend.
import { fractionText, numberText } from '../words/number-text.ts'
import { ORIGIN_ORDER, RIBBON_WORDS } from '../words/breath-text.ts'
import { wrapped } from './measure.ts'
import { originFill } from './origin-patterns.ts'
import type { Ribbon, RibbonShape } from './ribbon-shape.ts'
import { niceStep, scaleOf, ticksOf } from './scale.ts'
import type { Scale } from './scale.ts'
import { areaPath, element, linePath, text } from './svg.ts'
import type { Paints } from './svg.ts'

/** Longest inspiration and highest flow that must fit. */
export interface RibbonAxes {
  readonly timeS: number
  readonly flowLpm: number
}

export interface PanelsOptions {
  readonly ribbon: Ribbon
  readonly shape: RibbonShape
  readonly axes: RibbonAxes
  readonly widthPx: number
  readonly paints: Paints
  readonly id: string
  /** With a line that a page may let move over both panels with the breath. */
  readonly hasSweep?: boolean
}

const LEFT_PX = 44
const RIGHT_PX = 10
const LABEL_PX = 22
const FLOW_PX = 180
const FRACTION_PX = 110
const BETWEEN_PX = 44
const TICKS_PX = 58
const TEXT_PX = 13
const TEXT_LINE_PX = 16

const FLOW_TOP_PX = LABEL_PX
const FLOW_BOTTOM_PX = FLOW_TOP_PX + FLOW_PX
const FRACTION_TOP_PX = FLOW_BOTTOM_PX + BETWEEN_PX
const FRACTION_BOTTOM_PX = FRACTION_TOP_PX + FRACTION_PX

export const PANELS_HEIGHT_PX = FRACTION_BOTTOM_PX + TICKS_PX

const FLOW_HEADROOM = 1.08
const FLOW_TICKS_MOST = 5
const TIME_TICKS_MOST = 5
/** The fraction axis is always the same, so that pictures can be compared. */
const FRACTION_AXIS = { min: 0.2, max: 1 }
const FRACTION_TICK = 0.2

/** Whether the device's stream lies on the flow axis. */
export function streamFits(axes: RibbonAxes, streamLpm: number): boolean {
  return streamLpm > 0 && streamLpm <= axes.flowLpm * FLOW_HEADROOM
}

export function panels(options: PanelsOptions): string {
  const { axes, widthPx } = options
  const time = scaleOf({ min: 0, max: axes.timeS, fromPx: LEFT_PX, toPx: widthPx - RIGHT_PX })
  const flow = scaleOf({
    min: 0,
    max: axes.flowLpm * FLOW_HEADROOM,
    fromPx: FLOW_BOTTOM_PX,
    toPx: FLOW_TOP_PX,
  })
  const fraction = scaleOf({
    ...FRACTION_AXIS,
    fromPx: FRACTION_BOTTOM_PX,
    toPx: FRACTION_TOP_PX,
  })
  return [
    ...flowPanel(options, time, flow),
    ...fractionPanel(options, time, fraction),
    ...timeAxis(options, time),
    ...(options.hasSweep === true ? [sweep(options)] : []),
  ].join('')
}

/** Where the breath is, at its start: the page moves it to the right by the width of the picture less both margins. */
function sweep({ paints }: PanelsOptions): string {
  return element('line', {
    class: 'ribbon-sweep',
    x1: LEFT_PX,
    x2: LEFT_PX,
    y1: FLOW_TOP_PX,
    y2: FRACTION_BOTTOM_PX,
    stroke: paints.ink,
    'stroke-width': '1.5',
  })
}

function flowPanel(options: PanelsOptions, time: Scale, flow: Scale): string[] {
  const { shape, paints, id, axes } = options
  const areas = ORIGIN_ORDER.map((origin) => {
    const line = (side: 'upperLpm' | 'lowerLpm') =>
      shape.moments.map((m) => ({ x: time.at(m.timeS), y: flow.at(m[side][origin]) }))
    return element('path', {
      d: areaPath(line('upperLpm'), line('lowerLpm')),
      fill: originFill(id, origin),
      stroke: paints.paper,
      'stroke-width': '1',
    })
  })
  const outline = shape.moments.map((m) => ({ x: time.at(m.timeS), y: flow.at(m.flowLpm) }))
  const step = niceStep(flow.max, FLOW_TICKS_MOST)
  return [
    ...axisLabel(RIBBON_WORDS.flowAxis, options, { y: FLOW_TOP_PX - 9, grows: 'up' }),
    ...grid(options, flow, ticksOf(flow, step), (value) => numberText(value, Math.min(1, step))),
    ...areas,
    element('path', {
      d: linePath(outline),
      fill: 'none',
      stroke: paints.ink,
      'stroke-width': '1.5',
    }),
    ...(streamFits(axes, shape.streamLpm)
      ? [across(options, flow.at(shape.streamLpm), STREAM_LINE)]
      : []),
  ]
}

/** How the straight lines are told apart: long dashes for the stream, short for print, dots for the effective fraction. */
export const STREAM_LINE = { paint: 'ink', dash: '10 4' } as const
export const PRINTED_LINE = { paint: 'ink', dash: '5 4' } as const
export const EFFECTIVE_LINE = { paint: 'accent', dash: '2 3' } as const

type LineLook = typeof STREAM_LINE | typeof PRINTED_LINE | typeof EFFECTIVE_LINE

function across(options: PanelsOptions, y: number, look: LineLook): string {
  return element('line', {
    x1: LEFT_PX,
    x2: options.widthPx - RIGHT_PX,
    y1: y,
    y2: y,
    stroke: options.paints[look.paint],
    'stroke-width': '2',
    'stroke-dasharray': look.dash,
  })
}

function fractionPanel(options: PanelsOptions, time: Scale, fraction: Scale): string[] {
  const { shape, paints, ribbon } = options
  const line = shape.moments.map((m) => ({
    x: time.at(m.timeS),
    y: fraction.at(m.openingO2Fraction),
  }))
  const { printedO2Fraction: printed, breath } = ribbon
  const ends = printed === null ? [] : [...new Set([printed.low, printed.high])]
  return [
    ...axisLabel(RIBBON_WORDS.fractionAxis, options, { y: FRACTION_TOP_PX - 9, grows: 'up' }),
    ...printedBand(options, fraction),
    ...grid(options, fraction, ticksOf(FRACTION_AXIS, FRACTION_TICK), fractionText),
    ...ends.map((end) => across(options, fraction.at(end), PRINTED_LINE)),
    across(options, fraction.at(breath.effectiveO2Fraction), EFFECTIVE_LINE),
    element('path', {
      d: linePath(line),
      fill: 'none',
      stroke: paints.accent,
      'stroke-width': '2.5',
    }),
  ]
}

function printedBand(options: PanelsOptions, fraction: Scale): string[] {
  const printed = options.ribbon.printedO2Fraction
  if (printed === null) return []
  return [
    element('rect', {
      x: LEFT_PX,
      y: fraction.at(printed.high),
      width: options.widthPx - RIGHT_PX - LEFT_PX,
      height: fraction.at(printed.low) - fraction.at(printed.high),
      fill: options.paints.band,
    }),
  ]
}

function grid(
  options: PanelsOptions,
  scale: Scale,
  ticks: readonly number[],
  tickText: (value: number) => string,
): string[] {
  const { paints, widthPx } = options
  return ticks.flatMap((tick) => [
    element('line', {
      x1: LEFT_PX,
      x2: widthPx - RIGHT_PX,
      y1: scale.at(tick),
      y2: scale.at(tick),
      stroke: paints.line,
      'stroke-width': '1',
    }),
    text(tickText(tick), {
      x: LEFT_PX - 6,
      y: scale.at(tick) + 4,
      'text-anchor': 'end',
      'font-size': String(TEXT_PX),
      fill: paints.muted,
    }),
  ])
}

function timeAxis(options: PanelsOptions, time: Scale): string[] {
  const { paints } = options
  const step = niceStep(time.max, TIME_TICKS_MOST)
  return [
    ...ticksOf(time, step).map((tick) =>
      text(numberText(tick, step), {
        x: time.at(tick),
        y: FRACTION_BOTTOM_PX + 17,
        'text-anchor': 'middle',
        'font-size': String(TEXT_PX),
        fill: paints.muted,
      }),
    ),
    ...axisLabel(RIBBON_WORDS.timeAxis, options, { y: FRACTION_BOTTOM_PX + 36, grows: 'down' }),
  ]
}

/** Lines stack upwards above a panel and downwards below it, so that a long word of any language keeps clear of the drawing. */
function axisLabel(
  content: string,
  options: PanelsOptions,
  place: { readonly y: number; readonly grows: 'up' | 'down' },
): string[] {
  const lines = wrapped(content, { widthPx: options.widthPx - LEFT_PX, fontPx: TEXT_PX })
  const before = place.grows === 'up' ? lines.length - 1 : 0
  return lines.map((line, i) =>
    text(line, {
      x: LEFT_PX,
      y: place.y + (i - before) * TEXT_LINE_PX,
      'font-size': String(TEXT_PX),
      fill: options.paints.muted,
    }),
  )
}
