// The plain way: the judge's equations stepped with a fixed length, breath after breath from room air until nothing changes. A yardstick for speed only.
import type { BreathPattern } from '../src/delivery/breath.ts'
import { breathPeriodS } from '../src/delivery/breath.ts'
import type { Network } from '../src/delivery/network.ts'
import { BAG_EMPTY, BAG_FREE, BAG_FULL, breathStretches } from '../src/delivery/transient-flows.ts'
import type { BagEnds, Stretch } from '../src/delivery/transient-flows.ts'
import {
  createTransientSystem,
  effectiveO2Fraction,
  startOnRoomAir,
  transientRates,
} from '../src/delivery/transient-system.ts'
import type { TransientSystem } from '../src/delivery/transient-system.ts'

export type FixedMethod = 'euler' | 'rk4'

export interface FixedStepOptions {
  readonly method: FixedMethod
  readonly stepsPerBreath: number
  readonly settledChange: number
}

const BREATHS_MIN = 5
const BREATHS_MAX = 5000

/** Effective fraction, or NaN where steps this coarse run away. */
export function solveFixedStep(
  network: Network,
  breath: BreathPattern,
  { method, stepsPerBreath, settledChange }: FixedStepOptions,
): number {
  const system = createTransientSystem(network, breath, { withOrigins: false })
  const y = startOnRoomAir(system)
  const memory = Array.from({ length: 5 }, () => new Float64Array(system.size))
  let now = effectiveO2Fraction(system, y)
  for (let breaths = 1; breaths <= BREATHS_MAX; breaths++) {
    for (const stretch of breathStretches(breath)) {
      const lengthS = stretch.toS - stretch.fromS
      const steps = Math.max(1, Math.round((stepsPerBreath * lengthS) / breathPeriodS(breath)))
      for (let i = 0; i < steps; i++) {
        const at = { stretch, tS: stretch.fromS + (i * lengthS) / steps, stepS: lengthS / steps }
        if (method === 'euler') stepEuler(system, y, memory, at)
        else stepRk4(system, y, memory, at)
      }
    }
    const before = now
    now = effectiveO2Fraction(system, y)
    if (Number.isNaN(now)) return now
    if (breaths >= BREATHS_MIN && Math.abs(now - before) < settledChange) return now
  }
  return Number.NaN
}

interface StepAt {
  readonly stretch: Stretch
  readonly tS: number
  readonly stepS: number
}

function stepEuler(
  system: TransientSystem,
  y: Float64Array,
  [rates = y]: readonly Float64Array[],
  { stretch, tS, stepS }: StepAt,
): void {
  transientRates(system, { stretch, bagEnds: endsOf(system, y) }, tS, y, rates)
  for (let i = 0; i < y.length; i++) y[i] = (y[i] ?? 0) + stepS * (rates[i] ?? 0)
}

function stepRk4(
  system: TransientSystem,
  y: Float64Array,
  [k1 = y, k2 = y, k3 = y, k4 = y, trial = y]: readonly Float64Array[],
  { stretch, tS, stepS }: StepAt,
): void {
  const at = { stretch, bagEnds: endsOf(system, y) }
  const half = stepS / 2
  transientRates(system, at, tS, y, k1)
  for (let i = 0; i < y.length; i++) trial[i] = (y[i] ?? 0) + half * (k1[i] ?? 0)
  transientRates(system, at, tS + half, trial, k2)
  for (let i = 0; i < y.length; i++) trial[i] = (y[i] ?? 0) + half * (k2[i] ?? 0)
  transientRates(system, at, tS + half, trial, k3)
  for (let i = 0; i < y.length; i++) trial[i] = (y[i] ?? 0) + stepS * (k3[i] ?? 0)
  transientRates(system, at, tS + stepS, trial, k4)
  for (let i = 0; i < y.length; i++) {
    const sum = (k1[i] ?? 0) + 2 * (k2[i] ?? 0) + 2 * (k3[i] ?? 0) + (k4[i] ?? 0)
    y[i] = (y[i] ?? 0) + (stepS / 6) * sum
  }
}

function endsOf({ network, bagAt }: TransientSystem, y: Float64Array): BagEnds {
  if (network.bag === null) return BAG_FREE
  const filling = y[bagAt] ?? 0
  if (filling <= 0) return BAG_EMPTY
  return filling >= 1 ? BAG_FULL : BAG_FREE
}
