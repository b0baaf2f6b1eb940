// The humidity answer as JSON (schema/humidity.schema.json), the text of every code beside it. Leaves out oxygen.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import { assumptionText, humidityFactLines } from '../words/humidity-text.ts'
import { remarkText } from '../words/remark-text.ts'
import type { HumidityToTell } from './humidity-lines.ts'
import { jsonText } from './json-output.ts'
import { toldHead, toldSetUp } from './json-parts.ts'

export const HUMIDITY_JSON_FORMAT = 'oxwright-humidity-1'

export function humidityJson(tell: HumidityToTell): string {
  const { setUp, answer } = tell
  return jsonText({
    format: HUMIDITY_JSON_FORMAT,
    ...toldHead(tell),
    setUp: toldSetUp(setUp),
    ...toldHumidity(answer),
  })
}

/** The answer and its lines, as every verb that tells of water gives them. */
export function toldHumidity(answer: HumidityAnswer): object {
  return {
    humidity: {
      ...answer,
      rules: answer.rules.map((rule) => ({ ...rule, text: remarkText(rule) })),
      assumptions: answer.assumptions.map((one) => ({ ...one, text: assumptionText(one) })),
    },
    lines: humidityFactLines(answer),
  }
}
