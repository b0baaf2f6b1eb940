// A nasal cannula worn under a mask: two flows, two pockets. No measurement judges it.
import type { InterfaceFamily } from '../interface-family.ts'
import { maskSpace, sizeOf } from './sizes.ts'

export const CANNULA_UNDER_MASK: InterfaceFamily = {
  id: 'cannula-under-mask',
  opening: 'face',
  feeds: ['small-bore'],
  isCloseFitting: true,
  entrainsAir: 'no',
  sizes: [
    sizeOf('child', { minLpm: 0.5, maxLpm: 4, known: 'common-practice' }, maskSpace('child')),
    sizeOf('adult', { minLpm: 1, maxLpm: 6, known: 'common-practice' }, maskSpace('adult')),
  ],
  behaviour: { kind: 'nasal-under-mask' },
  isChecked: false,
  modelSd: { value: 0.12, known: 'common-practice' },
  printed: { kind: 'none' },
}
