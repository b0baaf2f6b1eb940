// Turns network, grid and bag into the coefficients of one breath: for each step, how each pocket mixes. Leaves out which gas it is.
import type { BagCourse } from './bag.ts'
import type { Grid } from './grid.ts'
import { MAX_STEPS } from './grid.ts'
import type { Network } from './network.ts'

/** Position of each coefficient within a step. `keep` is exp(-x), `stay` is (1-exp(-x))/x with x = inflow / volume. */
export const AT = {
  outerKeep: 0,
  outerStay: 1,
  outerRoom: 2,
  outerDevice: 3,
  outerInnerDevice: 4,
  outerInner: 5,
  outerSide: 6,
  sideKeep: 7,
  sideStay: 8,
  innerKeep: 9,
  innerStay: 10,
  innerDevice: 11,
  innerBag: 12,
  innerDraw: 13,
  innerMixed: 14,
  innerRoom: 15,
  mixedKeep: 16,
  mixedStay: 17,
  mixedInner: 18,
  mixedOther: 19,
  bagKeep: 20,
  bagDevice: 21,
  bagInner: 22,
  /** Volume through the serial tanks, L. */
  lungL: 23,
  /** Expiration: what leaves the mixed airway, and what the flush brought in from the inner pocket, L. */
  leavesL: 24,
  flushedL: 25,
  /** Inspiration: the inner pocket overflows. Expiration: the flush is stronger than what is breathed out. */
  reverse: 26,
  /** Expiration: share of alveolar gas in what leaves the serial tanks. */
  alveolar: 27,
  /**
   * One weight per serial tank. Inspiration: how much of the step's gas the tank holds at the end of inspiration.
   * Expiration: how much of the tank's first content is in what leaves the tanks in this step.
   */
  tank: 28,
} as const

