// Why there is no sheet, one line for each reason. Leaves out that there is none.
import type { Humidification } from '../kit/shelf.ts'
import type { HumidifierRefused } from '../sheet/sheet-chain.ts'
import type { NoSheet } from '../sheet/sheet.ts'
import { mendText, refusalText } from './joining-refusals.ts'
import { HUMIDIFIER_NAMES } from './joining-names.ts'
import { reasonText, remarkText } from './remark-text.ts'
import { say } from './say.ts'
import { started } from './sheet-value.ts'

/** That there is none, then a line for each reason. */
export function noSheetLines(answer: NoSheet): readonly string[] {
  switch (answer.why) {
    case 'ruled-out':
      return [ruledOutText(), ...answer.reasons.map(reasonText)]
    case 'humidifier':
      return [humidifierRefusedText(answer.humidification), ...humidifierReasons(answer)]
    case 'not-on-shelf':
      return [say('No sheet: this set-up is not on the shelf used here.')]
  }
}

function ruledOutText(): string {
  return say('No sheet: the plan rules this set-up out for this patient.')
}

function humidifierRefusedText(humidification: Humidification): string {
  if (humidification === 'none')
    return say('No sheet: this set-up is not used without a humidifier.')
  const humidifier = HUMIDIFIER_NAMES[humidification]
  return say('No sheet: this set-up does not go with the humidifier chosen ({humidifier}).', {
    humidifier,
  })
}

function humidifierReasons(refused: Omit<HumidifierRefused, 'kind'>): readonly string[] {
  const reasons = [
    ...refused.refusals.map((refusal) =>
      say('{fault}; mend: {mend}', { fault: refusalText(refusal), mend: mendText(refusal) }),
    ),
    ...refused.breaches.map(remarkText),
  ]
  if (reasons.length > 0) return reasons.map(started)
  return [say('No parts lead from this source through it to this interface.')]
}
