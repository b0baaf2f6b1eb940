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
  serialKeep: 20,
  serialStay: 21,
  bagKeep: 22,
  bagDevice: 23,
  bagInner: 24,
  intoAirwayInnerL: 25,
  intoAirwaySideL: 26,
  lungL: 27,
  /** Expiration: what leaves the mixed airway, and what the flush brought in from the inner pocket, L. */
  leavesL: 28,
  flushedL: 29,
  /** Inspiration: the inner pocket overflows. Expiration: the flush is stronger than what is breathed out. */
  reverse: 30,
} as const
export const STRIDE = 31

export interface Program {
  steps: number
  inspiratorySteps: number
  serialTanks: number
  hasOuter: boolean
  sideFromOuter: boolean
  readonly coefficients: Float64Array
}

export function createProgram(): Program {
  const coefficients = new Float64Array(MAX_STEPS * STRIDE)
  return {
    steps: 0,
    inspiratorySteps: 0,
    serialTanks: 1,
    hasOuter: false,
    sideFromOuter: false,
    coefficients,
  }
}

/** Each step is exact in volume and mixes each pocket with the step's mean inflow: second order, positive, conserving. */
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
  let bagLevelL = bag.startL
  for (let k = 0; k < grid.steps; k++) {
    const c = program.coefficients.subarray(k * STRIDE, (k + 1) * STRIDE)
    c.fill(0)
    if (k < grid.inspiratorySteps) compileInspiration(c, network, grid, bag, k)
    else compileExpiration(c, network, grid, bag, k)
    compileAirway(c, network, grid.volumeL[k] ?? 0)
    if (network.bag !== null) bagLevelL = compileBag(c, bag, k, bagLevelL)
  }
}

function compileInspiration(
  c: Float64Array,
  network: Network,
  grid: Grid,
  bag: BagCourse,
  k: number,
): void {
  const durationS = grid.durationS[k] ?? 0
  const volumeL = grid.volumeL[k] ?? 0
  const throughInnerL = network.innerShareIn * volumeL
  const throughSideL = volumeL - throughInnerL
  const hasBag = network.bag !== null
  const deviceL = network.deviceFlowLps * durationS - (hasBag ? (bag.deviceInL[k] ?? 0) : 0)
  const bagL = hasBag ? (bag.outL[k] ?? 0) : 0
  const drawL = Math.max(0, throughInnerL - deviceL - bagL)
  const surplusL = Math.max(0, deviceL + bagL - throughInnerL)
  const exchangeL = network.exchangeLps * durationS
  mixInner(c, network, {
    deviceL,
    bagL,
    drawL,
    mixedL: 0,
    exchangeL: network.hasOuter ? 0 : exchangeL,
  })
  pocket(c, AT.sideKeep, throughSideL, network.sideL)
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const leavesL = drawL + (network.sideFromOuter ? throughSideL : 0)
    const roomL = Math.max(0, leavesL - ownL - surplusL) + exchangeL
    mixOuter(c, network, { roomL, ownL, innerDeviceL: 0, innerL: surplusL, sideL: 0 })
  }
  c[AT.reverse] = surplusL > 0 ? 1 : 0
  pocket(c, AT.mixedKeep, volumeL, network.mixedL)
  const total = volumeL > 0 ? volumeL : 1
  c[AT.mixedInner] = throughInnerL / total
  c[AT.mixedOther] = throughSideL / total
  c[AT.intoAirwayInnerL] = throughInnerL
  c[AT.intoAirwaySideL] = throughSideL
}

