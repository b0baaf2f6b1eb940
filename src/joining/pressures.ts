// Pressure along a chain, from the patient back to the meters: what each tube loses at its flow. Leaves out jets, bubbles, prongs and joints, whose loss is not known, and says where.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { tubePressureDropKpa } from '../physics/tube-flow.ts'
import type { Chain } from './chain.ts'
import { feederOf, placed } from './chain.ts'
import type { PassingFlow } from './flows.ts'
import type { Part } from './part.ts'

export interface PartPressure {
  /** Lost within the part, kPa; 0 where it is not known. */
  readonly dropKpa: number
  /** Above ambient where the gas leaves the part, kPa: what everything after it loses. */
  readonly outletKpa: number
  /** Above ambient where the gas comes in, kPa. */
  readonly inletKpa: number
  /** False where a part here or further on loses pressure that is not known, so that the true figure is higher. */
  readonly isComplete: boolean
}

/** Parts that lose pressure which neither formula nor label gives. */
const UNKNOWN_LOSS: readonly Part['kind'][] = [
  'jet-nebuliser',
  'bubble',
  'filter',
  'exchanger',
  'one-way-valve',
]

/** Pressure at every part, in the order of the chain. */
export function chainPressures(options: {
  readonly chain: Chain
  readonly flows: readonly PassingFlow[]
  readonly barometricKpa: number
}): readonly PartPressure[] {
  const { chain } = options
  const pressures: PartPressure[] = []
  for (let at = chain.parts.length - 1; at >= 0; at -= 1) {
    const next = chain.joins.find(({ from, at: end }) => from === at && end === 'inlet')
    const after = next === undefined ? undefined : pressures[next.to]
    const isFirst = next === undefined || next.index === 0
    pressures[at] = partPressure({ ...options, at, after: isFirst ? after : mainOf(after) })
  }
  return pressures
}

/** A second inlet does not pass the tubing fixed to the first. */
function mainOf(after: PartPressure | undefined): PartPressure | undefined {
  return after === undefined ? undefined : { ...after, inletKpa: after.outletKpa }
}

function partPressure(options: {
  readonly chain: Chain
  readonly flows: readonly PassingFlow[]
  readonly barometricKpa: number
  readonly at: number
  readonly after: PartPressure | undefined
}): PartPressure {
  const { chain, flows, at, after, barometricKpa } = options
  const { part } = placed(chain, at)
  const outletKpa = after?.inletKpa ?? 0
  const feeder = part.kind === 'interface' ? feederOf(chain, at, 0) : at
  const flow = feeder === undefined ? undefined : flows[feeder]
  const dropKpa =
    part.tube === null || flow === undefined
      ? 0
      : tubePressureDropKpa({
          ...part.tube,
          flowLpm: flow.flowLpm,
          o2Fraction: flow.o2Fraction,
          barometricKpa,
          outletGaugeKpa: outletKpa,
        })
  const isOwnKnown = !UNKNOWN_LOSS.includes(part.kind) && !isJet(part)
  return {
    dropKpa,
    outletKpa,
    inletKpa: outletKpa + dropKpa,
    isComplete: isOwnKnown && (after?.isComplete ?? true),
  }
}

/** Prongs and the nozzle of a valve lose pressure too. */
function isJet(part: Part): boolean {
  if (part.kind !== 'interface' || part.family === undefined) return false
  return part.outlet === 'prongs' || INTERFACE_FAMILIES[part.family].entrainsAir !== 'no'
}
