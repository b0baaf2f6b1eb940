// How many steps each phase of a breath is divided into: more where a pocket turns over quickly or gas changes in a front. Leaves out where the bounds lie.
import { breathPeriodS, inspirationS } from './breath.ts'
import type { BreathPattern } from './breath.ts'
import type { Network } from './network.ts'

/** Turnovers of a pocket that one step may hold, and the most steps that this may ask for: tried against finer grids (bench agreement). */
const TURNOVERS_PER_STEP = 0.7
const STEPS_MAX = 40

/** Factors on the basic steps: three steps to each cell of a sampled flow; the front of room air after a bag runs empty; the front of expired gas into a bag without valve. */
const SAMPLED = 2.4
const BAG_FRONT = 2
const OPEN_BAG = 1.6

/** Basic steps of inspiration. */
export function inspiratorySteps(
  network: Network,
  breath: BreathPattern,
  resolution: number,
): number {
  const sampled = breath.inspiration.kind === 'sampled' ? SAMPLED : 1
  const bag = network.bag === null ? 1 : BAG_FRONT
  const turnovers = turnoversOf(network, breath, {
    durationS: inspirationS(breath),
    innerShare: network.innerShareIn,
  })
  return stepsFor(resolution * Math.max(sampled, bag), turnovers)
}

/** Basic steps of expiration with its pause. */
export function expiratorySteps(
  network: Network,
  breath: BreathPattern,
  resolution: number,
): number {
  const { bag, mixedL, flushLps, innerShareOut } = network
  const isOpenBag = bag !== null && !bag.hasInletValve
  const durationS = breathPeriodS(breath) - inspirationS(breath)
  const turnovers = turnoversOf(network, breath, { durationS, innerShare: innerShareOut })
  const flushed = turnoversIn(mixedL, flushLps * durationS)
  return stepsFor(resolution * (isOpenBag ? OPEN_BAG : 1), Math.max(turnovers, flushed))
}

function stepsFor(least: number, turnovers: number): number {
  return Math.ceil(Math.max(least, Math.min(STEPS_MAX, turnovers / TURNOVERS_PER_STEP)))
}

/** How often the gas of the quicker of inner and outer pocket is replaced in one phase. */
function turnoversOf(
  network: Network,
  breath: BreathPattern,
  { durationS, innerShare }: { readonly durationS: number; readonly innerShare: number },
): number {
  const { tidalVolumeL } = breath
  const innerL =
    (network.deviceFlowLps + network.exchangeLps) * durationS + innerShare * tidalVolumeL
  const inner = turnoversIn(network.innerL, innerL)
  if (!network.hasOuter) return inner
  const outerL = (network.outerDeviceFlowLps + network.exchangeLps) * durationS + tidalVolumeL
  return Math.max(inner, turnoversIn(network.outerL, outerL))
}

/** A pocket without volume turns over at once: no step can be too long for it. */
function turnoversIn(pocketL: number, passedL: number): number {
  return pocketL > 0 ? passedL / pocketL : 0
}
