// Which readings a sheet rests on, in one line. Leaves out why a reading was put aside.
import type { Sheet } from '../sheet/sheet.ts'
import { assert } from '../errors.ts'
import { durationText, numberText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'
import { say } from './say.ts'

export const RESTS_ON_TEXTS: RemarkTexts = {
  RESTS_ON_SATURATION: (v) => say('saturation {percent} %', { percent: percent(v) }),
  RESTS_ON_SATURATION_PUT_ASIDE: (v) =>
    say('saturation {percent} %, put aside', { percent: percent(v) }),
  RESTS_ON_NO_SATURATION: () => say('no saturation: averages only'),
  RESTS_ON_RATE: (v) =>
    say('breathing rate {rate}/min', { rate: numberText(numberOf(v, 'ratePerMin'), 1) }),
  RESTS_ON_NO_RATE: () => say('no breathing rate counted'),
  RESTS_ON_BLOOD_GAS: (v) =>
    say('blood gas: PaCO₂ {pressure} kPa{rest}', {
      pressure: numberText(numberOf(v, 'arterialPco2Kpa'), 0.1),
      rest: gasRest(v),
    }),
}

export function restsOnText(sheet: Pick<Sheet, 'restsOn'>): string {
  return sheet.restsOn
    .map(({ code, values }) => {
      const text = RESTS_ON_TEXTS[code]
      assert(text !== undefined, `words/sheet text of ${code}`)
      return text(values)
    })
    .join('; ')
}

function percent(values: RemarkValues): string {
  return numberText(numberOf(values, 'saturationPercent'), 1)
}

function gasRest(values: RemarkValues): string {
  const ph =
    values['ph'] === undefined
      ? ''
      : say(', pH {ph}', { ph: numberText(numberOf(values, 'ph'), 0.01) })
  const ago =
    values['minutesAgo'] === undefined
      ? ''
      : say(', {time} before', { time: durationText(numberOf(values, 'minutesAgo')) })
  return ph + ago
}
