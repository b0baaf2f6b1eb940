// Small random shelves of two wards with a wish, for judging the chain solver. Leaves out collars and parts that pressure would rule out.
import type { EndId } from '../../src/kit/ends.ts'
import { USUAL_INTERFACE_ENDS } from '../../src/kit/usual-ends.ts'
import type { FamilyId } from '../../src/kit/family-id.ts'
import { YES_NO_UNKNOWN } from '../../src/kit/shelf.ts'
import type { Shelf, ShelfSource } from '../../src/kit/shelf.ts'
import { patientPartFor } from '../../src/joining/patient-part.ts'
import type { ChainPatient } from '../../src/joining/patient-part.ts'
import type { Wanted } from '../../src/joining/wanted.ts'

export interface ShelfCase {
  readonly shelf: Shelf
  readonly wanted: Wanted
  readonly patient: ChainPatient
  readonly opening: EndId
}

type Random = () => number

const PIECES_MAX = 10

const METER = { kind: 'tube-compensated', flush: null, meterClass: 'ordinary' } as const
const STEPS = [2, 4, 5, 6, 8, 10, 15]

type SourceSeed = (row: { readonly place: string; readonly count: number }) => ShelfSource

const wall: SourceSeed = (row) => ({
  ...row,
  kind: 'wall-flowmeter',
  id: 'wall',
  label: 'Wall',
  purity: 'pipeline',
  meter: { ...METER, stepsLpm: STEPS },
})

const SOURCES: Readonly<Record<string, SourceSeed>> = {
  wall,
  small: (row) => ({ ...wall(row), id: 'small', outletEnd: 'nipple' }),
  cylinder: (row) => ({
    ...row,
    kind: 'cylinder-regulator',
    id: 'cylinder',
    label: 'Cylinder',
    purity: 'pipeline',
    meter: { ...METER, stepsLpm: STEPS },
  }),
  concentrator: (row) => ({
    ...row,
    kind: 'concentrator',
    id: 'concentrator',
    label: 'Concentrator',
    purity: 'concentrator',
    meter: { ...METER, stepsLpm: [2, 4, 5] },
  }),
  jet: (row) => ({
    ...row,
    kind: 'jet-nebuliser',
    id: 'jet',
    label: 'Jet',
    purity: 'pipeline',
    meter: { ...METER, stepsLpm: STEPS },
    settings: [0.4, 0.6, 1],
    driveLpmMax: 15,
    jets: 1,
  }),
  jets: (row) => ({
    ...row,
    kind: 'jet-nebuliser',
    id: 'jets',
    label: 'Jets',
    purity: 'pipeline',
    meter: { ...METER, stepsLpm: STEPS },
    settings: [0.4, 0.6, 1],
    driveLpmMax: 15,
    jets: 2,
    inletEnds: ['nipple', 'nipple'],
  }),
  blender: (row) => ({
    ...row,
    kind: 'blender',
    id: 'blender',
    label: 'Blender',
    stepsLpm: [10, 20, 30],
    fractionSteps: [0.4, 0.6, 1],
    errorRelative: 0,
  }),
  ventilator: (row) => ({
    ...row,
    kind: 'ventilator',
    id: 'ventilator',
    label: 'Ventilator',
    stepsLpm: [10, 20, 30],
    fractionSteps: [0.4, 0.6, 1],
    errorRelative: 0,
  }),
}

const SMALL_SOURCES = ['wall', 'small', 'cylinder', 'concentrator']
const WIDE_SOURCES = ['jet', 'jets', 'blender', 'ventilator']
const SMALL_FAMILIES: readonly FamilyId[] = [
  'nasal-cannula',
  'simple-mask',
  'non-rebreather-mask',
  'entrainment-mask',
]
const WIDE_FAMILIES: readonly FamilyId[] = [
  'aerosol-mask',
  'tracheostomy-mask',
  't-piece',
  'nasal-high-flow',
]
const FLOWS: Readonly<Record<string, readonly number[]>> = {
  small: [4, 5, 6, 10],
  jet: [6, 10, 20],
  wide: [20, 30],
}

