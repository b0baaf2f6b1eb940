// Interfaces on a wide-bore gas stream: aerosol mask, face tent, tracheostomy mask, T-piece with and without limb.
import type { InterfaceFamily, InterfaceSize, SourcedSpread } from '../interface-family.ts'
import { FIT_FACTOR, maskExchange } from './exchange.ts'
import { maskSpace, scaledSpace, sizeOf } from './sizes.ts'

const STREAM = { minLpm: 10, maxLpm: 70, known: 'memory' } as const
const SMALL_STREAM = { minLpm: 6, maxLpm: 40, known: 'memory' } as const
const NO_DRAUGHT: SourcedSpread = { spread: { kind: 'fixed', value: 0 }, known: 'common-practice' }

function streamSizes(
  space: (id: 'infant' | 'child' | 'adult') => SourcedSpread,
): readonly InterfaceSize[] {
  return [
    sizeOf('infant', SMALL_STREAM, space('infant')),
    sizeOf('child', SMALL_STREAM, space('child')),
    sizeOf('adult', STREAM, space('adult')),
  ]
}

const UNCHECKED = {
  isChecked: false,
  modelSd: { value: 0.1, known: 'common-practice' },
  printed: { kind: 'setting', known: 'common-practice' },
} as const

/** Large side ports of the aerosol mask: base exchange between simple mask and face tent, L/min (memory); the slow stream is no jet. */
export const AEROSOL_MASK: InterfaceFamily = {
  id: 'aerosol-mask',
  opening: 'face',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: streamSizes(maskSpace),
  behaviour: { kind: 'mask', exchange: slowStream(4), limbL: null, draughtLpm: NO_DRAUGHT },
  ...UNCHECKED,
}

/** Open upward: large pocket and steady exchange with the room, more in a draught (Wexler1975 for the direction; size from memory). */
export const FACE_TENT: InterfaceFamily = {
  id: 'face-tent',
  opening: 'face',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('child', SMALL_STREAM, {
      spread: { kind: 'triangular', min: 0.15, mode: 0.25, max: 0.4 },
      known: 'memory',
    }),
    sizeOf(
      'adult',
      { minLpm: 8, maxLpm: 40, known: 'memory' },
      { spread: { kind: 'triangular', min: 0.3, mode: 0.45, max: 0.7 }, known: 'memory' },
    ),
  ],
  behaviour: {
    kind: 'mask',
    exchange: slowStream(10),
    limbL: null,
    draughtLpm: {
      spread: { kind: 'triangular', min: 0, mode: 4, max: 20 },
      known: 'common-practice',
    },
  },
  ...UNCHECKED,
  modelSd: { value: 0.15, known: 'common-practice' },
  printed: {
    kind: 'table',
    rows: [
      { flowLpm: 10, low: 0.35, high: 0.45 },
      { flowLpm: 15, low: 0.35, high: 0.45 },
    ],
    known: 'secondary',
  },
}

/** Small dome over the neck with a large front port (memory). */
export const TRACHEOSTOMY_MASK: InterfaceFamily = {
  id: 'tracheostomy-mask',
  opening: 'neck',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: streamSizes((id) => scaledSpace(id, 0.5)),
  behaviour: { kind: 'mask', exchange: slowStream(4), limbL: null, draughtLpm: NO_DRAUGHT },
  ...UNCHECKED,
}

/** Inner volume of a 15/22 mm T-piece, L (memory); one open end, no exchange but what the breath draws in. */
const T_SPACE: SourcedSpread = {
  spread: { kind: 'triangular', min: 0.012, mode: 0.018, max: 0.025 },
  known: 'memory',
}

export const T_PIECE: InterfaceFamily = {
  id: 't-piece',
  opening: 'neck',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: streamSizes(() => T_SPACE),
  behaviour: { kind: 'mask', exchange: slowStream(0.2), limbL: null, draughtLpm: NO_DRAUGHT },
  ...UNCHECKED,
}

/** A 22 mm open limb of 0.15–0.3 m or more holds 0.06–0.15 L (geometry). */
export const T_PIECE_WITH_LIMB: InterfaceFamily = {
  ...T_PIECE,
  id: 't-piece-with-limb',
  behaviour: {
    kind: 'mask',
    exchange: slowStream(0.2),
    limbL: { spread: { kind: 'triangular', min: 0.06, mode: 0.1, max: 0.15 }, known: 'derived' },
    draughtLpm: NO_DRAUGHT,
  },
}

function slowStream(baseLpm: number) {
  return {
    ...maskExchange(baseLpm, 0.6),
    perJetFlow: { spread: { kind: 'fixed', value: 0 }, known: 'derived' },
    fitFactor: FIT_FACTOR,
  } as const
}
