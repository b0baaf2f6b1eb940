// Ward and transfer files: the shipped examples read as the demo wards, the published schemas know the same fields and bounds, and every problem is found at once. Leaves out what is computed from them.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { DEMO_WARDS, DEMO_WARD_IDS } from '../src/supply/demo-wards/demo-wards.ts'
import { readStock } from '../src/supply/read-stock.ts'
import { readTransfer } from '../src/supply/read-transfer.ts'
import { readWard } from '../src/supply/read-ward.ts'
import { SUPPLY_KEYS, SUPPLY_NUMBERS } from '../src/supply/supply-fields.ts'
import { ROOT } from './support/files.ts'

interface ObjectSchema {
  readonly properties: Readonly<Record<string, object>>
}
interface FileSchema extends ObjectSchema {
  readonly $id: string
  readonly $defs: Readonly<Record<string, ObjectSchema>>
}

function schemaOf(name: string): FileSchema {
  // Safe: compiling it shows that it is a schema; each part is named where it is read.
  return JSON.parse(readFileSync(join(ROOT, 'schema', `${name}.schema.json`), 'utf8')) as FileSchema
}

const SCHEMAS = { ward: schemaOf('ward'), transfer: schemaOf('transfer'), stock: schemaOf('stock') }
const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  allowUnionTypes: true,
  strictRequired: false,
})
ajv.addSchema(schemaOf('case'))
const isValid = {
  ward: ajv.compile(SCHEMAS.ward),
  transfer: ajv.compile(SCHEMAS.transfer),
  stock: ajv.compile(SCHEMAS.stock),
}

function example(path: string): Record<string, unknown> {
  // Safe: the examples hold named fields, which the readers check.
  return parse(readFileSync(join(ROOT, 'examples', path), 'utf8')) as Record<string, unknown>
}

const TRANSFERS = readdirSync(join(ROOT, 'examples/transfers'))
const codesOf = (input: unknown): readonly string[] => {
  const read = readWard(input)
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`)
}

describe('ward files', () => {
  it.each(DEMO_WARD_IDS)(
    'examples/wards/%s.yaml is the demo ward, and says that it is invented',
    (id) => {
      const file = example(`wards/${id}.yaml`)
      expect(isValid.ward(file), JSON.stringify(isValid.ward.errors)).toBe(true)
      expect(readWard(file)).toEqual({ ok: true, ward: DEMO_WARDS[id] })
      expect(DEMO_WARDS[id]).toMatchObject({ isInvented: true, note: 'invented', altitudeM: 1180 })
    },
  )

  it('hold 18, 6 and 10 beds', () => {
    expect(DEMO_WARD_IDS.map((id) => DEMO_WARDS[id].beds.length)).toEqual([18, 6, 10])
  })

  it('are refused with every problem at once, and what may have been meant', () => {
    const file = {
      version: 2,
      hospital: 'Fell',
      ward: '',
      supply: {
        area: 'wrad',
        manifold: { waterVolumeL: 50, gaugeBar: 130, gaugePsi: 1900, count: 2.5 },
      },
      beds: [
        { bed: '1', setup: null },
        { bed: '1', isEmpty: true, setUp: null },
        {
          bed: '2',
          setUp: { family: 'nasal-cannula', sourceKind: 'wall-flowmeter', pulseSetting: 3 },
        },
        { bed: '3', cylinders: [{ waterVolumeL: 2, gaugeBar: 2000 }] },
      ],
    }
    const read = readWard(file)
    expect(codesOf(file)).toEqual(
      expect.arrayContaining([
        'UNKNOWN_CHOICE version',
        'NOT_TEXT ward',
        'UNKNOWN_CHOICE supply.area',
        'CONTRADICTION supply.manifold.gaugePsi',
        'MISSING_FIELD supply.manifold.leftBar',
        'COUNT_OUT_OF_RANGE supply.manifold.count',
        'UNKNOWN_FIELD beds[0].setup',
        'CONTRADICTION beds[1].isEmpty',
        'DUPLICATE_ID beds[1].bed',
        'PULSE_SETTING_REFUSED beds[2].setUp.pulseSetting',
        'PRESSURE_OUT_OF_RANGE beds[3].cylinders[0].gaugeBar',
        'MISSING_FIELD beds[3].cylinders[0].isValveOpen',
      ]),
    )
    const problems = read.ok ? [] : read.problems
    expect(problems.find(({ path }) => path === 'supply.area')?.suggestion).toBe('ward')
    expect(problems.find(({ path }) => path === 'beds[0].setup')?.suggestion).toBe('setUp')
  })

  it.each([null, [], 'ward', 3])('that are %j are no ward', (input) => {
    expect(codesOf(input)).toEqual(['NOT_AN_OBJECT '])
  })
})

describe('transfer files', () => {
  it('are shipped, read, and fit their schema', () => {
    expect(TRANSFERS.length).toBeGreaterThanOrEqual(3)
    for (const name of TRANSFERS) {
      const file = example(`transfers/${name}`)
      expect(isValid.transfer(file), `${name} ${JSON.stringify(isValid.transfer.errors)}`).toBe(
        true,
      )
      expect(readTransfer(file)).toMatchObject({ ok: true, transfer: { isInvented: true } })
    }
  })

  it('are refused with every problem at once', () => {
    const file = {
      ...example(`transfers/${TRANSFERS[0]}`),
      legs: [{ kind: 'lfit', minutes: -1 }],
      store: [{ id: 'a', label: 'a', place: 'x', waterVolumeL: 2, gaugeBar: 137, count: 1 }],
      scanner: { regulator: 'conditional' },
      reserve: { factor: 0.5 },
    }
    const read = readTransfer(file)
    const codes = read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`)
    expect(codes).toEqual(
      expect.arrayContaining([
        'UNKNOWN_CHOICE legs[0].kind',
        'DURATION_OUT_OF_RANGE legs[0].minutes',
        'MISSING_FIELD store[0].mrSafety',
        'MISSING_FIELD scanner.flowmeter',
        'VALUE_OUT_OF_RANGE reserve.factor',
      ]),
    )
  })

  it('say the same in bar, psi and kPa', () => {
    const file = example(`transfers/${TRANSFERS[0]}`)
    const { leftBar: _, ...rest } = file
    const read = (pressure: object) => readTransfer({ ...rest, ...pressure })
    expect(read({ leftBar: 20 })).toEqual(read({ leftKpa: 2000 }))
    const inPsi = read({ leftPsi: 200 })
    expect(inPsi.ok ? inPsi.transfer.question.leftGaugeKpa : 0).toBeCloseTo(1378.951, 3)
  })
})

