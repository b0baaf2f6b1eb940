// A reach chart as numbers: which rows, their intervals, the axis and the goal on it. Leaves out drawing.
import type { Goal } from '../patient/case.ts'
import type { Band, Plan, RankedSetUp } from '../planning/plan-types.ts'
import { showsSaturation } from '../words/reach-text.ts'

export interface ReachRow {
  readonly ranked: RankedSetUp
  readonly band: Band
  /** Medians of the other steps of the same interface, size and source. */
  readonly otherSteps: readonly number[]
}

export interface ReachAxis {
  readonly kind: 'saturation' | 'fraction'
  readonly min: number
  readonly max: number
  readonly tick: number
  readonly goal: { readonly low: number; readonly high: number } | null
}

export interface ReachShape {
  readonly rows: readonly ReachRow[]
  readonly axis: ReachAxis
}

const SATURATION_TICK = 5
const FRACTION_AXIS = { min: 0.2, max: 1, tick: 0.2 }
/** The saturation axis reaches at least this far down. */
const SATURATION_SHOWN_FROM = 80
/** Ticks at most, else they are doubled. */
const TICKS_MOST = 8

export function reachShape(plan: Plan, most: number): ReachShape {
  const isSaturation =
    showsSaturation(plan.goal) && plan.ranked.every((one) => one.saturationPercent !== null)
  const bandOf = (one: RankedSetUp): Band =>
    (isSaturation ? one.saturationPercent : null) ?? one.effectiveO2Fraction
  const rows = plan.ranked.slice(0, most).map((ranked) => ({
    ranked,
    band: bandOf(ranked),
    otherSteps: plan.ranked
      .filter((other) => other !== ranked && isSameChain(other, ranked))
      .map((other) => bandOf(other).median),
  }))
  const goal = goalRange(plan.goal)
  if (!isSaturation) return { rows, axis: { kind: 'fraction', ...FRACTION_AXIS, goal } }
  const lowest = Math.min(
    SATURATION_SHOWN_FROM,
    goal?.low ?? SATURATION_SHOWN_FROM,
    ...rows.map((row) => row.band.low),
  )
  const min = Math.floor(lowest / SATURATION_TICK) * SATURATION_TICK
  const tick = (100 - min) / SATURATION_TICK > TICKS_MOST ? 2 * SATURATION_TICK : SATURATION_TICK
  return { rows, axis: { kind: 'saturation', min, max: 100, tick, goal } }
}

/** A row of no rank on the axis of the others, such as what is on now. */
export function reachRowOf(ranked: RankedSetUp, axis: ReachAxis): ReachRow {
  const band = axis.kind === 'saturation' ? ranked.saturationPercent : null
  return { ranked, band: band ?? ranked.effectiveO2Fraction, otherSteps: [] }
}

function isSameChain(a: RankedSetUp, b: RankedSetUp): boolean {
  return (
    a.setUp.family === b.setUp.family &&
    a.setUp.size === b.setUp.size &&
    a.setUp.source.id === b.setUp.source.id &&
    a.setUp.interfaceId === b.setUp.interfaceId &&
    a.setUp.setO2Fraction === b.setUp.setO2Fraction
  )
}

function goalRange(goal: Goal): ReachAxis['goal'] {
  switch (goal.kind) {
    case 'saturation':
      return { low: goal.lowPercent, high: goal.highPercent }
    case 'fraction':
      return { low: goal.low, high: goal.high }
    case 'as-much-as-possible':
    case 'comfort':
      return null
  }
}
