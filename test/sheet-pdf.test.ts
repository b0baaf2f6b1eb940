// Bedside sheets as they are read and as PDF: whole sentences, nothing twice, nothing of another set-up; one page on both papers, nothing cut, everything said, the code as it should be read. Leaves out which steps there must be, and the look, which a person judges.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { qrCode } from '../src/files/qr-code.ts'
import { PAPERS, sheetPdf } from '../src/files/sheet-pdf.ts'
import type { Paper } from '../src/files/sheet-pdf.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { writeFragment } from '../src/sheet/fragment.ts'
import type { SheetRequest } from '../src/sheet/fragment.ts'
import { sheetPage } from '../src/words/sheet-text.ts'
import type { SheetPage } from '../src/words/sheet-text.ts'
import { buildCli, cliProcess } from './support/cli.ts'
import { readPdf, textOfPdf } from './support/pdf-text.ts'
import { FULLEST, PRINTED, requestFor, sheetFor } from './support/printed-sheets.ts'

const folder = mkdtempSync(join(tmpdir(), 'oxwright-sheet-pdf-'))

beforeAll(buildCli)
afterAll(() => rmSync(folder, { recursive: true }))

const SIZE_PT: Readonly<Record<Paper, readonly [number, number]>> = {
  a4: [595.28, 841.89],
  letter: [612, 792],
}
const MARGIN_PT = 20
/** About 2.6 mm: what is smaller nobody reads at a bed. No text of the sheet is smaller, not the last line either. */
const TYPE_PT_MIN = 7.5

function pageOf(request: SheetRequest, state: 'counts' | 'past' = 'counts'): SheetPage {
  return sheetPage({ sheet: sheetFor(request), shelf: DEMO_SHELF, state })
}

function pageFor(example: string, setUpId: string, state: 'counts' | 'past' = 'counts'): SheetPage {
  return pageOf(requestFor(example, setUpId), state)
}

type Printed = ReturnType<typeof readPdf>

/** One page of its paper, its fonts inside, nothing outside the margins, nothing too small to read. */
function expectWhole(pdf: Printed, paper: Paper): void {
  expect(pdf.pages).toBe(1)
  expect([pdf.widthPt, pdf.heightPt]).toEqual(SIZE_PT[paper])
  expect(pdf.isFontEmbedded).toBe(true)
  for (const run of pdf.runs) {
    expect(run.sizePt).toBeGreaterThanOrEqual(TYPE_PT_MIN)
    expect(run.leftPt).toBeGreaterThanOrEqual(MARGIN_PT - 1)
    expect(run.leftPt).toBeLessThan(pdf.widthPt - MARGIN_PT)
    expect(run.topPt).toBeGreaterThanOrEqual(MARGIN_PT)
    expect(run.topPt).toBeLessThan(pdf.heightPt - MARGIN_PT)
  }
}

/** All that is said on it. */
function saidOn(page: SheetPage): readonly string[] {
  return [
    page.title,
    page.who,
    page.state,
    page.because,
    page.emergency,
    ...page.settings.flatMap(({ name, value }) => [name, value]),
    page.fraction.value,
    page.fraction.spread,
    page.fraction.dependsOn,
    ...[...page.goal, ...page.clocks, page.restsOn].map(({ value }) => value),
    ...[...page.phases, page.watch, page.call, page.cautions].flatMap(({ lines }) => lines),
    ...page.byHand,
    ...page.foot,
  ]
}

const bare = (text: string): string => text.replaceAll(/\s/g, '')

const PAGES = PRINTED.map(([example, setUpId, humidification]) => {
  const request = requestFor(example, setUpId, humidification)
  return {
    setUpId,
    page: sheetPage({ sheet: sheetFor(request), shelf: DEMO_SHELF, state: 'counts' }),
  }
})

function pageNamed(setUpId: string): SheetPage {
  const found = PAGES.find((one) => one.setUpId === setUpId)
  if (found === undefined) throw new Error(`no page of ${setUpId}`)
  return found.page
}

function linesOf({ phases, watch, call, cautions }: SheetPage): readonly string[] {
  return [...phases, watch, call, cautions].flatMap(({ lines }) => lines)
}

