// Demo hospital: interfaces with sizes and counts, one row of each family and one with a label of its own. Invented.
import { EVERYWHERE, type InterfaceRow, type SizeStock } from '../shelf.ts'
import type { SizeId } from '../family-id.ts'

const stock = (size: SizeId, count: number): SizeStock => ({ size, count })

const SMALL_TO_LARGE = [stock('infant', 6), stock('child', 10), stock('adult', 24)] as const

export const DEMO_INTERFACES: readonly InterfaceRow[] = [
  {
    id: 'nasal-cannula',
    family: 'nasal-cannula',
    label: 'Nasal cannula',
    place: EVERYWHERE,
    sizes: [stock('preterm', 6), stock('newborn', 10), ...SMALL_TO_LARGE],
    tubing: { lengthM: 2.1, boreMm: 4 },
  },
  {
    id: 'nasal-catheter',
    family: 'nasal-catheter',
    label: 'Nasopharyngeal catheter',
    place: 'wren',
    sizes: [stock('newborn', 8), stock('infant', 8), stock('child', 4)],
  },
  {
    id: 'simple-mask',
    family: 'simple-mask',
    label: 'Simple mask',
    place: EVERYWHERE,
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 'partial-rebreather',
    family: 'partial-rebreather-mask',
    label: 'Reservoir mask (partial rebreather)',
    place: EVERYWHERE,
    sizes: [stock('child', 4), stock('adult', 8)],
  },
  {
    id: 'non-rebreather',
    family: 'non-rebreather-mask',
    label: 'Reservoir mask (non-rebreather)',
    place: EVERYWHERE,
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 'non-rebreather-30',
    family: 'non-rebreather-mask',
    label: 'Reservoir mask (wide inlet, 15–30 L/min)',
    place: 'plover',
    sizes: [{ size: 'adult', count: 4, ratedMinLpm: 15, ratedMaxLpm: 30 }],
  },
  {
    id: 'entrainment-mask',
    family: 'entrainment-mask',
    label: 'Entrainment mask',
    place: EVERYWHERE,
    sizes: [stock('child', 6), stock('adult', 20)],
    settings: [
      { o2Fraction: 0.24, minimumLpm: 2, fastBreathingLpm: 3 },
      { o2Fraction: 0.28, minimumLpm: 4, fastBreathingLpm: 6 },
      { o2Fraction: 0.35, minimumLpm: 8, fastBreathingLpm: 12 },
      { o2Fraction: 0.4, minimumLpm: 10, fastBreathingLpm: 15 },
      { o2Fraction: 0.6, minimumLpm: 15, fastBreathingLpm: 15 },
    ],
    hasCollar: true,
  },
  {
    id: 'adjustable-entrainment-mask',
    family: 'adjustable-entrainment-mask',
    label: 'Entrainment mask (adjustable valve)',
    place: 'heron',
    sizes: [stock('child', 3), stock('adult', 6)],
    settings: [
      { o2Fraction: 0.26, minimumLpm: 3 },
      { o2Fraction: 0.3, minimumLpm: 5 },
      { o2Fraction: 0.35, minimumLpm: 8 },
      { o2Fraction: 0.5, minimumLpm: 12 },
    ],
    hasCollar: true,
  },
  {
    id: 'aerosol-mask',
    family: 'aerosol-mask',
    label: 'Aerosol mask',
    place: EVERYWHERE,
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 'face-tent',
    family: 'face-tent',
    label: 'Face tent',
    place: EVERYWHERE,
    sizes: [stock('child', 3), stock('adult', 6)],
  },
  {
    id: 'tracheostomy-mask',
    family: 'tracheostomy-mask',
    label: 'Tracheostomy mask',
    place: EVERYWHERE,
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 't-piece',
    family: 't-piece',
    label: 'T-piece',
    place: EVERYWHERE,
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 't-piece-with-limb',
    family: 't-piece-with-limb',
    label: 'T-piece (with limb)',
    place: 'plover',
    sizes: SMALL_TO_LARGE,
  },
  {
    id: 'head-box',
    family: 'head-box',
    label: 'Head box',
    place: 'wren',
    sizes: [stock('preterm', 1), stock('newborn', 2), stock('infant', 2)],
  },
  {
    id: 'nasal-high-flow',
    family: 'nasal-high-flow',
    label: 'High-flow prongs',
    place: EVERYWHERE,
    sizes: [stock('newborn', 4), ...SMALL_TO_LARGE],
  },
  {
    id: 'cannula-under-mask',
    family: 'cannula-under-mask',
    label: 'Cannula + mask',
    place: EVERYWHERE,
    sizes: [stock('child', 4), stock('adult', 10)],
    tubing: { lengthM: 2.1, boreMm: 4 },
  },
]
