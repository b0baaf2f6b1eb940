// Reads back what a PDF of ours says and where: pages, paper, each run of text with its place. Leaves out PDFs of other writers.
import { inflateSync } from 'node:zlib'

export interface PdfRun {
  readonly text: string
  /** Of its start, points from the left and from the top. */
  readonly leftPt: number
  readonly topPt: number
  readonly sizePt: number
}

export interface ReadPdf {
  readonly pages: number
  readonly widthPt: number
  readonly heightPt: number
  readonly runs: readonly PdfRun[]
  readonly isFontEmbedded: boolean
}

type Glyphs = ReadonlyMap<number, string>

export function readPdf(bytes: Uint8Array): ReadPdf {
  const raw = Buffer.from(bytes).toString('latin1')
  const objects = new Map(
    [...raw.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id = '', body = '']) => [
      id,
      body,
    ]),
  )
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(raw)
  const heightPt = Number(box?.[2])
  const fonts = fontsOf(objects)
  const contents = [...raw.matchAll(/\/Contents (\d+) 0 R/g)].map(([, id = '']) => id)
  return {
    pages: [...raw.matchAll(/\/Type \/Page\b/g)].length,
    widthPt: Number(box?.[1]),
    heightPt,
    runs: contents.flatMap((id) => runsOf(streamOf(objects.get(id) ?? ''), fonts, heightPt)),
    isFontEmbedded: [...raw.matchAll(/\/FontFile2 /g)].length >= 2,
  }
}

/** All text in the order it is drawn. */
export function textOfPdf(pdf: ReadPdf): string {
  return pdf.runs
    .map(({ text }) => text)
    .join(' ')
    .replaceAll(/\s+/g, ' ')
}

function streamOf(body: string): string {
  const at = body.indexOf('stream\n')
  const end = body.lastIndexOf('\nendstream')
  if (at < 0) return ''
  const packed = Buffer.from(body.slice(at + 'stream\n'.length, end), 'latin1')
  return body.includes('/FlateDecode')
    ? inflateSync(packed).toString('latin1')
    : packed.toString('latin1')
}

/** Glyphs of each font by the name that pages use. */
function fontsOf(objects: ReadonlyMap<string, string>): ReadonlyMap<string, Glyphs> {
  const fonts = new Map<string, Glyphs>()
  for (const body of objects.values()) {
    const [, list = ''] = /\/Font <<([\s\S]*?)>>/.exec(body) ?? []
    for (const [, name = '', id = ''] of list.matchAll(/\/(\w+) (\d+) 0 R/g)) {
      const [, unicode = ''] = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id) ?? '') ?? []
      fonts.set(name, glyphsOf(streamOf(objects.get(unicode) ?? '')))
    }
  }
  return fonts
}

function glyphsOf(map: string): Glyphs {
  const glyphs = new Map<number, string>()
  for (const [, first = '', list = ''] of map.matchAll(/<(\w+)> <\w+> \[([^\]]*)\]/g)) {
    const signs = [...list.matchAll(/<([\w ]*)>/g)].map(([, hex = '']) => signOf(hex))
    signs.forEach((sign, at) => glyphs.set(Number.parseInt(first, 16) + at, sign))
  }
  return glyphs
}

function signOf(hex: string): string {
  return Buffer.from(hex.replaceAll(' ', ''), 'hex').swap16().toString('utf16le')
}

function runsOf(content: string, fonts: ReadonlyMap<string, Glyphs>, heightPt: number): PdfRun[] {
  const runs: PdfRun[] = []
  for (const [, block = ''] of content.matchAll(/BT\n([\s\S]*?)ET/g)) {
    const [, x = '', y = ''] = /1 0 0 1 ([\d.-]+) ([\d.-]+) Tm/.exec(block) ?? []
    const [, font = '', size = ''] = /\/(\w+) ([\d.]+) Tf/.exec(block) ?? []
    const glyphs = fonts.get(font)
    const hex = [...block.matchAll(/<([0-9a-f]+)>/g)].map(([, part = '']) => part).join('')
    const text = (hex.match(/.{4}/g) ?? [])
      .map((code) => glyphs?.get(Number.parseInt(code, 16)) ?? '�')
      .join('')
    runs.push({ text, leftPt: Number(x), topPt: heightPt - Number(y), sizePt: Number(size) })
  }
  return runs
}
