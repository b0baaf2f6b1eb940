// A transfer as lines for a terminal: what to take and when to change first, then the way. Leaves out the printable sheet.
import type { SupplyCode } from '../supply/supply-remark.ts'
import type { TransferPlan } from '../supply/transfer.ts'
import { CHAIN_TAKEN_TEXT, chainTakenLines } from '../words/gas-chain-text.ts'
import { numberText } from '../words/number-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { legName } from '../words/supply-names.ts'
import { supplyText, supplyTexts } from '../words/supply-text.ts'
import {
  changeAtLine,
  legRemarkLine,
  needLine,
  nothingDrawnLine,
  reserveLine,
  runLine,
  stopLine,
  takeLine,
  TRANSFER_WORDS,
  wayEmptyLine,
  worstLine,
} from '../words/supply-transfer-cli-text.ts'
import { fractionText } from '../words/number-text.ts'
import { clockTimeText } from '../words/supply-value.ts'
import { bulleted, indented, section, tableLines } from './table.ts'
import type { TransferAnswer } from './verb-transfer.ts'

export function transferLines(answer: TransferAnswer): readonly string[] {
  const { plan, units } = answer
  const { choice, need } = plan
  return [
    ...headline(answer),
    '',
    ...indented(needLine({ ...need, usableL: choice.usableL }, units), 0),
    ...indented(reserveLine(plan.reserve), 0),
    ...section(TRANSFER_WORDS.legs, legTable(answer)),
    ...section(TRANSFER_WORDS.cylinders, runLines(answer)),
    ...section(TRANSFER_WORDS.remarks, bulleted(remarkLines(answer))),
    ...section(CHAIN_TAKEN_TEXT.heading(), bulleted(chainLines(plan))),
    ...section(
      TRANSFER_WORDS.notUsed,
      bulleted(
        choice.notUsed.map(({ row, reason }) => `${row.label}: ${supplyText(reason, units)}`),
      ),
    ),
  ]
}

/** Each chain once, whichever legs have it. */
function chainLines({ legs }: TransferPlan): readonly string[] {
  const lines = legs.flatMap(({ leg: { chain } }) =>
    chain === undefined ? [] : chainTakenLines(chain),
  )
  return [...new Set(lines)]
}

/** Said before everything else. */
export const URGENT: readonly SupplyCode[] = ['RUNS_OUT_ON_THE_WAY', 'RESERVE_NOT_COVERED']

/** What to take, when to change, when it is empty. */
export function headline({ plan, clock, units }: TransferAnswer): readonly string[] {
  const { choice, course } = plan
  const picks = choice.picks.map(({ row, count }) => ({ count, label: row.label }))
  if (course.emptyAtMinute === null) return indented(nothingDrawnLine(), 0)
  return [
    ...supplyTexts(
      plan.remarks.filter(({ code }) => URGENT.includes(code)),
      units,
    ),
    takeLine(picks),
    changeAtLine(course.changeAtMinutes.map(clock)),
    wayEmptyLine(clock(course.emptyAtMinute), clock(course.wayEndsMinute)),
  ].flatMap((line) => indented(line, 0))
}

export function runLines({ plan, clock }: TransferAnswer): readonly string[] {
  return plan.course.runs.flatMap(({ cylinder, label, fromMinute, untilMinute }) =>
    indented(
      runLine({ number: cylinder, label, from: clock(fromMinute), until: clock(untilMinute) }),
    ),
  )
}

/** Worst case and lifts that stand still. */
export function whatIfLines({ plan, clock, stops }: TransferAnswer): readonly string[] {
  const { emptyAtMinute } = plan.worstCourse
  return [
    worstLine(emptyAtMinute === null ? null : clock(emptyAtMinute)),
    ...stops.map(({ legIndex, course, isCovered }) =>
      stopLine({
        leg: legName(plan.legs[legIndex]?.leg.kind ?? 'lift'),
        number: legIndex + 1,
        minutes: LIFT_MINUTES,
        changeAt: course.changeAtMinutes.map(clock),
        emptyAt: course.emptyAtMinute === null ? null : clock(course.emptyAtMinute),
        arrives: clock(course.wayEndsMinute),
        isCovered,
      }),
    ),
  ]
}

const LIFT_MINUTES = 20

function remarkLines(answer: TransferAnswer): readonly string[] {
  const { plan, units } = answer
  const said = new Set<string>()
  const ofLegs = plan.legs.flatMap(({ remarks }, i) =>
    remarks.flatMap((remark) => {
      const text = supplyText(remark, units)
      if (said.has(text)) return []
      said.add(text)
      return [legRemarkLine(i + 1, text)]
    }),
  )
  const general = plan.remarks.filter(({ code }) => !URGENT.includes(code))
  return [...supplyTexts(general, units), ...whatIfLines(answer), ...ofLegs]
}

function legTable({ plan, shelf, clock }: TransferAnswer): readonly string[] {
  const { columns } = TRANSFER_WORDS
  const hasFractions = plan.legs.some(({ effectiveO2Fraction }) => effectiveO2Fraction !== null)
  const texts = plan.legs.map(({ setUp }) =>
    setUp === null ? TRANSFER_WORDS.roomAir : setUpText(setUp, shelf),
  )
  const setUpCell = (i: number): string =>
    i > 0 && texts[i] === texts[i - 1] ? TRANSFER_WORDS.asBefore : (texts[i] ?? '')
  return tableLines(
    [
      { heading: '' },
      { heading: columns.leg },
      { heading: columns.time },
      { heading: columns.setUp, widthMost: 30 },
      { heading: columns.draw, align: 'right' },
      { heading: columns.worst, align: 'right' },
      ...(hasFractions ? [{ heading: columns.fraction, align: 'right' } as const] : []),
    ],
    plan.legs.map((leg, i) => ({
      cells: [
        numberText(i + 1, 1),
        legName(leg.leg.kind),
        `${clockTimeText(clock(leg.fromMinute))}–${clockTimeText(clock(leg.untilMinute))}`,
        setUpCell(i),
        leg.leg.feed === 'place' ? TRANSFER_WORDS.fromPlace : numberText(leg.carriedLpm, 0.1),
        numberText(leg.worstCarriedLpm, 0.1),
        leg.effectiveO2Fraction === null ? '' : fractionText(leg.effectiveO2Fraction),
      ],
    })),
  )
}
