// What a part is, in the words the chain rules use. Leaves out the rules.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { Part } from './part.ts'

export const TRAITS = [
  'bubble',
  'heated-humidifier',
  'active-humidifier',
  'exchanger',
  'entraining-jet',
  'reservoir',
  'filter',
  'unfiltered',
  'mixer',
  'y-piece',
  'high-flow-interface',
  'moistens',
] as const
export type Trait = (typeof TRAITS)[number]

/** Every trait of a part, by its kind and family. */
export function traitsOf(part: Part): readonly Trait[] {
  if (part.kind === 'interface') return interfaceTraits(part)
  if (part.kind === 'ventilator' && part.source?.hasOwnFilter === 'yes') return ['mixer']
  return KIND_TRAITS[part.kind] ?? []
}

const KIND_TRAITS: Readonly<Partial<Record<Part['kind'], readonly Trait[]>>> = {
  bubble: ['bubble', 'active-humidifier', 'moistens'],
  'pass-over': ['active-humidifier', 'moistens'],
  heated: ['heated-humidifier', 'active-humidifier', 'moistens'],
  collar: ['active-humidifier', 'moistens'],
  exchanger: ['exchanger', 'moistens'],
  'jet-nebuliser': ['entraining-jet', 'active-humidifier', 'moistens'],
  filter: ['filter'],
  ventilator: ['unfiltered', 'mixer'],
  blender: ['mixer'],
  'y-piece': ['y-piece'],
}

function interfaceTraits({ family }: Part): readonly Trait[] {
  if (family === undefined) return []
  const { behaviour, entrainsAir } = INTERFACE_FAMILIES[family]
  return [
    ...(entrainsAir === 'no' ? [] : (['entraining-jet'] as const)),
    ...(behaviour.kind === 'reservoir' ? (['reservoir'] as const) : []),
    ...(family === 'nasal-high-flow' ? (['high-flow-interface'] as const) : []),
  ]
}
