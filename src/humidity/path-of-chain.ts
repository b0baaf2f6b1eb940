// The water path of a chain of joined parts: its humidifiers, hoses and jets in the order the gas meets them. Leaves out whether the chain may be built (joining).
import { assert } from '../errors.ts'
import type { FamilyId } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { humidifiersOf, mainLine, placed } from '../joining/chain.ts'
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

/** What the meters of the main line, or both meters of a jet, give together, L/min as metered; null where none is set or one is opened beyond its scale. */
export function flowOfChain(chain: Chain): number | null {
  const set = chain.parts.filter(({ part, setting }) => {
    return part.kind !== 'air-flowmeter' && setting.flowLpm !== undefined
  })
  if (set.length === 0 || set.some(isFlush)) return null
  return set.reduce((sum, { setting }) => sum + (setting.flowLpm ?? 0), 0)
}

function isFlush({ setting }: PlacedPart): boolean {
  return 'isFlush' in setting && setting.isFlush === true
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
