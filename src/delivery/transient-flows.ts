// Every flow between the pockets at one instant, for the judge. Written apart from program.ts on purpose; leaves out which gas flows.
import type { BreathPattern } from './breath.ts'
import { breathPeriodS, expiredFlowPerS, inspirationS, inspiredFlowRelative } from './breath.ts'
import type { Network } from './network.ts'

export type Phase = 'inspiration' | 'expiration'

/** A stretch of the breath in which flow is smooth, s from the start of inspiration. */
export interface Stretch {
  readonly phase: Phase
  readonly fromS: number
  readonly toS: number
}

/** How far the ways out of and into the bag are open, 0–1. */
export interface BagEnds {
  readonly gives: number
  readonly takes: number
}

/** Between the ends both ways are open; at an end only the way back is. */
export const BAG_FREE: BagEnds = { gives: 1, takes: 1 }
export const BAG_EMPTY: BagEnds = { gives: 0, takes: 1 }
export const BAG_FULL: BagEnds = { gives: 1, takes: 0 }

/** All flows in L/s, none negative. Each pocket takes in as much as it gives off. */
export interface Flows {
  lungLps: number
  deviceToInner: number
  deviceToBag: number
  bagToInner: number
  innerToBag: number
  roomToInner: number
  outerToInner: number
  innerToOuter: number
  innerToMixed: number
  sideToMixed: number
  mixedToInner: number
  mixedToSide: number
  outerToSide: number
  roomToSide: number
  sideToOuter: number
  roomToOuter: number
  ownToOuter: number
  deviceToOuter: number
}

export function createFlows(): Flows {
  return {
    lungLps: 0,
    deviceToInner: 0,
    deviceToBag: 0,
    bagToInner: 0,
    innerToBag: 0,
    roomToInner: 0,
    outerToInner: 0,
    innerToOuter: 0,
    innerToMixed: 0,
    sideToMixed: 0,
    mixedToInner: 0,
    mixedToSide: 0,
    outerToSide: 0,
    roomToSide: 0,
    sideToOuter: 0,
    roomToOuter: 0,
    ownToOuter: 0,
    deviceToOuter: 0,
  }
}

/** The breath cut where flow jumps or bends. */
export function breathStretches(breath: BreathPattern): readonly Stretch[] {
  const turnS = inspirationS(breath)
  const endS = breathPeriodS(breath)
  const shape = breath.inspiration
  const cells = shape.kind === 'sampled' ? shape.relativeFlow.length - 1 : 1
  const cuts = Array.from({ length: cells }, (_, i) => (turnS * i) / cells)
  const stretches: Stretch[] = cuts.map((fromS, i) => ({
    phase: 'inspiration',
    fromS,
    toS: cuts[i + 1] ?? turnS,
  }))
  const stillS =
    breath.expiration.kind === 'constant'
      ? turnS + (endS - turnS) * breath.expiration.shareOfExpiration
      : endS
  stretches.push({ phase: 'expiration', fromS: turnS, toS: Math.min(stillS, endS) })
  if (stillS < endS) stretches.push({ phase: 'expiration', fromS: stillS, toS: endS })
  return stretches
}

/** Flow through the airway at time t of a stretch, L/s, positive in both phases. A jump at either end belongs to the neighbour. */
export function airwayFlowLps(breath: BreathPattern, stretch: Stretch, tS: number): number {
  const inwardS = 1e-9 * (stretch.toS - stretch.fromS)
  const t = Math.min(stretch.toS - inwardS, Math.max(stretch.fromS + inwardS, tS))
  const durationS = inspirationS(breath)
  if (stretch.phase === 'inspiration') {
    return (
      (inspiredFlowRelative(breath.inspiration, t / durationS) * breath.tidalVolumeL) / durationS
    )
  }
  const expirationS = breathPeriodS(breath) - durationS
  return (
    breath.tidalVolumeL *
    expiredFlowPerS(breath.expiration, { t: t - durationS, durationS: expirationS })
  )
}

