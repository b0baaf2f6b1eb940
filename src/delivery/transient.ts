// The judge: runs breath after breath from room air with an adaptive integrator until nothing changes. Slow; leaves out everything the fast solver does to be fast.
import { assert } from '../errors.ts'
import type { BreathPattern } from './breath.ts'
import { createDormandPrince, integrate } from './dormand-prince.ts'
import type { DormandPrince } from './dormand-prince.ts'
import type { Network } from './network.ts'
import { BAG_EMPTY, BAG_FREE, BAG_FULL, breathStretches } from './transient-flows.ts'
import type { BagEnds, Stretch } from './transient-flows.ts'
import {
  createTransientSystem,
  emptyBag,
  effectiveO2Fraction,
  startOnRoomAir,
  transientRates,
  TRANSIENT_LUNGS,
} from './transient-system.ts'
import type { TransientLungs, TransientSystem } from './transient-system.ts'

export interface TransientOptions {
  /** Change of the effective fraction in one breath that counts as steady. */
  readonly settledChange: number
  /** Error allowed in one step of the integrator, in concentrations. */
  readonly tolerance: number
  readonly breathsMax: number
  /** Filling of the bag before the first breath, 0–1. */
  readonly bagStartShare: number
  readonly lungs: TransientLungs
  /** Whether the three origins are carried beside the real gases; without them the totals read zero. */
  readonly withOrigins: boolean
}

export const TRANSIENT_OPTIONS: TransientOptions = {
  settledChange: 1e-5,
  tolerance: 1e-7,
  breathsMax: 50_000,
  bagStartShare: 1,
  withOrigins: true,
  lungs: TRANSIENT_LUNGS,
}

/** What passed in the last breath by origin, L BTPS. */
export interface TransientTotals {
  readonly openingInL: number
  readonly tracheaInL: number
  readonly alveoliInL: number
}

export interface TransientResult {
  readonly effectiveO2Fraction: number
  readonly source: TransientTotals
  readonly room: TransientTotals
  readonly expired: TransientTotals
  /** Volume of the bag at the end of the last breath, L (0 without a bag). */
  readonly bagStartL: number
  readonly breaths: number
  readonly settled: boolean
  readonly evaluations: number
  /** Effective fraction after each breath. */
  readonly course: readonly number[]
}

/** Breaths to run before a small change may count as steady: the first ones only wash the airway. */
const BREATHS_MIN = 5
/** Change of the bag's filling in one breath that counts as steady. */
const BAG_SETTLED_SHARE = 1e-7
/** Filling within which an empty bag still counts as empty, and a full one as full. */
const BAG_BAND = 1e-7

/**
 * Runs the network from room air to its steady breath. Effective fraction within about ten times `settledChange` of the limit
 * (more if a box fills over hundreds of breaths). Range: any breath within BREATH_LIMITS. Checked in test/delivery-agreement.test.ts.
 */
export function solveTransient(
  network: Network,
  breath: BreathPattern,
  options: Partial<TransientOptions> = {},
): TransientResult {
  const { settledChange, tolerance, breathsMax, lungs, bagStartShare, withOrigins } = {
    ...TRANSIENT_OPTIONS,
    ...options,
  }
  const system = createTransientSystem(network, breath, { lungs, withOrigins })
  const memory = createDormandPrince(system.size)
  const y = startOnRoomAir(system, bagStartShare)
  const course: number[] = []
  let evaluations = 0
  let settled = false
  let before = effectiveO2Fraction(system, y)
  while (!settled && course.length < breathsMax) {
    const filledBefore = y[system.bagAt] as number // within the state
    evaluations += passTransientBreath(system, memory, y, tolerance)
    const now = effectiveO2Fraction(system, y)
    assert(Number.isFinite(now), 'transient-fraction-finite')
    course.push(now)
    const bagSettled = Math.abs((y[system.bagAt] as number) - filledBefore) < BAG_SETTLED_SHARE
    settled = course.length >= BREATHS_MIN && bagSettled && Math.abs(now - before) < settledChange
    before = now
  }
  return {
    ...readTotals(system, y),
    effectiveO2Fraction: before,
    breaths: course.length,
    settled,
    evaluations,
    course,
  }
}

/** Advances the state by one breath in place; returns how often the rates were evaluated. */
export function passTransientBreath(
  system: TransientSystem,
  memory: DormandPrince,
  y: Float64Array,
  tolerance: number,
): number {
  y.fill(0, system.countersAt)
  let evaluations = 0
  for (const stretch of breathStretches(system.breath)) {
    evaluations += passStretch(system, memory, { y, stretch, tolerance })
  }
  return evaluations
}

function passStretch(
  system: TransientSystem,
  memory: DormandPrince,
  { y, stretch, tolerance }: { y: Float64Array; stretch: Stretch; tolerance: number },
): number {
  const hasBag = system.network.bag !== null
  let evaluations = 0
  let from = stretch.fromS
  let firstStep = (stretch.toS - stretch.fromS) / 20
  while (from < stretch.toS) {
    const bagEnds = hasBag ? readEnds(system, y) : BAG_FREE
    const end = integrate(memory, y, {
      rates: (t, state, rates) => transientRates(system, { stretch, bagEnds }, t, state, rates),
      from,
      to: stretch.toS,
      tolerance,
      firstStep,
      inside: hasBag ? (state) => roomBefore(bagEnds, state[system.bagAt] as number) : null, // within the state
    })
    evaluations += end.evaluations
    from = end.t
    firstStep = end.nextStep
  }
  return evaluations
}

/** Free between the ends; at an end only the way back is open. */
function readEnds(system: TransientSystem, y: Float64Array): BagEnds {
  const filling = y[system.bagAt] as number // within the state
  if (filling >= 1 - BAG_BAND / 2) return BAG_FULL
  if (filling > BAG_BAND / 2) return BAG_FREE
  if (filling < 1e-12) emptyBag(system, y)
  return BAG_EMPTY
}

/** How far the filling may still go before other ways open or close. */
function roomBefore(ends: BagEnds, filling: number): number {
  if (ends === BAG_FREE) return Math.min(filling, 1 - filling)
  return BAG_BAND - (ends === BAG_EMPTY ? filling : 1 - filling)
}

function readTotals(
  system: TransientSystem,
  y: Float64Array,
): Pick<TransientResult, 'source' | 'room' | 'expired' | 'bagStartL'> {
  const read = (column: number): TransientTotals => {
    const count = (counter: number): number =>
      (y[system.countersAt + counter * 3 + column] ?? 0) * system.breath.tidalVolumeL
    return { openingInL: count(0), tracheaInL: count(1), alveoliInL: count(2) }
  }
  const bagL = system.network.bag?.volumeL ?? 0
  const filled = y[system.bagAt] as number // within the state
  return { source: read(0), room: read(1), expired: read(2), bagStartL: filled * bagL }
}
