// A breath ribbon as numbers: stacked flows by origin and the fraction over time, without any drawing.
import { assert } from '../errors.ts'
import type { DeliveredBreath, RibbonStep } from '../delivery/delivered-breath.ts'
import type { Origins } from '../delivery/origins.ts'
import { lpmFromLps } from '../units/flow.ts'
import { ORIGIN_ORDER } from '../words/breath-text.ts'
import type { Range } from '../words/breath-text.ts'

export interface Ribbon {
  readonly breath: DeliveredBreath
  /** Fraction printed or quoted for the set-up. */
  readonly printedO2Fraction: Range | null
  /** Whether any outside measurement judges the family. */
  readonly isChecked: boolean
  /** The set-up in words. */
  readonly title: string
}

/** Flow at one moment with the heights to which the origins are stacked, L/min. */
export interface RibbonMoment {
  readonly timeS: number
  readonly flowLpm: number
  readonly lowerLpm: Readonly<Record<keyof Origins, number>>
  readonly upperLpm: Readonly<Record<keyof Origins, number>>
  readonly openingO2Fraction: number
}

export interface RibbonShape {
  readonly moments: readonly RibbonMoment[]
  readonly inspirationS: number
  readonly peakFlowLpm: number
  /** Gas the device brings at any moment, L/min BTPS. */
  readonly streamLpm: number
}

/** Moments at the middle of each step, and at both ends by carrying the first and last slope on. */
export function ribbonShape(breath: DeliveredBreath): RibbonShape {
  const { ribbon } = breath
  const first = ribbon[0]
  const last = ribbon.at(-1)
  assert(first !== undefined && last !== undefined, 'pictures/ribbon has steps')
  const inspirationS = last.startS + last.durationS
  const moments = [
    momentOf(first, 0, endFlowLps(first, ribbon[1], 0)),
    ...ribbon.map((step) => momentOf(step, middleOf(step), step.inspiratoryFlowLps)),
    momentOf(last, inspirationS, endFlowLps(last, ribbon.at(-2), inspirationS)),
  ]
  const peakFlowLpm = peakOf(moments)
  return { moments, inspirationS, peakFlowLpm, streamLpm: peakFlowLpm + breath.demandMarginLpm }
}

/** Top of the parabola through the highest moment and its neighbours; the moment itself at an end or on a flat top. */
function peakOf(moments: readonly RibbonMoment[]): number {
  const flows = moments.map((moment) => moment.flowLpm)
  const highest = Math.max(...flows)
  const i = flows.indexOf(highest)
  const [a, b, c] = [moments[i - 1], moments[i], moments[i + 1]]
  if (a === undefined || b === undefined || c === undefined) return highest
  const rise = (b.flowLpm - a.flowLpm) / (b.timeS - a.timeS)
  const fall = (c.flowLpm - b.flowLpm) / (c.timeS - b.timeS)
  const bend = (fall - rise) / (c.timeS - a.timeS)
  if (bend >= 0) return highest
  const slope = rise + bend * (b.timeS - a.timeS)
  return b.flowLpm - slope ** 2 / (4 * bend)
}

function middleOf(step: RibbonStep): number {
  return step.startS + step.durationS / 2
}

/** Never below 0 nor above twice the flow beside it. */
function endFlowLps(end: RibbonStep, beside: RibbonStep | undefined, timeS: number): number {
  if (beside === undefined) return end.inspiratoryFlowLps
  const slope =
    (end.inspiratoryFlowLps - beside.inspiratoryFlowLps) / (middleOf(end) - middleOf(beside))
  const carried = end.inspiratoryFlowLps + slope * (timeS - middleOf(end))
  return Math.max(0, Math.min(2 * end.inspiratoryFlowLps, carried))
}

function momentOf(step: RibbonStep, timeS: number, flowLps: number): RibbonMoment {
  const flowLpm = lpmFromLps(flowLps)
  const lowerLpm = { device: 0, stored: 0, room: 0, expired: 0 }
  const upperLpm = { device: 0, stored: 0, room: 0, expired: 0 }
  let height = 0
  for (const origin of ORIGIN_ORDER) {
    lowerLpm[origin] = height
    height += flowLpm * step.origins[origin]
    upperLpm[origin] = height
  }
  return { timeS, flowLpm, lowerLpm, upperLpm, openingO2Fraction: step.openingO2Fraction }
}
