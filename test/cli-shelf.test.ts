// The verb `shelf`: a report row by row, spreadsheet to JSON and back, refused rows in a file of their own. Leaves out what may stand in a row, which test/shelf-csv.test.ts judges.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { afterAll, describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { cli } from './support/cli.ts'
import { ROOT } from './support/files.ts'

const folder = mkdtempSync(join(tmpdir(), 'oxwright-shelf-'))
afterAll(() => rmSync(folder, { recursive: true }))

function inFolder(name: string, text?: string): string {
  const path = join(folder, name)
  if (text !== undefined) writeFileSync(path, text)
  return path
}

function jsonIn(path: string): unknown {
  return JSON.parse(readFileSync(path, 'utf8'))
}

// Safe: compiling it shows that it is a schema.
const SCHEMA = JSON.parse(
  readFileSync(join(ROOT, 'schema/shelf-report.schema.json'), 'utf8'),
) as object
const isReport = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(
  SCHEMA,
)

const LAPWING = 'examples/shelves/lapwing.csv'
const COUNTED = 'examples/shelves/lapwing-counted.csv'

describe('oxwright shelf', () => {
  it('counts what a spreadsheet brings, and makes JSON of it that other verbs take', () => {
    const path = inFolder('shelf.json')
    const { code, out, err } = cli(['shelf', LAPWING, '--to-json', path])
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out).toContain('11 added, 0 changed, 0 as on the shelf, 0 refused')
    expect(jsonIn(path)).toMatchObject({ hospital: 'Sallowmere Hospital', altitudeM: 20 })
    const few = ['plan', 'examples/nasal-cannula.json', '--draws', '64', '--json', '--shelf']
    expect(cli([...few, path]).code).toBe(EXIT.ok)
    expect(cli([...few, LAPWING]).out).toBe(cli([...few, path]).out)
  })

  it('goes from JSON to a spreadsheet and back without a loss', () => {
    const json = inFolder('demo.json', JSON.stringify(DEMO_SHELF))
    const csv = inFolder('demo.csv')
    expect(cli(['shelf', json, '--to-csv', csv]).code).toBe(EXIT.ok)
    const back = inFolder('back.json')
    expect(cli(['shelf', csv, '--to-json', back]).code).toBe(EXIT.ok)
    expect(jsonIn(back)).toEqual(DEMO_SHELF)
  })

  it('puts a list of counts into a shelf and says what changes', () => {
    const path = inFolder('counted.json')
    const { code, out } = cli(['shelf', COUNTED, '--into', LAPWING, '--to-json', path])
    expect(code).toBe(EXIT.ok)
    expect(out).toContain('0 added, 2 changed, 0 as on the shelf, 0 refused')
    expect(out).toContain('tubes and hoses, tubing')
    expect(out).toContain('count: 20 → 17')
    expect(jsonIn(path)).toMatchObject({ tubes: [{ id: 'tubing', count: 17, lengthM: 2.1 }] })
  })

  it('names each refused row with its reason and writes nothing, unless refused rows are kept too', () => {
    const bad = inFolder('bad.csv', 'list,id,count\ntubes,tubing,"1,170"\nsources,wall-15,5\n')
    const target = inFolder('mended.json')
    const first = cli(['shelf', bad, '--into', LAPWING, '--to-json', target])
    expect(first.code).toBe(EXIT.badInput)
    expect(first.out).toContain('0 added, 1 changed, 0 as on the shelf, 1 refused')
    expect(first.out).toMatch(/row 2: tubes and hoses, tubing\n\s+- count: “1,170” could mean two/)
    expect(first.err).toContain('nothing was written')
    expect(() => readFileSync(target)).toThrow('ENOENT')
    const refused = inFolder('refused.csv')
    const words = ['shelf', bad, '--into', LAPWING, '--to-json', target, '--refused', refused]
    expect(cli(words).code).toBe(EXIT.badInput)
    expect(jsonIn(target)).toMatchObject({ tubes: [{ id: 'tubing', count: 20 }] })
    expect(readFileSync(refused, 'utf8')).toMatch(/reason,list,id,count\r\n.*tubes,tubing,"1,170"/)
  })

  it('reports JSON row by row too, and keeps the good rows', () => {
    const [tubing] = DEMO_SHELF.tubes ?? []
    const file = inFolder(
      'rows.json',
      JSON.stringify({
        version: 1,
        colour: 'green',
        tubes: [tubing, { ...tubing, id: 'x', boreMm: 'wide' }],
      }),
    )
    const demo = inFolder('demo.json', JSON.stringify(DEMO_SHELF))
    const { code, out } = cli(['shelf', file, '--into', demo])
    expect(code).toBe(EXIT.badInput)
    expect(out).toContain('0 added, 0 changed, 1 as on the shelf, 1 refused')
    expect(out).toContain('unknown field “colour”')
    expect(out).toMatch(/wide.* is not a number \(allowed: 1–40 mm\)/)
  })

  it('prints a report that fits its schema', () => {
    const bad = inFolder(
      'bad.csv',
      'list,id,count,cuont\ntubes,tubing,many,\nsources,wall-15,5,6\n',
    )
    for (const words of [[LAPWING], [COUNTED, '--into', LAPWING], [bad, '--into', LAPWING]]) {
      const answer: unknown = JSON.parse(cli(['shelf', ...words, '--json']).out)
      expect(isReport(answer), JSON.stringify(isReport.errors)).toBe(true)
    }
    expect(isReport({})).toBe(false)
  })

  it('says what is missing or cannot be read', () => {
    expect(cli(['shelf'])).toMatchObject({ code: EXIT.usage })
    expect(cli(['shelf']).err).toContain('shelf needs a shelf file')
    expect(cli(['shelf', 'no-such.csv']).err).toContain('ENOENT')
    const plan = ['plan', 'examples/nasal-cannula.json', '--shelf']
    const bad = inFolder('bad.csv', 'list,id,count\ntubes,tubing,many\n')
    expect(cli([...plan, bad])).toMatchObject({ code: EXIT.badInput })
    expect(cli([...plan, bad]).err).toContain('many')
  })
})
