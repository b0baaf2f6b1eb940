// The form holds a case without loss: what is shown and read back is the case that came in.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { EXAMPLE_FILES, parsedFile } from '../../../test/support/examples.ts'
import { randomCase } from '../../../test/support/random-case.ts'
import { seeded } from '../../../test/support/seed.ts'
import { readCase } from '../../patient/read-case.ts'
import { writeCase } from '../../patient/write-case.ts'
import { fieldOfPath, readDraft } from './case-input.ts'
import { keepDraft, keptDraft } from './draft-store.ts'
import { draftOfFile, EMPTY_DRAFT, textOf, withText } from './draft.ts'
import type { Draft } from './draft.ts'

function draftOf(parsed: unknown, id = 'planted'): Draft {
  const read = readCase(parsed)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return draftOfFile(parsed, { id, about: read.case })
}

function exampleDraft(file: string): Draft {
  return draftOf(parsedFile(file))
}

/** A form cannot tell an empty note from none, nor type a number with a hundred zeros before its digits. */
function withoutEmptyText(value: unknown): unknown {
  if (typeof value === 'number') return Math.abs(value) < 1e-60 ? 0 : value
  if (Array.isArray(value) || typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== '')
      .map(([key, inner]) => [key, withoutEmptyText(inner)]),
  )
}

describe('draft', () => {
  it.each(EXAMPLE_FILES)('shows %s and reads it back unchanged', (file) => {
    const parsed = parsedFile(file)
    expect(readDraft(draftOf(parsed))).toEqual(readCase(parsed))
  })

  it('shows any case and reads it back unchanged', () => {
    fc.assert(
      fc.property(randomCase, (about) => {
        const parsed = withoutEmptyText(writeCase(about))
        expect(readDraft(draftOf(parsed))).toEqual(readCase(parsed))
      }),
      seeded(500),
    )
  })

  it('keeps text that is refused, says why and offers the other unit', () => {
    const draft = withText(exampleDraft('nasal-cannula.json'), 'patient.haemoglobinGpl', '12')
    const read = readDraft(draft)
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.problems).toMatchObject([{ path: 'patient.haemoglobinGpl', suggestion: 120 }])
    expect(textOf(draft, 'patient.haemoglobinGpl')).toBe('12')
  })

  it('offers the whole number where a comma may part thousands', () => {
    const draft = withText(exampleDraft('nasal-cannula.json'), 'site.altitudeM', '1,180')
    expect(readDraft(draft)).toMatchObject({
      ok: false,
      problems: [
        { code: 'NOT_A_NUMBER', path: 'site.altitudeM', value: '1,180', suggestion: 1180 },
      ],
    })
  })

  it('asks for what is missing in an empty case, each at a field of the form', () => {
    const read = readDraft(EMPTY_DRAFT)
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.problems.map(({ path }) => fieldOfPath(path)).toSorted()).toEqual([
      'age',
      'breathing.state',
      'goal.highPercent',
      'goal.lowPercent',
      'patient.retentionRisk',
    ])
  })

  it('leaves out the answers to questions that this set-up does not ask', () => {
    const mask = exampleDraft('entrainment-mask.json')
    expect(textOf(mask, 'onNow.setUp.setO2Fraction')).toBe('0.28')
    const cannula = withText(mask, 'onNow.setUp.family', 'nasal-cannula')
    const read = readDraft(cannula)
    expect(read.ok && read.case.onNow?.setUp?.setO2Fraction).toBe(undefined)
    expect(textOf(cannula, 'onNow.setUp.setO2Fraction')).toBe('0.28')
  })
})

describe('draft store', () => {
  const kept = new Map<string, string>()
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      kept.set(key, text)
    },
  }

  it('gives back what it keeps, refused text too', () => {
    const draft = withText(exampleDraft('preterm.json'), 'patient.weightKg', '1,2,3')
    expect(keepDraft(storage, draft, 1_000)).toBe(true)
    expect(keptDraft(storage)).toEqual(draft)
  })

  it('starts without an entry that cannot be read', () => {
    for (const text of ['{', '[]', '{"texts":{"a":1},"changes":[],"exampleId":null}', 'null']) {
      expect(keptDraft({ getItem: () => text })).toBe(undefined)
    }
  })

  it('says when the browser refuses to keep', () => {
    const refusing = {
      setItem: () => {
        throw new Error('full')
      },
    }
    expect(keepDraft(refusing, EMPTY_DRAFT, 1_000)).toBe(false)
  })
})
