// `oxwright sheet CASE`: the bedside sheet of one set-up as text, JSON or a page of PDF. Leaves out what stands on it.
import { makePlan } from '../planning/plan.ts'
import { narrowShelf } from '../kit/narrow-shelf.ts'
import { HUMIDIFICATIONS } from '../kit/shelf.ts'
import { MODEL_VERSION } from '../planning/plan.ts'
import type { Plan } from '../planning/plan-types.ts'
import { writeFragment } from '../sheet/fragment.ts'
import type { SheetCylinderInput, SheetRequest } from '../sheet/fragment.ts'
import { makeSheet } from '../sheet/sheet.ts'
import { sheetState } from '../sheet/validity.ts'
import { wallText, wallTime } from '../sheet/wall-clock.ts'
import { remarkText } from '../words/remark-text.ts'
import { spokenLanguage } from '../words/say.ts'
import { showUnits } from '../words/shown-unit.ts'
import { noSheetText, pdfWrittenText } from '../words/sheet-cli.ts'
import { noSheetLines } from '../words/sheet-refusal.ts'
import { sheetPage } from '../words/sheet-text.ts'
import { USUAL_UNITS } from '../units/choosable.ts'
import { oneOf } from './arguments.ts'
import type { ParsedWords } from './arguments.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { namedCandidate } from './named-candidate.ts'
import { planWords } from './plan-question.ts'
import type { PlanWords } from './plan-question.ts'
import { decimal, needed, pressureKpa } from './quantities.ts'
import { sheetJson } from './sheet-json.ts'
import { sheetLines } from './sheet-lines.ts'
import type { SheetToPrint } from './sheet-lines.ts'
import { bulleted } from './table.ts'
import { writeContent } from './terminal.ts'
import type { Terminal } from './terminal.ts'
import { COMMON_OPTIONS, SHELF_OPTIONS } from './verb.ts'
import type { Verb, VerbRun } from './verb.ts'
import { gasUnitsOf, LEFT_KPA } from './verb-cylinder.ts'

const { svg: _svg, ...SHELF_ALONE } = SHELF_OPTIONS
const PAPERS = ['a4', 'letter'] as const

export const sheetVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    ...SHELF_ALONE,
    'set-up': 'text',
    humidifier: 'text',
    pdf: 'text',
    paper: 'text',
    'base-url': 'text',
    'made-at': 'text',
    'readings-at': 'text',
    water: 'text',
    gauge: 'text',
    left: 'text',
    units: 'text',
  },
  takesCase: true,
  run: (run) => {
    const { words, terminal } = run
    const paper = oneOf(words, 'paper', PAPERS) ?? 'a4'
    showUnits({ ...USUAL_UNITS, gasPressure: gasUnitsOf(words).pressure })
    const given = planWords(run)
    const plan = planOf(given, words.texts.get('set-up'))
    const setUpId = words.texts.get('set-up') ?? plan.ranked[0]?.id
    if (setUpId === undefined)
      return refuse(terminal, [noSheetText(), ...plan.missing.map(remarkText)])
    const request = requestOf(run, given, setUpId)
    const answer = makeSheet({ request, plan, shelf: given.shelf })
    if (!answer.ok) return refuse(terminal, noSheetLines(answer))
    const { sheet } = answer
    const state = sheetState(sheet, request.madeAt)
    const page = sheetPage({ sheet, shelf: given.shelf, state })
    const printed = { sheet, page, ...addressOf(request, words) }
    terminal.out(
      words.switches.has('json')
        ? sheetJson({ ...printed, given, version: run.version })
        : sheetLines(printed).join('\n'),
    )
    const pdfPath = words.texts.get('pdf')
    return pdfPath === undefined ? EXIT.ok : writePdf({ run, printed, paper, pdfPath })
  },
}

/** On as little of the shelf as a named set-up needs. */
function planOf(given: PlanWords, namedId: string | undefined): Plan {
  const setUp = namedId === undefined ? null : namedCandidate(given, namedId).setUp
  return makePlan({
    case: given.case,
    shelf: setUp === null ? given.shelf : narrowShelf(given.shelf, setUp),
    draws: given.draws,
    seed: given.seed,
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
  })
}

function requestOf({ words }: VerbRun, given: PlanWords, setUpId: string): SheetRequest {
  const madeAt = momentOf(words, 'made-at') ?? thisMinute()
  const cylinder = cylinderOf(words)
  const humidification = oneOf(words, 'humidifier', HUMIDIFICATIONS)
  return {
    case: given.case,
    setUpId,
    madeAt,
    readAt: momentOf(words, 'readings-at') ?? madeAt,
    modelVersion: MODEL_VERSION,
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
    ...(cylinder === undefined ? {} : { cylinder }),
    ...(humidification === undefined ? {} : { humidification }),
  }
}

function momentOf(words: ParsedWords, option: string): string | undefined {
  const got = words.texts.get(option)
  return got === undefined ? undefined : wallText(wallTime(got, option))
}

function thisMinute(): string {
  const now = new Date()
  return wallText({
    year: now.getFullYear(),
    month: now.getMonth() + 1,
    day: now.getDate(),
    hour: now.getHours(),
    minute: now.getMinutes(),
  })
}

function cylinderOf(words: ParsedWords): SheetCylinderInput | undefined {
  const waterVolumeL = decimal(words, 'water')
  const gaugeKpa = pressureKpa(words, 'gauge')
  const leftGaugeKpa = pressureKpa(words, 'left')
  if (waterVolumeL === undefined && gaugeKpa === undefined && leftGaugeKpa === undefined) {
    return undefined
  }
  return {
    waterVolumeL: needed(waterVolumeL, { option: '--water', verb: 'sheet' }),
    gaugeKpa: needed(gaugeKpa, { option: '--gauge', verb: 'sheet' }),
    leftGaugeKpa: leftGaugeKpa ?? LEFT_KPA,
  }
}

function addressOf(
  request: SheetRequest,
  words: ParsedWords,
): Pick<SheetToPrint, 'fragment' | 'address'> {
  const fragment = writeFragment(request)
  const base = words.texts.get('base-url')
  return {
    fragment,
    address: base === undefined ? null : `${base.replace(/\/+$/, '')}/sheet#${fragment}`,
  }
}

function refuse(terminal: Terminal, [title = '', ...reasons]: readonly string[]): ExitCode {
  terminal.err(`${[title, ...bulleted(reasons)].join('\n')}\n`)
  return EXIT.nothingReaches
}

interface PdfJob {
  readonly run: VerbRun
  readonly printed: SheetToPrint
  readonly paper: (typeof PAPERS)[number]
  readonly pdfPath: string
}

/** The writer of PDF is large: it is loaded only when it is asked for. */
async function writePdf({ run, printed, paper, pdfPath }: PdfJob): Promise<ExitCode> {
  const { sheetPdf } = await import('../files/sheet-pdf.ts')
  const { qrCode } = await import('../files/qr-code.ts')
  const qr = printed.address === null ? null : qrCode(printed.address)
  const pdf = await sheetPdf({ page: printed.page, qr, paper, language: spokenLanguage() })
  writeContent(pdfPath, pdf)
  if (!run.words.switches.has('json')) run.terminal.out(`\n${pdfWrittenText(pdfPath)}`)
  return EXIT.ok
}
