// Random networks and breaths over the whole allowed space, from 1 mL preterm breaths to 3 L, for laws and agreement. Knows no interface family.
import fc from 'fast-check'
import type { BreathPattern, ExpiratoryShape, InspiratoryShape } from '../../src/delivery/breath.ts'
import type { Bag, Network } from '../../src/delivery/network.ts'
import { randomStream } from './seed.ts'

export interface RandomCase {
  readonly network: Network
  readonly breath: BreathPattern
}

/** Numbers in [0, 1) that make one case; a point a hill-climb can move. */
export type CasePoint = readonly number[]

// Each part reads its own stretch of the point, so that a change in one leaves the others as they were.
const BREATH_AT = 0
const NETWORK_AT = 20
const BAG_AT = 60
export const POINT_SIZE = 66

/** Cases as fast-check sees them; shrinking moves towards zero in every number. */
export function arbitraryCase(): fc.Arbitrary<RandomCase> {
  return fc
    .array(fc.double({ min: 0, max: 0.999_999, noNaN: true }), {
      minLength: POINT_SIZE,
      maxLength: POINT_SIZE,
    })
    .map(caseFromPoint)
}

export function randomPoint(random: () => number): CasePoint {
  return Array.from({ length: POINT_SIZE }, random)
}

/** The same `count` points for the same seed. */
export function randomPoints(
  count: number,
  random: () => number = randomStream(),
): readonly CasePoint[] {
  return Array.from({ length: count }, () => randomPoint(random))
}

/** A point moved a little in some of its numbers, folded back into [0, 1). */
export function neighbour(point: CasePoint, random: () => number, width: number): CasePoint {
  return point.map((x) => {
    if (random() < 0.6) return x
    const moved = Math.abs(x + width * (2 * random() - 1))
    return moved < 1 ? moved : Math.max(0, 1.999_999 - moved)
  })
}

/** Turns a point into a case. Volumes follow the tidal volume, so that every size of patient meets every kind of pocket. */
export function caseFromPoint(point: CasePoint): RandomCase {
  const breath = drawBreath(reader(point, BREATH_AT))
  const bag = drawBag(reader(point, BAG_AT), breath.tidalVolumeL)
  return { breath, network: drawNetwork(reader(point, NETWORK_AT), breath, bag) }
}

interface Draw {
  readonly between: (min: number, max: number) => number
  /** Between two positive bounds, evenly over the powers. */
  readonly scaled: (min: number, max: number) => number
  readonly chance: (share: number) => boolean
  readonly pick: <T>(choices: readonly T[]) => T
}

function reader(point: CasePoint, from: number): Draw {
  let at = from
  const next = (): number => point[at++] as number // each part stays in its stretch
  return {
    between: (min, max) => min + (max - min) * next(),
    scaled: (min, max) => min * (max / min) ** next(),
    chance: (share) => next() < share,
    pick: <T>(choices: readonly T[]): T => choices[Math.floor(next() * choices.length)] as T, // next() stays below 1
  }
}

function drawBreath(draw: Draw): BreathPattern {
  const tidalVolumeL = draw.scaled(0.001, 3)
  // Small breaths are fast ones: the widest rates at each size that keep ventilation within life.
  const ratePerMin = draw.scaled(tidalVolumeL > 0.2 ? 4 : 15, tidalVolumeL > 1.5 ? 30 : 120)
  const dutyFraction = draw.between(0.15, 0.7)
  const expirationS = (60 / ratePerMin) * (1 - dutyFraction)
  const expiration = drawExpiration(draw, expirationS)
  const inspiration = drawInspiration(draw)
  return { tidalVolumeL, ratePerMin, dutyFraction, inspiration, expiration }
}

function drawInspiration(draw: Draw): InspiratoryShape {
  const kind = draw.pick([
    'half-sine',
    'half-sine',
    'half-sine',
    'square',
    'decelerating',
    'sampled',
  ] as const)
  if (kind !== 'sampled') return { kind }
  const relativeFlow = Array.from({ length: 9 }, (_, i) =>
    i === 0 || i === 8 ? 0 : draw.between(0.2, 1.5),
  )
  return { kind, relativeFlow }
}

