// Head box for infants: one well-mixed box with its own carbon dioxide balance.
import type { InterfaceFamily } from '../interface-family.ts'
import { FIT_FACTOR } from './exchange.ts'
import { sizeOf } from './sizes.ts'

/** More than 4 L/min so that carbon dioxide does not build up (secondary text); upper end from memory. */
const RATED = { minLpm: 5, maxLpm: 15, known: 'secondary' } as const

export const HEAD_BOX: InterfaceFamily = {
  id: 'head-box',
  opening: 'head',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('preterm', RATED, {
      spread: { kind: 'triangular', min: 6, mode: 9, max: 12 },
      known: 'memory',
    }),
    sizeOf('newborn', RATED, {
      spread: { kind: 'triangular', min: 8, mode: 12, max: 16 },
      known: 'memory',
    }),
    sizeOf('infant', RATED, {
      spread: { kind: 'triangular', min: 12, mode: 18, max: 25 },
      known: 'memory',
    }),
  ],
  behaviour: {
    kind: 'box',
    exchange: {
      // Neck gap and lid: steady swap with the room, L/min (memory).
      baseLpm: {
        spread: { kind: 'lognormal', median: 1, logSd: 0.6, min: 0.1, max: 8 },
        known: 'memory',
      },
      perJetFlow: { spread: { kind: 'fixed', value: 0 }, known: 'derived' },
      fitFactor: FIT_FACTOR,
    },
  },
  isChecked: false,
  modelSd: { value: 0.08, known: 'common-practice' },
  printed: { kind: 'setting', known: 'common-practice' },
}
