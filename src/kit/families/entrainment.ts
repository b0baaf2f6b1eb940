// Air-entrainment masks (Venturi principle): fixed settings and adjustable valve.
import type { InterfaceFamily } from '../interface-family.ts'
import { maskExchange } from './exchange.ts'
import { maskSpace, sizeOf } from './sizes.ts'

export interface EntrainmentSetting {
  readonly o2Fraction: number
  /** Driving flow printed for the setting at rest, L/min, and for a rate above 30/min. */
  readonly minimumLpm: number
  readonly fastBreathingLpm: number
}

/** Printed minimum flows and those for a rate above 30/min. Source: ODriscoll2017 (from memory; the ratios follow from mass balance). */
export const FIXED_SETTINGS: readonly EntrainmentSetting[] = [
  { o2Fraction: 0.24, minimumLpm: 2, fastBreathingLpm: 3 },
  { o2Fraction: 0.28, minimumLpm: 4, fastBreathingLpm: 6 },
  { o2Fraction: 0.31, minimumLpm: 6, fastBreathingLpm: 8 },
  { o2Fraction: 0.35, minimumLpm: 8, fastBreathingLpm: 12 },
  { o2Fraction: 0.4, minimumLpm: 10, fastBreathingLpm: 15 },
  { o2Fraction: 0.5, minimumLpm: 12, fastBreathingLpm: 15 },
  { o2Fraction: 0.6, minimumLpm: 15, fastBreathingLpm: 15 },
]

/** Base exchange through the wide ports, L/min: as in the simple mask's order of size; the stream itself is the jet. Memory. */
const BASE_LPM = 2

const COMMON = {
  opening: 'face',
  feeds: ['small-bore'],
  isCloseFitting: false,
  sizes: [
    sizeOf('child', { minLpm: 2, maxLpm: 15, known: 'memory' }, maskSpace('child')),
    sizeOf(
      'adult',
      { minLpm: 2, maxLpm: 15, known: 'memory', source: 'ODriscoll2017' },
      maskSpace('adult'),
    ),
  ],
  behaviour: {
    kind: 'mask',
    exchange: {
      ...maskExchange(BASE_LPM, 0.6),
      // Room air is already entrained at the jet; the slow wide stream draws in no more.
      perJetFlow: { spread: { kind: 'fixed', value: 0 }, known: 'derived' },
    },
    limbL: null,
    draughtLpm: { spread: { kind: 'fixed', value: 0 }, known: 'common-practice' },
  },
  isChecked: true,
  modelSd: { value: 0.05, known: 'seen', source: 'Jones1984' },
  printed: { kind: 'setting', known: 'common-practice' },
} as const

export const ENTRAINMENT_MASK: InterfaceFamily = {
  ...COMMON,
  id: 'entrainment-mask',
  entrainsAir: 'fixed-settings',
}

/** The adjustable valve has no measurement of its own (Woolner1980: figures not seen). */
export const ADJUSTABLE_ENTRAINMENT_MASK: InterfaceFamily = {
  ...COMMON,
  id: 'adjustable-entrainment-mask',
  entrainsAir: 'adjustable',
  isChecked: false,
  modelSd: { value: 0.08, known: 'common-practice' },
}