function compileExpiration(
  c: Float64Array,
  network: Network,
  grid: Grid,
  bag: BagCourse,
  k: number,
): void {
  const durationS = grid.durationS[k] ?? 0
  const volumeL = grid.volumeL[k] ?? 0
  const intoInnerL = network.innerShareOut * volumeL - network.flushLps * durationS
  const hasBag = network.bag !== null
  const suppliedL = network.deviceFlowLps * durationS
  const passingL = suppliedL - (hasBag ? (bag.deviceInL[k] ?? 0) : 0)
  const intoBagL = hasBag ? (bag.expiredInL[k] ?? 0) : 0
  const deviceL = passingL * network.captureOut
  const mixedL = Math.max(0, intoInnerL)
  const flushedL = Math.max(0, -intoInnerL)
  const drawL = Math.max(0, flushedL - deviceL)
  const exchangeL = network.exchangeLps * durationS
  mixInner(c, network, {
    deviceL,
    bagL: 0,
    drawL,
    mixedL,
    exchangeL: network.hasOuter ? 0 : exchangeL,
  })
  const intoSideL = volumeL - intoInnerL
  pocket(c, AT.sideKeep, intoSideL, network.sideL)
  if (network.hasOuter) {
    mixOuter(c, network, {
      roomL: exchangeL,
      ownL: network.outerDeviceFlowLps * durationS,
      innerDeviceL: passingL * (1 - network.captureOut),
      innerL: Math.max(0, deviceL + mixedL + drawL - flushedL - intoBagL),
      sideL: network.sideFromOuter ? intoSideL : 0,
    })
  }
  c[AT.reverse] = intoInnerL < 0 ? 1 : 0
  pocket(c, AT.mixedKeep, volumeL + flushedL, network.mixedL)
  const total = volumeL + flushedL > 0 ? volumeL + flushedL : 1
  c[AT.mixedInner] = flushedL / total
  c[AT.mixedOther] = volumeL / total
  c[AT.leavesL] = volumeL + flushedL
  c[AT.flushedL] = flushedL
}

function compileAirway(c: Float64Array, network: Network, volumeL: number): void {
  pocket(c, AT.serialKeep, volumeL, network.serialL / network.serialTanks)
  c[AT.lungL] = volumeL
}

function compileBag(c: Float64Array, bag: BagCourse, k: number, levelL: number): number {
  const deviceL = bag.deviceInL[k] ?? 0
  const innerL = bag.expiredInL[k] ?? 0
  const filledL = levelL + deviceL + innerL
  const divide = filledL > 0 ? 1 / filledL : 0
  c[AT.bagKeep] = filledL > 0 ? levelL * divide : 1
  c[AT.bagDevice] = deviceL * divide
  c[AT.bagInner] = innerL * divide
  return filledL - (bag.outL[k] ?? 0)
}

interface InnerInflow {
  readonly deviceL: number
  readonly bagL: number
  readonly drawL: number
  readonly mixedL: number
  readonly exchangeL: number
}

function mixInner(c: Float64Array, network: Network, inflow: InnerInflow): void {
  const totalL = inflow.deviceL + inflow.bagL + inflow.drawL + inflow.mixedL + inflow.exchangeL
  pocket(c, AT.innerKeep, totalL, network.innerL)
  if (totalL <= 0) return
  c[AT.innerDevice] = inflow.deviceL / totalL
  c[AT.innerBag] = inflow.bagL / totalL
  c[AT.innerDraw] = inflow.drawL / totalL
  c[AT.innerMixed] = inflow.mixedL / totalL
  c[AT.innerRoom] = inflow.exchangeL / totalL
}

interface OuterInflow {
  readonly roomL: number
  readonly ownL: number
  readonly innerDeviceL: number
  readonly innerL: number
  readonly sideL: number
}

function mixOuter(c: Float64Array, network: Network, inflow: OuterInflow): void {
  const totalL = inflow.roomL + inflow.ownL + inflow.innerDeviceL + inflow.innerL + inflow.sideL
  pocket(c, AT.outerKeep, totalL, network.outerL)
  if (totalL <= 0) return
  c[AT.outerRoom] = inflow.roomL / totalL
  c[AT.outerDevice] = inflow.ownL / totalL
  c[AT.outerInnerDevice] = inflow.innerDeviceL / totalL
  c[AT.outerInner] = inflow.innerL / totalL
  c[AT.outerSide] = inflow.sideL / totalL
}

/** Writes keep and stay for a pocket through which inflowL passes; a pocket without volume keeps nothing. */
function pocket(c: Float64Array, at: number, inflowL: number, volumeL: number): void {
  if (inflowL <= 0) {
    c[at] = 1
    c[at + 1] = 1
    return
  }
  if (volumeL <= 0) return
  const x = inflowL / volumeL
  const left = -Math.expm1(-x)
  c[at] = 1 - left
  c[at + 1] = left / x
}
