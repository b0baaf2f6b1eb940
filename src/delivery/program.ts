// Turns network, grid and bag into the coefficients of one breath: for each step, how each pocket mixes. Leaves out which gas it is.
import type { BagCourse } from './bag.ts'
import type { Grid } from './grid.ts'
import type { Network } from './network.ts'
import { answerPocket } from './pocket-answer.ts'
import { AT, STRIDE } from './program-layout.ts'
import type { Program } from './program-layout.ts'
import { compileTanks } from './serial-tanks.ts'

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
  program.tankL = network.serialL / network.serialTanks
  const c = program.coefficients
  c.fill(0, 0, grid.steps * STRIDE)
  for (let k = 0; k < grid.inspiratorySteps; k++) compileInspiration(c, network, grid, bag, k)
  for (let k = grid.inspiratorySteps; k < grid.steps; k++)
    compileExpiration(c, network, grid, bag, k)
  if (network.hasOuter) answerPocket(c, grid.steps, AT.outer, network.outerL)
  if (hasSide(network)) answerPocket(c, grid.steps, AT.side, network.sideL)
  answerPocket(c, grid.steps, AT.inner, network.innerL)
  answerPocket(c, grid.steps, AT.mixed, network.mixedL)
  compileTanks(program, grid)
  if (network.bag !== null) compileBag(c, grid, bag)
}

