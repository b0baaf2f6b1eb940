// The judge's equations integrated by the general-purpose library odex: breath after breath from room air until nothing changes. Shares the rates with the judge, not the integrator.
import { Solver } from 'odex'
import type { BreathPattern } from '../../src/delivery/breath.ts'
import type { Network } from '../../src/delivery/network.ts'
import { breathStretches } from '../../src/delivery/transient-flows.ts'
import type { BagEnds, Stretch } from '../../src/delivery/transient-flows.ts'
import {
  createTransientSystem,
  effectiveO2Fraction,
  startOnRoomAir,
  transientRates,
} from '../../src/delivery/transient-system.ts'
import type { TransientLungs, TransientSystem } from '../../src/delivery/transient-system.ts'

export interface OdexResult {
  readonly effectiveO2Fraction: number
  /** False where steps too coarse keep the breaths apart. */
  readonly settled: boolean
  readonly breaths: number
  readonly evaluations: number
}

const BREATHS_MIN = 5
const BREATHS_MAX = 2000
const BAG_SETTLED_SHARE = 1e-4
/** What odex answers when it reached the end. */
const CONVERGED = 0

export function solveByOdex(
  network: Network,
  breath: BreathPattern,
  {
    settledChange,
    tolerance,
    lungs,
  }: { settledChange: number; tolerance: number; lungs: TransientLungs },
): OdexResult {
  const system = createTransientSystem(network, breath, { lungs, withOrigins: false })
  const solver = new Solver(system.size)
  solver.absoluteTolerance = tolerance
  solver.relativeTolerance = tolerance
  solver.maxSteps = 1_000_000
  const rates = new Float64Array(system.size)
  let y = Array.from(startOnRoomAir(system))
  let now = fractionOf(system, y)
  let filled = 1
  let evaluations = 0
  for (let breaths = 1; breaths <= BREATHS_MAX; breaths++) {
    for (const stretch of breathStretches(breath)) {
      const end = solver.solve(ratesOf(system, stretch, rates), stretch.fromS, y, stretch.toS)
      if (end.outcome !== CONVERGED) throw new Error(`odex stopped with outcome ${end.outcome}`)
      y = end.y
      evaluations += end.nEval
    }
    const before = now
    const filledBefore = filled
    now = fractionOf(system, y)
    filled = y[system.bagAt] ?? 0
    const bagSettled = Math.abs(filled - filledBefore) < BAG_SETTLED_SHARE
    if (breaths >= BREATHS_MIN && bagSettled && Math.abs(now - before) < settledChange) {
      return { effectiveO2Fraction: now, settled: true, breaths, evaluations }
    }
  }
  return { effectiveO2Fraction: now, settled: false, breaths: BREATHS_MAX, evaluations }
}

/** The library cannot stop where the bag runs empty or full, so the ends close over a narrow band: the rates stay continuous. */
function ratesOf(
  system: TransientSystem,
  stretch: Stretch,
  rates: Float64Array,
): (t: number, y: number[]) => ArrayLike<number> {
  return (t, y) => {
    // The rates only read y by index, which a plain array allows as well.
    const state = y as unknown as Float64Array
    transientRates(system, { stretch, bagEnds: bagEndsOf(system, y) }, t, state, rates)
    return rates
  }
}

/** Share of the bag over which its ends close. */
const END_BAND = 0.002

function bagEndsOf(system: TransientSystem, y: readonly number[]): BagEnds {
  const filling = y[system.bagAt] ?? 0
  const within = (share: number): number => Math.min(1, Math.max(0, share))
  return { gives: within(filling / END_BAND), takes: within((1 - filling) / END_BAND) }
}

function fractionOf(system: TransientSystem, y: readonly number[]): number {
  return effectiveO2Fraction(system, y as unknown as Float64Array) // read by index only
}