describe('stock files', () => {
  it('are shipped, read, and fit their schema', () => {
    const file = example('stocks/heron.yaml')
    expect(isValid.stock(file), JSON.stringify(isValid.stock.errors)).toBe(true)
    const read = readStock(file)
    expect(read).toMatchObject({ ok: true, stock: { isInvented: true } })
    // As typed: nothing is converted.
    expect(read.ok ? read.stock.items : []).toEqual(file['items'])
  })

  it('are refused with every problem at once, one day of use or one whole number amiss', () => {
    const item = { id: 'a', label: 'A', onHand: 3, usedEachDay: [1], leadTimeDays: 7 }
    const read = readStock({
      version: 1,
      items: [
        { ...item, onHand: -1, leadTime: 3 },
        { ...item, label: '', usedEachDay: [] },
        { ...item, id: 'b', usedEachDay: [1, 2.5, 'x', null] },
        { ...item, id: 'c', serviceLevel: 95 },
        item,
        item,
      ],
    })
    const codes = read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`)
    expect(codes).toEqual(
      expect.arrayContaining([
        'COUNT_OUT_OF_RANGE items[0].onHand',
        'UNKNOWN_FIELD items[0].leadTime',
        'NOT_TEXT items[1].label',
        'COUNT_OUT_OF_RANGE items[1].usedEachDay',
        'COUNT_OUT_OF_RANGE items[2].usedEachDay.1',
        'NOT_A_NUMBER items[2].usedEachDay.2',
        'NOT_A_NUMBER items[2].usedEachDay.3',
        'PROBABILITY_OUT_OF_RANGE items[3].serviceLevel',
        'DUPLICATE_ID items[5].id',
      ]),
    )
  })
})

describe('published schemas', () => {
  const KEYS_OF = {
    ward: ['supply', 'manifold', 'bulk', 'bed', 'beside', 'bedCylinder'],
    transfer: ['leg', 'reserve', 'storeRow', 'scanner', 'beside'],
    stock: ['stockItem'],
  } as const

  it('know the same fields as the readers', () => {
    for (const name of ['ward', 'transfer', 'stock'] as const) {
      const schema = SCHEMAS[name]
      expect(Object.keys(schema.properties).toSorted()).toEqual([...SUPPLY_KEYS[name]].toSorted())
      for (const part of KEYS_OF[name])
        expect({
          part,
          keys: Object.keys(schema.$defs[part]?.properties ?? {}).toSorted(),
        }).toEqual({
          part,
          keys: [...SUPPLY_KEYS[part]].toSorted(),
        })
    }
  })

  it('draw the same bounds as the readers', () => {
    const bounds = (rule: { readonly min: number; readonly max: number }) => ({
      minimum: rule.min,
      maximum: rule.max,
    })
    const { $defs } = SCHEMAS.ward
    const { gaugeBar, gaugePsi, gaugeKpa, waterVolumeL } = SUPPLY_NUMBERS
    expect($defs['bedCylinder']?.properties).toMatchObject({
      gaugeBar: bounds(gaugeBar),
      gaugePsi: bounds(gaugePsi),
      gaugeKpa: bounds(gaugeKpa),
      waterVolumeL: bounds(waterVolumeL),
    })
    expect(SCHEMAS.stock.$defs['stockItem']?.properties).toMatchObject({
      onHand: bounds(SUPPLY_NUMBERS.stockCount),
      leadTimeDays: bounds(SUPPLY_NUMBERS.leadTimeDays),
      serviceLevel: bounds(SUPPLY_NUMBERS.serviceLevel),
    })
    expect(SCHEMAS.transfer.$defs['leg']?.properties['minutes']).toMatchObject(
      bounds(SUPPLY_NUMBERS.minutes),
    )
    expect(SCHEMAS.transfer.$defs['scanner']?.properties['tubeLengthM']).toMatchObject(
      bounds(SUPPLY_NUMBERS.tubeLengthM),
    )
  })
})