/** Whether any gas goes by the side path. */
function hasSide({ innerShareIn, innerShareOut, flushLps }: Network): boolean {
  return innerShareIn < 1 || innerShareOut < 1 || flushLps > 0
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
  const innerL = inflowOrNoneL(deviceL + bagL + drawL + innerRoomL)
  // What demand adds over the step is met by bag and draw as they share the whole of it.
  const riseL = (grid.flowRiseLps[k] as number) * durationS
  const demandRiseL = network.innerShareIn * riseL
  const drawnRiseL = drawL > 0 ? demandRiseL : 0
  const bagRiseL = drawL > 0 ? (demandRiseL * bagL) / (bagL + drawL) : 0
  // A filling bag takes its share of the surplus, so less as demand rises.
  const deviceRiseL =
    excessL(givenL, deviceL) > 0 ? (demandRiseL * (givenL - deviceL)) / (givenL - throughInnerL) : 0
  let innerLean = 0
  c[at + A.inner] = innerL
  if (innerL > 0) {
    const perInner = 1 / innerL
    innerLean = (drawnRiseL + deviceRiseL) * perInner
    writeShare(c, at + A.innerDevice, deviceL * perInner, deviceRiseL * perInner, innerLean)
    writeShare(c, at + A.innerBag, bagL * perInner, bagRiseL * perInner, innerLean)
    writeShare(c, at + A.innerDraw, drawL * perInner, (drawnRiseL - bagRiseL) * perInner, innerLean)
    writeShare(c, at + A.innerRoom, innerRoomL * perInner, 0, innerLean)
  }
  c[at + A.innerToMixedSkew] = skew(demandRiseL, throughInnerL, innerLean)
  c[at + A.side] = throughSideL
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const sideL = network.sideFromOuter ? throughSideL : 0
    const makeUpL = excessL(drawL + sideL, ownL + surplusL)
    const roomL = makeUpL + exchangeL
    const outerL = inflowOrNoneL(roomL + ownL + surplusL)
    const surplusRiseL = surplusL > 0 ? deviceRiseL - demandRiseL : 0
    const sideRiseL = network.sideFromOuter ? (1 - network.innerShareIn) * riseL : 0
    const roomRiseL = makeUpL > 0 ? drawnRiseL - bagRiseL + sideRiseL - surplusRiseL : 0
    c[at + A.outer] = outerL
    if (outerL > 0) {
      const perOuter = 1 / outerL
      const change = (roomRiseL + surplusRiseL) * perOuter
      writeShare(c, at + A.outerRoom, roomL * perOuter, roomRiseL * perOuter, change)
      writeShare(c, at + A.outerDevice, ownL * perOuter, 0, change)
      writeShare(c, at + A.outerInner, surplusL * perOuter, surplusRiseL * perOuter, change)
      c[at + A.innerToOuterSkew] = skew(surplusRiseL, surplusL, innerLean)
      c[at + A.outerToInnerSkew] = skew(drawnRiseL - bagRiseL, drawL, change)
      c[at + A.outerToSideSkew] = skew(sideRiseL, sideL, change)
    }
  }
  c[at + A.reverse] = surplusL > 0 ? 1 : 0
  c[at + A.mixed] = volumeL
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
  const innerL = inflowOrNoneL(deviceL + mixedL + innerRoomL)
  const riseL = (grid.flowRiseLps[k] as number) * durationS
  const intoInnerRiseL = network.innerShareOut * riseL
  const mixedRiseL = mixedL > 0 ? intoInnerRiseL : 0
  const drawRiseL = drawL > 0 ? -intoInnerRiseL : 0
  let innerLean = 0
  c[at + A.inner] = innerL
  if (innerL > 0) {
    const perInner = 1 / innerL
    innerLean = (mixedRiseL + drawRiseL) * perInner
    writeShare(c, at + A.innerDevice, deviceL * perInner, 0, innerLean)
    writeShare(c, at + A.innerMixed, mixedL * perInner, mixedRiseL * perInner, innerLean)
    writeShare(c, at + A.innerRoom, innerRoomL * perInner, drawRiseL * perInner, innerLean)
  }
  const flushedRiseL = flushedL > 0 ? -intoInnerRiseL : 0
  c[at + A.innerToMixedSkew] = skew(flushedRiseL, flushedL, innerLean)
  const bagRiseL = mixedL > 0 ? (mixedRiseL * intoBagL) / mixedL : 0
  c[at + A.innerToBagSkew] = skew(bagRiseL, intoBagL, innerLean)
  const intoSideL = volumeL - mixedL + flushedL
  c[at + A.side] = intoSideL
  if (network.hasOuter) {
    const ownL = network.outerDeviceFlowLps * durationS
    const lostL = passingL - deviceL
    const overflowL = excessL(deviceL + mixedL + drawL, flushedL + intoBagL)
    const sideL = network.sideFromOuter ? intoSideL : 0
    const outerL = inflowOrNoneL(exchangeL + ownL + lostL + overflowL + sideL)
    const overflowRiseL = overflowL > 0 ? intoInnerRiseL - bagRiseL : 0
    c[at + A.innerToOuterSkew] = skew(overflowRiseL, overflowL, innerLean)
    const sideRiseL = network.sideFromOuter ? riseL - intoInnerRiseL : 0
    c[at + A.outer] = outerL
    if (outerL > 0) {
      const perOuter = 1 / outerL
      const change = (overflowRiseL + sideRiseL) * perOuter
      writeShare(c, at + A.outerRoom, exchangeL * perOuter, 0, change)
      writeShare(c, at + A.outerDevice, ownL * perOuter, 0, change)
      writeShare(c, at + A.outerInnerDevice, lostL * perOuter, 0, change)
      writeShare(c, at + A.outerInner, overflowL * perOuter, overflowRiseL * perOuter, change)
      writeShare(c, at + A.outerSide, sideL * perOuter, sideRiseL * perOuter, change)
    }
  }
  const throughMixedL = inflowOrNoneL(volumeL + flushedL)
  c[at + A.mixed] = throughMixedL
  if (throughMixedL > 0) {
    const perMixed = 1 / throughMixedL
    const change = (riseL + flushedRiseL) * perMixed
    writeShare(c, at + A.mixedInner, flushedL * perMixed, flushedRiseL * perMixed, change)
    writeShare(c, at + A.mixedOther, volumeL * perMixed, riseL * perMixed, change)
    c[at + A.mixedToInnerSkew] = skew(mixedRiseL, mixedL, change)
    c[at + A.mixedToSideSkew] = skew(riseL - intoInnerRiseL, intoSideL, change)
  }
  c[at + A.reverse] = flushedL > 0 ? 1 : 0
  c[at + A.lungL] = volumeL
  c[at + A.leavesL] = throughMixedL
  c[at + A.flushedL] = flushedL
}

/** An inflow too small to be divided by is none: a billionth of a microlitre. */
function inflowOrNoneL(inflowL: number): number {
  return inflowL > 1e-15 ? inflowL : 0
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
