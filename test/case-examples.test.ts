// The example cases: all read without a problem, and together they show every interface family, airway state and kind of goal.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { FAMILY_IDS } from '../src/kit/family-id.ts'
import type { Case } from '../src/patient/case.ts'
import { readCase } from '../src/patient/read-case.ts'
import { GOAL_KINDS } from '../src/patient/read-goal.ts'
import { airwayKind } from '../src/physiology/airway-state.ts'
import { goalReason } from '../src/planning/goal-reasons.ts'
import { EXAMPLE_FILES, parsedFile } from './support/examples.ts'
import { ROOT } from './support/files.ts'

const AIRWAY_KINDS = [
  'laryngectomy',
  'natural',
  'nose-blocked',
  'tracheostomy-capped',
  'tracheostomy-cuff-down',
  'tracheostomy-cuff-up',
  'tracheostomy-speaking-valve',
  'tracheostomy-uncuffed',
]

function readExample(file: string): Case {
  const read = readCase(parsedFile(file))
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.problems)}`)
  return read.case
}

const CASES = EXAMPLE_FILES.map((file) => ({ file, example: readExample(file) }))

function sorted(values: readonly string[]): string[] {
  return [...new Set(values)].toSorted()
}

describe('the examples', () => {
  it.each(EXAMPLE_FILES)('%s reads without a problem and says it is invented', (file) => {
    expect(readExample(file).note).toBe('invented')
  })

  it('show every interface family on now', () => {
    const shown = CASES.flatMap(({ example }) => example.onNow?.setUp?.family ?? [])
    expect(sorted(shown)).toEqual([...FAMILY_IDS].toSorted())
  })

  it('show every airway state', () => {
    const shown = CASES.map(({ example }) => airwayKind(example.patient.airway))
    expect(sorted(shown)).toEqual(AIRWAY_KINDS)
  })

  it('show every kind of goal, with reasons of the table', () => {
    expect(sorted(CASES.map(({ example }) => example.goal.kind))).toEqual(
      [...GOAL_KINDS].toSorted(),
    )
    const reasons = CASES.flatMap(({ example }) => example.goal.reason ?? [])
    expect(reasons.filter((reason) => goalReason(reason) === null)).toEqual([])
  })

  it('lie in the demo hospital: its altitude, its wards, codes of the ward, no case code twice', () => {
    const codes = CASES.map(({ example }) => example.code ?? '')
    expect(new Set(codes).size).toBe(CASES.length)
    for (const { file, example } of CASES) {
      expect(example.site.altitudeM, file).toBe(1180)
      expect(example.bed, file).toMatch(/^(Heron|Plover|Wren) \d+$/)
      expect(example.code, file).toMatch(new RegExp(`^${example.bed?.[0] ?? ''}-\\d{4}$`))
    }
  })

  it('stand in the table of examples/README.md, each with its goal', () => {
    const readme = readFileSync(join(ROOT, 'examples/README.md'), 'utf8')
    const listed = [...readme.matchAll(/^\| `([^`]+)` \|/gm)].map((match) => match[1])
    expect(listed).toEqual(EXAMPLE_FILES)
  })
})
