// The line about water on Bedside. Leaves out everything else the humidity answer says, which verb and sheet tell.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import { humidityFlushText, humidityLineText, shortfallText } from './humidity-text.ts'
import { say } from './say.ts'

export const HUMIDITY_LINE = {
  working: say('Water at the airway: working it out …'),
  failed: say('Water at the airway could not be worked out.'),
} as const

/** "Water at the airway about 14 mg/L, 11–17 mg/L, of 33 mg/L required; too dry: 19 mg/L missing." Null: opened to flush. */
export function humiditySummaryText(answer: HumidityAnswer | null): string {
  return `${capital(summaryOf(answer))}.`
}

function summaryOf(answer: HumidityAnswer | null): string {
  if (answer === null) return humidityFlushText()
  const line = humidityLineText(answer)
  return answer.requirement.leastMgPerL === null
    ? line
    : say('{line}; {shortfall}', { line, shortfall: shortfallText(answer) })
}

function capital(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1)
}
