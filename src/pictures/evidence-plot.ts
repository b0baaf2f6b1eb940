// The evidence plot: published fractions against ours, the rule of thumb beside on the same scale. Leaves out rows that are no measured fraction.
import { stacked } from './stack.ts'
import type { Block } from './stack.ts'
import { plotFigures, plotPanel, plotShape } from './evidence-panels.ts'
import {
  figuresText,
  familyPointsText,
  missedPointText,
  PLOT_WORDS,
} from '../words/evidence-plot-text.ts'
import type { FractionPoint } from '../evidence/fraction-points.ts'
import { legendBlock } from './evidence-legend.ts'
import { element, paintsFor, picture, text } from './svg.ts'
import type { PaintMode } from './svg.ts'

export interface EvidencePlotOptions {
  readonly points: readonly FractionPoint[]
  readonly widthPx?: number
  readonly mode?: PaintMode
  /** Names the picture's parts; two pictures on one page need two. */
  readonly id?: string
}

const WIDTH_PX = 720
const TOP_PX = 8
const GAP_PX = 24
/** Panels stand side by side from this width on. */
const WIDE_PX = 600
const PANEL_MOST_PX = 400

export function evidencePlotSvg(options: EvidencePlotOptions): string {
  const { points } = options
  const widthPx = options.widthPx ?? WIDTH_PX
  const mode = options.mode ?? 'page'
  const look = { widthPx, paints: paintsFor(mode) }
  const isWide = widthPx >= WIDE_PX
  const sidePx = Math.min(PANEL_MOST_PX, isWide ? (widthPx - GAP_PX) / 2 : widthPx)
  const shape = plotShape(points, sidePx)
  const panels = [
    plotPanel({ ...look, shape, heading: PLOT_WORDS.ours, marks: 'ours' }),
    ...(points.some((point) => point.ruleO2Fraction !== null)
      ? [plotPanel({ ...look, shape, heading: PLOT_WORDS.rule, marks: 'rule' })]
      : []),
  ]
  const placed = isWide ? [sideBySide(panels, sidePx + GAP_PX)] : panels
  const { svg, heightPx } = stacked(
    points.length === 0 ? [noneBlock(look)] : [...placed, legendBlock(look)],
    TOP_PX,
  )
  return picture({
    widthPx,
    heightPx,
    title: PLOT_WORDS.title,
    description: evidencePlotText(points).join(' '),
    id: options.id ?? 'ox-evidence',
    mode,
    children: [svg],
  })
}

/** What the plot shows: all together, each family, then every point beyond its spread. */
export function evidencePlotText(points: readonly FractionPoint[]): readonly string[] {
  if (points.length === 0) return [PLOT_WORDS.none]
  const families = [...new Set(points.map(({ family }) => family))]
  const all = plotFigures(points, 'ours')
  return [
    ...(all === null ? [] : [`${PLOT_WORDS.title}: ${figuresText(all)}.`]),
    ...families.flatMap((family) => {
      const own = points.filter((point) => point.family === family)
      const ours = plotFigures(own, 'ours')
      return ours === null
        ? []
        : [familyPointsText({ family, ours, rule: plotFigures(own, 'rule') })]
    }),
    ...points.filter(({ isMiss }) => isMiss).map(missedPointText),
  ]
}

function sideBySide(blocks: readonly Block[], stepPx: number): Block {
  return {
    svg: blocks
      .map(({ svg }, i) => element('g', { transform: `translate(${i * stepPx} 0)` }, [svg]))
      .join(''),
    heightPx: Math.max(...blocks.map(({ heightPx }) => heightPx)),
  }
}

const NONE_PX = 40

function noneBlock(look: { readonly paints: ReturnType<typeof paintsFor> }): Block {
  return {
    svg: text(PLOT_WORDS.none, { x: 0, y: NONE_PX / 2, fill: look.paints.muted }),
    heightPx: NONE_PX,
  }
}