export const MAX_SERIAL = 8
export const STRIDE = AT.tank + MAX_SERIAL

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
 * Each step is exact in volume and mixes each pocket with the step's mean inflow: second order, positive, conserving. The serial
 * tanks share one flow, so what passes them depends on volume alone and is written down exactly for the whole phase.
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
  const deviceL = network.deviceFlowLps * durationS - (hasBag ? (bag.deviceInL[k] as number) : 0)
  const bagL = hasBag ? (bag.outL[k] as number) : 0
  const drawL = Math.max(0, throughInnerL - deviceL - bagL)
  const surplusL = Math.max(0, deviceL + bagL - throughInnerL)
  const exchangeL = network.exchangeLps * durationS
  const innerRoomL = network.hasOuter ? 0 : exchangeL
  const innerL = deviceL + bagL + drawL + innerRoomL
  writePocket(c, at + A.innerKeep, innerL, network.innerL)
  if (innerL > 0) {
    c[at + A.innerDevice] = deviceL / innerL
    c[at + A.innerBag] = bagL / innerL
    c[at + A.innerDraw] = drawL / innerL
    c[at + A.innerRoom] = innerRoomL / innerL
  }
  if (throughSideL > 0) writePocket(c, at + A.sideKeep, throughSideL, network.sideL)
  else c[at + A.sideKeep] = 1
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const leavesL = drawL + (network.sideFromOuter ? throughSideL : 0)
    const roomL = Math.max(0, leavesL - ownL - surplusL) + exchangeL
    const outerL = roomL + ownL + surplusL
    writePocket(c, at + A.outerKeep, outerL, network.outerL)
    if (outerL > 0) {
      c[at + A.outerRoom] = roomL / outerL
      c[at + A.outerDevice] = ownL / outerL
      c[at + A.outerInner] = surplusL / outerL
    }
  }
  c[at + A.reverse] = surplusL > 0 ? 1 : 0
  writePocket(c, at + A.mixedKeep, volumeL, network.mixedL)
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
  const intoInnerL = network.innerShareOut * volumeL - network.flushLps * durationS
  const intoBagL = hasBag ? (bag.expiredInL[k] as number) : 0
  const passingL = network.deviceFlowLps * durationS - (hasBag ? (bag.deviceInL[k] as number) : 0)
  const deviceL = passingL * network.captureOut
  const mixedL = Math.max(0, intoInnerL)
  const flushedL = Math.max(0, -intoInnerL)
  const drawL = Math.max(0, flushedL - deviceL)
  const exchangeL = network.exchangeLps * durationS
  const innerRoomL = drawL + (network.hasOuter ? 0 : exchangeL)
  const innerL = deviceL + mixedL + innerRoomL
  writePocket(c, at + A.innerKeep, innerL, network.innerL)
  if (innerL > 0) {
    c[at + A.innerDevice] = deviceL / innerL
    c[at + A.innerMixed] = mixedL / innerL
    c[at + A.innerRoom] = innerRoomL / innerL
  }
  const intoSideL = volumeL - intoInnerL
  if (intoSideL > 0) writePocket(c, at + A.sideKeep, intoSideL, network.sideL)
  else c[at + A.sideKeep] = 1
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const lostL = passingL - deviceL
    const overflowL = Math.max(0, deviceL + mixedL + drawL - flushedL - intoBagL)
    const sideL = network.sideFromOuter ? intoSideL : 0
    const outerL = exchangeL + ownL + lostL + overflowL + sideL
    writePocket(c, at + A.outerKeep, outerL, network.outerL)
    if (outerL > 0) {
      c[at + A.outerRoom] = exchangeL / outerL
      c[at + A.outerDevice] = ownL / outerL
      c[at + A.outerInnerDevice] = lostL / outerL
      c[at + A.outerInner] = overflowL / outerL
      c[at + A.outerSide] = sideL / outerL
    }
  }
  const throughMixedL = volumeL + flushedL
  writePocket(c, at + A.mixedKeep, throughMixedL, network.mixedL)
  if (throughMixedL > 0) {
    c[at + A.mixedInner] = flushedL / throughMixedL
    c[at + A.mixedOther] = volumeL / throughMixedL
  }
  c[at + A.reverse] = intoInnerL < 0 ? 1 : 0
  c[at + A.lungL] = volumeL
  c[at + A.leavesL] = throughMixedL
  c[at + A.flushedL] = flushedL
}

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
  for (let k = grid.inspiratorySteps - 1; k >= 0; k--) {
    const nearX = x
    x += (grid.volumeL[k] as number) / tankL
    addRemainders(c, k * STRIDE + A.tank, n, nearX, x, 1)
  }
  x = 0
  for (let k = grid.inspiratorySteps; k < grid.steps; k++) {
    const stepX = (grid.volumeL[k] as number) / tankL
    if (stepX > 0) addRemainders(c, k * STRIDE + A.tank, n, x, x + stepX, 1 / stepX)
    x += stepX
    let fromTanks = 0
    for (let i = 0; i < n; i++) fromTanks += c[k * STRIDE + A.tank + i] as number
    c[k * STRIDE + A.alveolar] = 1 - fromTanks
  }
}

/** Writes scale × (Q(i + 1, nearX) − Q(i + 1, farX)) for each tank i. */
function addRemainders(
  c: Float64Array,
  at: number,
  tanks: number,
  nearX: number,
  farX: number,
  scale: number,
): void {
  let near = Math.exp(-nearX)
  let far = Math.exp(-farX)
  let sum = 0
  for (let i = 0; i < tanks; i++) {
    sum += near - far
    c[at + i] = scale * sum
    near *= nearX / (i + 1)
    far *= farX / (i + 1)
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

/** Writes keep and stay for a pocket through which inflowL passes; a pocket without volume keeps nothing. */
function writePocket(c: Float64Array, at: number, inflowL: number, volumeL: number): void {
  if (inflowL <= 0) {
    c[at] = 1
    c[at + 1] = 1
  } else if (volumeL > 0) {
    const x = inflowL / volumeL
    // Below 1e-5 the difference 1 − exp(−x) would lose digits; two terms of its series lose none.
    const left = x < 1e-5 ? x * (1 - x / 2) : 1 - Math.exp(-x)
    c[at] = 1 - left
    c[at + 1] = left / x
  }
}
