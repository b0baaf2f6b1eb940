// The gas verbs of the command line: answers, refusals, JSON against its schema. Leaves out whether the numbers are right, which src/supply tests.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { cli } from './support/cli.ts'
import { ROOT } from './support/files.ts'

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  allowUnionTypes: true,
  strictRequired: false,
})

function faults(schema: string, value: unknown): readonly string[] {
  const id = `https://oxwright.invalid/schema/${schema}.schema.json`
  if (ajv.getSchema(id) === undefined) {
    const text = readFileSync(join(ROOT, 'schema', `${schema}.schema.json`), 'utf8')
    ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
  }
  const validate = ajv.getSchema(id)
  if (validate === undefined) throw new Error(`no schema ${schema}`)
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

const PLAIN = ['cylinder', '--water', '4.68', '--gauge', '2000psi', '--flow', '2', '--now', '13:50']

describe('oxwright cylinder', () => {
  it('gives clock times first, then what they rest on', () => {
    const { code, out, err } = cli(PLAIN)
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out.split('\n')[0]).toMatch(/^Change at \d\d:\d\d \(in 5 h \d+ min\)/)
    expect(out).toContain('what these numbers rest on')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('gives the same times in bar, psi and kPa, litres and cubic feet', () => {
    const first = (words: readonly string[]): string => cli(words).out.split('\n')[0] ?? ''
    const inBar = PLAIN.with(4, '137.89514586336722bar')
    expect(first(inBar)).toBe(first(PLAIN))
    expect(first([...PLAIN, '--units', 'psi', '--volume', 'ft3'])).toBe(first(PLAIN))
    expect(cli([...PLAIN, '--units', 'psi', '--volume', 'ft3']).out).toMatch(/[\d.]+ ft³ in it/)
  })

  it('says of a closed valve that it gives nothing', () => {
    const { out } = cli([...PLAIN, '--closed'])
    expect(out).toContain('Change at 13:50 (in 0 min)')
    expect(out).toContain('The valve is closed')
  })

  it('draws what the set-up on now of a case draws', () => {
    const words = ['cylinder', '--water', '2', '--gauge', '137bar', '--now', '10:00']
    const { out } = cli([...words, '--case', 'examples/simple-mask.json'])
    expect(out).toMatch(/Drawn: about [\d.]+ L\/min of oxygen, [\d.]+ L\/min to [\d.]+ L\/min/)
  })

  it.each([
    [['cylinder'], 'cylinder needs --water'],
    [PLAIN.slice(0, 5), 'give --flow or --case'],
    [PLAIN.with(4, '2000'), 'no number with its unit'],
    [PLAIN.with(4, '2.000,5psi'), 'no number with its unit'],
    [PLAIN.with(6, '2,5'), 'is no number'],
    [PLAIN.with(8, '25:10'), 'no time of day'],
  ])('refuses wrong use: %j', (words, text) => {
    const { code, err } = cli(words)
    expect(code).toBe(EXIT.usage)
    expect(err).toContain(text)
  })

  it.each([PLAIN.with(4, '500bar'), PLAIN.with(2, '1500'), PLAIN.with(6, '1000')])(
    'refuses a number outside what there is',
    (...words) => {
      expect(cli(words.flat()).code).toBe(EXIT.badInput)
    },
  )

  it('prints JSON that fits its schema, closed or open, with a case or a flow', () => {
    for (const more of [[], ['--closed'], ['--used-at=-10'], ['--read-at', '40']]) {
      const answer: unknown = JSON.parse(cli([...PLAIN, ...more, '--json']).out)
      expect(faults('cylinder', answer)).toEqual([])
    }
    const words = ['cylinder', '--water', '2', '--gauge', '137bar', '--now', '10:00', '--json']
    for (const file of ['simple-mask', 'on-air']) {
      const { out } = cli([...words, '--case', `examples/${file}.json`])
      expect(faults('cylinder', JSON.parse(out))).toEqual([])
    }
    expect(faults('cylinder', { format: 'oxwright-cylinder-1' })).not.toEqual([])
  })
})
