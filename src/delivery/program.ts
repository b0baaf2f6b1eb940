// Turns network, grid and bag into the coefficients of one breath: for each step, how each pocket mixes. Leaves out which gas it is.
import type { BagCourse } from './bag.ts'
import type { Grid } from './grid.ts'
import { MAX_STEPS } from './grid.ts'
import type { Network } from './network.ts'

/**
 * Where the coefficients of one pocket start; POCKET tells what they are. Between pockets goes a mean concentration and its rise
 * over the step, so the order is higher than that of the mean alone.
 */
export const POCKET = { keep: 0, stay: 1, gain: 2, lag: 3, rise: 4, pass: 5 } as const
const POCKET_SIZE = 6

/** Position of each coefficient within a step. Shares of an inflow come with their rise over the step. */
export const AT = {
  outer: 0,
  side: POCKET_SIZE,
  inner: 2 * POCKET_SIZE,
  mixed: 3 * POCKET_SIZE,
  outerRoom: 24,
  outerRoomRise: 25,
  outerDevice: 26,
  outerDeviceRise: 27,
  outerInnerDevice: 28,
  outerInnerDeviceRise: 29,
  outerInner: 30,
  outerInnerRise: 31,
  outerSide: 32,
  outerSideRise: 33,
  innerDevice: 34,
  innerDeviceRise: 35,
  innerBag: 36,
  innerBagRise: 37,
  innerDraw: 38,
  innerDrawRise: 39,
  innerMixed: 40,
  innerMixedRise: 41,
  innerRoom: 42,
  innerRoomRise: 43,
  mixedInner: 44,
  mixedInnerRise: 45,
  mixedOther: 46,
  mixedOtherRise: 47,
  bagKeep: 48,
  bagDevice: 49,
  bagInner: 50,
  /** Volume through the serial tanks, L. */
  lungL: 51,
  /** Expiration: what leaves the mixed airway, and what the flush brought in from the inner pocket, L. */
  leavesL: 52,
  flushedL: 53,
  /** Inspiration: the inner pocket overflows. Expiration: the flush is stronger than what is breathed out. */
  reverse: 54,
  /** Expiration: share of alveolar gas in what leaves the serial tanks, and its rise. */
  alveolar: 55,
  alveolarRise: 56,
  /**
   * One weight per serial tank, then as many for the rise. Inspiration: how much of the step's gas the tank holds at the end of
   * inspiration. Expiration: how much of the tank's first content is in what leaves the tanks in this step.
   */
  tank: 57,
  tankRise: 65,
  /** How far the flow of one outlet leans to the end of the step, against all that the pocket gives off: shifts that outlet's mean by skew × rise. */
  innerToMixedSkew: 73,
  innerToOuterSkew: 74,
  outerToInnerSkew: 75,
  outerToSideSkew: 76,
  mixedToInnerSkew: 77,
  mixedToSideSkew: 78,
} as const

export const MAX_SERIAL = 8
export const STRIDE = AT.mixedToSideSkew + 1

export interface Program {
  steps: number
  inspiratorySteps: number
  serialTanks: number
  hasOuter: boolean
  sideFromOuter: boolean
  /** A valve keeps the bag at pure device gas. */
  bagValved: boolean
  hasBag: boolean
  mixedL: number
  /** Volume of one serial tank, L. */
  tankL: number
  readonly coefficients: Float64Array
  /** Share of a tank's content that stands i tanks further on after one tidal volume. */
  readonly passed: Float64Array
}

export function createProgram(): Program {
  return {
    steps: 0,
    inspiratorySteps: 0,
    serialTanks: 1,
    hasOuter: false,
    sideFromOuter: false,
    bagValved: false,
    hasBag: false,
    mixedL: 0,
    tankL: 0,
    coefficients: new Float64Array(MAX_STEPS * STRIDE),
    passed: new Float64Array(MAX_SERIAL),
  }
}

/**
 * Each step is exact in volume. Each pocket answers exactly to an inflow whose concentration rises linearly over the step; what it
 * gives off is passed on as mean (exact, so no gas is lost) and rise. The serial tanks share one flow, so what passes them depends
 * on volume alone and is written down exactly for the whole phase.
 */
