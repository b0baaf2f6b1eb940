// The answer for one cylinder as lines for a terminal. Leaves out what a page shows.
import type { CylinderAnswer, MinutesSpan } from '../supply/cylinder-answer.ts'
import { clockAfter } from '../supply/duration.ts'
import type { SupplyRemark } from '../supply/supply-remark.ts'
import {
  changeLine,
  contentsLine,
  cylinderBasisLine,
  drawLine,
  emptyLine,
  ruleOfThumbLine,
  SUPPLY_WORDS,
} from '../words/supply-cli-text.ts'
import { drawPartName } from '../words/supply-names.ts'
import { supplyTexts } from '../words/supply-text.ts'
import { drawText } from '../words/supply-value.ts'
import { bulleted, indented, section } from './table.ts'
import type { CylinderGiven } from './verb-cylinder.ts'

export function cylinderLines(options: {
  readonly given: CylinderGiven
  readonly answer: CylinderAnswer
  readonly remarks: readonly SupplyRemark[]
}): readonly string[] {
  const { given, answer, remarks } = options
  const { question, drawn, units } = given
  const { cylinder, use, drawLpm, drawLowLpm, drawHighLpm } = question
  const facts = [
    contentsLine(
      {
        contentsL: answer.contentsL,
        usableL: answer.toChange.usableL,
        leftGaugeKpa: use.leftGaugeKpa,
      },
      units,
    ),
    drawLine({ drawLpm, lowLpm: drawLowLpm ?? drawLpm, highLpm: drawHighLpm ?? drawLpm }),
    ...(answer.ruleOfThumbMinutes === null ? [] : [ruleOfThumbLine(answer.ruleOfThumbMinutes)]),
  ]
  const basis = cylinderBasisLine(
    {
      ...cylinder,
      usedAtC: use.usedAtC ?? cylinder.readAtC,
      barometricKpa: use.barometricKpa,
      regulatorMinimumGaugeKpa: use.regulatorMinimumGaugeKpa ?? 0,
    },
    units,
  )
  return [
    ...timeLines(given, answer),
    '',
    ...facts.flatMap((fact) => indented(fact, 0)),
    ...section(
      SUPPLY_WORDS.parts,
      bulleted(
        (drawn?.parts ?? []).map(
          ({ part, oxygenLpm }) => `${drawPartName(part)}: ${drawText(oxygenLpm)}`,
        ),
      ),
    ),
    ...section(SUPPLY_WORDS.remarks, bulleted(supplyTexts(remarks, units))),
    ...section(SUPPLY_WORDS.assumed, indented(basis)),
  ]
}

function timeLines({ now }: CylinderGiven, { change, empty }: CylinderAnswer): readonly string[] {
  const clock = (span: MinutesSpan, minutes: keyof MinutesSpan) => clockAfter(now, span[minutes])
  return [
    ...(change === null
      ? []
      : [
          changeLine({
            minutes: change.middleMinutes,
            clock: clock(change, 'middleMinutes'),
            earliest: clock(change, 'lowMinutes'),
          }),
        ]),
    ...(empty === null
      ? []
      : [emptyLine({ minutes: empty.middleMinutes, clock: clock(empty, 'middleMinutes') })]),
  ]
}
