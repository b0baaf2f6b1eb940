// Bedside sheets as PDF: one page on both papers, nothing cut, everything said, the code as it should be read. Leaves out the look, which a person judges.
import { describe, expect, it } from 'vitest'
import { qrCode } from '../src/files/qr-code.ts'
import { PAPERS, sheetPdf } from '../src/files/sheet-pdf.ts'
import type { Paper } from '../src/files/sheet-pdf.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { writeFragment } from '../src/sheet/fragment.ts'
import type { SheetRequest } from '../src/sheet/fragment.ts'
import { sheetPage } from '../src/words/sheet-text.ts'
import type { SheetPage } from '../src/words/sheet-text.ts'
import { readPdf, textOfPdf } from './support/pdf-text.ts'
import { PRINTED, requestFor, sheetFor } from './support/printed-sheets.ts'

const SIZE_PT: Readonly<Record<Paper, readonly [number, number]>> = {
  a4: [595.28, 841.89],
  letter: [612, 792],
}
const MARGIN_PT = 24
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

describe('a bedside sheet on paper', () => {
  it.each(PRINTED)('stands on one page, whole, readable, of %s on %s', async (...printed) => {
    const request = requestFor(...printed)
    const page = pageOf(request)
    const qr = qrCode(`https://oxwright.ward.example/sheet#${writeFragment(request)}`)
    for (const paper of PAPERS) {
      const pdf = readPdf(await sheetPdf({ page, qr, paper, language: 'en' }))
      expectWhole(pdf, paper)
      const all = bare(textOfPdf(pdf))
      expect(saidOn(page).filter((said) => !all.includes(bare(said)))).toEqual([])
      const step = pdf.runs.find(({ text }) => text.startsWith('Clean'))
      expect(step).toBeDefined()
    }
  })

  it('keeps a number and its unit on one line', async () => {
    const page = pageFor('cannula-under-mask', 'cannula-under-mask/adult@wall-15#6+10')
    const pdf = readPdf(await sheetPdf({ page, qr: null, paper: 'letter', language: 'en' }))
    const lines = pdf.runs.map(({ text }) => text.trim())
    expect(lines.filter((text) => /^(?:L\/)?min\b|^L\/min|\d–$|L\/$/.test(text))).toEqual([])
    expect(textOfPdf(pdf)).toContain('1–15 L/min')
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
    const sidePt = 104
    const squareMm = (sidePt / size) * (25.4 / 72)
    expect(squareMm).toBeGreaterThan(0.3)
  })
})
