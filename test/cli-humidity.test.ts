// `oxwright humidity` as people run it: lines, JSON by its schema, refusals. Leaves out whether the water is right.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { candidateSetUps } from '../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { cli } from './support/cli.ts'
import { ROOT } from './support/files.ts'

const CASE = 'examples/tracheostomy-mask.json'

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
})
for (const name of ['case', 'plan', 'humidity']) {
  const text = readFileSync(join(ROOT, 'schema', `${name}.schema.json`), 'utf8')
  ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
}

function faults(value: unknown): readonly string[] {
  const validate = ajv.getSchema('https://oxwright.invalid/schema/humidity.schema.json')
  if (validate === undefined) throw new Error('no schema of humidity')
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

/** Every third of one set-up of each interface and kind of source. */
function setUpIds(): readonly string[] {
  const kinds = new Map(
    candidateSetUps(DEMO_SHELF)
      .filter(({ setUp }) => setUp.flow.kind === 'scale')
      .map(({ id, setUp }) => [`${setUp.family} ${setUp.source.kind}`, id]),
  )
  return [...kinds.values()].filter((_, i) => i % 3 === 0)
}

describe('oxwright humidity', () => {
  it('tells water, requirement, what to do and what it rests on', () => {
    const { code, out, err } = cli(['humidity', CASE])
    expect(err).toBe('')
    expect(code).toBe(EXIT.ok)
    expect(out).toContain('of 33 mg/L required')
    expect(out).toContain('sterile water only')
    expect(out).toContain('what these numbers rest on')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('fits its schema for set-ups of many interfaces and kinds of source', () => {
    const ids = setUpIds()
    expect(ids.length).toBeGreaterThanOrEqual(9)
    for (const id of ids) {
      const { out, err } = cli(['humidity', CASE, '--set-up', id, '--json'])
      expect(err, id).toBe('')
      expect(faults(JSON.parse(out)), id).toEqual([])
    }
    expect(faults({})).not.toEqual([])
  })

  it('narrows the answer by what is typed, and refuses the reading of a heater plate', () => {
    const words = ['humidity', CASE, '--set-up', 't-piece/adult@ventilator#20:0.4']
    const { out } = cli([...words, '--heater', '37', '--room-temperature', '22'])
    expect(out).not.toContain('heater setting not given')
    const refused = cli([...words, '--heater', '53'])
    expect(refused.code).toBe(EXIT.badInput)
    expect(refused.err).toContain('not of its plate')
    expect(cli([...words, '--heater', 'warm']).code).toBe(EXIT.usage)
  })

  it('takes the place of the shelf where the case names none, as the chain does, and says so', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-humidity-'))
    try {
      const placeless = join(folder, 'case.json')
      const { site: _, ...rest } = JSON.parse(readFileSync(join(ROOT, CASE), 'utf8')) as {
        readonly site: object
      }
      writeFileSync(placeless, JSON.stringify(rest))
      const setUp = ['--set-up', 't-piece/adult@ventilator#20:0.4']
      for (const verb of ['humidity', 'chain']) {
        const here = cli([verb, placeless, ...setUp]).out.replaceAll(/\s+/g, ' ')
        const said = 'the case gives no place: 1180 m assumed, where the shelf stands'
        expect(here, verb).toContain(said)
        const named = cli([verb, CASE, ...setUp]).out.replaceAll(/\s+/g, ' ')
        expect(named, verb).not.toContain('gives no place')
        // The demo shelf stands where the case lies: the numbers are the same.
        expect(here.replace(` - ${said} (common practice)`, ''), verb).toBe(named)
      }
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