export function compileProgram(
  program: Program,
  network: Network,
  grid: Grid,
  bag: BagCourse,
): void {
  program.steps = grid.steps
  program.inspiratorySteps = grid.inspiratorySteps
  program.serialTanks = network.serialTanks
  program.hasOuter = network.hasOuter
  program.sideFromOuter = network.hasOuter && network.sideFromOuter
  program.hasBag = network.bag !== null
  program.bagValved = network.bag !== null && network.bag.hasInletValve
  program.mixedL = network.mixedL
  program.tankL = network.serialL / network.serialTanks
  const c = program.coefficients
  c.fill(0, 0, grid.steps * STRIDE)
  for (let k = 0; k < grid.inspiratorySteps; k++) compileInspiration(c, network, grid, bag, k)
  for (let k = grid.inspiratorySteps; k < grid.steps; k++)
    compileExpiration(c, network, grid, bag, k)
  compileTanks(program, grid)
  if (network.bag !== null) compileBag(c, grid, bag)
}

// Indexes into grid, bag and coefficients below stay under grid.steps and STRIDE; the casts only say so.

function compileInspiration(
  c: Float64Array,
  network: Network,
  grid: Grid,
  bag: BagCourse,
  k: number,
): void {
  const A = AT
  const at = k * STRIDE
  const durationS = grid.durationS[k] as number
  const volumeL = grid.volumeL[k] as number
  const hasBag = network.bag !== null
  const throughInnerL = network.innerShareIn * volumeL
  const throughSideL = volumeL - throughInnerL
  const givenL = network.deviceFlowLps * durationS
  const deviceL = excessL(givenL, hasBag ? (bag.deviceInL[k] as number) : 0)
  const bagL = hasBag ? (bag.outL[k] as number) : 0
  const drawL = excessL(throughInnerL, deviceL + bagL)
  const surplusL = excessL(deviceL + bagL, throughInnerL)
  const exchangeL = network.exchangeLps * durationS
  const innerRoomL = network.hasOuter ? 0 : exchangeL
  const innerL = deviceL + bagL + drawL + innerRoomL
  // What demand adds over the step is met by bag and draw as they share the whole of it.
  const riseL = (grid.flowRiseLps[k] as number) * durationS
  const demandRiseL = network.innerShareIn * riseL
  const drawnRiseL = drawL > 0 ? demandRiseL : 0
  const bagRiseL = drawL > 0 ? (demandRiseL * bagL) / (bagL + drawL) : 0
  // A filling bag takes its share of the surplus, so less as demand rises.
  const deviceRiseL =
    excessL(givenL, deviceL) > 0 ? (demandRiseL * (givenL - deviceL)) / (givenL - throughInnerL) : 0
  writePocket(c, at + A.inner, innerL, network.innerL)
  if (innerL > 0) {
    const change = (drawnRiseL + deviceRiseL) / innerL
    writeShare(c, at + A.innerDevice, deviceL / innerL, deviceRiseL / innerL, change)
    writeShare(c, at + A.innerBag, bagL / innerL, bagRiseL / innerL, change)
    writeShare(c, at + A.innerDraw, drawL / innerL, (drawnRiseL - bagRiseL) / innerL, change)
    writeShare(c, at + A.innerRoom, innerRoomL / innerL, 0, change)
  }
  const innerLean = innerL > 0 ? (drawnRiseL + deviceRiseL) / innerL : 0
  c[at + A.innerToMixedSkew] = skew(demandRiseL, throughInnerL, innerLean)
  if (throughSideL > 0) writePocket(c, at + A.side, throughSideL, network.sideL)
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const sideL = network.sideFromOuter ? throughSideL : 0
    const makeUpL = excessL(drawL + sideL, ownL + surplusL)
    const roomL = makeUpL + exchangeL
    const outerL = roomL + ownL + surplusL
    const surplusRiseL = surplusL > 0 ? deviceRiseL - demandRiseL : 0
    const sideRiseL = network.sideFromOuter ? (1 - network.innerShareIn) * riseL : 0
    const roomRiseL = makeUpL > 0 ? drawnRiseL - bagRiseL + sideRiseL - surplusRiseL : 0
    writePocket(c, at + A.outer, outerL, network.outerL)
    if (outerL > 0) {
      const change = (roomRiseL + surplusRiseL) / outerL
      writeShare(c, at + A.outerRoom, roomL / outerL, roomRiseL / outerL, change)
      writeShare(c, at + A.outerDevice, ownL / outerL, 0, change)
      writeShare(c, at + A.outerInner, surplusL / outerL, surplusRiseL / outerL, change)
      c[at + A.innerToOuterSkew] = skew(surplusRiseL, surplusL, innerLean)
      c[at + A.outerToInnerSkew] = skew(drawnRiseL - bagRiseL, drawL, change)
      c[at + A.outerToSideSkew] = skew(sideRiseL, sideL, change)
    }
  }
  c[at + A.reverse] = surplusL > 0 ? 1 : 0
  writePocket(c, at + A.mixed, volumeL, network.mixedL)
  c[at + A.mixedInner] = network.innerShareIn
  c[at + A.mixedOther] = 1 - network.innerShareIn
  c[at + A.lungL] = volumeL
}

