// `oxwright chain` as people run it: parts in order, what to borrow, refusals with their mend, JSON by its schema. Leaves out whether chains are right (joining-cases.test.ts).
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { beforeAll, describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { CHAIN_FAULTS } from '../src/joining/refusal.ts'
import { NEED_RULES, ORDER_RULES } from '../src/joining/order-rules.ts'
import { END_IDS } from '../src/kit/ends.ts'
import { MATING_RULES } from '../src/joining/mating-rules.ts'
import { CHAIN_REMARKS } from '../src/joining/remarks.ts'
import { END_NAMES } from '../src/words/joining-names.ts'
import { MEND_TEXTS, REFUSAL_TEXTS } from '../src/words/joining-refusals.ts'
import { CHAIN_REMARK_TEXTS } from '../src/words/joining-text.ts'
import { buildCli, cli } from './support/cli.ts'
import { ROOT } from './support/files.ts'

const CASE = 'examples/simple-mask.json'
const MASK = ['--set-up', 'simple-mask/adult@wall-15#6']

beforeAll(buildCli)

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
})
for (const name of ['case', 'plan', 'humidity', 'chain']) {
  const text = readFileSync(join(ROOT, 'schema', `${name}.schema.json`), 'utf8')
  ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
}

function faults(value: unknown): readonly string[] {
  const validate = ajv.getSchema('https://oxwright.invalid/schema/chain.schema.json')
  if (validate === undefined) throw new Error('no schema of chains')
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

interface WaterTold {
  readonly water: { readonly lines: readonly string[] } | null
}

/** With plain spaces for those that do not break. */
const plain = (text: string): string => text.replaceAll(/\s+/g, ' ')

describe('oxwright chain', () => {
  it('names the parts from the outlet to the patient, each with its join', () => {
    const { code, out, err } = cli(['chain', CASE, ...MASK, '--ward', 'heron'])
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    const order = [
      '1. Oxygen outlet',
      '2. Flowmeter 1–15 L/min, 6 L/min',
      '3. Tubing nipple',
      '4. Oxygen tubing 2.1 m',
      '5. Simple mask',
      '6. Patient: face',
    ]
    const places = order.map((part) => out.indexOf(part))
    expect(places.every((place, i) => place > (places[i - 1] ?? -1))).toBe(true)
    expect(out).toContain('latched: oxygen wall outlet to oxygen probe')
    expect(out).toContain('Ways out for surplus and expired gas\n  - Simple mask')
  })

  it('says of a ventilator that it gives no breaths and what it needs', () => {
    const { code, out } = cli([
      'chain',
      CASE,
      '--ward',
      'plover',
      '--set-up',
      'aerosol-mask/adult@ventilator#40:0.4',
    ])
    expect(code).toBe(EXIT.ok)
    expect(out).toContain('it gives no breaths')
    expect(out).toContain('no apnoea or disconnection alarm may be counted on')
    expect(out).toContain('needs mains')
    expect(out).toContain('needs oxygen and air at the wall')
    expect(out).toContain('if oxygen fails, Ventilator (constant flow) gives: unknown')
  })

  it.each([
    [[...MASK, '--ward', 'heron'], EXIT.ok, 'chains'],
    [['--set-up', 'tracheostomy-mask/adult@nebuliser#10:0.4'], EXIT.nothingReaches, 'refused'],
    [['--draws', '64'], EXIT.ok, 'chains'],
  ])('writes JSON by its schema: %s', (words, exit, kind) => {
    const { code, out, err } = cli(['chain', CASE, ...words, '--json'])
    expect({ code, err }).toEqual({ code: exit, err: '' })
    const answer = JSON.parse(out) as { readonly answer: { readonly kind: string } } // Safe: the schema is checked next.
    expect(faults(answer)).toEqual([])
    expect(answer.answer.kind).toBe(kind)
  })

  it('tells the water of the chain as the verb humidity does, from bottle to shortfall', () => {
    const words = [
      'examples/tracheostomy-mask.json',
      '--ward',
      'plover',
      '--set-up',
      'tracheostomy-mask/adult@nebuliser#10:0.4',
      '--room-temperature',
      '22',
    ]
    const text = cli(['chain', ...words])
    expect({ code: text.code, err: text.err }).toEqual({ code: EXIT.ok, err: '' })
    const block = text.out.slice(text.out.indexOf('Water at the airway'))
    expect(plain(block)).toMatch(/of 33 mg\/L required/)
    expect(plain(block)).toMatch(/a full bottle lasts about/)
    expect(plain(block)).toMatch(/condensate about \d+ mL\/h/)
    const told = JSON.parse(cli(['chain', ...words, '--json']).out) as WaterTold // Safe: the schema is checked next.
    expect(faults(told)).toEqual([])
    const alone = JSON.parse(cli(['humidity', ...words, '--json']).out) as WaterTold['water']
    expect(told.water?.lines).toEqual(alone?.lines)
  })

  it('refuses with the reason and what mends it', () => {
    const { code, out } = cli([
      'chain',
      CASE,
      '--set-up',
      'tracheostomy-mask/adult@nebuliser#10:0.4',
    ])
    expect(code).toBe(EXIT.nothingReaches)
    expect(out).toContain('gas at this place does not reach the lungs: opening at the neck')
    expect(out).toContain('Mend: give oxygen where the patient breathes')
  })

  it('refuses a set-up that the shelf has not', () => {
    expect(cli(['chain', CASE, '--set-up', 'simple-mask/adult@wall-15#7']).code).toBe(EXIT.badInput)
  })
})

describe('words of joining', () => {
  it('hold a text and a mend for every refusal', () => {
    const codes = [
      ...CHAIN_FAULTS,
      ...ORDER_RULES.map(({ code }) => code),
      ...NEED_RULES.map(({ code }) => code),
    ].toSorted()
    expect(Object.keys(REFUSAL_TEXTS).toSorted()).toEqual(codes)
    expect(Object.keys(MEND_TEXTS).toSorted()).toEqual(codes)
  })

  it('hold a text for every remark on a chain and a name for every end', () => {
    expect(Object.keys(CHAIN_REMARK_TEXTS).toSorted()).toEqual([...CHAIN_REMARKS].toSorted())
    expect(Object.keys(END_NAMES).toSorted()).toEqual([...END_IDS].toSorted())
  })

  it('let no line of the body mate with gas', () => {
    const ends = MATING_RULES.flatMap(({ male, female }) => [male, female])
    expect(ends.filter((end) => /luer|needle|enteral|neuraxial|cuff/.test(end))).toEqual([])
  })
})
