// Adding by hand: every kind of row, typed with the fields it must have and no more, is taken by the shelf reader; each field left out is asked for where it is typed. Leaves out the screen.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { rowsOf } from '../../kit/edit-shelf.ts'
import type { RowList } from '../../kit/edit-shelf.ts'
import { FAMILY_IDS } from '../../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import { FITTING_KINDS, OUTLET_KINDS, TUBE_KINDS } from '../../kit/part-rows.ts'
import { EVERYWHERE, HUMIDIFIER_KINDS } from '../../kit/shelf.ts'
import { SOURCE_KINDS } from '../../kit/shelf-rules.ts'
import type { SourceKind } from '../../kit/source-row.ts'
import type { DraftList } from './kept-draft.ts'
import { isAbout } from './problem-place.ts'
import { putDraft } from './open-draft.ts'
import type { RowDraft } from './row-draft.ts'
import { fieldsOf } from './row-fields.ts'

const HAND = 'Typed by hand'
const COUNTED: RowDraft = { label: HAND, place: EVERYWHERE, count: '3' }
const METER: RowDraft = {
  'meter.kind': 'tube-compensated',
  'meter.meterClass': 'ordinary',
  'meter.stepsLpm': '1; 2; 3 4,5 6',
  purity: 'pipeline',
}
const BLEND: RowDraft = {
  stepsLpm: '5; 10; 20',
  fractionSteps: '0,21; 0.5; 1',
  errorRelative: '0,05',
}

/** What each kind of source must have; a new kind does not compile without its line. */
const SOURCE: Readonly<Record<SourceKind, RowDraft>> = {
  'wall-flowmeter': METER,
  'two-flowmeters': METER,
  'cylinder-regulator': { ...METER, 'meter.kind': 'dial' },
  concentrator: { ...METER, purity: 'concentrator' },
  'jet-nebuliser': { ...METER, settings: '0,28 0,35 0,6', driveLpmMax: '12', jets: '1' },
  blender: BLEND,
  ventilator: BLEND,
}

interface Typed {
  readonly list: RowList
  readonly kind: string
  readonly draft: RowDraft
}

const TYPED: readonly Typed[] = [
  ...FAMILY_IDS.map((family) => {
    const [size] = INTERFACE_FAMILIES[family].sizes
    const sizes = { 'sizes[0].size': size?.id ?? '', 'sizes[0].count': '3' }
    return typed('interfaces', family, { family, label: HAND, place: EVERYWHERE, ...sizes })
  }),
  ...SOURCE_KINDS.map((kind) => typed('sources', kind, { ...COUNTED, kind, ...SOURCE[kind] })),
  ...HUMIDIFIER_KINDS.map((kind) => typed('humidifiers', kind, { ...COUNTED, kind })),
  ...TUBE_KINDS.map((kind) =>
    typed('tubes', kind, { ...COUNTED, kind, lengthM: '2,1', boreMm: '4.8' }),
  ),
  ...FITTING_KINDS.map((kind) =>
    typed('fittings', kind, { ...COUNTED, kind, 'inletEnds[0]': 'conical-22-male' }),
  ),
  ...OUTLET_KINDS.map((kind) => typed('outlets', kind, { ...COUNTED, kind, gas: 'oxygen' })),
  typed('airMeters', 'air flowmeter', { ...COUNTED, stepsLpm: '2; 5; 10' }),
]

function typed(list: RowList, kind: string, draft: RowDraft): Typed {
  return { list, kind, draft }
}

function put(list: DraftList, draft: RowDraft) {
  return putDraft(DEMO_SHELF, { list, id: null, draft })
}

function refusedPaths(list: DraftList, draft: RowDraft): readonly string[] {
  const found = put(list, draft)
  return found.ok ? [] : found.problems.map(({ path }) => path)
}

describe('a row typed by hand', () => {
  it.each(TYPED)('is taken with no more than it must have: $list, $kind', ({ list, draft }) => {
    const added = put(list, draft)
    expect(added.ok ? [] : added.problems).toEqual([])
    if (!added.ok) return
    const rows = rowsOf(added.shelf, list)
    expect(rows.slice(0, -1)).toEqual(rowsOf(DEMO_SHELF, list))
    expect(rows.at(-1)).toMatchObject({ id: 'typed-by-hand', label: HAND, place: EVERYWHERE })
  })

  it.each(TYPED)('asks for what is left out where it is typed: $list, $kind', ({ list, draft }) => {
    const paths = fieldsOf(list, draft).map(({ path }) => path.replace('[]', '[0]'))
    for (const left of Object.keys(draft)) {
      const { [left]: _left, ...rest } = draft
      const found = refusedPaths(list, rest)
      expect({ left, isRefused: found.length > 0 }).toEqual({ left, isRefused: true })
      // Without its kind, a row has no other fields to be asked for.
      if (left === 'kind' || left === 'family') continue
      expect(paths).toContain(left)
      expect({ left, asked: found.filter((path) => isAbout(path, left)) }).not.toEqual({
        left,
        asked: [],
      })
    }
  })

  it('keeps what a decimal comma and a point both mean, and refuses a number that is none as typed', () => {
    const tube: RowDraft = { ...COUNTED, kind: 'oxygen-tubing', lengthM: '2,1', boreMm: '4.8' }
    const added = put('tubes', tube)
    expect(added.ok ? added.shelf.tubes?.at(-1) : null).toMatchObject({ lengthM: 2.1, boreMm: 4.8 })
    const refused = put('tubes', { ...tube, lengthM: '2.1.0' })
    expect(refused.ok ? [] : refused.problems).toMatchObject([{ path: 'lengthM', value: '2.1.0' }])
  })
})

describe('what is said of the hospital itself', () => {
  const DRAFT: RowDraft = { hospital: 'Sallowmere Hospital', altitudeM: '12,5', isInvented: 'no' }

  it('is changed and nothing else is', () => {
    const edited = put('hospital', DRAFT)
    expect(edited.ok ? edited.shelf : null).toEqual({
      ...DEMO_SHELF,
      hospital: 'Sallowmere Hospital',
      altitudeM: 12.5,
      isInvented: false,
    })
  })

  it('is no longer said once it is emptied; the name must stand', () => {
    const edited = put('hospital', { ...DRAFT, altitudeM: '' })
    expect(edited.ok && 'altitudeM' in edited.shelf).toBe(false)
    expect(refusedPaths('hospital', { ...DRAFT, hospital: ' ' })).toEqual(['hospital'])
  })

  it('is refused with its place: no number, out of range', () => {
    expect(refusedPaths('hospital', { ...DRAFT, altitudeM: '12x' })).toEqual(['altitudeM'])
    expect(refusedPaths('hospital', { ...DRAFT, altitudeM: '99999' })).toEqual(['altitudeM'])
  })
})
