// The published schema of the shelf file: it takes the demo shelf, names the same fields and bounds as the reader, and refuses by shape what the reader refuses.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { END_IDS, GAS_IDS } from '../src/kit/ends.ts'
import { FAMILY_IDS, SIZE_IDS } from '../src/kit/family-id.ts'
import { readShelf } from '../src/kit/read-shelf.ts'
import { FITTING_KINDS, OUTLET_KINDS, TUBE_KINDS } from '../src/kit/part-rows.ts'
import { AFTER_FAILURE, HUMIDIFIER_KINDS, MODE_KINDS, YES_NO_UNKNOWN } from '../src/kit/shelf.ts'
import { KEYS, METER_CLASSES, RULES, SOURCE_KINDS, UNITS_ON_SCALE } from '../src/kit/shelf-rules.ts'
import { FLOWMETER_KINDS } from '../src/physics/flowmeter.ts'
import { SOURCE_PURITY } from '../src/physics/source-purity.ts'
import { ROOT } from './support/files.ts'

interface ObjectSchema {
  readonly properties: Readonly<Record<string, { readonly enum?: readonly string[] }>>
  readonly required: readonly string[]
}
interface ShelfSchema extends ObjectSchema {
  readonly $defs: Readonly<Record<string, ObjectSchema & Record<string, unknown>>>
}

// Safe: the first test compiles it as a schema, the later ones read each part they name.
const SCHEMA = JSON.parse(
  readFileSync(join(ROOT, 'schema/shelf.schema.json'), 'utf8'),
) as ShelfSchema
const isValid = new Ajv2020({ allErrors: true, strict: true }).compile(SCHEMA)

/** The demo shelf as a file holds it. */
function demo(): Record<string, unknown> {
  // Safe: JSON of an object is an object.
  return JSON.parse(JSON.stringify(DEMO_SHELF)) as Record<string, unknown>
}

function keysOf(definition: string): readonly string[] {
  return Object.keys(SCHEMA.$defs[definition]?.properties ?? {}).toSorted()
}

function choicesOf(definition: string, key: string): readonly string[] {
  return (SCHEMA.$defs[definition]?.properties[key]?.enum ?? []).map(String)
}

