// `oxwright transfer FILE`: what a transfer needs, which cylinders, when to change; and the sheet to print. Leaves out how it is laid out.
import { timelineSvg } from '../pictures/gas-timeline.ts'
import { clockAfter, type ClockTime } from '../supply/duration.ts'
import { questionOf, type TransferFile } from '../supply/read-transfer.ts'
import {
  planTransfer,
  whenItStandsStill,
  withChains,
  type Course,
  type TransferPlan,
} from '../supply/transfer.ts'
import type { Shelf } from '../kit/shelf.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import type { GasUnits } from '../words/supply-value.ts'
import { supplyText } from '../words/supply-text.ts'
import { EXIT } from './exit-codes.ts'
import { jsonText } from './json-output.ts'
import { timeOfDay, type TimeOfDay } from './quantities.ts'
import { caseFrom, shelfFrom, transferFrom } from './read-input.ts'
import { toldBody, toldRemarks } from './supply-json.ts'
import { transferLines } from './transfer-lines.ts'
import { transferSheetLines } from './transfer-sheet-lines.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, type Verb } from './verb.ts'
import { GAS_UNIT_OPTIONS, gasUnitsOf } from './verb-cylinder.ts'

export const TRANSFER_JSON_FORMAT = 'oxwright-transfer-1'

export interface TransferAnswer {
  readonly file: TransferFile
  readonly plan: TransferPlan
  readonly shelf: Shelf
  readonly units: GasUnits
  /** Minutes of the way as clock times. */
  readonly clock: (minute: number) => ClockTime
  /** Every lift when it stands still, and every leg asked for. */
  readonly stops: readonly {
    readonly legIndex: number
    readonly course: Course
    readonly isCovered: boolean
  }[]
}

export const transferVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    ...GAS_UNIT_OPTIONS,
    shelf: 'text',
    case: 'text',
    now: 'text',
    sheet: 'switch',
    svg: 'text',
  },
  takesCase: true,
  takes: 'transfer',
  run: ({ words, terminal, version }) => {
    const file = transferFrom(words.positionals[0] ?? '')
    const shelf = shelfFrom(words.texts.get('shelf'))
    const casePath = words.texts.get('case')
    const known = casePath === undefined ? {} : { case: caseFrom(casePath).case }
    const plan = planTransfer(withChains({ ...questionOf(file, shelf), ...known }))
    const now = timeOfDay(words, 'now')
    const answer: TransferAnswer = {
      file,
      plan,
      shelf,
      units: gasUnitsOf(words),
      clock: (minute) => clockAfter(now, minute),
      stops: stopsOf(plan),
    }
    const svgPath = words.texts.get('svg')
    if (svgPath !== undefined) writeText(svgPath, pictureOf(plan, now))
    if (words.switches.has('json')) terminal.out(transferJson(answer, { now, version }))
    else if (words.switches.has('sheet')) terminal.out(transferSheetLines(answer).join('\n'))
    else {
      terminal.out(transferLines(answer).join('\n'))
      if (svgPath !== undefined) terminal.out(`\n${CLI_WORDS.timelineWritten} ${svgPath}`)
    }
    return plan.choice.missingL > 0 ? EXIT.nothingReaches : EXIT.ok
  },
}

function pictureOf({ legs, course, need }: TransferPlan, leaveAt: TimeOfDay): string {
  return timelineSvg({
    legs: legs.map(({ leg, fromMinute, untilMinute }) => ({
      kind: leg.kind,
      fromMinute,
      untilMinute,
    })),
    course,
    reservedMinutes: need.reservedMinutes,
    leaveAt,
    mode: 'file',
  })
}

function stopsOf(plan: TransferPlan): TransferAnswer['stops'] {
  return plan.legs.flatMap(({ leg }, legIndex) =>
    leg.kind === 'lift' ? [{ legIndex, ...whenItStandsStill(plan, { legIndex }) }] : [],
  )
}

function transferJson(
  { file, plan, stops, units }: TransferAnswer,
  run: { readonly now: TimeOfDay; readonly version: string },
): string {
  const { legs, choice } = plan
  return jsonText({
    format: TRANSFER_JSON_FORMAT,
    version: run.version,
    bed: file.bed ?? null,
    code: file.code ?? null,
    isInvented: file.isInvented ?? false,
    startsAt: run.now,
    reserve: plan.reserve,
    need: plan.need,
    legs: legs.map((leg) => ({
      kind: leg.leg.kind,
      fromMinute: leg.fromMinute,
      untilMinute: leg.untilMinute,
      feed: leg.leg.feed ?? 'carried',
      barometricKpa: leg.barometricKpa,
      inspiredPo2Share: leg.inspiredPo2Share,
      effectiveO2Fraction: leg.effectiveO2Fraction,
      carriedLpm: leg.carriedLpm,
      worstCarriedLpm: leg.worstCarriedLpm,
      setUp: toldBody(leg),
      chain: leg.leg.chain ?? null,
      remarks: toldRemarks(leg.remarks, units),
    })),
    choice: {
      ...choice,
      notUsed: choice.notUsed.map(({ row, reason }) => ({
        rowId: row.id,
        reason: { ...reason, text: supplyText(reason, units) },
      })),
      remarks: toldRemarks(choice.remarks, units),
    },
    course: plan.course,
    worstCourse: plan.worstCourse,
    worstMissingL: plan.worstMissingL,
    scanner: plan.scanner === null ? null : { gas: plan.scanner.gas, tube: plan.scanner.tube },
    stops: stops.map(({ legIndex, course, isCovered }) => ({ legIndex, isCovered, course })),
    remarks: toldRemarks(plan.remarks, units),
    checks: toldRemarks(plan.checks, units),
    saturationPath: plan.saturationPath,
  })
}
