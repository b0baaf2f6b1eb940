// One random case solved by the fast solver and by the judge, and a hill-climb towards the worst. Leaves out what is to be expected of the result.
import { AIR_O2_FRACTION } from '../../src/units/constants.ts'
import { alveolarInflow, createPeriodicSolver, solvePeriodic } from '../../src/delivery/periodic.ts'
import type { PeriodicSolver } from '../../src/delivery/periodic.ts'
import { TRANSIENT_LUNGS } from '../../src/delivery/transient-system.ts'
import type { TransientLungs } from '../../src/delivery/transient-system.ts'
import { solveTransient } from '../../src/delivery/transient.ts'
import type { TransientOptions, TransientResult } from '../../src/delivery/transient.ts'
import { caseFromPoint, neighbour } from './random-network.ts'
import type { CasePoint, RandomCase } from './random-network.ts'

/** What the two solvers may differ by, in effective fraction. */
export const AGREEMENT_TOLERANCE = 0.001

/** Small lungs, so that few breaths bring the judge to its limit: the limit does not depend on them. */
export const QUICK_LUNGS: TransientLungs = { ...TRANSIENT_LUNGS, residualRatio: 1.5 }

export interface Agreement {
  readonly point: CasePoint
  readonly fast: number
  readonly judge: TransientResult
  readonly miss: number
}

export function fastFraction(solver: PeriodicSolver, { network, breath }: RandomCase): number {
  solvePeriodic(solver, network, breath)
  const { sourceL, roomL } = alveolarInflow(solver, network, { sourceL: 0, roomL: 0, expiredL: 0 })
  return (sourceL + AIR_O2_FRACTION * roomL) / (sourceL + roomL)
}

const USUAL = {
  settledChange: 3e-7,
  tolerance: 1e-5,
  breathsMax: 4000,
  lungs: QUICK_LUNGS,
  withOrigins: false,
}
const STRICT = { ...USUAL, settledChange: 1e-9, tolerance: 1e-7, breathsMax: 40_000 }
/** A miss beyond this is judged again, strictly: a pocket that is hardly passed changes little in each breath and yet for long. */
const JUDGED_AGAIN = 2e-4

/** The judge at its limit. A bag that gains or loses almost nothing is started where the fast solver says it stays: the judge then says whether it does. */
export function judgeCase(
  { network, breath }: RandomCase,
  bagStartL: number,
  options: Partial<TransientOptions> = USUAL,
): TransientResult {
  const first = solveTransient(network, breath, options)
  if (first.settled || network.bag === null) return first
  const bagStartShare = bagStartL / network.bag.volumeL
  return solveTransient(network, breath, { ...options, bagStartShare })
}

const solver = createPeriodicSolver()

export function compareAt(point: CasePoint): Agreement {
  const randomCase = caseFromPoint(point)
  const fast = fastFraction(solver, randomCase)
  const usual = judgeCase(randomCase, solver.bag.startL)
  if (Math.abs(fast - usual.effectiveO2Fraction) < JUDGED_AGAIN)
    return agreement(point, fast, usual)
  return agreement(point, fast, judgeCase(randomCase, solver.bag.startL, STRICT))
}

function agreement(point: CasePoint, fast: number, judge: TransientResult): Agreement {
  const miss = Math.abs(fast - judge.effectiveO2Fraction)
  return { point, fast, judge, miss: Number.isFinite(miss) ? miss : Number.POSITIVE_INFINITY }
}

/** Walks from a case to worse ones: `tries` neighbours, wide at first, each kept if it misses by more. */
export function climb(from: Agreement, tries: number, random: () => number): Agreement {
  let worst = from
  for (let i = 0; i < tries; i++) {
    const width = 0.25 * 0.1 ** (i / tries)
    const next = compareAt(neighbour(worst.point, random, width))
    if (next.miss > worst.miss) worst = next
  }
  return worst
}
