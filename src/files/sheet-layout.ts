// Where each part of a bedside sheet stands on paper, as blocks for the PDF writer: settings in large type on top, steps in two columns, signature below. Leaves out fonts and paper.
import type { Column, Content } from 'pdfmake/interfaces.js'
import type { SheetFact, SheetList, SheetPage } from '../words/sheet-text.ts'
import { wholeRuns } from '../words/whole-runs.ts'
import { qrSvg } from './qr-code.ts'
import type { QrCode } from './qr-code.ts'

/** Sizes of type at scale 1, points. */
const TYPE = { small: 8.6, text: 8.6, name: 9.4, value: 13, number: 20, title: 16 } as const
const GAP_PT = 4
const COLUMN_GAP_PT = 12
const QR_PT = 98
/** About as many letters as a column of text holds in one line at scale 1; only for parting the lists evenly. */
const LINE_LETTERS = 68

interface Sized {
  readonly scale: number
}

export function sheetContent(
  question: { readonly page: SheetPage; readonly qr: QrCode | null },
  scale: number,
): readonly Content[] {
  const { page, qr } = question
  const sized = { scale }
  return [
    head(page, qr, sized),
    settings(page, sized),
    ...page.clocks.map((fact) => factLine(fact, sized, TYPE.name)),
    rule(sized),
    stepColumns(page, sized),
    rule(sized),
    factLine(page.restsOn, sized),
    signature(page, sized),
    ...page.foot.map((line) => text(line, TYPE.small, sized)),
  ]
}

function pt(size: number, { scale }: Sized): number {
  return size * scale
}

function text(said: string, size: number, sized: Sized, more: object = {}): Content {
  return { text: runsOf(said), fontSize: pt(size, sized), ...more }
}

/** A number never parts from its unit. */
function runsOf(said: string): { text: string; noWrap?: true }[] {
  return wholeRuns(said).map(({ text: run, isWhole }) =>
    isWhole ? { text: run, noWrap: true } : { text: run },
  )
}

function head(page: SheetPage, qr: QrCode | null, sized: Sized): Content {
  return {
    columns: [
      {
        width: '*',
        stack: [who(page, sized), state(page, sized), number(page, sized)],
      },
      codeBlock(page, qr, sized),
    ],
    columnGap: COLUMN_GAP_PT,
  }
}

/** The code with what it holds under it; without an address, why there is none. */
function codeBlock(page: SheetPage, qr: QrCode | null, sized: Sized): Column {
  const said = text(qr === null ? page.code.absent : page.code.caption, TYPE.small, sized)
  const picture: Content[] = qr === null ? [] : [{ svg: qrSvg(qr), fit: [QR_PT, QR_PT] }]
  return { width: QR_PT, stack: [...picture, said] }
}

function who(page: SheetPage, sized: Sized): Content {
  return {
    columns: [
      text(page.who, TYPE.title, sized, { bold: true, width: '*' }),
      text(page.title, TYPE.name, sized, { width: 'auto', margin: [0, pt(4, sized), 0, 0] }),
    ],
  }
}

/** In a frame: until when it counts, or that it does not. */
function state(page: SheetPage, sized: Sized): Content {
  return framed(
    [text(page.state, TYPE.value, sized, { bold: true }), text(page.because, TYPE.text, sized)],
    { widthPt: page.counts ? 1 : 3, sized },
  )
}

function settings(page: SheetPage, sized: Sized): Content {
  return {
    columns: page.settings.map((fact) => ({
      width: 'auto' as const,
      stack: [
        text(fact.name, TYPE.small, sized, { noWrap: true }),
        text(fact.value, TYPE.value, sized, { bold: true }),
      ],
    })),
    columnGap: COLUMN_GAP_PT,
    margin: [0, pt(GAP_PT, sized), 0, 0],
  }
}

function number(page: SheetPage, sized: Sized): Content {
  const { fraction, goal } = page
  return {
    columns: [
      {
        width: 'auto',
        stack: [
          text(fraction.name, TYPE.small, sized, { noWrap: true }),
          text(fraction.value, TYPE.number, sized, { bold: true, noWrap: true }),
        ],
      },
      {
        width: '*',
        stack: [
          text(`${fraction.spread}; ${fraction.printed}`, TYPE.name, sized, { bold: true }),
          text(fraction.dependsOn, TYPE.text, sized),
          ...goal.map((fact) => factLine(fact, sized, TYPE.name)),
        ],
      },
    ],
    columnGap: COLUMN_GAP_PT,
    margin: [0, pt(GAP_PT, sized), 0, 0],
  }
}

function factLine(fact: SheetFact, sized: Sized, size: number = TYPE.text): Content {
  return {
    text: [{ text: `${fact.name}: `, bold: true }, ...runsOf(fact.value)],
    fontSize: pt(size, sized),
    margin: [0, pt(1.5, sized), 0, 0],
  }
}

/** All lists in order, parted where both columns come out about as long. */
function stepColumns(page: SheetPage, sized: Sized): Content {
  const lists = [...page.phases, page.watch, page.call, page.cautions]
  const [left, right] = evenParts(lists, sized)
  const column = (part: readonly SheetList[]): Column => ({
    width: '*',
    stack: part.map((list) =>
      list.id === FRAMED_LIST
        ? framed([listBlock(list, sized)], { widthPt: 1.5, sized })
        : listBlock(list, sized),
    ),
  })
  return {
    stack: [
      framed([text(page.emergency, TYPE.text, sized, { bold: true })], { widthPt: 1, sized }),
      { columns: [column(left), column(right)], columnGap: COLUMN_GAP_PT },
    ],
  }
}