function compileExpiration(
  c: Float64Array,
  network: Network,
  grid: Grid,
  bag: BagCourse,
  k: number,
): void {
  const A = AT
  const at = k * STRIDE
  const durationS = grid.durationS[k] as number
  const volumeL = grid.volumeL[k] as number
  const hasBag = network.bag !== null
  const expiredL = network.innerShareOut * volumeL
  const flushL = network.flushLps * durationS
  const intoBagL = hasBag ? (bag.expiredInL[k] as number) : 0
  const givenL = network.deviceFlowLps * durationS
  const passingL = excessL(givenL, hasBag ? (bag.deviceInL[k] as number) : 0)
  const deviceL = passingL * network.captureOut
  const mixedL = excessL(expiredL, flushL)
  const flushedL = excessL(flushL, expiredL)
  const drawL = excessL(flushedL, deviceL)
  const exchangeL = network.exchangeLps * durationS
  const innerRoomL = drawL + (network.hasOuter ? 0 : exchangeL)
  const innerL = deviceL + mixedL + innerRoomL
  const riseL = (grid.flowRiseLps[k] as number) * durationS
  const intoInnerRiseL = network.innerShareOut * riseL
  const mixedRiseL = mixedL > 0 ? intoInnerRiseL : 0
  const drawRiseL = drawL > 0 ? -intoInnerRiseL : 0
  writePocket(c, at + A.inner, innerL, network.innerL)
  if (innerL > 0) {
    const change = (mixedRiseL + drawRiseL) / innerL
    writeShare(c, at + A.innerDevice, deviceL / innerL, 0, change)
    writeShare(c, at + A.innerMixed, mixedL / innerL, mixedRiseL / innerL, change)
    writeShare(c, at + A.innerRoom, innerRoomL / innerL, drawRiseL / innerL, change)
  }
  const flushedRiseL = flushedL > 0 ? -intoInnerRiseL : 0
  const innerLean = innerL > 0 ? (mixedRiseL + drawRiseL) / innerL : 0
  c[at + A.innerToMixedSkew] = skew(flushedRiseL, flushedL, innerLean)
  const intoSideL = volumeL - mixedL + flushedL
  writePocket(c, at + A.side, intoSideL, network.sideL)
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const lostL = passingL - deviceL
    const overflowL = excessL(deviceL + mixedL + drawL, flushedL + intoBagL)
    const sideL = network.sideFromOuter ? intoSideL : 0
    const outerL = exchangeL + ownL + lostL + overflowL + sideL
    const overflowRiseL = overflowL > 0 ? intoInnerRiseL : 0
    c[at + A.innerToOuterSkew] = skew(overflowRiseL, overflowL, innerLean)
    const sideRiseL = network.sideFromOuter ? riseL - intoInnerRiseL : 0
    writePocket(c, at + A.outer, outerL, network.outerL)
    if (outerL > 0) {
      const change = (overflowRiseL + sideRiseL) / outerL
      writeShare(c, at + A.outerRoom, exchangeL / outerL, 0, change)
      writeShare(c, at + A.outerDevice, ownL / outerL, 0, change)
      writeShare(c, at + A.outerInnerDevice, lostL / outerL, 0, change)
      writeShare(c, at + A.outerInner, overflowL / outerL, overflowRiseL / outerL, change)
      writeShare(c, at + A.outerSide, sideL / outerL, sideRiseL / outerL, change)
    }
  }
  const throughMixedL = volumeL + flushedL
  writePocket(c, at + A.mixed, throughMixedL, network.mixedL)
  if (throughMixedL > 0) {
    const change = (riseL + flushedRiseL) / throughMixedL
    writeShare(c, at + A.mixedInner, flushedL / throughMixedL, flushedRiseL / throughMixedL, change)
    writeShare(c, at + A.mixedOther, volumeL / throughMixedL, riseL / throughMixedL, change)
    c[at + A.mixedToInnerSkew] = skew(mixedRiseL, mixedL, change)
    c[at + A.mixedToSideSkew] = skew(riseL - intoInnerRiseL, intoSideL, change)
  }
  c[at + A.reverse] = flushedL > 0 ? 1 : 0
  c[at + A.lungL] = volumeL
  c[at + A.leavesL] = throughMixedL
  c[at + A.flushedL] = flushedL
}

