// An adaptive Dormand–Prince 5(4) integrator for the judge. Leaves out dense output and stiff systems.
import { assert } from '../errors.ts'

/** Writes the rates of change of `y` at time t into `rates`. */
export type Rates = (t: number, y: Float64Array, rates: Float64Array) => void

export interface Integration {
  readonly rates: Rates
  readonly from: number
  readonly to: number
  /** Largest error of one step in any variable, absolute plus relative. */
  readonly tolerance: number
  /** First step to try; carried over from one integration to the next. */
  readonly firstStep: number
  /** Positive inside the region in which `rates` holds. The integration stops where it reaches zero. */
  readonly inside: ((y: Float64Array) => number) | null
}

export interface IntegrationEnd {
  readonly t: number
  readonly nextStep: number
  readonly evaluations: number
}

// Nodes, stages and error weights of the 5(4) pair. Source: DormandPrince1980, table 2.
const NODES = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1] as const
const STAGES = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19_372 / 6561, -25_360 / 2187, 64_448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46_732 / 5247, 49 / 176, -5103 / 18_656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
] as const
const ERROR = [
  71 / 57_600,
  0,
  -71 / 16_695,
  71 / 1920,
  -17_253 / 339_200,
  22 / 525,
  -1 / 40,
] as const

const SAFETY = 0.9
const SHRINK_MIN = 0.2
const GROW_MAX = 5
/** How close to zero `inside` must come to count as reached. */
const EDGE = 1e-11

/** Memory for one system of a given size. */
export interface DormandPrince {
  readonly stages: readonly Float64Array[]
  readonly trial: Float64Array
  readonly error: Float64Array
}

export function createDormandPrince(size: number): DormandPrince {
  return {
    stages: NODES.map(() => new Float64Array(size)),
    trial: new Float64Array(size),
    error: new Float64Array(size),
  }
}

/** Advances `y` in place from `from` to `to`, or to where `inside` reaches zero. Error kept per step; fifth order. */
export function integrate(
  memory: DormandPrince,
  y: Float64Array,
  { rates, from, to, tolerance, firstStep, inside }: Integration,
): IntegrationEnd {
  const { stages, trial } = memory
  const first = stages[0] as Float64Array // seven stages by construction
  const last = stages[6] as Float64Array
  let t = from
  let step = Math.min(firstStep, to - from)
  let nextStep = firstStep
  let evaluations = 1
  rates(t, y, first)
  while (t < to) {
    const isLast = t + step >= to
    if (isLast) step = to - t
    assert(step > 1e-14 * Math.abs(to), 'integration-step-positive')
    takeStages(memory, y, { rates, t, step })
    evaluations += 6
    const error = stepError(memory, y, { step, tolerance })
    const factor = Math.min(GROW_MAX, Math.max(SHRINK_MIN, SAFETY * (error + 1e-30) ** -0.2))
    if (error > 1) {
      step *= factor
      continue
    }
    const edge = inside === null ? 1 : inside(trial)
    if (inside !== null && edge < -EDGE) {
      // Overshot: aim at the edge along the chord, keeping clear of a zero step.
      const before = inside(y)
      step *= Math.max(1e-3, before / (before - edge))
      continue
    }
    y.set(trial)
    t = isLast ? to : t + step
    if (!isLast || step * factor > nextStep) nextStep = step * factor
    step = nextStep
    if (edge <= EDGE) break
    first.set(last)
  }
  return { t, nextStep, evaluations }
}

/** Fills stages 1–6 and leaves the fifth-order result in `trial`. */
function takeStages(
  { stages, trial }: DormandPrince,
  y: Float64Array,
  { rates, t, step }: { rates: Rates; t: number; step: number },
): void {
  for (let s = 1; s < 7; s++) {
    const weights = STAGES[s] as readonly number[] // s stays below 7
    for (let i = 0; i < y.length; i++) {
      let sum = 0
      for (let r = 0; r < s; r++)
        sum += (weights[r] as number) * ((stages[r] as Float64Array)[i] as number)
      trial[i] = (y[i] as number) + step * sum
    }
    rates(t + (NODES[s] as number) * step, trial, stages[s] as Float64Array)
  }
}

/** Largest estimated error over its allowance; a step is good at 1 or below. */
function stepError(
  { stages, trial }: DormandPrince,
  y: Float64Array,
  { step, tolerance }: { step: number; tolerance: number },
): number {
  let worst = 0
  for (let i = 0; i < y.length; i++) {
    let sum = 0
    for (let s = 0; s < 7; s++)
      sum += (ERROR[s] as number) * ((stages[s] as Float64Array)[i] as number)
    const size = Math.max(1, Math.abs(y[i] as number), Math.abs(trial[i] as number))
    worst = Math.max(worst, Math.abs(step * sum) / (tolerance * size))
  }
  return worst
}