describe.each(PAGES)('the sheet of $setUpId', ({ page }) => {
  const lines = linesOf(page)

  it('says each thing in a whole sentence, and once', () => {
    expect(lines.filter((line) => !/^\p{Lu}.*[.?]$/u.test(line))).toEqual([])
    expect(lines.length).toBe(new Set(lines).size)
    expect(page.watch.lines.length).toBeGreaterThan(0)
  })

  it('calls for a blood gas once, beside the line of when to call', () => {
    const gas = lines.filter((line) => /blood gas/i.test(line) && !page.call.lines.includes(line))
    expect(gas.length).toBeLessThanOrEqual(1)
    expect(gas.filter((line) => !/cannot be predicted: .*30–60 minutes/.test(line))).toEqual([])
  })

  it('warns of nothing that is not there', () => {
    expect(lines.filter((line) => /held in front of the face/i.test(line))).toEqual([])
  })

  it('names the interface in few words, begun large', () => {
    const [worn] = page.settings
    expect(worn?.value).not.toMatch(/rebreath.*rebreath/i)
    for (const { value } of page.settings) expect(value).toMatch(/^[\p{Lu}\d]|^flush/u)
  })
})

describe('a reservoir mask', () => {
  it('is named by its label alone where that tells the family, else by both', () => {
    const named = (setUpId: string): string =>
      PAGES.find((one) => one.setUpId === setUpId)?.page.settings[0]?.value ?? ''
    expect(named('non-rebreather/adult@wall-15#15')).toBe('Reservoir mask (non-rebreather)')
    expect(named('simple-mask/adult@wall-15#6')).toBe('Simple mask')
  })
})

describe('a bedside sheet on paper', () => {
  it.each(PRINTED)('stands on one page, whole, readable, of %s on %s', async (...printed) => {
    const request = requestFor(...printed)
    const [, setUpId] = printed
    const at = PRINTED.findIndex(([, id]) => id === setUpId)
    const page = pageNamed(setUpId)
    const qr = qrCode(`https://oxwright.ward.example/sheet#${writeFragment(request)}`)
    // One paper in turn, the fullest sheets on both.
    const papers = FULLEST.includes(setUpId) ? PAPERS : PAPERS.slice(at % 2, (at % 2) + 1)
    for (const paper of papers) {
      const pdf = readPdf(await sheetPdf({ page, qr, paper, language: 'en' }))
      expectWhole(pdf, paper)
      const all = bare(textOfPdf(pdf))
      expect(saidOn(page).filter((said) => !all.includes(bare(said)))).toEqual([])
      const step = pdf.runs.find(({ text }) => text.startsWith('Clean'))
      expect(step).toBeDefined()
    }
  })

  it.each(PAPERS)('stands whole on one page in German, the fullest one, of %s', (paper) => {
    const path = join(folder, `${paper}.pdf`)
    const named = ['--set-up', 't-piece-with-limb/adult@blender-60#40:0.3', '--language', 'de']
    const words = ['sheet', 'examples/t-piece-with-limb.json', ...named, '--draws', '64']
    const { code, err } = cliProcess([...words, '--pdf', path, '--paper', paper])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const pdf = readPdf(readFileSync(path))
    expectWhole(pdf, paper)
    expect(textOfPdf(pdf)).toMatch(/Gültig bis .*Cuffdruck mit Manometer.*Wenn das Gas ausfällt/)
    expect(textOfPdf(pdf)).toContain('0,3')
  })

  it('prints signs beyond plain letters', async () => {
    const page = pageFor('tracheostomy-mask', 'tracheostomy-mask/adult@nebuliser#10:0.35')
    const said = { ...page, foot: ['≥ 94 %, PaCO₂, 88–92, a · b, −3, ä ö ü ß'] }
    const pdf = readPdf(await sheetPdf({ page: said, qr: null, paper: 'a4', language: 'en' }))
    expect(bare(textOfPdf(pdf))).toContain(bare(said.foot[0] ?? ''))
    expect(textOfPdf(pdf)).toContain('cmH₂O')
  })

  it('says in place of a code why there is none', async () => {
    const page = pageFor('simple-mask', 'simple-mask/adult@wall-15#6')
    const pdf = readPdf(await sheetPdf({ page, qr: null, paper: 'letter', language: 'en' }))
    expect(bare(textOfPdf(pdf))).toContain(bare(page.code.absent))
  })

  it('prints in large type that it counts no longer', async () => {
    const page = pageFor('simple-mask', 'simple-mask/adult@wall-15#6', 'past')
    const pdf = readPdf(await sheetPdf({ page, qr: null, paper: 'a4', language: 'en' }))
    const mark = pdf.runs.find(({ text }) => text.startsWith('NOT'))
    expect(mark?.sizePt).toBeGreaterThan(12)
    expect(bare(textOfPdf(pdf))).not.toContain('Validuntil')
  })
})

describe('the code to scan', () => {
  it('has squares large enough on paper for the longest address', () => {
    const { size } = qrCode(`https://oxwright.ward.example/sheet#${'x'.repeat(600)}`)
    const sidePt = 98
    const squareMm = (sidePt / size) * (25.4 / 72)
    expect(squareMm).toBeGreaterThan(0.3)
  })
})
