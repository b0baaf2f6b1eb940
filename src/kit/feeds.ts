// Which source can feed which interface, and in what steps. Leaves out connectors and what is unwise but possible.
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { entrainmentRatio } from '../physics/gas-mixing.ts'
import { FIXED_SETTINGS } from './families/entrainment.ts'
import type { FamilyId, FeedId } from './family-id.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { InterfaceFamily } from './interface-family.ts'
import type { InterfaceRow, PrintedSetting } from './shelf.ts'
import type { SourceKind } from './source-row.ts'

const FEED_OF: Readonly<Record<SourceKind, FeedId>> = {
  'wall-flowmeter': 'small-bore',
  'two-flowmeters': 'small-bore',
  'cylinder-regulator': 'small-bore',
  concentrator: 'small-bore',
  'jet-nebuliser': 'wide-bore',
  blender: 'wide-bore',
  ventilator: 'wide-bore',
}

/** Interfaces that may take more than one meter gives. */
const TWO_METER_FAMILIES: readonly FamilyId[] = ['simple-mask', 'non-rebreather-mask']

/** Interfaces on which flush flow was measured, in adults [Driver2017]; on no other is it offered. */
export const FLUSH_FAMILIES: readonly FamilyId[] = ['simple-mask', 'non-rebreather-mask']

/** Whether a kind of source is used to feed a family (common practice). */
export function canFeed(kind: SourceKind, family: InterfaceFamily): boolean {
  if (!family.feeds.includes(FEED_OF[kind])) return false
  switch (kind) {
    case 'two-flowmeters':
      return TWO_METER_FAMILIES.includes(family.id)
    case 'jet-nebuliser':
      // Its stream is too slow and too wet for prongs.
      return family.id !== 'nasal-high-flow'
    case 'ventilator':
      return family.id !== 'head-box'
    case 'concentrator':
      // A second flow for the mask would have to come from a second machine.
      return family.id !== 'cannula-under-mask'
    case 'wall-flowmeter':
    case 'cylinder-regulator':
    case 'blender':
      return true
  }
}

/** Settings printed on the device, or the usual ones of the family where none were typed. */
export function settingsOf(row: InterfaceRow): readonly PrintedSetting[] {
  if (INTERFACE_FAMILIES[row.family].entrainsAir === 'no') return []
  return row.settings ?? FIXED_SETTINGS
}

/** A rate above 30/min calls for up to half as much again where the device prints no second flow [ODriscoll2017]. */
const FAST_BREATHING_FACTOR = 1.5

export function fastBreathingLpm(setting: PrintedSetting): number {
  return setting.fastBreathingLpm ?? setting.minimumLpm * FAST_BREATHING_FACTOR
}

/** Driving flow plus entrained air, L/min as metered. At or below the fraction of air there is no such setting; at 1 nothing is entrained. */
export function streamLpm(drive: {
  readonly flowLpm: number
  readonly setO2Fraction: number
}): number {
  return drive.flowLpm * (1 + entrainmentRatio({ targetO2Fraction: drive.setO2Fraction }))
}

/** Pure oxygen in a blend of this flow, L/min. */
export function oxygenInBlendLpm(blend: {
  readonly flowLpm: number
  readonly setO2Fraction: number
}): number {
  return (blend.flowLpm * (blend.setO2Fraction - AIR_O2_FRACTION)) / (1 - AIR_O2_FRACTION)
}
