// Flows as bars to one scale, each label above its own bar: a ward's demand against what its pipework carries. Leaves out time.
import type { WardDemand } from '../supply/ward-demand.ts'
import { DEMAND_PICTURE } from '../words/gas-ward-text.ts'
import { drawText } from '../words/supply-value.ts'
import { textWidthPx, wrapped } from './measure.ts'
import { niceStep, scaleOf, ticksOf } from './scale.ts'
import type { Scale } from './scale.ts'
import { stacked } from './stack.ts'
import type { Block } from './stack.ts'
import { element, paintsFor, picture, text } from './svg.ts'
import type { PaintMode, Paints } from './svg.ts'

export interface DemandOptions {
  readonly demand: Pick<WardDemand, 'drawnLpm' | 'designLpm'> & {
    readonly simulation: { readonly percentilesLpm: { readonly p95: number } }
    readonly oneMore: { readonly drawnLpm: number }
  }
  readonly branchLpmMax?: number
  readonly widthPx?: number
  readonly mode?: PaintMode
  readonly id?: string
}

const WIDTH_PX = 720
const SIDE_PX = 8
const TOP_PX = 8
const TEXT_PX = 14
const LINE_PX = 19
const BAR_PX = 14
const ROW_GAP_PX = 9
const AXIS_PX = 48
const TICK_GAP_PX = 16

interface Bar {
  readonly label: string
  readonly valueLpm: number
  /** What is drawn, filled; what is carried, outlined. */
  readonly kind: 'drawn' | 'carried'
}

export function wardDemandSvg(options: DemandOptions): string {
  const widthPx = options.widthPx ?? WIDTH_PX
  const mode = options.mode ?? 'page'
  const bars = barsOf(options)
  const most = Math.max(1, ...bars.map(({ valueLpm }) => valueLpm))
  const scale = scaleOf({ min: 0, max: most, fromPx: SIDE_PX, toPx: widthPx - SIDE_PX })
  const look = { widthPx, scale, paints: paintsFor(mode) }
  const { svg, heightPx } = stacked(
    [...bars.map((bar) => barBlock(look, bar)), axisBlock(look)],
    TOP_PX,
  )
  return picture({
    widthPx,
    heightPx,
    title: DEMAND_PICTURE.title(),
    description: wardDemandText(options).join(' '),
    id: options.id ?? 'ox-demand',
    mode,
    children: [svg],
  })
}

/** The same in words, in the order of the bars. */
export function wardDemandText(options: DemandOptions): readonly string[] {
  return barsOf(options).map(({ label }) => `${label}.`)
}

function barsOf({ demand, branchLpmMax }: DemandOptions): readonly Bar[] {
  const bar = (label: (draw: string) => string, valueLpm: number, kind: Bar['kind']): Bar => ({
    label: label(drawText(valueLpm)),
    valueLpm,
    kind,
  })
  return [
    bar(DEMAND_PICTURE.now, demand.drawnLpm, 'drawn'),
    bar(DEMAND_PICTURE.p95, demand.simulation.percentilesLpm.p95, 'drawn'),
    bar(DEMAND_PICTURE.oneMore, demand.oneMore.drawnLpm, 'drawn'),
    bar(DEMAND_PICTURE.design, demand.designLpm, 'carried'),
    ...(branchLpmMax === undefined ? [] : [bar(DEMAND_PICTURE.branch, branchLpmMax, 'carried')]),
  ]
}

interface Look {
  readonly widthPx: number
  readonly scale: Scale
  readonly paints: Paints
}

function barBlock({ widthPx, scale, paints }: Look, bar: Bar): Block {
  const lines = wrapped(bar.label, { widthPx: widthPx - 2 * SIDE_PX, fontPx: TEXT_PX })
  const y = lines.length * LINE_PX + 3
  const isDrawn = bar.kind === 'drawn'
  return {
    svg: [
      ...lines.map((line, i) =>
        text(line, { x: SIDE_PX, y: (i + 0.75) * LINE_PX, fill: paints.ink }),
      ),
      element('rect', {
        x: SIDE_PX,
        y,
        width: Math.max(2, scale.at(bar.valueLpm) - SIDE_PX),
        height: BAR_PX,
        rx: isDrawn ? 3 : 0,
        fill: isDrawn ? paints.accent : paints.band,
        stroke: paints.ink,
        'stroke-width': isDrawn ? 0 : 1,
      }),
    ].join(''),
    heightPx: y + BAR_PX + ROW_GAP_PX,
  }
}

function axisBlock({ widthPx, scale, paints }: Look): Block {
  const labelPx = textWidthPx(String(Math.ceil(scale.max)), TEXT_PX)
  const most = Math.max(1, Math.floor((widthPx - 2 * SIDE_PX) / (labelPx + TICK_GAP_PX)))
  const marks = ticksOf(scale, niceStep(scale.max, Math.min(most, 8))).flatMap((tick) => {
    const x = scale.at(tick)
    const anchor = tick === 0 ? 'start' : x + labelPx / 2 > widthPx ? 'end' : 'middle'
    return [
      element('line', { x1: x, x2: x, y1: 0, y2: 5, stroke: paints.muted }),
      text(String(tick), { x, y: 20, 'text-anchor': anchor, fill: paints.muted }),
    ]
  })
  const line = { x1: SIDE_PX, x2: widthPx - SIDE_PX, y1: 0, y2: 0, stroke: paints.muted }
  const name = text(DEMAND_PICTURE.axis(), { x: SIDE_PX, y: 40, fill: paints.muted })
  return { svg: [element('line', line), ...marks, name].join(''), heightPx: AXIS_PX }
}