/** The flows at one instant. */
export function setFlows(
  into: Flows,
  {
    network,
    phase,
    lungLps,
    bagEnds,
  }: { network: Network; phase: Phase; lungLps: number; bagEnds: BagEnds },
): void {
  into.lungLps = lungLps
  into.ownToOuter = network.hasOuter ? network.outerDeviceFlowLps : 0
  if (phase === 'inspiration') setInspiration(into, network, bagEnds)
  else setExpiration(into, network, bagEnds)
}

function setInspiration(into: Flows, network: Network, bagEnds: BagEnds): void {
  const { deviceFlowLps, innerShareIn, hasOuter, sideFromOuter, exchangeLps } = network
  const demand = innerShareIn * into.lungLps
  const surplus = deviceFlowLps - demand
  const { bag } = network
  into.deviceToBag =
    bag !== null && surplus > 0 ? bagEnds.takes * (1 - bag.forwardLoss) * surplus : 0
  into.bagToInner =
    bag !== null && surplus < 0 ? (bagEnds.gives * -surplus) / (1 + bag.leakRatio) : 0
  into.innerToBag = 0
  into.deviceToInner = deviceFlowLps - into.deviceToBag
  const supplied = into.deviceToInner + into.bagToInner
  const drawn = Math.max(0, demand - supplied)
  const over = Math.max(0, supplied - demand)
  into.innerToMixed = demand
  into.sideToMixed = into.lungLps - demand
  into.mixedToInner = 0
  into.mixedToSide = 0
  into.sideToOuter = 0
  into.deviceToOuter = 0
  const sideDrawsOuter = hasOuter && sideFromOuter
  into.outerToSide = sideDrawsOuter ? into.sideToMixed : 0
  into.roomToSide = sideDrawsOuter ? 0 : into.sideToMixed
  into.outerToInner = hasOuter ? drawn : 0
  into.roomToInner = hasOuter ? 0 : drawn + exchangeLps
  into.innerToOuter = hasOuter ? over : 0
  const missing = into.outerToInner + into.outerToSide - into.innerToOuter - into.ownToOuter
  into.roomToOuter = hasOuter ? Math.max(0, missing) + exchangeLps : 0
}

function setExpiration(into: Flows, network: Network, bagEnds: BagEnds): void {
  const {
    deviceFlowLps,
    innerShareOut,
    captureOut,
    flushLps,
    hasOuter,
    sideFromOuter,
    exchangeLps,
  } = network
  const { lungLps } = into
  const net = innerShareOut * lungLps - flushLps
  into.mixedToInner = Math.max(0, net)
  into.innerToMixed = Math.max(0, -net)
  into.mixedToSide = lungLps - net
  into.sideToMixed = 0
  const { bag } = network
  into.deviceToBag = bag === null ? 0 : bagEnds.takes * (1 - bag.forwardLoss) * deviceFlowLps
  into.innerToBag =
    bag === null || bag.hasInletValve
      ? 0
      : bagEnds.takes * bag.expiredShareIntoBag * into.mixedToInner
  into.bagToInner = 0
  const passing = deviceFlowLps - into.deviceToBag
  into.deviceToInner = captureOut * passing
  into.deviceToOuter = hasOuter ? (1 - captureOut) * passing : 0
  const drawn = Math.max(0, into.innerToMixed - into.deviceToInner)
  into.outerToInner = 0
  into.roomToInner = drawn + (hasOuter ? 0 : exchangeLps)
  const kept = into.innerToMixed + into.innerToBag
  into.innerToOuter = hasOuter
    ? Math.max(0, into.deviceToInner + into.mixedToInner + drawn - kept)
    : 0
  into.outerToSide = 0
  into.roomToSide = 0
  into.sideToOuter = hasOuter && sideFromOuter ? into.mixedToSide : 0
  into.roomToOuter = hasOuter ? exchangeLps : 0
}
