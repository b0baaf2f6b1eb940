// Every interface family has its page in docs/models, and the numbers on it are those of the code. `UPDATE_DOCS=1` writes them.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { EVIDENCE_ROWS } from '../src/evidence/all-rows.ts'
import { FAMILY_IDS } from '../src/kit/family-id.ts'
import type { FamilyId } from '../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../src/kit/interface-families.ts'
import { ROOT } from './support/files.ts'
import {
  CHECKS_BEGIN,
  CHECKS_END,
  NUMBERS_BEGIN,
  NUMBERS_END,
  checksBlock,
  numbersBlock,
} from './support/model-page.ts'

const HEADINGS = [
  '## What it models',
  '## Pockets and flows',
  '## Numbers',
  '## What it leaves out',
  '## What judges it',
]

function pathOf(id: string): string {
  return join(ROOT, 'docs/models', `${id}.md`)
}

function blockIn(page: string, [begin, end]: readonly [string, string]): string {
  const from = page.indexOf(begin)
  const to = page.indexOf(end)
  return from < 0 || to < from ? '' : page.slice(from, to + end.length)
}

/** Writes the block under UPDATE_DOCS, then gives what the page holds. */
function keptBlock(id: FamilyId, marks: readonly [string, string], wanted: string): string {
  const page = readFileSync(pathOf(id), 'utf8')
  const block = blockIn(page, marks)
  if (process.env['UPDATE_DOCS'] !== undefined && block !== '')
    writeFileSync(
      pathOf(id),
      page.replace(block, () => wanted),
    )
  return blockIn(readFileSync(pathOf(id), 'utf8'), marks)
}

const HOW_TO_MEND = 'UPDATE_DOCS=1 npx vitest run test/model-pages.test.ts writes it'

describe('docs/models', () => {
  it('holds a page with all its parts for every interface family', () => {
    for (const id of FAMILY_IDS) {
      const page = existsSync(pathOf(id)) ? readFileSync(pathOf(id), 'utf8') : ''
      const missing = HEADINGS.filter((heading) => !page.includes(`\n${heading}\n`))
      expect({ id, missing }).toEqual({ id, missing: [] })
    }
  })

  it.each(FAMILY_IDS)('prints the numbers that the code uses for %s', (id) => {
    const wanted = numbersBlock(INTERFACE_FAMILIES[id])
    expect(keptBlock(id, [NUMBERS_BEGIN, NUMBERS_END], wanted), HOW_TO_MEND).toBe(wanted)
  })

  it.each(FAMILY_IDS)('counts the evidence rows that run %s', (id) => {
    const wanted = checksBlock(INTERFACE_FAMILIES[id], EVIDENCE_ROWS)
    expect(keptBlock(id, [CHECKS_BEGIN, CHECKS_END], wanted), HOW_TO_MEND).toBe(wanted)
  })

  it('says on the page of a family that no measurement checks that none does', () => {
    const saying = FAMILY_IDS.filter((id) =>
      readFileSync(pathOf(id), 'utf8').includes('**Not checked against measurements.**'),
    )
    expect(saying).toEqual(FAMILY_IDS.filter((id) => !INTERFACE_FAMILIES[id].isChecked))
    expect(saying.length).toBeGreaterThan(0)
  })
})
