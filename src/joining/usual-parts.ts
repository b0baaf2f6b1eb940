// Parts that a hospital usually can get, for naming what is missing where no ward has it. Generic and unlabelled. Leaves out counts.
import type { FittingRow, OutletRow, TubeRow } from '../kit/part-rows.ts'
import type { HumidifierRow } from '../kit/shelf.ts'
import type { Stocked } from './stock.ts'
import { fittingPart, humidifierPart, outletPart, tubePart } from './parts-of-shelf.ts'

const ROW = { place: 'nowhere', count: 1 } as const

const OUTLETS: readonly OutletRow[] = [
  { ...ROW, id: 'usual/outlet-oxygen', kind: 'wall-outlet', gas: 'oxygen', label: 'Oxygen outlet' },
  { ...ROW, id: 'usual/outlet-air', kind: 'wall-outlet', gas: 'air', label: 'Air outlet' },
]

const TUBES: readonly TubeRow[] = [
  {
    ...ROW,
    id: 'usual/tubing',
    kind: 'oxygen-tubing',
    label: 'Oxygen tubing',
    lengthM: 2.1,
    boreMm: 4.8,
  },
  {
    ...ROW,
    id: 'usual/hose-short',
    kind: 'breathing-hose',
    label: 'Breathing hose (short)',
    lengthM: 0.5,
    boreMm: 20,
  },
  {
    ...ROW,
    id: 'usual/hose',
    kind: 'breathing-hose',
    label: 'Breathing hose',
    lengthM: 1.8,
    boreMm: 20,
  },
]

const FITTINGS: readonly FittingRow[] = [
  {
    ...ROW,
    id: 'usual/nipple',
    kind: 'adapter',
    label: 'Tubing nipple (thread)',
    inletEnds: ['thread-oxygen-female'],
    outletEnd: 'nipple',
  },
  {
    ...ROW,
    id: 'usual/limb-to-tubing',
    kind: 'adapter',
    label: 'Adapter 22 mm – tubing',
    inletEnds: ['conical-22-male'],
    outletEnd: 'nipple',
  },
  {
    ...ROW,
    id: 'usual/filter',
    kind: 'filter',
    label: 'Breathing filter',
    inletEnds: ['conical-22-female'],
    outletEnd: 'conical-22-male',
  },
  {
    ...ROW,
    id: 'usual/open-t',
    kind: 'open-t-piece',
    label: 'Open T-piece',
    inletEnds: ['conical-22-male'],
    outletEnd: 'conical-22-male-15-female',
    openEnds: ['conical-22-male'],
  },
]

const HUMIDIFIERS: readonly HumidifierRow[] = [
  { ...ROW, id: 'usual/bubble', kind: 'bubble', label: 'Bubble humidifier' },
  { ...ROW, id: 'usual/heated', kind: 'heated', label: 'Heated humidifier' },
]

/** As many of each as a chain could want. */
export const USUAL_PARTS: readonly Stocked[] = [
  ...OUTLETS.map(outletPart),
  ...TUBES.map(tubePart),
  ...FITTINGS.map(fittingPart),
  ...HUMIDIFIERS.map(humidifierPart),
].map((part) => ({ part, count: 4, place: null, isAtHand: false }))
