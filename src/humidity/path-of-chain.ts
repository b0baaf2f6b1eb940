// The water path of a chain of joined parts: its humidifiers, hoses and jets in the order the gas meets them. Leaves out whether the chain may be built (joining).
import { assert } from '../errors.ts'
import type { FamilyId } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { feederOf, humidifiersOf, mainLine, placed } from '../joining/chain.ts'
import type { Chain, PlacedPart } from '../joining/chain.ts'
import type { AirwayFacts } from './facts.ts'
import { airPerGas } from './path-of-set-up.ts'
import type { Stage, WaterPath } from './water-path.ts'

/** Stages along the line that carries the source's stream. An exchanger worn on the tube counts where the chain ends at the neck. */
export function pathOfChain(chain: Chain, airway: AirwayFacts): WaterPath {
  const hasCollar = humidifiersOf(chain).some(({ part }) => part.kind === 'collar')
  const parts = mainLine(chain).map((at) => placed(chain, at))
  const stages = parts.flatMap((one) => stagesOf(one, hasCollar))
  const standsIn = stages.filter(({ kind }) => kind === 'exchanger')
  const others = stages.filter(({ kind }) => kind !== 'exchanger')
  return { stages: [...others, ...(standsIn.length > 0 ? standsIn : worn(chain, airway))] }
}

/** The interface at the end of the chain. A chain without one is a bug of the caller. */
export function familyOfChain(chain: Chain): FamilyId {
  const family = chain.parts.find(({ part }) => part.family !== undefined)?.part.family
  assert(family !== undefined, 'humidity/interface in chain')
  return family
}

/** What the meters that feed the interface's first inlet give together, L/min as metered: both meters of a jet, not that of a
 *  collar's mist, not that of a mask over a cannula. Null where none is set or one is opened beyond its scale. */
export function flowOfChain(chain: Chain): number | null {
  const set = metersOf(chain, chain.parts.length - 1)
  if (set.length === 0 || set.some(({ setting }) => setting.isFlush === true)) return null
  return set.reduce((sum, { setting }) => sum + (setting.flowLpm ?? 0), 0)
}

/** The parts with a flow set on them that feed this one. */
function metersOf(chain: Chain, at: number): readonly PlacedPart[] {
  const one = placed(chain, at)
  if (one.setting.flowLpm !== undefined) return [one]
  const inlets = one.part.kind === 'interface' ? one.part.inlets.slice(0, 1) : one.part.inlets
  return inlets.flatMap((end, index) => {
    const from = end === 'air-ports' ? undefined : feederOf(chain, at, index)
    return from === undefined || from >= at ? [] : metersOf(chain, from)
  })
}

function stagesOf(one: PlacedPart, hasCollar: boolean): readonly Stage[] {
  const { part } = one
  switch (part.kind) {
    case 'bubble':
    case 'pass-over':
      return [{ kind: part.kind, ...vesselOf(one) }]
    case 'heated':
      return [{ kind: 'heated-chamber', ...vesselOf(one) }]
    case 'exchanger': {
      const labelMgPerL = part.humidifier?.outputMgPerL ?? null
      return [{ kind: 'exchanger', partId: part.id, labelMgPerL }]
    }
    case 'jet-nebuliser':
      return [
        { kind: 'entrainment', airPerGas: airDrawn(one), hasCollar: false },
        { kind: 'nebuliser', isHeated: part.source?.isHeated ?? false, ...vesselOf(one) },
      ]
    case 'interface':
      return [...tubeStages(one), ...portStages(one, hasCollar)]
    default:
      return tubeStages(one)
  }
}

function vesselOf({ part }: PlacedPart) {
  const { humidifier } = part
  return {
    partId: part.id,
    waterMl: humidifier?.waterMl ?? null,
    labelMgPerL: humidifier?.outputMgPerL ?? null,
  }
}

function tubeStages({ part }: PlacedPart): readonly Stage[] {
  return part.tube === null ? [] : [{ kind: 'hose', partId: part.id, ...part.tube }]
}

function portStages(one: PlacedPart, hasCollar: boolean): readonly Stage[] {
  const { family } = one.part
  if (family === undefined || INTERFACE_FAMILIES[family].entrainsAir === 'no') return []
  return [{ kind: 'entrainment', airPerGas: airDrawn(one), hasCollar }]
}

function airDrawn({ setting }: PlacedPart): number {
  return airPerGas(setting.o2Fraction ?? null)
}

function worn(chain: Chain, airway: AirwayFacts): readonly Stage[] {
  const sitsAtNeck = INTERFACE_FAMILIES[familyOfChain(chain)].opening === 'neck'
  if (!airway.wearsExchanger || !sitsAtNeck) return []
  return [{ kind: 'exchanger', partId: 'exchanger', labelMgPerL: null }]
}
