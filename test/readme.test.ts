// README.md tells the truth about the evidence, and no document links to what is not there. `UPDATE_DOCS=1` writes the evidence block.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evidenceReport } from '../src/evidence/report.ts'
import { ROOT, filesUnder } from './support/files.ts'
import { EVIDENCE_BEGIN, EVIDENCE_END, evidenceBlock } from './support/readme-evidence.ts'

const README = join(ROOT, 'README.md')

function blockIn(page: string): string {
  const from = page.indexOf(EVIDENCE_BEGIN)
  const to = page.indexOf(EVIDENCE_END)
  return from < 0 || to < from ? '' : page.slice(from, to + EVIDENCE_END.length)
}

function keptBlock(wanted: string): string {
  const page = readFileSync(README, 'utf8')
  const block = blockIn(page)
  if (process.env['UPDATE_DOCS'] !== undefined && block !== '')
    writeFileSync(
      README,
      page.replace(block, () => wanted),
    )
  return blockIn(readFileSync(README, 'utf8'))
}

const DOCUMENTS = [
  'README.md',
  'ARCHITECTURE.md',
  'CONTRIBUTING.md',
  'CHANGELOG.md',
  'examples/README.md',
  ...filesUnder({ root: ROOT, folder: 'docs', endings: ['.md'] }),
]

/** Targets of links and pictures within this checkout. */
function linksOf(document: string): readonly string[] {
  const text = readFileSync(join(ROOT, document), 'utf8')
  return [...text.matchAll(/\]\(([^)\s]+)\)|src="([^"]+)"/g)]
    .map(([, link = '', source = '']) => (link === '' ? source : link))
    .filter((target) => !/^(https?:|#)/.test(target))
    .map((target) => target.replace(/#.*$/, ''))
}

describe('README.md', () => {
  it('prints the counts and family table of the evidence report', () => {
    const wanted = evidenceBlock(evidenceReport())
    expect(keptBlock(wanted), 'UPDATE_DOCS=1 npx vitest run test/readme.test.ts writes it').toBe(
      wanted,
    )
  })
})

describe('documents', () => {
  it('link only to what is there', () => {
    const broken = DOCUMENTS.flatMap((document) =>
      linksOf(document)
        .filter((target) => !existsSync(join(ROOT, dirname(document), target)))
        .map((target) => `${document}: ${target}`),
    )
    expect(broken).toEqual([])
    expect(linksOf('README.md').length).toBeGreaterThan(5)
  })
})