/** What one volume has more than the other; a difference of mere rounding is none, so that it opens no path. */
function excessL(volumeL: number, thanL: number): number {
  const excess = volumeL - thanL
  return excess > 1e-10 * volumeL ? excess : 0
}

/**
 * With flow 1 + a (t − 1/2) through the outlet and 1 + b (t − 1/2) through the pocket, a rise r shifts the outlet's mean by
 * r (a − b)/12 against the pocket's. Over all outlets the shifts cancel, so no gas is lost.
 */
function skew(riseL: number, outletL: number, pocketLean: number): number {
  if (outletL <= 0) return 0
  return Math.max(-SKEW_MAX, Math.min(SKEW_MAX, (riseL / outletL - pocketLean) / 12))
}

/** A flow that is nowhere negative leans by 2 at most if it changes linearly; what bends near zero may lean a little more. */
const SKEW_MAX = 3 / 12

/** Share of one inflow in all, and how much it rises over the step: its own relative rise less its part of the whole's. */
function writeShare(
  c: Float64Array,
  at: number,
  share: number,
  ownRise: number,
  wholeRise: number,
): void {
  c[at] = share
  c[at + 1] = ownRise - share * wholeRise
}

/** Tank volumes below which a step passes nothing: a difference of mere rounding has no profile. */
const NO_FLOW = 1e-9

/**
 * Gas that enters n equal tanks and is followed by x tank volumes has left them but for the Erlang remainder
 * Q(n, x) = exp(-x) Σ x^k/k!, k < n. Differences of Q between the bounds of a step give the exact weights.
 */
function compileTanks(program: Program, grid: Grid): void {
  const A = AT
  const { coefficients: c, serialTanks: n, tankL, passed } = program
  if (tankL <= 0) {
    passed.fill(0)
    for (let k = 0; k < grid.steps; k++) c[k * STRIDE + A.alveolar] = 1
    return
  }
  let tidalL = 0
  for (let k = 0; k < grid.inspiratorySteps; k++) tidalL += grid.volumeL[k] as number
  let term = Math.exp(-tidalL / tankL)
  for (let i = 0; i < n; i++) {
    passed[i] = term
    term *= tidalL / tankL / (i + 1)
  }
  // Inspiration counts back from its end: the last step is followed by nothing.
  let x = 0
  let remains = 1
  for (let k = grid.inspiratorySteps - 1; k >= 0; k--) {
    const farX = x + (grid.volumeL[k] as number) / tankL
    const far = Math.exp(-farX)
    if (farX - x > NO_FLOW) writeRemainders(c, k * STRIDE, n, x, farX, remains, far)
    for (let i = 0; i < n; i++) {
      const rise = k * STRIDE + A.tankRise + i
      c[rise] = -(c[rise] as number)
    }
    x = farX
    remains = far
  }
  x = 0
  remains = 1
  for (let k = grid.inspiratorySteps; k < grid.steps; k++) {
    const at = k * STRIDE
    const farX = x + (grid.volumeL[k] as number) / tankL
    const far = Math.exp(-farX)
    let share = 1
    let allRise = 0
    if (farX - x > NO_FLOW) {
      writeRemainders(c, at, n, x, farX, remains, far)
      const perStep = 1 / (farX - x)
      for (let i = 0; i < n; i++) {
        const tank = perStep * (c[at + A.tank + i] as number)
        const rise = 12 * perStep * (c[at + A.tankRise + i] as number)
        c[at + A.tank + i] = tank
        c[at + A.tankRise + i] = rise
        share -= tank
        allRise -= rise
      }
    }
    c[at + A.alveolar] = share
    c[at + A.alveolarRise] = allRise
    x = farX
    remains = far
  }
}

