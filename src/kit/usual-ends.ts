// The ends a part of each kind usually has, where its row does not say otherwise. All common practice; a row's own ends win.
import type { EndId, GasId } from './ends.ts'
import type { FamilyId } from './family-id.ts'
import type { OutletKind, TubeKind } from './part-rows.ts'
import type { HumidifierKind } from './shelf.ts'
import type { SourceKind } from './source-row.ts'

export interface PartEnds {
  readonly inletEnds: readonly EndId[]
  readonly outletEnd: EndId
}

const METER: PartEnds = { inletEnds: ['probe-oxygen'], outletEnd: 'thread-oxygen-male' }
const MIXER: PartEnds = {
  inletEnds: ['probe-oxygen', 'probe-air'],
  outletEnd: 'conical-22-male',
}

/** A cylinder with its regulator, and a concentrator, bring their own gas. */
export const USUAL_SOURCE_ENDS: Readonly<Record<SourceKind, PartEnds>> = {
  'wall-flowmeter': METER,
  'two-flowmeters': { inletEnds: ['probe-oxygen', 'probe-oxygen'], outletEnd: 'nipple' },
  'cylinder-regulator': { inletEnds: [], outletEnd: 'nipple' },
  concentrator: { inletEnds: [], outletEnd: 'thread-oxygen-male' },
  'jet-nebuliser': { inletEnds: ['thread-oxygen-female'], outletEnd: 'conical-22-male' },
  blender: MIXER,
  ventilator: MIXER,
}

export const USUAL_AIR_METER_ENDS: PartEnds = {
  inletEnds: ['probe-air'],
  outletEnd: 'thread-oxygen-male',
}

const IN_LINE: PartEnds = { inletEnds: ['conical-22-male'], outletEnd: 'conical-22-male' }

export const USUAL_HUMIDIFIER_ENDS: Readonly<Record<HumidifierKind, PartEnds>> = {
  bubble: { inletEnds: ['thread-oxygen-female'], outletEnd: 'nipple' },
  'pass-over': IN_LINE,
  heated: IN_LINE,
  collar: { inletEnds: ['conical-22-male'], outletEnd: 'collar' },
  exchanger: { inletEnds: ['conical-15-male'], outletEnd: 'conical-15-female' },
}

export const USUAL_TUBE_END: Readonly<Record<TubeKind, EndId>> = {
  'oxygen-tubing': 'funnel',
  'breathing-hose': 'conical-22-female',
}

const NASAL = { outletEnd: 'prongs' } as const
const SMALL_MASK: PartEnds = { inletEnds: ['nipple'], outletEnd: 'mask-rim' }
const WIDE_MASK: PartEnds = { inletEnds: ['conical-22-male'], outletEnd: 'mask-rim' }
const T: PartEnds = { inletEnds: ['conical-22-male'], outletEnd: 'conical-15-female' }

export const USUAL_INTERFACE_ENDS: Readonly<Record<FamilyId, PartEnds>> = {
  'nasal-cannula': { inletEnds: ['funnel'], ...NASAL },
  'nasal-catheter': { inletEnds: ['nipple'], ...NASAL },
  'simple-mask': SMALL_MASK,
  'partial-rebreather-mask': SMALL_MASK,
  'non-rebreather-mask': SMALL_MASK,
  'entrainment-mask': SMALL_MASK,
  'adjustable-entrainment-mask': SMALL_MASK,
  'aerosol-mask': WIDE_MASK,
  'face-tent': WIDE_MASK,
  'tracheostomy-mask': { inletEnds: ['conical-22-male'], outletEnd: 'neck-rim' },
  't-piece': T,
  't-piece-with-limb': T,
  'head-box': { inletEnds: ['conical-22-male'], outletEnd: 'box' },
  'nasal-high-flow': { inletEnds: ['conical-22-male'], ...NASAL },
  'cannula-under-mask': { inletEnds: ['funnel', 'nipple'], outletEnd: 'mask-rim' },
}

const OUTLET_END: Readonly<Record<OutletKind, Partial<Record<GasId, EndId>>>> = {
  'wall-outlet': { oxygen: 'terminal-oxygen', air: 'terminal-air' },
  cylinder: { oxygen: 'cylinder-pin-oxygen', air: 'cylinder-pin-air' },
}

/** Gases without a use here have an end that fits nothing of ours. */
export function usualOutletEnd(outlet: { readonly kind: OutletKind; readonly gas: GasId }): EndId {
  return OUTLET_END[outlet.kind][outlet.gas] ?? 'terminal-other'
}
