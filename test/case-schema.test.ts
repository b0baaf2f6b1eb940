// The published schema of the case file: it is the one the field tables make, it takes every example, and it refuses by shape what the reader refuses.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { caseSchema, caseSchemaText } from '../scripts/case-schema.ts'
import { readCase } from '../src/patient/read-case.ts'
import { writeCase } from '../src/patient/write-case.ts'
import { EXAMPLE_FILES, parsedExample, parsedFile } from './support/examples.ts'
import { ROOT } from './support/files.ts'
import { randomCase } from './support/random-case.ts'
import { seeded } from './support/seed.ts'

const stored: unknown = JSON.parse(readFileSync(join(ROOT, 'schema/case.schema.json'), 'utf8'))
const ajv = new Ajv2020({ allErrors: true, strict: true, strictRequired: false })
const isValid = ajv.compile(stored as object) // Safe: the schema is an object, which the first test shows.

/** One field set wrongly by shape alone: both must refuse. */
const BAD: readonly (readonly [file: string, path: string, value: unknown])[] = [
  ['nasal-cannula', 'version', 2],
  ['nasal-cannula', 'note', 3],
  ['nasal-cannula', 'patient', []],
  ['nasal-cannula', 'patient.weight', 62],
  ['nasal-cannula', 'patient.weightKg', '62'],
  ['nasal-cannula', 'patient.weightKg', 0.1],
  ['nasal-cannula', 'patient.weightKg', null],
  ['nasal-cannula', 'patient.ageMonths', 804],
  ['nasal-cannula', 'patient.ageYears', undefined],
  ['nasal-cannula', 'patient.sex', 'F'],
  ['nasal-cannula', 'patient.haemoglobinGpl', 12],
  ['nasal-cannula', 'patient.airway', 'natural'],
  ['nasal-cannula', 'patient.airway.nose', 'packed'],
  ['nasal-cannula', 'patient.airway.tube', { cuff: 'up' }],
  ['nasal-cannula', 'patient.changes', ['beard', 'beard']],
  ['nasal-cannula', 'patient.changes', ['shoe']],
  ['nasal-cannula', 'patient.retentionRisk', undefined],
  ['nasal-cannula', 'breathing.state', 'ventilated'],
  ['nasal-cannula', 'breathing.ratePerMin', 0],
  ['nasal-cannula', 'breathing.mouthShare', 30],
  ['nasal-cannula', 'site.altitudeM', 9000],
  ['nasal-cannula', 'site.barometricPressureKpa', 240],
  ['nasal-cannula', 'goal.kind', 'spo2'],
  ['nasal-cannula', 'goal.lowPercent', 0.94],
  ['nasal-cannula', 'goal.highPercent', undefined],
  ['nasal-cannula', 'goal.low', 94],
  ['nasal-cannula', 'onNow.setUp', undefined],
  ['nasal-cannula', 'onNow.setUp.flowLpm', 'fast'],
  ['nasal-cannula', 'onNow.setUp.family', 'mask'],
  ['nasal-cannula', 'onNow.saturationPercent', 0.91],
  ['entrainment-mask', 'onNow.setUp.setO2Fraction', 28],
  ['entrainment-mask', 'patient.bloodGas.ph', 40],
  ['entrainment-mask', 'patient.bloodGas.arterialPco2Kpa', undefined],
  ['tracheostomy-mask', 'patient.airway.tube.cuff', 'inflated'],
  ['tracheostomy-mask', 'patient.airway.tube.capped', 'no'],
  ['laryngectomy', 'patient.airway.nose', 'open'],
  ['carbon-monoxide', 'goal.reason', undefined],
  ['carbon-monoxide', 'goal.lowPercent', 94],
  ['cannula-under-mask', 'onNow.setUp.over.family', 'face-tent'],
]

function withField(root: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value
  const copy: Record<string, unknown> = { ...(root as Record<string, unknown>) }
  const inner = withField(copy[key], rest, value)
  if (inner === undefined) delete copy[key]
  else copy[key] = inner
  return copy
}

describe('schema/case.schema.json', () => {
  it('is what the field tables make (node --import tsx scripts/case-schema.ts writes it)', () => {
    expect(stored).toEqual(caseSchema())
    expect(readFileSync(join(ROOT, 'schema/case.schema.json'), 'utf8')).toBe(caseSchemaText())
  })

  it.each(EXAMPLE_FILES)('takes the example %s', (file) => {
    isValid(parsedFile(file))
    expect(isValid.errors ?? []).toEqual([])
  })

  it('takes every random valid case', () => {
    fc.assert(
      fc.property(randomCase, (drawn) => {
        const plain: unknown = JSON.parse(JSON.stringify(writeCase(drawn)))
        isValid(plain)
        expect(isValid.errors ?? []).toEqual([])
      }),
      seeded(200),
    )
  })

  it.each(BAD)('and the reader both refuse %s with %s = %j', (file, path, value) => {
    const input = withField(parsedExample(file), path.split('.'), value)
    expect(isValid(input)).toBe(false)
    expect(readCase(input).ok).toBe(false)
  })
})
