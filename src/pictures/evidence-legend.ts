// What the marks of the evidence plot mean. Leaves out the panels.
import { PLOT_WORDS } from '../words/evidence-plot-text.ts'
import { beyondMark, withinMark } from './evidence-panels.ts'
import { wrapped } from './measure.ts'
import type { Block } from './stack.ts'
import { element, text } from './svg.ts'
import type { Paints } from './svg.ts'

const TEXT_PX = 14
const LINE_PX = 19
const ROW_GAP_PX = 6
const SWATCH_PX = 32
const MIDDLE = { x: 12, y: 10 }

export function legendBlock(look: { readonly widthPx: number; readonly paints: Paints }): Block {
  const { widthPx, paints } = look
  const entries = [
    { mark: withinMark(MIDDLE, paints), label: PLOT_WORDS.legendPass },
    { mark: beyondMark(MIDDLE, paints), label: PLOT_WORDS.legendMiss },
    { mark: bar({ stroke: paints.muted, 'stroke-width': 1.5 }), label: PLOT_WORDS.legendSpread },
    {
      mark: bar({ stroke: paints.ink, 'stroke-width': 1.5, 'stroke-dasharray': '6 4' }),
      label: PLOT_WORDS.legendEqual,
    },
  ]
  let y = 0
  const parts = entries.map(({ mark, label }) => {
    const lines = wrapped(label, { widthPx: widthPx - SWATCH_PX, fontPx: TEXT_PX })
    const said = lines.map((line, i) =>
      text(line, { x: SWATCH_PX, y: TEXT_PX + i * LINE_PX, fill: paints.ink }),
    )
    const part = element('g', { transform: `translate(0 ${y})` }, [mark, ...said])
    y += lines.length * LINE_PX + ROW_GAP_PX
    return part
  })
  return { svg: parts.join(''), heightPx: y }
}

function bar(stroke: Readonly<Record<string, string | number>>): string {
  return element('line', { x1: 0, x2: 2 * MIDDLE.x, y1: MIDDLE.y, y2: MIDDLE.y, ...stroke })
}