function drawExpiration(draw: Draw, expirationS: number): ExpiratoryShape {
  const timeConstantS = Math.min(5, Math.max(0.02, expirationS * draw.scaled(0.08, 2)))
  const shareOfExpiration = draw.between(0.2, 1)
  const isPassive = draw.chance(0.85)
  return isPassive ? { kind: 'passive', timeConstantS } : { kind: 'constant', shareOfExpiration }
}

function drawNetwork(draw: Draw, breath: BreathPattern, bag: Bag): Network {
  const { tidalVolumeL, ratePerMin } = breath
  const meanLps = (tidalVolumeL * ratePerMin) / 60
  const pocketL = (least: number, most: number): number => {
    const isAbsent = draw.chance(0.15)
    const volumeL = tidalVolumeL * draw.scaled(least, most)
    return isAbsent ? 0 : volumeL
  }
  // From nothing to 90 L/min, but never a gale that no pocket of the patient's size could hold.
  const flowLps = (noneShare: number): number => {
    const isOff = draw.chance(noneShare)
    const lps = Math.min(1.5, meanLps * draw.scaled(0.02, 40))
    return isOff ? 0 : lps
  }
  const share = (oneShare: number, least: number): number => {
    const isOne = draw.chance(oneShare)
    const part = draw.between(least, 1)
    return isOne ? 1 : part
  }
  const freeFlowLps = flowLps(0.1)
  const hasOuter = draw.chance(0.35)
  const hasSide = draw.chance(0.4)
  const isBox = draw.chance(0.05)
  const largeL = boxL(draw, tidalVolumeL)
  const smallL = pocketL(0.03, 1)
  const innerL = isBox ? largeL : smallL
  const boxFlowLps = Math.max(freeFlowLps, leastBoxFlowLps(innerL, ratePerMin))
  const deviceFlowLps = isBox ? boxFlowLps : freeFlowLps
  const flushShare = draw.chance(0.25) ? 1 : 0
  const exchangeShare = draw.chance(0.5) ? 1 : 0
  const innerShareIn = draw.between(0, 1)
  const innerShareOut = draw.between(0, 1)
  const hasBag = draw.chance(0.3)
  return {
    deviceFlowLps,
    sourceShare: share(0.6, 0.05),
    innerL,
    outerL: pocketL(0.05, 2),
    sideL: pocketL(0.02, 0.3),
    mixedL: pocketL(0.03, 0.4),
    serialL: pocketL(0.05, 0.35),
    serialTanks: 1 + Math.floor(draw.between(0, 8)),
    hasOuter,
    innerShareIn: hasSide ? innerShareIn : 1,
    innerShareOut: hasSide ? innerShareOut : 1,
    sideFromOuter: draw.chance(0.5),
    exchangeLps: exchangeShare * meanLps * draw.scaled(0.05, 8),
    captureOut: share(0.6, 0.2),
    flushLps: flushShare * Math.min(deviceFlowLps, 10 * meanLps) * draw.between(0.05, 0.95),
    outerDeviceFlowLps: flowLps(0.5),
    outerSourceShare: share(0.6, 0.05),
    bag: hasBag ? bag : null,
  }
}

/** A head box of 10–25 L for infants; as many tidal volumes for others. */
function boxL(draw: Draw, tidalVolumeL: number): number {
  const litres = draw.between(10, 25)
  return tidalVolumeL < 0.06 ? litres : 30 * tidalVolumeL
}

/** A box is never fed so little that it takes more than about 100 breaths to fill. */
function leastBoxFlowLps(innerL: number, ratePerMin: number): number {
  return (innerL / 100) * (ratePerMin / 60)
}

function drawBag(draw: Draw, tidalVolumeL: number): Bag {
  const hasInletValve = draw.chance(0.6)
  const volumeL = tidalVolumeL * draw.scaled(0.1, 5)
  const leakRatio = draw.scaled(0.02, 4)
  const hasNoLoss = draw.chance(0.2)
  const forwardLoss = draw.between(0, 1)
  const expiredShare = draw.between(0, 0.8)
  return {
    volumeL,
    leakRatio,
    forwardLoss: hasNoLoss ? 0 : forwardLoss,
    hasInletValve,
    expiredShareIntoBag: hasInletValve ? 0 : expiredShare,
  }
}
