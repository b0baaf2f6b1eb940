// Every fault of a shelf file is named where it stands; a good file comes back as written. Leaves out the published schema (test/shelf-schema.test.ts).
import { describe, expect, it } from 'vitest'
import type { Problem } from '../errors.ts'
import { DEMO_SHELF } from './demo-shelf/demo-shelf.ts'
import { readShelf } from './read-shelf.ts'

const TINY = {
  version: 1,
  hospital: 'Invented',
  wards: [{ id: 'heron', name: 'Heron', beds: 4 }],
  interfaces: [
    {
      id: 'mask',
      family: 'simple-mask',
      label: 'Mask',
      place: 'heron',
      sizes: [{ size: 'adult', count: 3 }],
    },
  ],
  sources: [
    {
      kind: 'wall-flowmeter',
      id: 'wall',
      label: 'Wall',
      place: 'everywhere',
      count: 2,
      purity: 'pipeline',
      meter: { kind: 'tube-compensated', meterClass: 'ordinary', stepsLpm: [1, 2, 5], flush: null },
    },
  ],
  humidifiers: [],
} as const

const [MASK] = TINY.interfaces
const [WALL] = TINY.sources

function problemsOf(file: unknown): readonly Problem[] {
  const read = readShelf(file)
  return read.ok ? [] : read.problems
}

function withMask(fields: object): object {
  return { ...TINY, interfaces: [{ ...MASK, ...fields }] }
}

function withWall(fields: object): object {
  return { ...TINY, sources: [{ ...WALL, ...fields }] }
}

const VENTILATOR = {
  kind: 'ventilator',
  stepsLpm: [5],
  fractionSteps: [0.5],
  errorRelative: 0.1,
} as const

/** The smallest shelf with one more row in a list. */
function withPart(list: string, fields: object): object {
  const row = { id: 'new', label: 'New', place: 'heron', count: 1, ...fields }
  return { ...TINY, [list]: [row] }
}

