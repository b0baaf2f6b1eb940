// At which breathing rate a set-up leaves the goal: the middle draws breathe faster or slower until their median does.
import type { BreathPattern } from '../delivery/breath.ts'
import { deliverySample } from '../inference/delivery-points.ts'
import type { DeliveryPoint } from '../inference/delivery-points.ts'
import { shownSaturationPercent } from '../inference/gas-points.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Setting } from './evaluate.ts'
import type { HoldsUntil } from './plan-types.ts'

const RATE_MIN = 4
const RATE_MAX = 60
const RATE_MAX_SMALL = 100
/** Whoever breathes faster than this now is small: /min. */
const SMALL_FROM = 45
/** Draws around the middle that are followed; odd, so that a median is one of them. */
const FOLLOWED = 5
/** Halvings of the bracket: within half a breath per minute. */
const HALVINGS = 6

export interface HoldsQuestion {
  readonly setting: Setting
  readonly setUp: SetUp | null
  /** Shown saturation of each draw with the rates as drawn. */
  readonly shownPercent: Float64Array
  readonly effectiveO2Fraction: Float64Array
}

/** The rates over which a set-up is followed from the rate now. */
export function ratesFollowed(nowPerMin: number): {
  readonly minPerMin: number
  readonly maxPerMin: number
} {
  const maxPerMin = nowPerMin > SMALL_FROM ? RATE_MAX_SMALL : RATE_MAX
  return { minPerMin: Math.min(RATE_MIN, nowPerMin), maxPerMin: Math.max(maxPerMin, nowPerMin) }
}

/** Tidal volume, duty and lungs stay; only the rate changes. Rates searched: 4–60 /min, to 100 where the patient breathes faster than 45. */
export function holdsUntil(question: HoldsQuestion): HoldsUntil {
  const { setting, setUp } = question
  const { goal } = setting
  if (setUp === null || (goal.kind !== 'saturation' && goal.kind !== 'fraction'))
    return { ratePerMin: null, side: null }
  const byValue = goal.kind === 'saturation' ? question.shownPercent : question.effectiveO2Fraction
  const followed = middleDraws(byValue)
  const now = medianRate(setting, followed)
  const sideAt = (ratePerMin: number): 'below' | 'above' | null =>
    sideOf(question, followed, ratePerMin)
  const sideNow = sideAt(now)
  if (sideNow !== null) return { ratePerMin: null, side: sideNow }
  const fastest = ratesFollowed(now).maxPerMin
  for (const end of [fastest, RATE_MIN]) {
    const side = sideAt(end)
    if (side === null) continue
    let inside = now
    let outside = end
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (inside + outside) / 2
      if (sideAt(middle) === null) inside = middle
      else outside = middle
    }
    return { ratePerMin: Math.round(outside), side }
  }
  return { ratePerMin: null, side: null }
}

/** Draws whose value lies around the median. */
function middleDraws(values: Float64Array): readonly number[] {
  const order = Array.from(values, (_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0))
  const from = Math.max(0, Math.floor(order.length / 2) - Math.floor(FOLLOWED / 2))
  return order.slice(from, from + FOLLOWED)
}

function medianRate(setting: Setting, followed: readonly number[]): number {
  const rates = followed
    .map((i) => pointFor(setting, i)?.body.breath.ratePerMin ?? RATE_MIN)
    .sort((a, b) => a - b)
  return rates[Math.floor(rates.length / 2)] ?? RATE_MIN
}

function pointFor(setting: Setting, draw: number): DeliveryPoint | undefined {
  return setting.sample.points[setting.sample.pointOf[draw] ?? 0]
}

function sideOf(
  question: HoldsQuestion,
  followed: readonly number[],
  ratePerMin: number,
): 'below' | 'above' | null {
  const { setting } = question
  const { goal, sample, barometricKpa, solver } = setting
  const points = followed.flatMap((i) => {
    const point = pointFor(setting, i)
    return point === undefined ? [] : [atRate(point, ratePerMin)]
  })
  const delivered = deliverySample(solver, points, question.setUp, barometricKpa)
  const values = followed.map((i, k) => {
    const o2Fraction = delivered.effectiveO2Fraction[k] ?? 0
    const gas = sample.gas[i]
    if (goal.kind === 'fraction' || gas === undefined) return o2Fraction
    return Math.round(shownSaturationPercent(gas, o2Fraction, barometricKpa))
  })
  const median = values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
  const [low, high] =
    goal.kind === 'saturation'
      ? [goal.lowPercent, goal.highPercent]
      : goal.kind === 'fraction'
        ? [goal.low, goal.high]
        : [0, 1]
  if (median < low) return 'below'
  return median > high ? 'above' : null
}

/** The same draw breathing at another rate; all else stays. */
export function atRate(point: DeliveryPoint, ratePerMin: number): DeliveryPoint {
  const breath: BreathPattern = { ...point.body.breath, ratePerMin }
  return { ...point, body: { ...point.body, breath } }
}
