// The reach chart: one row for each set-up, its likely range against the goal, its chance. Leaves out reasons and cautions.
import type { Plan } from '../planning/plan-types.ts'
import { REACH_WORDS, reachHeadText, reachRowText } from '../words/reach-text.ts'
import { axisBlock, headingBlock, legendBlock, rowBlock, SIDE_PX } from './reach-blocks.ts'
import { reachShape } from './reach-rows.ts'
import { scaleOf } from './scale.ts'
import { stacked } from './stack.ts'
import { paintsFor, picture } from './svg.ts'
import type { PaintMode } from './svg.ts'

export interface ReachOptions {
  readonly plan: Plan
  /** Most rows drawn. */
  readonly rows?: number
  readonly widthPx?: number
  readonly mode?: PaintMode
  /** Names the picture's parts; two pictures on one page need two. */
  readonly id?: string
}

const WIDTH_PX = 720
const ROWS_MOST = 10
const TOP_PX = 8

export function reachSvg(options: ReachOptions): string {
  const { plan } = options
  const widthPx = options.widthPx ?? WIDTH_PX
  const mode = options.mode ?? 'page'
  const { rows, axis } = reachShape(plan, options.rows ?? ROWS_MOST)
  const scale = scaleOf({ ...axis, fromPx: SIDE_PX, toPx: widthPx - SIDE_PX })
  const look = { widthPx, paints: paintsFor(mode), axis, scale }
  const blocks =
    rows.length === 0
      ? [headingBlock(look, REACH_WORDS.empty)]
      : [
          headingBlock(look, reachHeadText(plan)),
          ...rows.map((row) => rowBlock(look, row)),
          axisBlock(look),
          legendBlock(look, {
            hasOtherSteps: rows.some((row) => row.otherSteps.length > 0),
            hasUnchecked: rows.some((row) => !row.ranked.isChecked),
          }),
        ]
  const { svg, heightPx } = stacked(blocks, TOP_PX)
  return picture({
    widthPx,
    heightPx,
    title: REACH_WORDS.title,
    description: reachText(options).join(' '),
    id: options.id ?? 'ox-reach',
    mode,
    children: [svg],
  })
}

/** What the chart shows, one line for each row, in rank order. */
export function reachText(options: Pick<ReachOptions, 'plan' | 'rows'>): readonly string[] {
  const { plan } = options
  const { rows } = reachShape(plan, options.rows ?? ROWS_MOST)
  if (rows.length === 0) return [REACH_WORDS.empty]
  return [`${reachHeadText(plan)}.`, ...rows.map((row) => reachRowText(row.ranked, plan))]
}
