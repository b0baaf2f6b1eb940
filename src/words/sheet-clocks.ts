// Clock times of humidifier and cylinder on a sheet, or that they were not worked out. Leaves out how they are worked out.
import type { Sheet } from '../sheet/sheet.ts'
import { numberText } from './number-text.ts'
import { remarkText } from './remark-text.ts'
import { say } from './say.ts'
import type { SheetFact } from './sheet-text.ts'
import { momentText } from './sheet-value.ts'
import { drawText, gasPressureText } from './supply-value.ts'

export function clockLines(sheet: Sheet): readonly SheetFact[] {
  return [...humidifierLines(sheet), ...cylinderLines(sheet)]
}

function humidifierLines({ humidity }: Sheet): readonly SheetFact[] {
  const said = humidity.map(remarkText)
  return said.length === 0 ? [] : [{ name: say('Humidity'), value: said.join('; ') }]
}

function cylinderLines({ cylinder }: Sheet): readonly SheetFact[] {
  if (cylinder === null) return []
  const name = say('Cylinder')
  if (cylinder.kind === 'not-worked-out') {
    return [{ name, value: say('time to change not worked out: write it here ________') }]
  }
  const { input } = cylinder
  const filling = say('{litres} L at {gauge}', {
    litres: numberText(input.waterVolumeL, 0.1),
    gauge: gasPressureText(input.gaugeKpa),
  })
  if (!cylinder.isUsable) {
    return [{ name, value: say('{filling}: nothing to use, take a full one', { filling }) }]
  }
  const value = say(
    'change at {change} or at {left}, empty at {empty} ({filling}, drawing up to {draw})',
    {
      change: momentText(cylinder.changeAt),
      left: gasPressureText(input.leftGaugeKpa),
      empty: momentText(cylinder.emptyAt),
      filling,
      draw: drawText(cylinder.drawLpm),
    },
  )
  return [{ name, value }]
}
