// The blocks of a reach chart: heading, one row, axis, legend, each drawn from its own top left corner.
import { fractionText, numberText } from '../words/number-text.ts'
import { UNCHECKED_NOTE } from '../words/caution-texts.ts'
import { REACH_WORDS, reachChanceText, reachLabelText } from '../words/reach-text.ts'
import { textWidthPx, wrapped } from './measure.ts'
import type { ReachAxis, ReachRow } from './reach-rows.ts'
import { ticksOf } from './scale.ts'
import type { Scale } from './scale.ts'
import type { Block } from './stack.ts'
import { element, text } from './svg.ts'
import type { Attributes, Paints } from './svg.ts'

export interface ReachLook {
  readonly widthPx: number
  readonly paints: Paints
  readonly axis: ReachAxis
  readonly scale: Scale
}

export const SIDE_PX = 8
const TEXT_PX = 14
const AXIS_TEXT_PX = 13
const LINE_PX = 19
const STRIP_GAP_PX = 3
const STRIP_PX = 22
const BAR_PX = 10
const STEP_PX = 5
const ROW_GAP_PX = 12
const CHANCE_GAP_PX = 12
const AXIS_PX = 52
const LEGEND_ROW_PX = 26
const LEGEND_TEXT_PX = 44

export function headingBlock(look: ReachLook, content: string): Block {
  const lines = wrapped(content, { widthPx: look.widthPx - 2 * SIDE_PX, fontPx: TEXT_PX })
  return {
    svg: linesOf(lines, { 'font-weight': '600', fill: look.paints.ink }),
    heightPx: lines.length * LINE_PX + ROW_GAP_PX,
  }
}

/** Label and chance above, the strip with goal and interval below. */
export function rowBlock(look: ReachLook, row: ReachRow): Block {
  const { widthPx, paints } = look
  const chance = reachChanceText(row.ranked)
  const chancePx = chance === '' ? 0 : textWidthPx(chance, TEXT_PX) + CHANCE_GAP_PX
  const room = { widthPx: widthPx - 2 * SIDE_PX - chancePx, fontPx: TEXT_PX }
  const lines = wrapped(reachLabelText(row.ranked), room)
  const stripTopPx = lines.length * LINE_PX + STRIP_GAP_PX
  return {
    svg: [
      linesOf(lines, { fill: paints.ink }),
      ...(chance === '' ? [] : [atRight(look, chance)]),
      ...strip(look, row, stripTopPx),
    ].join(''),
    heightPx: stripTopPx + STRIP_PX + ROW_GAP_PX,
  }
}

export function axisBlock(look: ReachLook): Block {
  const { axis, scale, paints } = look
  const ticks = ticksOf(axis, axis.tick)
  const marks = ticks.flatMap((tick, i) => {
    const x = scale.at(tick)
    return [
      element('line', { x1: x, x2: x, y1: 0, y2: 5, stroke: paints.muted }),
      text(axis.kind === 'fraction' ? fractionText(tick) : numberText(tick, 1), {
        x,
        y: 18,
        'text-anchor': anchorOf(i, ticks.length),
        ...axisLook(paints),
      }),
    ]
  })
  const name = axis.kind === 'fraction' ? REACH_WORDS.fractionAxis : REACH_WORDS.saturationAxis
  return {
    svg: [
      element('line', { ...spanOf(scale), y1: 0, y2: 0, stroke: paints.muted }),
      ...marks,
      text(name, { x: SIDE_PX, y: 36, ...axisLook(paints) }),
    ].join(''),
    heightPx: AXIS_PX,
  }
}

export interface LegendWants {
  readonly hasOtherSteps: boolean
  readonly hasUnchecked: boolean
}

