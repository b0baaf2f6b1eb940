// The chain picture: parts from the gas outlet down to the patient, each joint drawn by how it holds, a wrong one broken with the mend in words. Leaves out lengths to scale.
import { placed } from '../joining/chain.ts'
import type { Chain } from '../joining/chain.ts'
import type { ChainCheck } from '../joining/check-chain.ts'
import { endsOf } from '../joining/check-joins.ts'
import { matingRule } from '../joining/mating-rules.ts'
import type { Refusal } from '../joining/refusal.ts'
import { mendText, refusalText } from '../words/joining-refusals.ts'
import {
  CHAIN_WORDS,
  chainTitleText,
  givesIntoText,
  joinText,
  partText,
} from '../words/joining-text.ts'
import { JOINT_PX, jointSign } from './chain-shapes.ts'
import { wrapped } from './measure.ts'
import { element, paintsFor, picture, text } from './svg.ts'
import type { PaintMode, Paints } from './svg.ts'

export interface ChainPictureOptions {
  readonly chain: Chain
  readonly check: ChainCheck
  /** False: faults are not shown, so that somebody can look for them. */
  readonly showsFaults?: boolean
  readonly widthPx?: number
  readonly mode?: PaintMode
  /** Names the picture's parts; two pictures on one page need two. */
  readonly id?: string
}

const WIDTH_PX = 460
const EDGE_PX = 4
const RAIL_PX = 26
const SIGN_X_PX = 34
const FONT_PX = 14
const LINE_PX = 20
const PAD_PX = 8
/** Bold letters are wider than the estimate. */
const BOLD_SHARE = 0.88

export function chainSvg(options: ChainPictureOptions): string {
  const mode = options.mode ?? 'page'
  const widthPx = options.widthPx ?? WIDTH_PX
  const paints = paintsFor(mode)
  const faults = shownFaults(options)
  const rows = options.chain.parts.map((_, at) => rowOf(options, at, widthPx))
  let y = EDGE_PX
  const tops: number[] = []
  const bodies: string[] = []
  for (const [at, row] of rows.entries()) {
    tops.push(y)
    bodies.push(boxSvg({ row, y, widthPx, paints }))
    y += row.boxPx
    const next = nextOf(options.chain, at)
    if (next?.to === at + 1 || row.jointLines.length > 0) {
      const isHere = next?.to === at + 1
      bodies.push(jointSvg({ row, y, paints, isHere }))
      y += Math.max(JOINT_PX, row.jointLines.length * LINE_PX + PAD_PX)
    } else y += PAD_PX
  }
  const rails = railsSvg({ chain: options.chain, rows, tops, widthPx, paints })
  const loose = faults.filter(({ part, join }) => part === undefined && join === undefined)
  const foot = loose.flatMap((fault) => linesFor(faultText(fault), widthPx - 2 * EDGE_PX))
  const notes = foot.map((line, i) =>
    text(line, { x: EDGE_PX, y: y + (i + 1) * LINE_PX, fill: paints.ink, 'font-weight': 600 }),
  )
  return picture({
    widthPx,
    heightPx: y + foot.length * LINE_PX + PAD_PX,
    title: chainTitleText(faults.length),
    description: chainPictureText(options).join('. '),
    id: options.id ?? 'ox-chain',
    mode,
    children: [...bodies, ...rails, ...notes],
  })
}

/** The picture in words: parts in order, each with its join and what is wrong there. */
export function chainPictureText(options: ChainPictureOptions): readonly string[] {
  const { chain } = options
  const loose = shownFaults(options).filter(
    (one) => one.part === undefined && one.join === undefined,
  )
  return [
    ...chain.parts.map((_, at) =>
      [...headLines(options, at), ...jointTexts(options, at)].join('; '),
    ),
    ...loose.map(faultText),
  ]
}

interface Row {
  readonly boxLines: readonly string[]
  readonly boxPx: number
  readonly jointLines: readonly string[]
  readonly isFaulty: boolean
  readonly hold: ReturnType<typeof holdOf>
}

function rowOf(options: ChainPictureOptions, at: number, widthPx: number): Row {
  const roomPx = widthPx - 2 * EDGE_PX - RAIL_PX - 2 * PAD_PX
  const boxLines = headLines(options, at).flatMap((line, i) =>
    linesFor(line, i === 0 ? roomPx * BOLD_SHARE : roomPx),
  )
  const jointRoomPx = roomPx - SIGN_X_PX
  return {
    boxLines,
    boxPx: boxLines.length * LINE_PX + 2 * PAD_PX,
    jointLines: jointTexts(options, at).flatMap((line) => linesFor(line, jointRoomPx)),
    isFaulty: shownFaults(options).some(({ part }) => part === at),
    hold: shownHold(options, at),
  }
}

