// Demo hospital: sources that mix oxygen with air. Invented.
import { EVERYWHERE, type ShelfSource } from '../shelf.ts'
import {
  BLENDER_30_LPM,
  BLENDER_60_LPM,
  FRACTIONS,
  TUBE_15_PLAIN,
  VENTILATOR_LPM,
} from './scales.ts'

/** Flow error of blenders and ventilators at constant flow (common practice). */
const FLOW_ERROR = 0.1
const JET = { kind: 'jet-nebuliser', purity: 'pipeline', meter: TUBE_15_PLAIN } as const

export const DEMO_MIXERS: readonly ShelfSource[] = [
  {
    ...JET,
    id: 'nebuliser',
    label: 'Jet nebuliser',
    count: 8,
    place: EVERYWHERE,
    settings: [0.28, 0.31, 0.35, 0.4, 0.6, 0.8, 1],
    driveLpmMax: 15,
    jets: 1,
    usedStepsLpm: [6, 10, 15],
    usedFractions: [0.28, 0.35, 0.4, 0.6, 1],
  },
  {
    ...JET,
    id: 'nebuliser-double',
    label: 'Jet nebuliser (two jets)',
    count: 3,
    place: 'plover',
    settings: [0.35, 0.4, 0.5, 0.6, 0.8, 1],
    driveLpmMax: 15,
    jets: 2,
    usedStepsLpm: [10, 15],
    usedFractions: [0.6, 1],
    usedFor: ['aerosol-mask', 't-piece', 't-piece-with-limb'],
  },
  {
    kind: 'blender',
    id: 'blender-30',
    label: 'Blender 1–30 L/min',
    count: 4,
    place: 'wren',
    stepsLpm: BLENDER_30_LPM,
    fractionSteps: FRACTIONS,
    errorRelative: FLOW_ERROR,
    usedStepsLpm: [2, 4, 6, 8, 10, 15, 20],
    usedFractions: [0.21, 0.3, 0.4, 0.5, 0.7, 1],
    usedFor: ['nasal-high-flow', 'head-box', 'tracheostomy-mask'],
  },
  {
    kind: 'blender',
    id: 'blender-60',
    label: 'Blender 5–60 L/min',
    count: 6,
    place: 'plover',
    stepsLpm: BLENDER_60_LPM,
    fractionSteps: FRACTIONS,
    errorRelative: FLOW_ERROR,
    usedStepsLpm: [30, 40, 50, 60],
    usedFractions: [0.3, 0.4, 0.5, 0.6, 0.8, 1],
    usedFor: ['nasal-high-flow', 't-piece-with-limb'],
  },
  {
    kind: 'ventilator',
    id: 'ventilator',
    label: 'Ventilator (constant flow)',
    count: 3,
    place: 'plover',
    stepsLpm: VENTILATOR_LPM,
    fractionSteps: FRACTIONS,
    errorRelative: FLOW_ERROR,
    usedStepsLpm: [6, 20, 40],
    usedFractions: [0.4, 0.6, 1],
    usedFor: ['nasal-high-flow', 'face-tent', 't-piece', 'aerosol-mask'],
  },
]
