// The reservoir bag's filling over a steady breath. Leaves out elastic recoil: the bag is slack until it is full.
import type { BreathPattern } from './breath.ts'
import { passedL, splitStep } from './grid.ts'
import type { Grid, Phase } from './grid.ts'
import type { Network } from './network.ts'

export interface BagCourse {
  /** Volume at the start of inspiration in the steady breath, L. */
  startL: number
  /** Lowest volume in the breath, L. */
  lowestL: number
  /** Whether the bag runs empty while the patient still draws from it. */
  runsEmpty: boolean
  /** Per step: what leaves the bag, what device gas and what expired gas enters it, L. */
  readonly outL: Float64Array
  readonly deviceInL: Float64Array
  readonly expiredInL: Float64Array
}

export function createBagCourse(maxSteps: number): BagCourse {
  return {
    startL: 0,
    lowestL: 0,
    runsEmpty: false,
    outL: new Float64Array(maxSteps),
    deviceInL: new Float64Array(maxSteps),
    expiredInL: new Float64Array(maxSteps),
  }
}

/**
 * Steady filling. Every step maps the volume x to min(B, max(0, x + a)); such maps compose to min(H, max(L, x + A)), which has
 * exactly one fixed point for A ≠ 0: H when the breath brings more than it takes, L when it takes more. So the steady state exists,
 * is unique and needs no iteration. With A = 0 exactly every x in [L, H] is steady; the fullest is taken (a bag filled before
 * fitting). Checked on 10,000 random masks against a bracketed search (bench) and 500 in bag.test.ts.
 */
export function solveBag(
  course: BagCourse,
  network: Network,
  breath: BreathPattern,
  grid: Grid,
): void {
  const bag = network.bag
  if (bag === null) return
  let low = 0
  let high = bag.volumeL
  let net = 0
  for (let k = 0; k < grid.steps; k++) {
    const change = bagWishL(network, grid, k)
    net += change
    low = Math.min(bag.volumeL, Math.max(0, low + change))
    high = Math.min(bag.volumeL, Math.max(0, high + change))
  }
  course.startL = net >= 0 ? high : low
  splitAtEnds(course, network, breath, grid)
  traceBag(course, network, grid)
}

/** Puts a bound into the grid wherever the bag becomes empty or full, so that no step mixes two paths. */
function splitAtEnds(course: BagCourse, network: Network, breath: BreathPattern, grid: Grid): void {
  const bag = network.bag
  if (bag === null) return
  let level = course.startL
  for (let k = 0; k < grid.steps; k++) {
    const wish = bagWishL(network, grid, k)
    const end = wish > 0 ? bag.volumeL : 0
    const room = Math.abs(end - level)
    level = Math.min(bag.volumeL, Math.max(0, level + wish))
    if (room < NEAR * bag.volumeL || Math.abs(wish) < room * (1 + NEAR)) continue
    const atS = timeOfWish(network, breath, grid, { k, share: room / Math.abs(wish) })
    const startS = grid.startS[k] as number // k < grid.steps
    const durationS = grid.durationS[k] as number // k < grid.steps
    if (atS - startS < NEAR * durationS || startS + durationS - atS < NEAR * durationS) continue
    splitStep(grid, breath, { k, atS })
    k++
  }
}

/** Closeness, as a share, within which an end counts as reached already. */
const NEAR = 1e-6
const REFINEMENTS = 40

/** When a given share of step k's wish has come about, by regula falsi on the exact volumes (the wish grows steadily in a step). */
function timeOfWish(
  network: Network,
  breath: BreathPattern,
  grid: Grid,
  { k, share }: { k: number; share: number },
): number {
  const phase = k < grid.inspiratorySteps ? 'inspiration' : 'expiration'
  const fromS = grid.startS[k] as number // k < grid.steps
  const stepS = grid.durationS[k] as number // k < grid.steps
  const fromL = passedL(breath, phase, fromS)
  const whole = bagWishL(network, grid, k)
  let low = 0
  let high = 1
  let lowMiss = -share
  let highMiss = 1 - share
  let side = 0
  for (let i = 0; i < REFINEMENTS; i++) {
    const middle = low - (lowMiss * (high - low)) / (highMiss - lowMiss)
    const volumeL = passedL(breath, phase, fromS + middle * stepS) - fromL
    const part = wishL(network, { phase, volumeL, durationS: middle * stepS })
    const miss = part / whole - share
    if (Math.abs(miss) < NEAR * share) return fromS + middle * stepS
    // Illinois rule: a bound that stays twice has its miss halved, or the other would creep.
    if (miss < 0) {
      low = middle
      lowMiss = miss
      if (side < 0) highMiss /= 2
      side = -1
    } else {
      high = middle
      highMiss = miss
      if (side > 0) lowMiss /= 2
      side = 1
    }
  }
  return fromS + ((low + high) / 2) * stepS
}

/** What step k would add to (or, negative, take from) a bag without ends, L. */
export function bagWishL(network: Network, grid: Grid, k: number): number {
  // k < grid.steps
  return wishL(network, {
    phase: k < grid.inspiratorySteps ? 'inspiration' : 'expiration',
    volumeL: grid.volumeL[k] as number,
    durationS: grid.durationS[k] as number,
  })
}

function wishL(
  network: Network,
  step: { phase: Phase; volumeL: number; durationS: number },
): number {
  const bag = network.bag
  if (bag === null) return 0
  const deviceL = network.deviceFlowLps * step.durationS
  if (step.phase === 'inspiration') {
    const surplusL = deviceL - network.innerShareIn * step.volumeL
    return surplusL >= 0 ? surplusL * (1 - bag.forwardLoss) : surplusL / (1 + bag.leakRatio)
  }
  return deviceL * (1 - bag.forwardLoss) + expiredWishL(network, step)
}

/** Expired gas that a bag without valve takes: a share of what reaches the inner pocket. */
function expiredWishL(network: Network, step: { volumeL: number; durationS: number }): number {
  const bag = network.bag
  if (bag === null || bag.hasInletValve) return 0
  const intoInnerL = network.innerShareOut * step.volumeL - network.flushLps * step.durationS
  return bag.expiredShareIntoBag * Math.max(0, intoInnerL)
}

function traceBag(course: BagCourse, network: Network, grid: Grid): void {
  const bag = network.bag
  if (bag === null) return
  let level = course.startL
  course.lowestL = level
  course.runsEmpty = false
  for (let k = 0; k < grid.steps; k++) {
    const wish = bagWishL(network, grid, k)
    const next = Math.min(bag.volumeL, Math.max(0, level + wish))
    const inL = Math.max(0, next - level)
    const deviceWishL = network.deviceFlowLps * (grid.durationS[k] ?? 0) * (1 - bag.forwardLoss)
    const deviceShare = k < grid.inspiratorySteps || wish <= 0 ? 1 : Math.min(1, deviceWishL / wish)
    course.outL[k] = Math.max(0, level - next)
    course.deviceInL[k] = inL * deviceShare
    course.expiredInL[k] = inL * (1 - deviceShare)
    if (level + wish < -1e-12) course.runsEmpty = true
    level = next
    if (level < course.lowestL) course.lowestL = level
  }
}
