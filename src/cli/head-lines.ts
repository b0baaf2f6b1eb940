// What every answer says first about its question: who, goal, pressure, shelf, sample, reading. Leaves out the answer.
import type { Plan } from '../planning/plan-types.ts'
import { DEMO_SHELF_NOTE } from '../words/caution-texts.ts'
import { CLI_WORDS, drawsText, whoText } from '../words/cli-text.ts'
import { goalText } from '../words/goal-text.ts'
import { pressureText } from '../words/number-text.ts'
import type { PressureUnit } from '../words/number-text.ts'
import { readingText } from '../words/plan-text.ts'
import { remarkText } from '../words/remark-text.ts'
import type { PlanWords } from './plan-question.ts'
import { indented } from './table.ts'

export interface HeadOptions {
  readonly plan: Plan
  readonly given: PlanWords
  readonly pressure: PressureUnit
}

export function headLines({ plan, given, pressure }: HeadOptions): readonly string[] {
  const who = whoText(given.case.bed, given.case.code)
  const facts = [
    ...(who === '' ? [] : [who]),
    `${CLI_WORDS.goal}: ${goalText(plan.goal)}`,
    `${CLI_WORDS.pressure}: ${pressureText({ pressureKpa: plan.barometricPressureKpa, unit: pressure })}`,
    `${CLI_WORDS.shelf}: ${given.isDemoShelf ? DEMO_SHELF_NOTE : given.shelf.hospital}`,
    readingText(plan.reading),
    ...plan.reading.remarks.map(remarkText),
    `${CLI_WORDS.sample}: ${drawsText(plan.draws, given.seed)}`,
  ]
  return facts.flatMap((fact) => indented(fact, 0))
}