export function legendBlock(look: ReachLook, wants: LegendWants): Block {
  const { paints } = look
  const rows: ((middle: number) => readonly string[])[] = [
    (y) => [
      intervalMark(paints, { from: SIDE_PX, to: SIDE_PX + 34, middle: SIDE_PX + 20, y }),
      legendLabel(look, REACH_WORDS.interval, y),
    ],
  ]
  if (wants.hasOtherSteps) {
    rows.push((y) => [
      ...[8, 18, 28].map((x) => stepMark(paints, SIDE_PX + x, y + STEP_PX / 2)),
      legendLabel(look, REACH_WORDS.otherSteps, y),
    ])
  }
  if (wants.hasUnchecked) {
    rows.push((y) => [text(UNCHECKED_NOTE, { x: SIDE_PX, y: y + 5, fill: paints.ink })])
  }
  return {
    svg: rows.flatMap((row, i) => row((i + 1 / 2) * LEGEND_ROW_PX)).join(''),
    heightPx: rows.length * LEGEND_ROW_PX,
  }
}

function legendLabel(look: ReachLook, content: string, y: number): string {
  return text(content, { x: SIDE_PX + LEGEND_TEXT_PX, y: y + 5, fill: look.paints.ink })
}

function strip(look: ReachLook, row: ReachRow, topPx: number): readonly string[] {
  const { axis, scale, paints } = look
  const middle = topPx + STRIP_PX / 2
  return [
    ...goalMarks(look, topPx),
    element('line', { ...spanOf(scale), y1: middle, y2: middle, stroke: paints.line }),
    ...row.otherSteps
      .filter((median) => median >= axis.min && median <= axis.max)
      .map((median) => stepMark(paints, scale.at(median), topPx + STRIP_PX)),
    intervalMark(paints, {
      from: scale.at(row.band.low),
      to: scale.at(row.band.high),
      middle: scale.at(row.band.median),
      y: middle,
    }),
  ]
}

function goalMarks(look: ReachLook, topPx: number): readonly string[] {
  const { axis, scale, paints } = look
  if (axis.goal === null) return []
  const x1 = scale.at(axis.goal.low)
  const x2 = scale.at(axis.goal.high)
  const edge = (x: number): string =>
    element('line', {
      x1: x,
      x2: x,
      y1: topPx,
      y2: topPx + STRIP_PX,
      stroke: paints.muted,
      'stroke-dasharray': '3 2',
    })
  return [
    element('rect', { x: x1, y: topPx, width: x2 - x1, height: STRIP_PX, fill: paints.band }),
    edge(x1),
    edge(x2),
  ]
}

/** A bar from low to high with an upright mark where the middle stands. */
function intervalMark(
  paints: Paints,
  at: { readonly from: number; readonly to: number; readonly middle: number; readonly y: number },
): string {
  const bar = element('rect', {
    x: at.from,
    y: at.y - BAR_PX / 2,
    width: Math.max(2, at.to - at.from),
    height: BAR_PX,
    rx: '3',
    fill: paints.accent,
  })
  const middle = element('rect', {
    x: at.middle - 2.5,
    y: at.y - BAR_PX,
    width: 5,
    height: 2 * BAR_PX,
    fill: paints.ink,
    stroke: paints.paper,
    'stroke-width': '1.5',
  })
  return bar + middle
}

function stepMark(paints: Paints, x: number, bottomPx: number): string {
  return element('line', {
    x1: x,
    x2: x,
    y1: bottomPx - STEP_PX,
    y2: bottomPx,
    stroke: paints.muted,
    'stroke-width': '1.5',
  })
}

function atRight(look: ReachLook, content: string): string {
  return text(content, {
    x: look.widthPx - SIDE_PX,
    y: TEXT_PX,
    'text-anchor': 'end',
    fill: look.paints.ink,
  })
}

function linesOf(lines: readonly string[], look: Attributes): string {
  return lines
    .map((line, i) => text(line, { x: SIDE_PX, y: TEXT_PX + i * LINE_PX, ...look }))
    .join('')
}

function axisLook(paints: Paints): Attributes {
  return { fill: paints.muted, 'font-size': String(AXIS_TEXT_PX) }
}

/** End labels stay inside the picture. */
function anchorOf(i: number, count: number): string {
  if (i === 0) return 'start'
  return i === count - 1 ? 'end' : 'middle'
}

function spanOf(scale: Scale): { readonly x1: number; readonly x2: number } {
  return { x1: scale.at(scale.min), x2: scale.at(scale.max) }
}
