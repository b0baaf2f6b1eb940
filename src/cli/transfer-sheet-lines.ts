// The transfer sheet to print: what goes along, clock times, boxes to tick, lines to fill in. Leaves out everything that is only for planning.
import { whoText } from '../words/cli-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { supplyText, supplyTexts } from '../words/supply-text.ts'
import {
  setUpDrawLine,
  SHEET_WORDS,
  sheetHeadLine,
  sheetStartLine,
  TRANSFER_WORDS,
} from '../words/supply-transfer-cli-text.ts'
import { bulleted, indented, section, wrapWords, COLUMNS_MOST } from './table.ts'
import { headline, runLines, URGENT, whatIfLines } from './transfer-lines.ts'
import type { TransferAnswer } from './verb-transfer.ts'

export function transferSheetLines(answer: TransferAnswer): readonly string[] {
  const { file, plan, shelf, clock, units } = answer
  const who = whoText(file.bed, file.code)
  const [first] = plan.legs
  const draw =
    first === undefined || first.setUp === null
      ? TRANSFER_WORDS.roomAir
      : setUpDrawLine(setUpText(first.setUp, shelf), first.carriedLpm)
  return [
    SHEET_WORDS.title,
    '═'.repeat(SHEET_WORDS.title.length),
    ...(file.isInvented === true ? [SHEET_WORDS.invented] : []),
    ...indented(sheetHeadLine(who, draw), 0),
    '',
    ...headline(answer),
    ...indented(sheetStartLine(clock(0)), 0),
    ...section(TRANSFER_WORDS.cylinders, runLines(answer)),
    ...section(SHEET_WORDS.lift, bulleted(whatIfLines(answer))),
    ...section(
      TRANSFER_WORDS.remarks,
      bulleted(
        supplyTexts(
          plan.remarks.filter(({ code }) => !URGENT.includes(code)),
          units,
        ),
      ),
    ),
    ...section(
      TRANSFER_WORDS.checks,
      plan.checks.flatMap((check) => boxed(supplyText(check, units))),
    ),
    '',
    ...indented(SHEET_WORDS.gauge, 0),
    ...indented(SHEET_WORDS.signed, 0),
  ]
}

function boxed(text: string): readonly string[] {
  const indent = SHEET_WORDS.box.length + 1
  return wrapWords(text, COLUMNS_MOST - indent).map((line, i) =>
    i === 0 ? `${SHEET_WORDS.box} ${line}` : ' '.repeat(indent) + line,
  )
}
