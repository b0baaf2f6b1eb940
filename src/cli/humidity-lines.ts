// The humidity answer as lines for a terminal: water first, then what is broken, to ask, to do, and what it rests on. Leaves out oxygen.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { SetUp } from '../kit/set-up.ts'
import { STANDING_CAUTIONS } from '../words/caution-texts.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { assumptionText, HUMIDITY_HEADINGS, humidityFactLines } from '../words/humidity-text.ts'
import { remarkText } from '../words/remark-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import type { PlanWords } from './plan-question.ts'
import { bulleted, indented, section } from './table.ts'

export interface HumidityToTell {
  readonly setUp: SetUp
  readonly answer: HumidityAnswer
  readonly given: PlanWords
  readonly version: string
}

const WEIGHTS = ['breach', 'ask', 'do', 'note'] as const

export function humidityLines({ setUp, answer, given }: HumidityToTell): readonly string[] {
  return [
    ...indented(setUpText(setUp, given.shelf), 0),
    ...waterLines(answer),
    ...section(CLI_WORDS.cautions, bulleted(STANDING_CAUTIONS)),
  ]
}

/** Water, rules and what the numbers rest on. */
export function waterLines(answer: HumidityAnswer): readonly string[] {
  return [
    ...bulleted(humidityFactLines(answer)),
    ...WEIGHTS.flatMap((weight) =>
      section(
        HUMIDITY_HEADINGS[weight],
        bulleted(answer.rules.filter((rule) => rule.weight === weight).map(remarkText)),
      ),
    ),
    ...section(HUMIDITY_HEADINGS.assumed, bulleted(answer.assumptions.map(assumptionText))),
  ]
}
