// The DOI that the product shows for a source is the one of docs/references.md. Leaves out whether a DOI leads where it should.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../src/evidence/sources.ts'
import { ROOT } from './support/files.ts'

const listed = new Map(
  readFileSync(join(ROOT, 'docs', 'references.md'), 'utf8')
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .filter((cells) => /^10\.\d{4,}\//.test(cells[3] ?? ''))
    .map((cells) => [cells[1] ?? '', cells[3] ?? ''] as const),
)

describe('DOIs of evidence', () => {
  it('are those of the list of references, all of them and no other', () => {
    const shown = Object.entries(SOURCES).map(([key, source]) => [
      key,
      'doi' in source ? source.doi : undefined,
    ])
    expect(shown).toEqual(Object.keys(SOURCES).map((key) => [key, listed.get(key)]))
    expect(shown.filter(([, doi]) => doi !== undefined).length).toBeGreaterThan(15)
  })
})