/** One random shelf, the wish, and the patient. */
export function randomShelf(random: Random): ShelfCase {
  const isWide = random() < 0.6
  const family = pick(random, isWide ? WIDE_FAMILIES : SMALL_FAMILIES)
  const sourceId =
    random() < 0.1
      ? pick(random, Object.keys(SOURCES))
      : pick(random, isWide ? WIDE_SOURCES : SMALL_SOURCES)
  const isMixer = sourceId === 'blender' || sourceId === 'ventilator'
  const isJet = sourceId.startsWith('jet')
  const isNeck = family === 'tracheostomy-mask' || family === 't-piece'
  const isBare = isNeck && random() < 0.3
  const size = random() < 0.9 ? 'adult' : 'child'
  const wanted: Wanted = {
    interfaceId: isBare ? null : family,
    size,
    sourceId,
    humidification: isMixer
      ? pick(random, ['heated', 'heated', 'heated', 'exchanger', 'none'])
      : pick(random, ['none', 'none', 'bubble', 'none']),
    flowLpm: pick(random, FLOWS[isMixer ? 'wide' : isJet ? 'jet' : 'small'] ?? [6]),
    ...(isMixer || isJet ? { o2Fraction: pick(random, [0.4, 0.6, 1]) } : {}),
    ...(family === 'entrainment-mask' && !isMixer && !isJet ? { o2Fraction: 0.28 } : {}),
    ...(random() < 0.05 ? { mode: 'cycles-pressure' as const } : {}),
  }
  const patient: ChainPatient = {
    ageYears: 40,
    weightKg: 70,
    airway: isNeck
      ? {
          route: 'tracheostomy',
          nose: 'open',
          tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
        }
      : { route: 'natural', nose: 'open' },
  }
  const worn = isBare ? null : USUAL_INTERFACE_ENDS[family].outletEnd
  const opening = patientPartFor(worn)?.inlets[0] ?? 'conical-15-male'
  return { shelf: shelfFor(random, { family, size, wanted }), wanted, patient, opening }
}