/** Never parted: what is needed at once stands together. */
const FRAMED_LIST = 'if-gas-fails'
/** Height of a heading, in lines. */
const HEADING_LINES = 1.8
/** A part of a list shorter than this is not worth a heading. */
const PART_LINES_MIN = 2

function evenParts(
  lists: readonly SheetList[],
  sized: Sized,
): readonly [readonly SheetList[], readonly SheetList[]] {
  const cuts = lists.flatMap((_, at) => cutsOf(lists, at))
  const longer = ([left, right]: (typeof cuts)[number]): number =>
    Math.max(heightOf(left, sized), heightOf(right, sized))
  return cuts.reduce((best, cut) => (longer(cut) < longer(best) ? cut : best), [lists, []])
}

/** Ways to part at one list: before it, or within it, its second part under the same heading. */
function cutsOf(
  lists: readonly SheetList[],
  at: number,
): readonly (readonly [readonly SheetList[], readonly SheetList[]])[] {
  const list = lists[at]
  const before = lists.slice(0, at)
  const after = lists.slice(at + 1)
  if (list === undefined) return []
  const within = list.id === FRAMED_LIST ? [] : list.lines.map((_, line) => line)
  return [
    [before, lists.slice(at)] as const,
    ...within
      .filter((line) => line >= PART_LINES_MIN && list.lines.length - line >= PART_LINES_MIN)
      .map(
        (line) =>
          [
            [...before, { ...list, lines: list.lines.slice(0, line) }],
            [{ ...list, name: `${list.name} …`, lines: list.lines.slice(line) }, ...after],
          ] as const,
      ),
  ]
}

/** In lines. */
function heightOf(lists: readonly SheetList[], { scale }: Sized): number {
  const letters = LINE_LETTERS / scale
  const heights = lists.map(({ id, lines }) => {
    const inLines = lines.map((line) => Math.ceil(line.length / letters) + 0.1)
    const frame = id === FRAMED_LIST ? FRAME_LINES : 0
    return inLines.reduce((sum, count) => sum + count, HEADING_LINES + frame)
  })
  return heights.reduce((sum, count) => sum + count, 0)
}

/** Height that a frame adds, and what its narrower lines need more. */
const FRAME_LINES = 2

function listBlock(list: SheetList, sized: Sized): Content {
  const hasBoxes = !PLAIN_LISTS.includes(list.id)
  return {
    stack: [
      text(list.name, TYPE.name, sized, {
        bold: true,
        margin: [0, pt(GAP_PT, sized), 0, pt(1, sized)],
      }),
      ...list.lines.map((line) => listLine(line, hasBoxes, sized)),
    ],
  }
}

/** Nothing to tick in these. */
const PLAIN_LISTS: readonly string[] = ['watch', 'call', 'cautions', 'if-gas-fails']

function listLine(line: string, hasBox: boolean, sized: Sized): Content {
  const side = pt(TYPE.text * 0.68, sized)
  const mark: Content = hasBox
    ? { canvas: [{ type: 'rect', x: 0, y: side * 0.4, w: side, h: side, lineWidth: 0.7 }] }
    : {
        canvas: [
          {
            type: 'rect',
            x: side * 0.3,
            y: side * 0.7,
            w: side * 0.4,
            h: side * 0.4,
            color: 'black',
          },
        ],
      }
  return {
    columns: [
      { width: side + pt(3, sized), stack: [mark] },
      text(line, TYPE.text, sized, { width: '*' }),
    ],
    columnGap: 0,
    margin: [0, 0, 0, pt(0.6, sized)],
  }
}

/** Lines to write on do not grow with the type: the paper has no more room. */
function signature(page: SheetPage, sized: Sized): Content {
  const lines = { scale: Math.min(1, sized.scale) }
  return {
    columns: page.byHand.map((name, at) => ({
      width: at % 2 === 0 ? ('*' as const) : pt(70, lines),
      stack: [
        {
          canvas: [
            {
              type: 'line' as const,
              x1: 0,
              y1: pt(20, sized),
              x2: at % 2 === 0 ? pt(170, lines) : pt(60, lines),
              y2: pt(20, sized),
              lineWidth: 0.7,
            },
          ],
        },
        text(name, TYPE.small, sized),
      ],
    })),
    columnGap: pt(8, sized),
    margin: [0, 0, 0, pt(3, sized)],
  }
}

function rule(sized: Sized): Content {
  const gap = pt(3, sized)
  return {
    table: { widths: ['*'], body: [['']] },
    layout: {
      hLineWidth: (at: number) => (at === 0 ? 0.7 : 0),
      vLineWidth: () => 0,
      paddingTop: () => 0,
      paddingBottom: () => 0,
    },
    fontSize: 1,
    margin: [0, gap, 0, 0],
  }
}

function framed(
  stack: readonly Content[],
  frame: { readonly widthPt: number; readonly sized: Sized },
): Content {
  const width = (): number => frame.widthPt
  const pad = (): number => pt(3, frame.sized)
  return {
    table: { widths: ['*'], body: [[{ stack: [...stack] }]] },
    layout: { hLineWidth: width, vLineWidth: width, paddingTop: pad, paddingBottom: pad },
    margin: [0, pt(3, frame.sized), 0, 0],
  }
}