/** Label, whether gas can leave here, and what is wrong with the part. */
function headLines(options: ChainPictureOptions, at: number): readonly string[] {
  const { chain, check } = options
  const isOpen = check.waysOut.some(({ part }) => part === at)
  const label = `${at + 1}. ${partText(placed(chain, at))}`
  return [
    isOpen && options.showsFaults !== false ? `${label} (${CHAIN_WORDS.open})` : label,
    ...shownFaults(options)
      .filter(({ part }) => part === at)
      .map(faultText),
  ]
}

function jointTexts(options: ChainPictureOptions, at: number): readonly string[] {
  const { chain } = options
  return chain.joins.flatMap((join, i) => {
    if (join.from !== at) return []
    const faults = shownFaults(options).filter((fault) => fault.join === i)
    const into = join.to === at + 1 ? [] : [givesIntoText(join.to + 1)]
    const said = options.showsFaults === false ? endsAlone(options, i) : joinText(chain, i)
    return [[said, ...into].join(', '), ...faults.map(faultText)]
  })
}

/** Before the faults are shown a join does not say that it does not hold. */
function endsAlone({ chain }: ChainPictureOptions, at: number): string {
  return holdOf(chain, at) === null ? '' : joinText(chain, at)
}

function faultText(fault: Refusal): string {
  return `✗ ${refusalText(fault)} – ${CHAIN_WORDS.mend}: ${mendText(fault)}`
}

function shownFaults({ check, showsFaults }: ChainPictureOptions): readonly Refusal[] {
  return showsFaults === false ? [] : check.refusals
}

function nextOf(chain: Chain, at: number) {
  return chain.joins.find(({ from }) => from === at)
}

function holdOf(chain: Chain, at: number) {
  const join = chain.joins[at]
  if (join === undefined) return null
  const { from, to } = endsOf(chain, join)
  return from === null || to === null ? null : (matingRule(from, to)?.heldBy ?? null)
}

/** A joint that would be drawn broken stays plain while faults are hidden. */
function shownHold(options: ChainPictureOptions, at: number) {
  const index = options.chain.joins.findIndex(({ from }) => from === at)
  const hold = holdOf(options.chain, index)
  return hold === null && options.showsFaults === false ? ('push-fit' as const) : hold
}

function linesFor(content: string, widthPx: number): readonly string[] {
  return content === '' ? [] : wrapped(content, { widthPx, fontPx: FONT_PX })
}

function boxSvg(options: {
  readonly row: Row
  readonly y: number
  readonly widthPx: number
  readonly paints: Paints
}): string {
  const { row, y, widthPx, paints } = options
  const frame = {
    x: EDGE_PX,
    y,
    width: widthPx - 2 * EDGE_PX - RAIL_PX,
    height: row.boxPx,
    rx: 4,
    fill: paints.paper,
    stroke: paints.ink,
    'stroke-width': row.isFaulty ? 3 : 1.5,
    ...(row.isFaulty ? { 'stroke-dasharray': '6 4' } : {}),
  }
  return element('g', {}, [
    element('rect', frame),
    ...row.boxLines.map((line, i) =>
      text(line, {
        x: EDGE_PX + PAD_PX,
        y: y + PAD_PX + (i + 0.75) * LINE_PX,
        fill: paints.ink,
        ...(i === 0 ? { 'font-weight': 600 } : {}),
      }),
    ),
  ])
}

function jointSvg(options: {
  readonly row: Row
  readonly y: number
  readonly paints: Paints
  /** The next box is the one it gives into. */
  readonly isHere: boolean
}): string {
  const { row, y, paints, isHere } = options
  const sign = isHere ? [jointSign({ hold: row.hold, x: EDGE_PX + SIGN_X_PX / 2, y, paints })] : []
  return element('g', {}, [
    ...sign,
    ...row.jointLines.map((line, i) =>
      text(line, {
        x: EDGE_PX + SIGN_X_PX + PAD_PX,
        y: y + (i + 0.95) * LINE_PX,
        fill: paints.ink,
      }),
    ),
  ])
}

/** Lines beside the boxes for parts that give further down. */
function railsSvg(options: {
  readonly chain: Chain
  readonly rows: readonly Row[]
  readonly tops: readonly number[]
  readonly widthPx: number
  readonly paints: Paints
}): readonly string[] {
  const { chain, rows, tops, widthPx, paints } = options
  const fromX = widthPx - EDGE_PX - RAIL_PX
  const middle = (at: number) => (tops[at] ?? 0) + (rows[at]?.boxPx ?? 0) / 2
  return chain.joins
    .filter(({ from, to }) => to !== from + 1)
    .map(({ from, to }, i) => {
      const railX = fromX + 8 + (i % 2) * 9
      const d = `M${fromX} ${middle(from)}H${railX}V${middle(to)}H${fromX}`
      return element('path', { d, stroke: paints.ink, 'stroke-width': 2, fill: 'none' })
    })
}
