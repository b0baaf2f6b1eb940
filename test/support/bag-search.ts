// The bag's breath-to-breath map from the judge's momentary flows by midpoint sums, and its fixed point by bracketing. Shares no step with the fast solver.
import type { BreathPattern } from '../../src/delivery/breath.ts'
import type { Network } from '../../src/delivery/network.ts'
import {
  airwayFlowLps,
  BAG_EMPTY,
  BAG_FREE,
  BAG_FULL,
  breathStretches,
  createFlows,
  setFlows,
} from '../../src/delivery/transient-flows.ts'

const SUMS_PER_STRETCH = 400
const HALVINGS = 40
const SAMPLES = 21

/** Filling after a breath that began with startL, L. */
export function breathEndL(network: Network, breath: BreathPattern, startL: number): number {
  const { bag } = network
  if (bag === null) return startL
  const flows = createFlows()
  let levelL = startL
  for (const stretch of breathStretches(breath)) {
    const durationS = (stretch.toS - stretch.fromS) / SUMS_PER_STRETCH
    for (let i = 0; i < SUMS_PER_STRETCH; i++) {
      const lungLps = airwayFlowLps(breath, stretch, stretch.fromS + (i + 0.5) * durationS)
      const bagEnds = levelL <= 0 ? BAG_EMPTY : levelL >= bag.volumeL ? BAG_FULL : BAG_FREE
      setFlows(flows, { network, phase: stretch.phase, lungLps, bagEnds })
      const gainLps = flows.deviceToBag + flows.innerToBag - flows.bagToInner
      levelL = Math.min(bag.volumeL, Math.max(0, levelL + gainLps * durationS))
    }
  }
  return levelL
}

export interface BagSearch {
  readonly startL: number
  /** How often the gain over a breath turns from positive to negative as the start rises: once if the steady state is unique. */
  readonly crossings: number
  /** Least gain or loss over a breath at the two ends of the bag, over the tidal volume: near zero any filling is steady. */
  readonly flatShare: number
}

/** The filling that a breath returns to. The gain falls as the start rises, from at least zero when empty to at most zero when full. */
export function bracketedBagStartL(network: Network, breath: BreathPattern): BagSearch {
  const volumeL = network.bag?.volumeL ?? 0
  const gain = (startL: number): number => breathEndL(network, breath, startL) - startL
  const gains = Array.from({ length: SAMPLES }, (_, i) => gain((i / (SAMPLES - 1)) * volumeL))
  const steady = 1e-9 * volumeL
  const signs = gains.map((each) => (each > steady ? 1 : each < -steady ? -1 : 0))
  // Runs of equal sign must read + 0 −, each at most once and in this order.
  const falls = signs.every((sign, i) => i === 0 || sign <= (signs[i - 1] ?? 1))
  let low = 0
  let high = volumeL
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (gain(middle) > 0) low = middle
    else high = middle
  }
  const flatShare = signs.filter((sign) => sign === 0).length > 1 ? 0 : netShare(network, breath)
  return { startL: (low + high) / 2, crossings: falls ? 1 : 2, flatShare }
}

/** Gain over a breath of a bag without ends, over the tidal volume. */
function netShare(network: Network, breath: BreathPattern): number {
  const flows = createFlows()
  let netL = 0
  for (const stretch of breathStretches(breath)) {
    const durationS = (stretch.toS - stretch.fromS) / SUMS_PER_STRETCH
    for (let i = 0; i < SUMS_PER_STRETCH; i++) {
      const lungLps = airwayFlowLps(breath, stretch, stretch.fromS + (i + 0.5) * durationS)
      setFlows(flows, { network, phase: stretch.phase, lungLps, bagEnds: BAG_FREE })
      netL += (flows.deviceToBag + flows.innerToBag - flows.bagToInner) * durationS
    }
  }
  return Math.abs(netL) / breath.tidalVolumeL
}
