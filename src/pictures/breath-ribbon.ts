// The breath ribbon: flow while breathing in, painted by where the gas came from, and below it the fraction at the airway. Leaves out breathing out.
import { NOT_CHECKED } from '../words/caution-texts.ts'
import { RIBBON_WORDS, ribbonLines } from '../words/breath-text.ts'
import { wrapped } from './measure.ts'
import { originPatterns } from './origin-patterns.ts'
import { legend, legendHeightPx } from './ribbon-legend.ts'
import { panels, PANELS_HEIGHT_PX } from './ribbon-panels.ts'
import type { RibbonAxes } from './ribbon-panels.ts'
import { ribbonShape } from './ribbon-shape.ts'
import type { Ribbon, RibbonShape } from './ribbon-shape.ts'
import { stacked } from './stack.ts'
import type { Block } from './stack.ts'
import { paintsFor, picture, px, text } from './svg.ts'
import type { PaintMode, Paints } from './svg.ts'

export interface RibbonLook {
  readonly widthPx?: number
  readonly mode?: PaintMode
  /** Names the picture's parts; two pictures on one page need two. */
  readonly id?: string
  /** With a line that a page lets move with the breath. */
  readonly hasSweep?: boolean
}

const WIDTH_PX = 720
const SIDE_BY_SIDE_PX = 640
const GAP_PX = 24
const TITLE_PX = 15
const TITLE_LINE_PX = 20
const TOP_PX = 12

export function ribbonSvg(options: Ribbon & RibbonLook): string {
  return drawn([options], options)
}

/** Two ribbons on one scale: what a change does. Side by side where there is room, else one above the other. */
export function compareRibbonsSvg(
  options: { readonly before: Ribbon; readonly after: Ribbon } & RibbonLook,
): string {
  const { before, after } = options
  return drawn(
    [
      { ...before, title: `${RIBBON_WORDS.before}: ${before.title}` },
      { ...after, title: `${RIBBON_WORDS.after}: ${after.title}` },
    ],
    options,
  )
}

/** What the ribbon shows, in the order a screen reader should tell it. */
export function ribbonText(ribbon: Ribbon): readonly string[] {
  const { breath, printedO2Fraction: printed } = ribbon
  const { inspirationS, peakFlowLpm, streamLpm } = ribbonShape(breath)
  return [
    `${ribbon.title}${ribbon.isChecked ? '' : ` (${NOT_CHECKED})`}.`,
    ...ribbonLines({ breath, printed, inspirationS, peakFlowLpm, streamLpm }),
  ]
}

function drawn(ribbons: readonly Ribbon[], look: RibbonLook): string {
  const widthPx = look.widthPx ?? WIDTH_PX
  const mode = look.mode ?? 'page'
  const id = look.id ?? 'ox-ribbon'
  const paints = paintsFor(mode)
  const shapes = ribbons.map((ribbon) => ribbonShape(ribbon.breath))
  const axes = axesFor(shapes)
  const beside = ribbons.length > 1 && widthPx >= SIDE_BY_SIDE_PX
  const columnPx = beside ? (widthPx - GAP_PX) / ribbons.length : widthPx
  const titles = ribbons.map(({ title }) => wrapped(title, { widthPx: columnPx, fontPx: TITLE_PX }))
  const titleLines = Math.max(...titles.map((lines) => lines.length))
  const blocks = ribbons.map((ribbon, i) =>
    block({
      ribbon,
      shape: shapes[i],
      titles: titles[i],
      titleLines,
      columnPx,
      axes,
      paints,
      id,
      hasSweep: look.hasSweep ?? false,
    }),
  )
  const body = beside ? besides(blocks, columnPx + GAP_PX) : stacked(spaced(blocks), TOP_PX)
  return picture({
    widthPx,
    heightPx: body.heightPx,
    title: RIBBON_WORDS.title,
    description: ribbons.flatMap(ribbonText).join(' '),
    id,
    mode,
    children: [originPatterns(id, paints), body.svg],
  })
}

function besides(blocks: readonly Block[], stepPx: number): Block {
  const parts = blocks.map(
    ({ svg }, i) => `<g transform="translate(${px(i * stepPx)} ${TOP_PX})">${svg}</g>`,
  )
  const heights = blocks.map(({ heightPx }) => heightPx)
  return { svg: parts.join(''), heightPx: TOP_PX + Math.max(...heights) }
}

function spaced(blocks: readonly Block[]): readonly Block[] {
  return blocks.map((one, i) =>
    i === blocks.length - 1 ? one : { ...one, heightPx: one.heightPx + GAP_PX },
  )
}

function axesFor(shapes: readonly RibbonShape[]): RibbonAxes {
  return {
    timeS: Math.max(...shapes.map((shape) => shape.inspirationS)),
    flowLpm: Math.max(...shapes.map((shape) => shape.peakFlowLpm)),
  }
}

function block(options: {
  readonly ribbon: Ribbon
  readonly shape: RibbonShape | undefined
  readonly titles: readonly string[] | undefined
  readonly titleLines: number
  readonly columnPx: number
  readonly axes: RibbonAxes
  readonly paints: Paints
  readonly id: string
  readonly hasSweep: boolean
}): Block {
  const { ribbon, columnPx, axes, paints, id, hasSweep } = options
  const shape = options.shape ?? ribbonShape(ribbon.breath)
  const headPx = options.titleLines * TITLE_LINE_PX + 8
  const head = (options.titles ?? []).map((line, i) =>
    text(line, {
      x: 0,
      y: TITLE_PX + i * TITLE_LINE_PX,
      'font-size': String(TITLE_PX),
      'font-weight': '600',
      fill: paints.ink,
    }),
  )
  const body = panels({ ribbon, shape, axes, widthPx: columnPx, paints, id, hasSweep })
  const words = legend({ ribbon, shape, axes, widthPx: columnPx, paints, id })
  const legendTopPx = headPx + PANELS_HEIGHT_PX
  return {
    svg: `${head.join('')}<g transform="translate(0 ${headPx})">${body}</g><g transform="translate(0 ${legendTopPx})">${words}</g>`,
    heightPx: legendTopPx + legendHeightPx({ ribbon, shape, axes, widthPx: columnPx }),
  }
}