/**
 * For each tank i: ∫ p(i, x) dx over the step, with p(i, x) = exp(-x) x^i/i!, and its first moment about the middle over the step's
 * length. From ∫ p(i) = −Q(i+1) and x p(i) = (i+1) p(i+1). Arguments stand in a row because this runs for every step.
 */
function writeRemainders(
  c: Float64Array,
  at: number,
  tanks: number,
  nearX: number,
  farX: number,
  nearRemains: number,
  farRemains: number,
): void {
  const A = AT
  const middle = (nearX + farX) / 2
  const perStep = 1 / (farX - nearX)
  let near = nearRemains
  let far = farRemains
  let sum = near - far
  for (let i = 0; i < tanks; i++) {
    near *= nearX / (i + 1)
    far *= farX / (i + 1)
    const next = sum + near - far
    c[at + A.tank + i] = sum
    c[at + A.tankRise + i] = perStep * ((i + 1) * next - middle * sum)
    sum = next
  }
}

function compileBag(c: Float64Array, grid: Grid, bag: BagCourse): void {
  const A = AT
  let levelL = bag.startL
  for (let k = 0; k < grid.steps; k++) {
    const at = k * STRIDE
    const deviceL = bag.deviceInL[k] as number
    const innerL = bag.expiredInL[k] as number
    const filledL = levelL + deviceL + innerL
    const divide = filledL > 0 ? 1 / filledL : 0
    c[at + A.bagKeep] = filledL > 0 ? levelL * divide : 1
    c[at + A.bagDevice] = deviceL * divide
    c[at + A.bagInner] = innerL * divide
    levelL = filledL - (bag.outL[k] as number)
  }
}

/** Below this the closed form of `lag` would lose digits; its series is exact to 1e-12 there. */
const SERIES_BELOW = 0.03

/**
 * How a pocket answers to inflow of x volumes with mean m and rise s, from concentration z:
 * end = m + keep (z − m) + gain s; mean given off = m + stay (z − m) − lag s; rise of it = rise (z − m) + pass s (least squares).
 * keep = exp(-x), stay = (1 − keep)/x, gain = (1 + keep)/2 − stay, lag = gain/x, rise = −12 lag, pass = 1 − 12 lag (1/2 + 1/x).
 * `rise` is kept within 2 stay, so that no falling profile turns negative. A pocket without volume passes all; one without inflow keeps all.
 */
function writePocket(c: Float64Array, at: number, inflowL: number, volumeL: number): void {
  const P = POCKET
  if (inflowL <= 0) {
    c[at + P.keep] = 1
    c[at + P.stay] = 1
    return
  }
  if (volumeL <= 0) {
    c[at + P.pass] = 1
    return
  }
  const x = inflowL / volumeL
  const isSmall = x < SERIES_BELOW
  const fullKeep = isSmall ? 0 : Math.exp(-x)
  const stay = isSmall
    ? 1 - (x / 2) * (1 - (x / 3) * (1 - (x / 4) * (1 - x / 5)))
    : (1 - fullKeep) / x
  const keep = isSmall ? 1 - x * stay : fullKeep
  const lag = isSmall
    ? (x / 12) * (1 - x * (1 / 2 - x * (3 / 20 - x / 30)))
    : ((1 + keep) / 2 - stay) / x
  c[at + P.keep] = keep
  c[at + P.stay] = stay
  c[at + P.gain] = lag * x
  c[at + P.lag] = lag
  c[at + P.rise] = -Math.min(12 * lag, 2 * stay)
  c[at + P.pass] = isSmall ? x * x * (1 / 10 - x / 24) : 1 - 12 * lag * (1 / 2 + 1 / x)
}
