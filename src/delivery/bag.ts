// The reservoir bag's filling over a steady breath. Leaves out elastic recoil: the bag is slack until it is full.
import type { Grid } from './grid.ts'
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
export function solveBag(course: BagCourse, network: Network, grid: Grid): void {
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
  traceBag(course, network, grid)
}

/** What the step would add to (or, negative, take from) a bag without ends, L. */
export function bagWishL(network: Network, grid: Grid, k: number): number {
  const bag = network.bag
  if (bag === null) return 0
  const durationS = grid.durationS[k] as number // k stays below grid.steps
  const volumeL = grid.volumeL[k] as number // the same
  const deviceL = network.deviceFlowLps * durationS
  if (k < grid.inspiratorySteps) {
    const surplusL = deviceL - network.innerShareIn * volumeL
    return surplusL >= 0 ? surplusL * (1 - bag.forwardLoss) : surplusL / (1 + bag.leakRatio)
  }
  return deviceL * (1 - bag.forwardLoss) + expiredWishL(network, { volumeL, durationS })
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
