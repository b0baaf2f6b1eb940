// Random shelves on which every field of a shelf file occurs, with labels that spreadsheets stumble over. Leaves out whether such parts exist or join.
import { END_IDS, GAS_IDS } from '../../src/kit/ends.ts'
import { FAMILY_IDS } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import { FITTING_KINDS, OUTLET_KINDS } from '../../src/kit/part-rows.ts'
import { readShelf } from '../../src/kit/read-shelf.ts'
import { AFTER_FAILURE, HUMIDIFIER_KINDS, MODE_KINDS, YES_NO_UNKNOWN } from '../../src/kit/shelf.ts'
import type { Shelf } from '../../src/kit/shelf.ts'
import { METER_CLASSES, SOURCE_KINDS, UNITS_ON_SCALE } from '../../src/kit/shelf-rules.ts'
import { FLOWMETER_KINDS } from '../../src/physics/flowmeter.ts'
import { SOURCE_PURITY } from '../../src/physics/source-purity.ts'
import { problemText } from '../../src/words/problem-text.ts'

type Random = () => number
type Row = Readonly<Record<string, unknown>>

const AWKWARD =
  String.raw`=1+1 +4 -5 @a ' '= " "" , ; | \ \| none 1,180 1.180 007 1E5 yes Ü–µ ＝1 (a) : to`
    .split(' ')
    .concat(['\t', '\n', '\r\n', ' ', 'a: b'])
const ROWS_MOST = 3

/** A shelf that the reader of shelves takes. */
export function randomFullShelf(random: Random): Shelf {
  const wards = rows(random, (id) => ({ id, name: label(random), beds: whole(random, 40) }))
  const places = ['everywhere', ...wards.map(({ id }) => String(id))]
  const list = (make: () => Row): readonly Row[] =>
    rows(random, (id) => ({
      id,
      label: label(random),
      place: pick(random, places),
      ...maybe(random, () => ({ wardMarking: label(random) })),
      ...make(),
    }))
  const file = {
    version: 1,
    hospital: label(random),
    ...maybe(random, () => ({ isInvented: random() < 0.5 })),
    ...maybe(random, () => ({ altitudeM: number(random, -100, 3000) })),
    wards,
    interfaces: list(() => face(random)),
    sources: list(() => source(random)),
    humidifiers: list(() => humidifier(random)),
    ...maybe(random, () => ({ outlets: list(() => outlet(random)) })),
    ...maybe(random, () => ({ airMeters: list(() => airMeter(random)) })),
    ...maybe(random, () => ({ tubes: list(() => tube(random)) })),
    ...maybe(random, () => ({ fittings: list(() => fitting(random)) })),
  }
  const read = readShelf(file)
  if (read.ok) return read.shelf
  throw new Error(`not a shelf: ${read.problems.map(problemText).join('; ')}`)
}

function rows(random: Random, make: (id: string) => Row): readonly Row[] {
  return Array.from({ length: whole(random, ROWS_MOST) }, (_, i) =>
    make(`${i}${random() < 0.5 ? '-row' : label(random)}`),
  )
}

function face(random: Random): Row {
  const family = pick(random, FAMILY_IDS)
  const { sizes, entrainsAir } = INTERFACE_FAMILIES[family]
  return {
    family,
    sizes: sizes
      .filter(() => random() < 0.7)
      .map(({ id, rated }) => ({
        size: id,
        count: whole(random, 2000),
        ...maybe(random, () => ({ ratedMinLpm: number(random, 0.005, rated.minLpm) })),
        ...maybe(random, () => ({ ratedMaxLpm: number(random, rated.maxLpm, 100) })),
        ...maybe(random, () => ({ fitsMinKg: number(random, 0.3, 40) })),
        ...maybe(random, () => ({ fitsMaxKg: number(random, 40, 400) })),
      })),
    ...(entrainsAir === 'no' ? {} : maybe(random, () => ({ settings: settings(random) }))),
    ...maybe(random, () => ({ hasCollar: random() < 0.5 })),
    ...maybe(random, () => ({ inletEnds: ends(random) })),
    ...maybe(random, () => ({
      tubing: { lengthM: number(random, 0.02, 30), boreMm: number(random, 1, 40) },
    })),
  }
}

function settings(random: Random): readonly Row[] {
  return rising(random, 0.3, 1).map((o2Fraction) => {
    const minimumLpm = number(random, 1, 15)
    const fast = maybe(random, () => ({ fastBreathingLpm: number(random, minimumLpm, 90) }))
    return { o2Fraction, minimumLpm, ...fast }
  })
}

function source(random: Random): Row {
  const kind = pick(random, SOURCE_KINDS)
  const stepsLpm = rising(random, 0.005, 60)
  const fractions = rising(random, 0.3, 1)
  const head = {
    kind,
    count: whole(random, 99),
    ...maybe(random, () => ({ usedStepsLpm: stepsLpm.slice(0, 1) })),
    ...maybe(random, () => ({ usedFor: some(random, FAMILY_IDS) })),
    ...maybe(random, () => ({ markedIn: pick(random, UNITS_ON_SCALE) })),
    ...ownEnds(random),
  }
  const usedFractions = maybe(random, () => ({ usedFractions: fractions.slice(0, 1) }))
  if (kind === 'blender' || kind === 'ventilator')
    return {
      ...head,
      stepsLpm,
      fractionSteps: fractions,
      errorRelative: number(random, 0, 0.5),
      ...usedFractions,
      ...mixerFacts(random, kind),
    }
  const metered = {
    ...head,
    purity: pick(random, Object.keys(SOURCE_PURITY)),
    meter: {
      kind: pick(random, FLOWMETER_KINDS),
      meterClass: pick(random, METER_CLASSES),
      stepsLpm,
      flush: random() < 0.5 ? null : flush(random),
    },
  }
  if (kind !== 'jet-nebuliser') return metered
  return {
    ...metered,
    settings: fractions,
    driveLpmMax: 70,
    jets: 1 + whole(random, 1),
    ...usedFractions,
    ...maybe(random, () => ({ isHeated: random() < 0.5 })),
  }
}

