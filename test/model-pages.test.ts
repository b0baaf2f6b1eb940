// Every interface family has its page in docs/models, and the numbers on it are those of the code. `UPDATE_DOCS=1` writes them.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { FAMILY_IDS } from '../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../src/kit/interface-families.ts'
import { ROOT } from './support/files.ts'
import { NUMBERS_BEGIN, NUMBERS_END, numbersBlock } from './support/model-page.ts'

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

function blockIn(page: string): string {
  const from = page.indexOf(NUMBERS_BEGIN)
  const to = page.indexOf(NUMBERS_END)
  return from < 0 || to < from ? '' : page.slice(from, to + NUMBERS_END.length)
}

describe('docs/models', () => {
  it('holds a page with all its parts for every interface family', () => {
    for (const id of FAMILY_IDS) {
      const page = existsSync(pathOf(id)) ? readFileSync(pathOf(id), 'utf8') : ''
      const missing = HEADINGS.filter((heading) => !page.includes(`\n${heading}\n`))
      expect({ id, missing }).toEqual({ id, missing: [] })
    }
  })

  it('prints the numbers that the code uses', () => {
    for (const id of FAMILY_IDS) {
      const page = readFileSync(pathOf(id), 'utf8')
      const wanted = numbersBlock(INTERFACE_FAMILIES[id])
      if (process.env['UPDATE_DOCS'] !== undefined && blockIn(page) !== '')
        writeFileSync(
          pathOf(id),
          page.replace(blockIn(page), () => wanted),
        )
      expect(blockIn(readFileSync(pathOf(id), 'utf8'))).toBe(wanted)
    }
  })

  it('says on the page of a family that no measurement checks that none does', () => {
    const saying = FAMILY_IDS.filter((id) =>
      readFileSync(pathOf(id), 'utf8').includes('**Not checked against measurements.**'),
    )
    expect(saying).toEqual(FAMILY_IDS.filter((id) => !INTERFACE_FAMILIES[id].isChecked))
    expect(saying.length).toBeGreaterThan(0)
  })
})
