// A bedside sheet as one page of PDF, A4 or Letter, black on white, its fonts inside. Leaves out the words, which come ready.
import pdfmake from 'pdfmake'
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js'
import fonts from 'pdfmake/build/vfs_fonts.js'
import { assert } from '../errors.ts'
import type { SheetPage } from '../words/sheet-text.ts'
import type { QrCode } from './qr-code.ts'
import { sheetContent } from './sheet-layout.ts'

export const PAPERS = ['a4', 'letter'] as const
export type Paper = (typeof PAPERS)[number]

const PAGE_SIZES = { a4: 'A4', letter: 'LETTER' } as const
const MARGIN_PT = 20
/** Sizes of type, falling; below the last nobody could read it. */
const SCALES = [
  1.2, 1.15, 1.1, 1.06, 1.03, 1, 0.98, 0.96, 0.94, 0.92, 0.9, 0.88, 0.86, 0.84, 0.82, 0.8,
]
const PAGE_MARK = /\/Type \/Page\b/g

export interface SheetPdfQuestion {
  readonly page: SheetPage
  /** Null where there is no address to put in. */
  readonly qr: QrCode | null
  readonly paper: Paper
  readonly language: string
}

/** The largest type in which the whole sheet stands on one page. A sheet that no size holds is a bug, never a second page. */
export async function sheetPdf(question: SheetPdfQuestion): Promise<Uint8Array> {
  loadFonts()
  let best: Uint8Array | null = null
  let larger = 0
  let smaller = SCALES.length
  while (larger < smaller) {
    const middle = Math.floor((larger + smaller) / 2)
    const pdf = await pdfAt(question, SCALES[middle] ?? 1)
    if (pagesOf(pdf) === 1) {
      best = pdf
      smaller = middle
    } else larger = middle + 1
  }
  assert(best !== null, 'files/sheet on one page')
  return best
}

async function pdfAt(question: SheetPdfQuestion, scale: number): Promise<Uint8Array> {
  const { page, paper, language } = question
  const document: TDocumentDefinitions = {
    pageSize: PAGE_SIZES[paper],
    pageMargins: MARGIN_PT,
    content: sheetContent(question, scale) as Content,
    defaultStyle: { font: 'Roboto', lineHeight: 1 },
    info: { title: `${page.title}, ${page.who}`, creator: 'Oxwright' },
    language,
  }
  return await pdfmake.createPdf(document).getBuffer()
}

export function pagesOf(pdf: Uint8Array): number {
  const text = Array.from(pdf, (byte) => String.fromCharCode(byte)).join('')
  return [...text.matchAll(PAGE_MARK)].length
}

/** What the package's types leave out: its own store of files. */
interface FontStore {
  readonly virtualfs: { readonly writeFileSync: (name: string, bytes: Uint8Array) => void }
}

/** The fonts come with the program; nothing is read from disk or net. */
function loadFonts(): void {
  // Safe: pdfmake 0.3 has this store in Node and in the browser.
  const { virtualfs } = pdfmake as unknown as FontStore
  for (const name of [FONT_FILES.normal, FONT_FILES.bold]) {
    virtualfs.writeFileSync(name, bytesOf(fonts[name]))
  }
  pdfmake.setFonts({ Roboto: FONT_FILES })
  pdfmake.setLocalAccessPolicy(() => false)
  pdfmake.setUrlAccessPolicy(() => false)
}

const FONT_FILES = { normal: 'Roboto-Regular.ttf', bold: 'Roboto-Medium.ttf' } as const

function bytesOf(base64: unknown): Uint8Array {
  assert(typeof base64 === 'string', 'files/font bundled')
  return Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0))
}