function shelfFor(
  random: Random,
  asked: { readonly family: FamilyId; readonly size: 'adult' | 'child'; readonly wanted: Wanted },
): Shelf {
  const { family, size, wanted } = asked
  let left = PIECES_MAX
  const row = (countMax: number): { place: string; count: number } => {
    const count = Math.min(left, 1 + Math.floor(random() * countMax))
    left -= count
    return { place: random() < 0.9 ? 'a' : 'b', count }
  }
  const maybe = <R>(chance: number, make: () => R): readonly R[] =>
    random() < chance && left > 0 ? [make()] : []
  const face = { ...row(1), id: family, label: family, family }
  const source = SOURCES[wanted.sourceId] ?? wall
  const isJet = wanted.sourceId.startsWith('jet')
  const isMixer = 'blender ventilator'.includes(wanted.sourceId)
  return {
    version: 1,
    hospital: 'Random',
    wards: [
      { id: 'a', name: 'A', beds: 1 },
      { id: 'b', name: 'B', beds: 1 },
    ],
    interfaces: [
      { id: face.id, label: face.label, family, place: face.place, sizes: [{ size, count: 1 }] },
    ],
    sources: [
      withFilter(random, source(row(1))),
      ...maybe(isJet ? 0.9 : 0.1, () => ({
        ...wall(row(2)),
        id: wanted.sourceId === 'wall' ? 'wall-2' : 'wall',
      })),
    ],
    outlets: [
      ...maybe(
        0.95,
        () =>
          ({
            ...row(isJet ? 2 : 1),
            id: 'o2',
            label: 'O2',
            kind: 'wall-outlet',
            gas: 'oxygen',
          }) as const,
      ),
      ...maybe(
        isMixer ? 0.9 : 0.1,
        () => ({ ...row(1), id: 'air', label: 'Air', kind: 'wall-outlet', gas: 'air' }) as const,
      ),
    ],
    humidifiers: [
      ...maybe(
        wanted.humidification === 'bubble' ? 0.9 : 0.05,
        () => ({ ...row(1), id: 'bubble', label: 'Bubble', kind: 'bubble' }) as const,
      ),
      ...maybe(
        wanted.humidification === 'heated' ? 0.9 : 0.05,
        () => ({ ...row(1), id: 'heated', label: 'Heated', kind: 'heated' }) as const,
      ),
      ...maybe(
        wanted.humidification === 'exchanger' ? 0.9 : 0.05,
        () => ({ ...row(1), id: 'exchanger', label: 'Exchanger', kind: 'exchanger' }) as const,
      ),
    ],
    fittings: [
      ...maybe(
        wanted.sourceId === 'ventilator' ? 0.9 : 0.1,
        () =>
          ({
            ...row(1),
            id: 'filter',
            label: 'Filter',
            kind: 'filter',
            inletEnds: ['conical-22-female'],
            outletEnd: 'conical-22-male',
          }) as const,
      ),
      ...maybe(
        isMixer ? 0.1 : 0.8,
        () =>
          ({
            ...row(1),
            id: 'nipple',
            label: 'Nipple',
            kind: 'adapter',
            inletEnds: ['thread-oxygen-female'],
            outletEnd: 'nipple',
          }) as const,
      ),
      ...maybe(
        wanted.interfaceId === null ? 0.7 : 0.1,
        () =>
          ({
            ...row(1),
            id: 'open-t',
            label: 'T',
            kind: 'open-t-piece',
            inletEnds: ['conical-22-male'],
            outletEnd: 'conical-22-male-15-female',
            openEnds: ['conical-22-male'],
          }) as const,
      ),
      ...maybe(
        0.1,
        () =>
          ({
            ...row(1),
            id: 'limb',
            label: 'Limb',
            kind: 'adapter',
            inletEnds: ['conical-22-male'],
            outletEnd: 'nipple',
          }) as const,
      ),
      ...maybe(
        0.1,
        () =>
          ({
            ...row(1),
            id: 'widen',
            label: 'Widen',
            kind: 'adapter',
            inletEnds: ['nipple'],
            outletEnd: 'conical-22-male',
          }) as const,
      ),
      ...maybe(
        isJet ? 0.2 : 0.05,
        () =>
          ({
            ...row(1),
            id: 'y',
            label: 'Y',
            kind: 'y-piece',
            inletEnds: ['nipple', 'nipple'],
            outletEnd: 'nipple',
          }) as const,
      ),
      ...maybe(
        0.1,
        () =>
          ({
            ...row(1),
            id: 'cap',
            label: 'Cap',
            kind: 'cap',
            inletEnds: ['conical-22-female'],
          }) as const,
      ),
    ],
    tubes: [
      ...maybe(
        isMixer ? 0.2 : 0.9,
        () =>
          ({
            ...row(2),
            id: 'tubing',
            label: 'Tubing',
            kind: 'oxygen-tubing',
            lengthM: pick(random, [0.6, 1, 2, 2]),
            boreMm: 5,
          }) as const,
      ),
      ...maybe(
        isMixer || isJet ? 0.8 : 0.1,
        () =>
          ({
            ...row(2),
            id: 'hose',
            label: 'Hose',
            kind: 'breathing-hose',
            lengthM: pick(random, [0.5, 1.2, 1.8]),
            boreMm: 20,
          }) as const,
      ),
      ...maybe(
        isMixer ? 0.6 : 0.1,
        () =>
          ({
            ...row(1),
            id: 'warm',
            label: 'Warm',
            kind: 'breathing-hose',
            lengthM: 1.5,
            boreMm: 20,
            isHeated: true,
          }) as const,
      ),
    ],
  }
}

function pick<T>(random: Random, list: readonly T[]): T {
  const found = list[Math.floor(random() * list.length)]
  if (found === undefined) throw new Error('empty list')
  return found
}

/** Some machines have a filter of their own. */
function withFilter(random: Random, row: ShelfSource): ShelfSource {
  return row.kind === 'ventilator' ? { ...row, hasOwnFilter: pick(random, YES_NO_UNKNOWN) } : row
}
