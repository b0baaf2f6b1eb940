// One square panel of the evidence plot: axes, the line of equality, spreads and points. Leaves out the legend.
import { max, mean, min } from 'd3-array'
import { scaleLinear } from 'd3-scale'
import type { ScaleLinear } from 'd3-scale'
import type { FractionPoint } from '../evidence/fraction-points.ts'
import { figuresText, PLOT_WORDS } from '../words/evidence-plot-text.ts'
import type { MissFigures } from '../words/evidence-plot-text.ts'
import { fractionText } from '../words/number-text.ts'
import { wrapped } from './measure.ts'
import type { Block } from './stack.ts'
import { element, linePath, text } from './svg.ts'
import type { Paints } from './svg.ts'

export type Marks = 'ours' | 'rule'

export interface PlotShape {
  readonly points: readonly FractionPoint[]
  readonly sidePx: number
  readonly x: ScaleLinear<number, number>
  readonly y: ScaleLinear<number, number>
  readonly ticks: readonly number[]
}

const TEXT_PX = 14
const LINE_PX = 19
const HEAD_PX = 26
const LEFT_PX = 44
const RIGHT_PX = 12
const AXIS_PX = 48
const TICKS_MOST = 5
/** Ends of the axes are multiples of this. */
const ROUND = 0.1
const USUAL = { min: 0.2, max: 1 }

/** One scale for all points, so that panels can be compared; wide enough for every point and spread. */
export function plotShape(points: readonly FractionPoint[], sidePx: number): PlotShape {
  const ends = points.flatMap((point) => [
    point.publishedO2Fraction - point.spread,
    point.publishedO2Fraction + point.spread,
    point.ourO2Fraction,
    point.ruleO2Fraction ?? point.ourO2Fraction,
  ])
  const domain = [
    Math.min(USUAL.min, Math.floor((min(ends) ?? 1) / ROUND) * ROUND),
    Math.max(USUAL.max, Math.ceil((max(ends) ?? 0) / ROUND) * ROUND),
  ]
  const innerPx = sidePx - LEFT_PX - RIGHT_PX
  const x = scaleLinear(domain, [LEFT_PX, LEFT_PX + innerPx])
  const y = scaleLinear(x.domain(), [HEAD_PX + innerPx, HEAD_PX])
  return { points, sidePx, x, y, ticks: x.ticks(TICKS_MOST) }
}

function valueOf(point: FractionPoint, marks: Marks): number | null {
  return marks === 'ours' ? point.ourO2Fraction : point.ruleO2Fraction
}

/** Bias and scatter of what the panel shows; null where it shows nothing. */
export function plotFigures(points: readonly FractionPoint[], marks: Marks): MissFigures | null {
  const misses = points.flatMap((point) => {
    const value = valueOf(point, marks)
    return value === null ? [] : [value - point.publishedO2Fraction]
  })
  const bias = mean(misses)
  const square = mean(misses, (miss) => miss * miss)
  if (bias === undefined || square === undefined) return null
  return { rows: misses.length, bias, rms: Math.sqrt(square) }
}

export function plotPanel(options: {
  readonly paints: Paints
  readonly shape: PlotShape
  readonly heading: string
  readonly marks: Marks
}): Block {
  const { paints, shape, heading, marks } = options
  const { sidePx, points } = shape
  const figures = plotFigures(points, marks)
  const caption = figures === null ? '' : figuresText(figures)
  const captionLines = wrapped(caption, { widthPx: sidePx - LEFT_PX, fontPx: TEXT_PX })
  const belowPx = shape.y.range()[0] ?? 0
  const captionPx = belowPx + AXIS_PX
  return {
    svg: [
      text(heading, { x: LEFT_PX, y: TEXT_PX, 'font-weight': '600', fill: paints.ink }),
      ...axes(shape, { paints, marks }),
      ...points.map((point) => pointMark(point, { shape, paints, marks })),
      ...captionLines.map((line, i) =>
        text(line, { x: LEFT_PX, y: captionPx + TEXT_PX + i * LINE_PX, fill: paints.ink }),
      ),
    ].join(''),
    heightPx: captionPx + captionLines.length * LINE_PX + LINE_PX / 2,
  }
}

function axes(
  shape: PlotShape,
  look: { readonly paints: Paints; readonly marks: Marks },
): readonly string[] {
  const { x, y, ticks } = shape
  const { paints } = look
  const [from = 0, to = 1] = x.domain()
  const muted = { fill: paints.muted, 'font-size': '13' }
  const bottomPx = y(from)
  const line = { stroke: paints.line, 'stroke-width': 1 }
  return [
    ...ticks.flatMap((tick) => [
      element('line', { x1: x(tick), x2: x(tick), y1: y(from), y2: y(to), ...line }),
      element('line', { x1: x(from), x2: x(to), y1: y(tick), y2: y(tick), ...line }),
      text(fractionText(tick), { x: x(tick), y: bottomPx + 18, 'text-anchor': 'middle', ...muted }),
      text(fractionText(tick), { x: x(from) - 8, y: y(tick) + 4, 'text-anchor': 'end', ...muted }),
    ]),
    element('line', {
      x1: x(from),
      y1: y(from),
      x2: x(to),
      y2: y(to),
      stroke: paints.ink,
      'stroke-width': 1.5,
      'stroke-dasharray': '6 4',
    }),
    text(PLOT_WORDS.published, { x: x(to), y: bottomPx + 38, 'text-anchor': 'end', ...muted }),
  ]
}

export const MARK_PX = 5

function pointMark(
  point: FractionPoint,
  look: { readonly shape: PlotShape; readonly paints: Paints; readonly marks: Marks },
): string {
  const { shape, paints, marks } = look
  const value = valueOf(point, marks)
  if (value === null) return ''
  const { publishedO2Fraction: published, spread } = point
  const at = { x: shape.x(published), y: shape.y(value) }
  const isBeyond = Math.abs(value - published) > spread + 1e-9
  return [
    element('line', {
      x1: shape.x(published - spread),
      x2: shape.x(published + spread),
      y1: at.y,
      y2: at.y,
      stroke: paints.muted,
      'stroke-width': 1.5,
    }),
    isBeyond ? beyondMark(at, paints) : withinMark(at, paints),
  ].join('')
}

export function withinMark(at: { readonly x: number; readonly y: number }, paints: Paints): string {
  return element('circle', {
    cx: at.x,
    cy: at.y,
    r: MARK_PX,
    fill: paints.paper,
    stroke: paints.accent,
    'stroke-width': 2,
  })
}

/** A filled diamond: told from a ring by its shape alone. */
export function beyondMark(at: { readonly x: number; readonly y: number }, paints: Paints): string {
  const reach = MARK_PX + 2
  const corners = [
    { x: at.x, y: at.y - reach },
    { x: at.x + reach, y: at.y },
    { x: at.x, y: at.y + reach },
    { x: at.x - reach, y: at.y },
  ]
  return element('path', { d: `${linePath(corners)}Z`, fill: paints.ink })
}
