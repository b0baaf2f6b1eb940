// A plan as lines for a terminal: emergency lines, the answer and why, the table, what was ruled out and assumed, cautions.
import type { Shelf } from '../kit/shelf.ts'
import type { Plan, RankedSetUp } from '../planning/plan-types.ts'
import { assumedText } from '../words/assumed-text.ts'
import { onReallyText } from '../words/breath-text.ts'
import { NOT_CHECKED, STANDING_CAUTIONS, UNCHECKED_NOTE } from '../words/caution-texts.ts'
import { CLI_WORDS, moreRowsText, ruledOutText } from '../words/cli-text.ts'
import type { PressureUnit } from '../words/number-text.ts'
import {
  answerText,
  excludedGroupText,
  excludedGroups,
  guidelineText,
  notesOf,
  whyFirstLines,
} from '../words/plan-text.ts'
import { reasonText, remarkText } from '../words/remark-text.ts'
import { setUpOnNowText, setUpText } from '../words/set-up-text.ts'
import { warningText } from '../words/warning-text.ts'
import { headLines } from './head-lines.ts'
import { planTable } from './plan-table.ts'
import type { PlanWords } from './plan-question.ts'
import { bulleted, indented, section } from './table.ts'

export interface PlanLinesOptions {
  readonly plan: Plan
  readonly given: PlanWords
  /** Rows of the table. */
  readonly rows: number
  readonly isAll: boolean
  readonly pressure: PressureUnit
}

export function planLines(options: PlanLinesOptions): readonly string[] {
  const { plan, given, isAll } = options
  return [
    ...plan.emergency.flatMap((line) => indented(`! ${remarkText(line)}`, 0)),
    '',
    ...headLines(options),
    '',
    ...indented(answerText(plan, given.shelf), 0),
    ...whyFirstLines(plan).flatMap((line) => indented(line)),
    ...firstNotes(plan),
    ...section(CLI_WORDS.table, tableLinesOf(options)),
    ...section(CLI_WORDS.onNow, onNowLines(plan, given)),
    ...section(CLI_WORDS.guideline, bulleted(plan.guideline.map(guidelineText))),
    ...section(CLI_WORDS.ruledOut, ruledOutLines(plan, given.shelf, isAll)),
    ...section(CLI_WORDS.assumed, assumedLines(plan)),
    ...section(CLI_WORDS.toCheck, bulleted(given.warnings.map(warningText))),
    ...section(
      CLI_WORDS.cautions,
      bulleted([...plan.cautions.map(remarkText), ...STANDING_CAUTIONS]),
    ),
  ]
}

function firstNotes(plan: Plan): readonly string[] {
  const first = plan.ranked[0]
  return first === undefined ? [] : section(CLI_WORDS.mind, bulleted(notesOf(first)))
}

function tableLinesOf(options: PlanLinesOptions): readonly string[] {
  const { plan, rows } = options
  const shown = plan.ranked.slice(0, rows)
  if (shown.length === 0) return []
  return [
    ...planTable(shown, plan, options.given.shelf),
    ...(shown.every((one) => one.isChecked) ? [] : [UNCHECKED_NOTE]),
    ...(shown.filter((one) => one.isEqualToFirst).length > 1 ? indented(CLI_WORDS.equals, 0) : []),
    ...(shown.length === plan.ranked.length
      ? []
      : [moreRowsText(shown.length, plan.ranked.length)]),
  ]
}

function onNowLines(plan: Plan, given: PlanWords): readonly string[] {
  const { onNow } = given.case
  if (onNow === undefined) return []
  const said = indented(setUpOnNowText(onNow.setUp))
  return plan.onNow === null ? said : [...said, ...indented(reallyText(plan.onNow))]
}

function reallyText(ranked: RankedSetUp): string {
  const said = onReallyText({
    effective: ranked.effectiveO2Fraction,
    printed: ranked.printedO2Fraction,
  })
  return ranked.isChecked ? said : `${said}; ${NOT_CHECKED}`
}

function ruledOutLines(plan: Plan, shelf: Shelf, isAll: boolean): readonly string[] {
  const { excluded, ranked } = plan
  if (excluded.length === 0) return []
  const total = indented(ruledOutText(excluded.length, excluded.length + ranked.length))
  const each = excluded.map(
    (one) => `${setUpText(one.setUp, shelf)}: ${one.reasons.map(reasonText).join('; ')}`,
  )
  const groups = excludedGroups(plan).map(excludedGroupText)
  return [...total, ...bulleted(isAll ? each : [...groups, CLI_WORDS.listAll])]
}

function assumedLines(plan: Plan): readonly string[] {
  return plan.assumed.length === 0
    ? indented(CLI_WORDS.nothingAssumed)
    : bulleted(plan.assumed.map(assumedText))
}
