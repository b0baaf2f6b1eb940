// Simple (medium-concentration) mask: oxygen jet into an open-ported mask body.
import type { InterfaceFamily } from '../interface-family.ts'
import { maskExchange } from './exchange.ts'
import { maskSpace, sizeOf } from './sizes.ts'

/** Calibrated: 0.40 at 5 and 0.50 at 8 L/min, resting adult (common practice: centre of the usual ranges). See scripts/calibrate.ts. */
export const SIMPLE_MASK_BASE_LPM = 6

/** Used at 5–10 L/min; below 5 carbon dioxide is breathed again (Jensen1991, ODriscoll2017). */
const ADULT = { minLpm: 5, maxLpm: 10, known: 'seen', source: 'ODriscoll2017' } as const

export const SIMPLE_MASK: InterfaceFamily = {
  id: 'simple-mask',
  opening: 'face',
  feeds: ['small-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('infant', { minLpm: 3, maxLpm: 6, known: 'memory' }, maskSpace('infant')),
    sizeOf('child', { minLpm: 4, maxLpm: 8, known: 'memory' }, maskSpace('child')),
    sizeOf('adult', ADULT, maskSpace('adult')),
  ],
  behaviour: {
    kind: 'mask',
    exchange: maskExchange(SIMPLE_MASK_BASE_LPM, 0.45),
    limbL: null,
    draughtLpm: { spread: { kind: 'fixed', value: 0 }, known: 'common-practice' },
  },
  isChecked: true,
  modelSd: { value: 0.1, known: 'common-practice' },
  printed: {
    kind: 'table',
    rows: [
      { flowLpm: 5, low: 0.35, high: 0.5 },
      { flowLpm: 8, low: 0.4, high: 0.6 },
      { flowLpm: 10, low: 0.4, high: 0.6 },
    ],
    known: 'secondary',
    source: 'ODriscoll2017',
  },
}
