// Nasal high flow: heated blended gas through loose wide prongs.
import type { InterfaceFamily } from '../interface-family.ts'
import { NO_POCKET, sizeOf } from './sizes.ts'

/** Ceilings: adult 60 (trade range); 2 L/min per kg in small children is local policy, so the size carries a wide bound. */
export const NASAL_HIGH_FLOW: InterfaceFamily = {
  id: 'nasal-high-flow',
  opening: 'nose',
  feeds: ['wide-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('newborn', { minLpm: 2, maxLpm: 8, known: 'common-practice' }, NO_POCKET),
    sizeOf('infant', { minLpm: 4, maxLpm: 20, known: 'common-practice' }, NO_POCKET),
    sizeOf('child', { minLpm: 8, maxLpm: 40, known: 'common-practice' }, NO_POCKET),
    sizeOf('adult', { minLpm: 20, maxLpm: 60, known: 'common-practice' }, NO_POCKET),
  ],
  behaviour: {
    kind: 'high-flow',
    // +1.8 mL/s for each L/min in upper-airway models (Moeller2015, from memory): never fitted to Moeller2017, which judges it.
    clearanceMlPerSPerLpm: {
      spread: { kind: 'triangular', min: 1, mode: 1.8, max: 2.4 },
      known: 'memory',
      source: 'Moeller2015',
    },
    // 2.7 ± 1.04 cmH2O at 35 L/min, mouth closed (Parke2009: mean and spread between people); judged by Parke2011 and Parke2013.
    meanPressureCmH2oPerLpm: {
      spread: { kind: 'normal', mean: 0.077, sd: 0.03, min: 0.005, max: 0.16 },
      known: 'derived',
      source: 'Parke2009',
    },
    // About half with the mouth open (Parke2011, from memory).
    openMouthPressureShare: {
      spread: { kind: 'triangular', min: 0.3, mode: 0.5, max: 0.7 },
      known: 'memory',
      source: 'Parke2011',
    },
  },
  isChecked: true,
  modelSd: { value: 0.06, known: 'common-practice' },
  printed: { kind: 'setting', known: 'common-practice' },
}