function flush(random: Random): Row {
  const lowLpm = number(random, 15, 40)
  const medianLpm = number(random, lowLpm, 80)
  return { lowLpm, medianLpm, highLpm: number(random, 90, 150), source: label(random) }
}

function mixerFacts(random: Random, kind: 'blender' | 'ventilator'): Row {
  const after = (key: string): Row => maybe(random, () => ({ [key]: pick(random, AFTER_FAILURE) }))
  const failure = { ...after('air'), ...after('oxygen'), ...after('mains') }
  const mode = () => ({ label: label(random), kind: pick(random, MODE_KINDS) })
  return {
    ...maybe(random, () => ({ pushesKpaMax: number(random, 0.1, 400) })),
    ...(Object.keys(failure).length === 0 ? {} : { failure }),
    ...maybe(random, () => ({ biasFlowAddsToUse: pick(random, YES_NO_UNKNOWN) })),
    ...(kind === 'blender'
      ? {}
      : {
          ...maybe(random, () => ({ leakCompensationAddsToUse: pick(random, YES_NO_UNKNOWN) })),
          ...maybe(random, () => ({ hasOwnFilter: pick(random, YES_NO_UNKNOWN) })),
          ...maybe(random, () => ({
            modes: Array.from({ length: whole(random, ROWS_MOST) }, mode),
          })),
        }),
  }
}

function humidifier(random: Random): Row {
  return {
    kind: pick(random, HUMIDIFIER_KINDS),
    count: whole(random, 99),
    ...ownEnds(random),
    ...labelFlow(random),
    ...maybe(random, () => ({ reliefKpa: number(random, 0.1, 400) })),
    ...maybe(random, () => ({ waterMl: number(random, 1, 5000) })),
    ...maybe(random, () => ({ outputMgPerL: number(random, 0, 44) })),
    ...maybe(random, () => ({ tidalMinMl: number(random, 1, 500) })),
    ...maybe(random, () => ({ tidalMaxMl: number(random, 500, 3000) })),
  }
}

function outlet(random: Random): Row {
  return {
    kind: pick(random, OUTLET_KINDS),
    gas: pick(random, GAS_IDS),
    count: whole(random, 99),
    ...maybe(random, () => ({ outletEnd: pick(random, END_IDS) })),
  }
}

function airMeter(random: Random): Row {
  return { count: whole(random, 99), stepsLpm: rising(random, 1, 30), ...ownEnds(random) }
}

function tube(random: Random): Row {
  return {
    kind: pick(random, ['oxygen-tubing', 'breathing-hose']),
    count: whole(random, 99),
    lengthM: number(random, 0.02, 30),
    boreMm: number(random, 1, 40),
    ...labelFlow(random),
    ...maybe(random, () => ({ isHeated: random() < 0.5 })),
    ...maybe(random, () => ({ hasWaterTrap: random() < 0.5 })),
    ...maybe(random, () => ({ inletEnd: pick(random, END_IDS) })),
    ...maybe(random, () => ({ outletEnd: pick(random, END_IDS) })),
  }
}

function fitting(random: Random): Row {
  return {
    kind: pick(random, FITTING_KINDS),
    count: whole(random, 99),
    inletEnds: ends(random),
    ...labelFlow(random),
    ...maybe(random, () => ({ outletEnd: pick(random, END_IDS) })),
    ...maybe(random, () => ({ openEnds: ends(random) })),
    ...maybe(random, () => ({ hasPorts: random() < 0.5 })),
  }
}

function labelFlow(random: Random): Row {
  return {
    ...maybe(random, () => ({ ratedMinLpm: number(random, 0.005, 10) })),
    ...maybe(random, () => ({ ratedMaxLpm: number(random, 10, 100) })),
  }
}

function ownEnds(random: Random): Row {
  return {
    ...maybe(random, () => ({ inletEnds: ends(random) })),
    ...maybe(random, () => ({ outletEnd: pick(random, END_IDS) })),
  }
}

function ends(random: Random): readonly string[] {
  return some(random, END_IDS)
}

/** Up to three of the list, some twice, perhaps none. */
function some<T>(random: Random, list: readonly T[]): readonly T[] {
  return Array.from({ length: whole(random, ROWS_MOST) }, () => pick(random, list))
}

function rising(random: Random, min: number, max: number): readonly number[] {
  const values = Array.from({ length: 1 + whole(random, 4) }, () => number(random, min, max))
  return [...new Set(values)].toSorted((a, b) => a - b)
}

function label(random: Random): string {
  const parts = Array.from({ length: 1 + whole(random, 2) }, () => pick(random, AWKWARD)).join('')
  return parts.trim() === '' ? `${parts}x${parts}` : parts
}

function maybe(random: Random, make: () => Row): Row {
  return random() < 0.5 ? make() : {}
}

function whole(random: Random, most: number): number {
  return Math.floor(random() * (most + 1))
}

/** With few decimal places or many. */
function number(random: Random, min: number, max: number): number {
  const value = min + random() * (max - min)
  const rounded = Number(value.toFixed(whole(random, 4)))
  return random() < 0.2 || rounded < min || rounded > max ? value : rounded
}

function pick<T>(random: Random, list: readonly T[]): T {
  const found = list[Math.floor(random() * list.length)]
  if (found === undefined) throw new Error('empty list')
  return found
}