describe('schema of a shelf file', () => {
  it('accepts the demo shelf', () => {
    expect(isValid(demo()), JSON.stringify(isValid.errors)).toBe(true)
  })

  it.each([
    ['ward', KEYS.ward],
    ['interface', KEYS.interface],
    ['size', KEYS.size],
    ['setting', KEYS.setting],
    ['humidifier', KEYS.humidifier],
    ['meter', KEYS.meter],
    ['flush', KEYS.flush],
    ['meteredSource', KEYS['wall-flowmeter']],
    ['nebuliser', KEYS['jet-nebuliser']],
    ['blendedSource', KEYS.blender],
    ['ventilatorSource', KEYS.ventilator],
    ['tubing', KEYS.tubing],
    ['outlet', KEYS.outlet],
    ['airMeter', KEYS.airMeter],
    ['tube', KEYS.tube],
    ['fitting', KEYS.fitting],
    ['failure', KEYS.failure],
    ['mode', KEYS.mode],
  ])('knows the same fields of %s as the reader', (definition, keys) => {
    expect(keysOf(definition)).toEqual([...keys].toSorted())
  })

  it('knows the same fields of the whole file as the reader', () => {
    expect(Object.keys(SCHEMA.properties).toSorted()).toEqual([...KEYS.shelf].toSorted())
  })

  it('knows the same choices as the reader', () => {
    expect(SCHEMA.$defs['family']?.['enum']).toEqual(FAMILY_IDS)
    expect(choicesOf('size', 'size')).toEqual(SIZE_IDS)
    expect(choicesOf('humidifier', 'kind')).toEqual(HUMIDIFIER_KINDS)
    expect(choicesOf('meter', 'kind')).toEqual(FLOWMETER_KINDS)
    expect(choicesOf('meter', 'meterClass')).toEqual(METER_CLASSES)
    expect(choicesOf('meteredSource', 'markedIn')).toEqual(UNITS_ON_SCALE)
    expect(choicesOf('meteredSource', 'purity')).toEqual(Object.keys(SOURCE_PURITY))
    const kinds = [...choicesOf('meteredSource', 'kind'), 'jet-nebuliser', 'blender', 'ventilator']
    expect(kinds).toEqual(SOURCE_KINDS)
    expect(SCHEMA.$defs['end']?.['enum']).toEqual(END_IDS)
    expect(SCHEMA.$defs['gas']?.['enum']).toEqual(GAS_IDS)
    expect(SCHEMA.$defs['yesNoUnknown']?.['enum']).toEqual(YES_NO_UNKNOWN)
    expect(SCHEMA.$defs['afterFailure']?.['enum']).toEqual(AFTER_FAILURE)
    expect(choicesOf('mode', 'kind')).toEqual(MODE_KINDS)
    expect(choicesOf('outlet', 'kind')).toEqual(OUTLET_KINDS)
    expect(choicesOf('tube', 'kind')).toEqual(TUBE_KINDS)
    expect(choicesOf('fitting', 'kind')).toEqual(FITTING_KINDS)
  })

  it('draws the same bounds as the reader', () => {
    const bounds = { minimum: RULES.altitudeM.min, maximum: RULES.altitudeM.max }
    expect(SCHEMA.properties['altitudeM']).toMatchObject(bounds)
    expect(SCHEMA.$defs['steps']?.['items']).toMatchObject({
      minimum: RULES.stepLpm.min,
      maximum: RULES.stepLpm.max,
    })
    expect(SCHEMA.$defs['fractions']?.['items']).toMatchObject({
      minimum: RULES.o2Fraction.min,
      maximum: RULES.o2Fraction.max,
    })
    expect(SCHEMA.$defs['valveFraction']).toMatchObject({
      minimum: RULES.valveFraction.min,
      maximum: RULES.valveFraction.max,
    })
    expect(SCHEMA.$defs['flush']?.properties['lowLpm']).toMatchObject({
      minimum: RULES.flushLpm.min,
      maximum: RULES.flushLpm.max,
    })
    expect(SCHEMA.$defs['size']?.properties['ratedMaxLpm']).toMatchObject({
      minimum: RULES.ratedLpm.min,
      maximum: RULES.ratedLpm.max,
    })
    for (const [definition, key, rule] of [
      ['tube', 'lengthM', RULES.lengthM],
      ['tube', 'boreMm', RULES.boreMm],
      ['humidifier', 'reliefKpa', RULES.pressureKpa],
      ['humidifier', 'waterMl', RULES.waterMl],
      ['humidifier', 'outputMgPerL', RULES.outputMgPerL],
      ['humidifier', 'tidalMaxMl', RULES.tidalMl],
      ['blendedSource', 'pushesKpaMax', RULES.pressureKpa],
    ] as const)
      expect(SCHEMA.$defs[definition]?.properties[key]).toMatchObject({
        minimum: rule.min,
        maximum: rule.max,
      })
  })

  it.each([
    ['version', 2],
    ['hospital', ''],
    ['altitudeM', 9000],
    ['wards', {}],
    ['interfaces', [{ id: 'a', label: 'a', place: 'everywhere', family: 'tent', sizes: [] }]],
    ['sources', [{ id: 'a', label: 'a', place: 'everywhere', kind: 'bottle', count: 1 }]],
    ['humidifiers', [{ id: 'a', label: 'a', place: 'everywhere', kind: 'bubble', count: -1 }]],
    ['outlets', [{ id: 'a', label: 'a', place: 'everywhere', kind: 'wall-outlet', count: 1 }]],
    ['tubes', [{ id: 'a', label: 'a', place: 'everywhere', kind: 'hose', count: 1 }]],
    ['fittings', [{ id: 'a', label: 'a', place: 'everywhere', kind: 'adapter', count: 1 }]],
    ['airMeters', [{ id: 'a', label: 'a', place: 'everywhere', count: 1 }]],
    ['colour', 'green'],
  ])('refuses a file with a bad %s, as the reader does', (key, value) => {
    const file = { ...demo(), [key]: value }
    expect(isValid(file)).toBe(false)
    expect(readShelf(file).ok).toBe(false)
  })
})
