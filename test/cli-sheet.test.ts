// `oxwright sheet` as people run it: text, JSON by its schema, PDF, refusals, validity, the address in the code. Leaves out what must stand on a sheet.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { readFragment } from '../src/sheet/fragment.ts'
import { buildCli, cli, cliProcess } from './support/cli.ts'
import { EXAMPLE_FILES } from './support/examples.ts'
import { ROOT } from './support/files.ts'
import { readPdf, textOfPdf } from './support/pdf-text.ts'

const folder = mkdtempSync(join(tmpdir(), 'oxwright-sheet-'))
const FEW = ['--draws', '64']
const AT = ['--made-at', '2026-11-25T13:05']
const CASE = 'examples/simple-mask.json'
const MASK = ['--set-up', 'simple-mask/adult@wall-15#6']

beforeAll(buildCli)
afterAll(() => rmSync(folder, { recursive: true }))

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
})
for (const name of ['case', 'plan', 'sheet']) {
  const text = readFileSync(join(ROOT, 'schema', `${name}.schema.json`), 'utf8')
  ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
}

function faults(value: unknown): readonly string[] {
  const validate = ajv.getSchema('https://oxwright.invalid/schema/sheet.schema.json')
  if (validate === undefined) throw new Error('no schema of sheets')
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

interface SheetAnswer {
  readonly fragment: string
  readonly address: string | null
  readonly sheet: { readonly setUpId: string; readonly validity: { readonly until: string } }
  readonly page: { readonly counts: boolean }
}

function jsonOf(words: readonly string[]): SheetAnswer {
  const { out, err, code } = cli(['sheet', ...words, '--json', ...FEW, ...AT])
  expect({ err, code }).toEqual({ err: '', code: EXIT.ok })
  return JSON.parse(out) as SheetAnswer // Safe: the schema is checked.
}

describe('oxwright sheet', () => {
  it('says settings, fraction, steps, calls and validity in lines of a terminal', () => {
    const { code, out, err } = cli(['sheet', CASE, ...MASK, ...FEW, ...AT])
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out).toMatch(/^! In an emergency give oxygen first/)
    expect(out).toContain('Valid until 14:05 on 2026-11-25')
    expect(out).toContain('Flow: 6 L/min')
    expect(out).toMatch(
      /Inspired oxygen fraction: about 0\.\d+, 0\.\d+–0\.\d+ for 8 of 10 patients/,
    )
    expect(out).toContain('Never below 5 L/min: expired gas would be breathed again.')
    for (const line of out.split('\n').filter((one) => !one.startsWith('address'))) {
      expect(line.length).toBeLessThanOrEqual(100)
    }
  })

  it.each(EXAMPLE_FILES)('makes a sheet of the first set-up of %s that fits its schema', (file) => {
    const answer = jsonOf([`examples/${file}`, '--ward', wardOf(file)])
    expect(faults(answer)).toEqual([])
    const read = readFragment(answer.fragment)
    expect(read.ok && read.request.setUpId).toBe(answer.sheet.setUpId)
  })

  it('has a schema that refuses what does not fit', () => {
    const answer = jsonOf([CASE, ...MASK])
    expect(faults({ ...answer, more: 1 })).not.toEqual([])
    expect(faults({ ...answer, sheet: {} })).not.toEqual([])
  })

  it('does not print as valid what rests on readings of long ago', () => {
    const old = ['--readings-at', '2026-11-25T09:00']
    const { out } = cli(['sheet', CASE, ...MASK, ...old, ...FEW, ...AT])
    expect(out).toContain('NOT VALID since 10:00 on 2026-11-25')
    expect(out).not.toContain('Valid until')
    expect(jsonOf([CASE, ...MASK, ...old]).page.counts).toBe(false)
  })

  it('puts the case and its bed into the address, and no code of a patient', () => {
    const { address } = jsonOf([CASE, ...MASK, '--base-url', 'https://oxwright.example/'])
    expect(address).toMatch(/^https:\/\/oxwright\.example\/sheet#1;s=simple-mask/)
    expect(decodeURIComponent(address ?? '')).toContain('Heron 9')
    expect(address).not.toMatch(/H-\d{4}/)
    expect(jsonOf([CASE, ...MASK]).address).toBeNull()
  })

  it('writes one page of PDF on the paper asked for, by the bundle as it is installed', () => {
    const path = join(folder, 'sheet.pdf')
    const words = ['sheet', CASE, ...MASK, '--pdf', path, '--paper', 'letter', ...FEW, ...AT]
    const { code, err, out } = cliProcess(words)
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out).toContain(`sheet written to ${path}`)
    const pdf = readPdf(readFileSync(path))
    expect(pdf).toMatchObject({ pages: 1, widthPt: 612, heightPt: 792 })
    expect(textOfPdf(pdf)).toContain('Heron 9')
  })

  it('has the steps of the humidifier asked for, in its address too', () => {
    const { code, out } = cli(['sheet', CASE, ...MASK, '--humidifier', 'bubble', ...FEW, ...AT])
    expect(code).toBe(EXIT.ok)
    expect(out).toMatch(/Humidifier: Bubble humidifier[^]*Bubble bottle: sterile water/)
    const { fragment } = jsonOf([CASE, ...MASK, '--humidifier', 'bubble'])
    const read = readFragment(fragment)
    expect(read.ok && read.request.humidification).toBe('bubble')
  })

  it('tells when the cylinder at the bed is changed', () => {
    const set = ['--set-up', 'simple-mask/adult@cylinder-flush#6']
    const full = ['--water', '4.7', '--gauge', '137bar', '--left', '20bar']
    const { out } = cli(['sheet', CASE, ...set, ...full, ...FEW, ...AT])
    expect(out).toMatch(/Cylinder: change at 1\d:\d\d on 2026-11-25 or at 20 bar/)
    const { out: without } = cli(['sheet', CASE, ...set, ...FEW, ...AT])
    expect(without).toContain('time to change not worked out')
  })

  it.each([
    [[...MASK, '--paper', 'a5'], EXIT.usage, 'allowed: a4, letter'],
    [[...MASK, '--made-at', '25.11.2026'], EXIT.badInput, '25.11.2026'],
    [[...MASK, '--water', '2'], EXIT.usage, '--gauge'],
    [['--set-up', 'simple-mask/adult@wall-15#66'], EXIT.badInput, 'did you mean'],
    [['--set-up', 'tracheostomy-mask/adult@nebuliser#10:0.35'], EXIT.nothingReaches, 'No sheet'],
    [[...MASK, '--humidifier', 'bubbel'], EXIT.usage, 'bubble'],
    [[...MASK, '--humidifier', 'collar'], EXIT.nothingReaches, 'humidification collar'],
  ])('refuses %j with a code and the reason', (words, code, said) => {
    const made = words.includes('--made-at') ? [] : AT
    const result = cli(['sheet', CASE, ...words, ...FEW, ...made])
    expect(result.code).toBe(code)
    expect(result.err).toContain(said)
    expect(result.out).toBe('')
  })
})

/** Plans are quicker on what one ward has. */
function wardOf(file: string): string {
  const text = readFileSync(join(ROOT, 'examples', file), 'utf8')
  return (/(Heron|Plover|Wren)/.exec(text)?.[1] ?? 'heron').toLowerCase()
}
