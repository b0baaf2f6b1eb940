// A delivered breath as lines for a terminal: the honest line first, then where the gas came from, the numbers, cautions.
import { ribbonText } from '../pictures/breath-ribbon.ts'
import { breathRows } from '../words/breath-rows.ts'
import { onReallyText } from '../words/breath-text.ts'
import { NOT_CHECKED, STANDING_CAUTIONS } from '../words/caution-texts.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { fractionText } from '../words/number-text.ts'
import type { PressureUnit } from '../words/number-text.ts'
import { notesOf } from '../words/plan-text.ts'
import { reasonText, remarkText } from '../words/remark-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { warningText } from '../words/warning-text.ts'
import type { BreathAnswer, SetUpAnswer } from './breath-answer.ts'
import { headLines } from './head-lines.ts'
import type { PlanWords } from './plan-question.ts'
import { bulleted, indented, section, tableLines } from './table.ts'
import { ribbonOf } from './ribbon-of.ts'

export interface BreathLinesOptions {
  readonly answer: BreathAnswer
  readonly given: PlanWords
  readonly pressure: PressureUnit
}

export function breathLines(options: BreathLinesOptions): readonly string[] {
  const { answer, given } = options
  const { plan, onNow, named } = answer
  return [
    ...plan.emergency.flatMap((line) => indented(`! ${remarkText(line)}`, 0)),
    '',
    ...headLines({ plan, given, pressure: options.pressure }),
    ...(onNow === null ? [] : setUpLines(CLI_WORDS.onNow, onNow, options)),
    ...(named === null ? [] : setUpLines(CLI_WORDS.named, named, options)),
    ...section(CLI_WORDS.toCheck, bulleted(given.warnings.map(warningText))),
    ...section(
      CLI_WORDS.cautions,
      bulleted([...plan.cautions.map(remarkText), ...STANDING_CAUTIONS]),
    ),
  ]
}

function setUpLines(
  heading: string,
  one: SetUpAnswer,
  options: BreathLinesOptions,
): readonly string[] {
  const { given, pressure } = options
  const rows = breathRows({ ...one, pressure })
  return [
    '',
    ...indented(`${heading}: ${setUpText(one.setUp, given.shelf)}`, 0),
    ...indented(reallyText(one)),
    ...section(CLI_WORDS.inhaled, bulleted(ribbonText(ribbonOf(one)).slice(1))),
    '',
    ...tableLines(
      [
        { heading: CLI_WORDS.columns.quantity, widthMost: 50 },
        { heading: CLI_WORDS.columns.value, widthMost: 46 },
      ],
      rows.map(({ name, value }) => ({ cells: [name, value] })),
    ),
    ...section(CLI_WORDS.ruledOut, bulleted(one.reasons.map(reasonText))),
    ...section(CLI_WORDS.mind, bulleted(one.ranked === null ? [] : notesOf(one.ranked))),
  ]
}

/** The one honest line to copy. */
export function reallyText(one: SetUpAnswer): string {
  const said =
    one.ranked === null
      ? fractionText(one.bedside.breath.effectiveO2Fraction)
      : onReallyText({
          effective: one.ranked.effectiveO2Fraction,
          printed: one.ranked.printedO2Fraction,
        })
  return one.bedside.isChecked ? said : `${said}; ${NOT_CHECKED}`
}
