// What --json prints, against the published schemas, for every example. Leaves out whether the numbers are right.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { cli } from './support/cli.ts'
import { EXAMPLE_FILES } from './support/examples.ts'
import { ROOT } from './support/files.ts'

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
})
for (const name of ['case', 'plan', 'breath', 'evidence']) {
  const text = readFileSync(join(ROOT, 'schema', `${name}.schema.json`), 'utf8')
  ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
}

function faults(schema: string, value: unknown): readonly string[] {
  const validate = ajv.getSchema(`https://oxwright.invalid/schema/${schema}.schema.json`)
  if (validate === undefined) throw new Error(`no schema ${schema}`)
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

function jsonOf(words: readonly string[]): Record<string, unknown> {
  const { out, err } = cli([...words, '--json'])
  expect(err).toBe('')
  return JSON.parse(out) as Record<string, unknown> // Safe: the schema is checked next.
}

interface PlanAnswer {
  readonly plan: {
    readonly ranked: readonly {
      readonly isChecked: boolean
      readonly besideNumbers: readonly string[]
    }[]
    readonly reading: { readonly isUsed: boolean }
  }
}

const FEW = ['--draws', '64']

describe('JSON of the command line', () => {
  it.each(EXAMPLE_FILES)('plan %s fits its schema and says what must stand beside', (file) => {
    const answer = jsonOf(['plan', `examples/${file}`, ...FEW])
    expect(faults('plan', answer)).toEqual([])
    const { plan } = answer as unknown as PlanAnswer // Safe: the schema holds.
    for (const one of plan.ranked) {
      expect(one.besideNumbers.includes('not checked against measurements')).toBe(!one.isChecked)
      expect(one.besideNumbers.some((text) => text.endsWith('from averages only'))).toBe(
        !plan.reading.isUsed,
      )
    }
  })

  it('breath fits its schema', () => {
    for (const name of [
      'simple-mask',
      'non-rebreather-mask',
      'entrainment-mask',
      'nasal-cannula',
    ]) {
      const file = EXAMPLE_FILES.find((one) => one.startsWith(name)) ?? name
      expect(faults('breath', jsonOf(['breath', `examples/${file}`, ...FEW]))).toEqual([])
    }
    const id = 'nasal-cannula/adult@wall-15#2'
    const named = jsonOf(['breath', 'examples/on-air.json', '--set-up', id, ...FEW])
    expect(faults('breath', named)).toEqual([])
    expect(named).toMatchObject({ onNow: null, named: { id } })
  })

  it('breath forecasts no carbon dioxide of a patient at risk', () => {
    const atRisk = jsonOf(['breath', 'examples/entrainment-mask.json', ...FEW])
    expect(atRisk).toMatchObject({
      case: { patient: { retentionRisk: 'known-retainer' } },
      onNow: {
        carbonDioxide: 'carbon dioxide not predictable: blood gas within 30–60 minutes',
        breath: { alveolarCo2Fraction: null },
      },
    })
  })

  it('evidence fits its schema', () => {
    const answer = jsonOf(['evidence'])
    expect(faults('evidence', answer)).toEqual([])
    expect((answer['rows'] as unknown[]).length).toBeGreaterThanOrEqual(250) // Safe: the schema holds.
  })

  it('the schemas refuse what does not fit', () => {
    const answer = jsonOf(['plan', 'examples/no-reading.json', ...FEW])
    expect(faults('plan', { ...answer, more: 1 })).not.toEqual([])
    expect(faults('plan', { ...answer, plan: {} })).not.toEqual([])
    expect(faults('evidence', answer)).not.toEqual([])
  })
})