describe('reading a shelf file', () => {
  it('gives the demo shelf back unchanged', () => {
    const read = readShelf(JSON.parse(JSON.stringify(DEMO_SHELF)))
    expect(read).toEqual({ ok: true, shelf: DEMO_SHELF })
  })

  it('reads the smallest shelf', () => {
    expect(readShelf(TINY)).toEqual({ ok: true, shelf: TINY })
  })

  it.each([
    ['nothing', null, 'NOT_AN_OBJECT', ''],
    ['a list', [], 'NOT_AN_OBJECT', ''],
    ['no version', { ...TINY, version: undefined }, 'MISSING_FIELD', 'version'],
    ['another version', { ...TINY, version: 2 }, 'UNKNOWN_CHOICE', 'version'],
    ['a field it does not know', { ...TINY, colour: 'green' }, 'UNKNOWN_FIELD', 'colour'],
    ['rows that are no list', { ...TINY, humidifiers: {} }, 'NOT_A_LIST', 'humidifiers'],
    ['a row that is no object', { ...TINY, humidifiers: ['x'] }, 'NOT_AN_OBJECT', 'humidifiers[0]'],
    ['an empty label', withMask({ label: ' ' }), 'NOT_TEXT', 'interfaces[0].label'],
    [
      'a ward it does not know',
      withMask({ place: 'osprey' }),
      'UNKNOWN_CHOICE',
      'interfaces[0].place',
    ],
    [
      'a family it does not know',
      withMask({ family: 'tent' }),
      'UNKNOWN_CHOICE',
      'interfaces[0].family',
    ],
    [
      'a size the family has not',
      withMask({ sizes: [{ size: 'preterm', count: 1 }] }),
      'UNKNOWN_CHOICE',
      'interfaces[0].sizes[0].size',
    ],
    [
      'a size twice',
      withMask({ sizes: [...MASK.sizes, ...MASK.sizes] }),
      'DUPLICATE_ID',
      'interfaces[0].sizes[1].size',
    ],
    [
      'half a mask',
      withMask({ sizes: [{ size: 'adult', count: 1.5 }] }),
      'COUNT_OUT_OF_RANGE',
      'interfaces[0].sizes[0].count',
    ],
    [
      'a label flow below the usual minimum',
      withMask({ sizes: [{ size: 'adult', count: 1, ratedMaxLpm: 3 }] }),
      'RANGE_REVERSED',
      'interfaces[0].sizes[0].ratedMaxLpm',
    ],
    [
      'valve settings on a mask without a valve',
      withMask({ settings: [] }),
      'SETTING_NOT_FOR_SET_UP',
      'interfaces[0].settings',
    ],
    [
      'a fast flow below the minimum',
      withMask({
        family: 'entrainment-mask',
        settings: [{ o2Fraction: 0.28, minimumLpm: 4, fastBreathingLpm: 3 }],
      }),
      'RANGE_REVERSED',
      'interfaces[0].settings[0].fastBreathingLpm',
    ],
    [
      'an end it does not know',
      withWall({ outletEnd: 'nippel' }),
      'UNKNOWN_CHOICE',
      'sources[0].outletEnd',
    ],
    [
      'an inlet end it does not know',
      withMask({ inletEnds: ['nipple', 'x'] }),
      'UNKNOWN_CHOICE',
      'interfaces[0].inletEnds[1]',
    ],
    [
      'fixed tubing without a bore',
      withMask({ tubing: { lengthM: 2 } }),
      'MISSING_FIELD',
      'interfaces[0].tubing.boreMm',
    ],
    [
      'an outlet without a gas',
      withPart('outlets', { kind: 'wall-outlet' }),
      'MISSING_FIELD',
      'outlets[0].gas',
    ],
    [
      'a gas it does not know',
      withPart('outlets', { kind: 'wall-outlet', gas: 'argon' }),
      'UNKNOWN_CHOICE',
      'outlets[0].gas',
    ],
    [
      'an air flowmeter without marks',
      withPart('airMeters', {}),
      'MISSING_FIELD',
      'airMeters[0].stepsLpm',
    ],
    [
      'a hose typed in centimetres',
      withPart('tubes', { kind: 'breathing-hose', lengthM: 180, boreMm: 22 }),
      'UNIT_SLIP_SUSPECTED',
      'tubes[0].lengthM',
    ],
    [
      'a tube without a bore',
      withPart('tubes', { kind: 'oxygen-tubing', lengthM: 2 }),
      'MISSING_FIELD',
      'tubes[0].boreMm',
    ],
    [
      'a fitting without ends',
      withPart('fittings', { kind: 'adapter' }),
      'MISSING_FIELD',
      'fittings[0].inletEnds',
    ],
    [
      'a fitting of no kind',
      withPart('fittings', { inletEnds: [] }),
      'MISSING_FIELD',
      'fittings[0].kind',
    ],
    [
      'label flows that cross',
      withPart('humidifiers', { kind: 'heated', ratedMinLpm: 9, ratedMaxLpm: 3 }),
      'RANGE_REVERSED',
      'humidifiers[0].ratedMaxLpm',
    ],
    [
      'breath sizes that cross',
      withPart('humidifiers', { kind: 'exchanger', tidalMinMl: 900, tidalMaxMl: 90 }),
      'RANGE_REVERSED',
      'humidifiers[0].tidalMaxMl',
    ],
    ['a mode on a flowmeter', withWall({ modes: [] }), 'UNKNOWN_FIELD', 'sources[0].modes'],
    [
      'a ventilator mode of no kind',
      withPart('sources', { ...VENTILATOR, modes: [{ label: 'x' }] }),
      'MISSING_FIELD',
      'sources[0].modes[0].kind',
    ],
    [
      'a failure it does not know',
      withPart('sources', { ...VENTILATOR, failure: { air: 'dies' } }),
      'UNKNOWN_CHOICE',
      'sources[0].failure.air',
    ],
    [
      'a filter neither there nor absent nor unknown',
      withPart('sources', { ...VENTILATOR, hasOwnFilter: true }),
      'UNKNOWN_CHOICE',
      'sources[0].hasOwnFilter',
    ],
    [
      'a filter on a meter',
      withWall({ hasOwnFilter: 'no' }),
      'UNKNOWN_FIELD',
      'sources[0].hasOwnFilter',
    ],
    ['no meter', withWall({ meter: undefined }), 'MISSING_FIELD', 'sources[0].meter'],
    [
      'no marks',
      withWall({ meter: { ...WALL.meter, stepsLpm: [] } }),
      'MISSING_FIELD',
      'sources[0].meter.stepsLpm[0]',
    ],
    [
      'no step in use',
      withWall({ usedStepsLpm: [] }),
      'MISSING_FIELD',
      'sources[0].usedStepsLpm[0]',
    ],
    [
      'marks that fall',
      withWall({ meter: { ...WALL.meter, stepsLpm: [1, 5, 2] } }),
      'RANGE_REVERSED',
      'sources[0].meter.stepsLpm[2]',
    ],
    [
      'a mark typed as text',
      withWall({ meter: { ...WALL.meter, stepsLpm: ['1'] } }),
      'NOT_A_NUMBER',
      'sources[0].meter.stepsLpm[0]',
    ],
    [
      'a used step that is no mark',
      withWall({ usedStepsLpm: [3] }),
      'STEP_NOT_ON_METER',
      'sources[0].usedStepsLpm[0]',
    ],
    [
      'a flush without a range',
      withWall({
        meter: { ...WALL.meter, flush: { lowLpm: 50, medianLpm: 50, highLpm: 50, source: 'x' } },
      }),
      'RANGE_REVERSED',
      'sources[0].meter.flush.medianLpm',
    ],
    [
      'a dial on a source without one',
      withWall({ settings: [0.4] }),
      'UNKNOWN_FIELD',
      'sources[0].settings',
    ],
    ['a kind it does not know', withWall({ kind: 'bottle' }), 'UNKNOWN_CHOICE', 'sources[0].kind'],
    [
      'an interface it does not know',
      withWall({ usedFor: ['hat'] }),
      'UNKNOWN_CHOICE',
      'sources[0].usedFor[0]',
    ],
    [
      'a ward called everywhere',
      { ...TINY, wards: [...TINY.wards, { id: 'everywhere', name: 'All', beds: 0 }] },
      'DUPLICATE_ID',
      'wards[1].id',
    ],
    ['an id twice', { ...TINY, sources: [WALL, WALL] }, 'DUPLICATE_ID', 'sources[1].id'],
    ['a word for yes', { ...TINY, isInvented: 'yes' }, 'NOT_A_BOOLEAN', 'isInvented'],
    [
      'an altitude above every hospital',
      { ...TINY, altitudeM: 9000 },
      'ALTITUDE_OUT_OF_RANGE',
      'altitudeM',
    ],
    [
      'an altitude that is no number',
      { ...TINY, altitudeM: Number.NaN },
      'NOT_A_NUMBER',
      'altitudeM',
    ],
  ])('names %s', (_, file, code, path) => {
    expect(problemsOf(file)).toContainEqual(expect.objectContaining({ code, path }))
  })

  it('asks about millilitres and per cent instead of converting them', () => {
    const inMl = withWall({ meter: { ...WALL.meter, stepsLpm: [1, 2, 200] } })
    expect(problemsOf(inMl)).toContainEqual(
      expect.objectContaining({ code: 'UNIT_SLIP_SUSPECTED', value: 200, suggestion: 0.2 }),
    )
    const inPercent = withMask({
      family: 'entrainment-mask',
      settings: [{ o2Fraction: 28, minimumLpm: 4 }],
    })
    expect(problemsOf(inPercent)).toContainEqual(
      expect.objectContaining({ code: 'UNIT_SLIP_SUSPECTED', value: 28, suggestion: 0.28 }),
    )
  })

  it('offers the name that was meant', () => {
    expect(problemsOf(withMask({ family: 'Simple Mask' }))).toContainEqual(
      expect.objectContaining({ suggestion: 'simple-mask' }),
    )
    expect(problemsOf({ ...TINY, altitude: 3 })).toContainEqual(
      expect.objectContaining({ code: 'UNKNOWN_FIELD', suggestion: 'altitudeM' }),
    )
  })

  it('reports everything wrong at once', () => {
    const file = { ...withWall({ count: -1, label: '' }), hospital: 7, altitudeM: 'high' }
    expect(problemsOf(file).map(({ path }) => path)).toEqual([
      'hospital',
      'altitudeM',
      'sources[0].label',
      'sources[0].count',
    ])
  })
})
