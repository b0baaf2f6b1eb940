// Clock times of humidifier and cylinder on a sheet, or that they were not worked out. Leaves out how they are worked out.
import type { Sheet } from '../sheet/sheet.ts'
import type { SheetWater } from '../sheet/water-clock.ts'
import { whyNotMeasuredText } from './humidity-text.ts'
import { bandText, numberText } from './number-text.ts'
import { remarkText } from './remark-text.ts'
import { say, translated } from './say.ts'
import type { SheetFact } from './sheet-text.ts'
import { momentText } from './sheet-value.ts'
import { drawText, gasPressureText, shownGasUnits } from './supply-value.ts'

export function clockLines(sheet: Sheet): readonly SheetFact[] {
  return [
    ...chainLines(sheet),
    ...humidifierLines(sheet),
    ...waterLines(sheet),
    ...cylinderLines(sheet),
  ]
}

function chainLines({ chain, missing }: Sheet): readonly SheetFact[] {
  const name = say('Parts in order')
  if (chain === null)
    return [{ name, value: say('not worked out: join them by the ward’s own list') }]
  const parts = chain.map((line) => line.map(translated).join(' – ')).join('; ')
  if (missing.length === 0) return [{ name, value: parts }]
  const away = missing.map(translated).join(', ')
  return [{ name, value: say('{parts}. NOT AT HAND, get first: {away}', { parts, away }) }]
}

/** Water of dry low flow into a working nose needs no line. */
function waterLines({ water }: Sheet): readonly SheetFact[] {
  if (water === null || (water.verdict === 'not-required' && water.emptyAt === null)) return []
  const { low, middle, high } = water.vapourMgPerLBtps
  const band = bandText({ median: middle, low, high }, { step: 1, unit: 'mg/L' })
  const value = [verdictText(water, band), emptyText(water)]
    .filter((part) => part !== '')
    .join('; ')
  return [{ name: say('Water at the airway'), value }]
}

function verdictText(water: SheetWater, band: string): string {
  const { verdict, leastMgPerL, isDisputed } = water
  if (leastMgPerL === null) return band
  const least = numberText(leastMgPerL, 1)
  if (verdict === 'not-measured') {
    const why = whyNotMeasuredText(water.notMeasured)
    return isDisputed
      ? say('{band}, not measured: {why}; some want {least} mg/L, views differ', {
          band,
          why,
          least,
        })
      : say('{band}, not measured: {why}; at least {least} mg/L wanted', { band, why, least })
  }
  if (isDisputed && verdict !== 'enough') {
    return say('{band}; some want {least} mg/L, views differ', { band, least })
  }
  switch (verdict) {
    case 'short':
      return say('{band}: TOO LITTLE, at least {least} mg/L wanted', { band, least })
    case 'perhaps':
      return say('{band}: perhaps enough, at least {least} mg/L wanted', { band, least })
    case 'enough':
    case 'not-required':
      return band
  }
}

function emptyText({ emptyAt }: SheetWater): string {
  return emptyAt === null
    ? ''
    : say('a full vessel may be empty at {time}: fill it before', {
        time: momentText(emptyAt),
      })
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
  const units = shownGasUnits()
  const filling = say('{litres} L at {gauge}', {
    litres: numberText(input.waterVolumeL, 0.1),
    gauge: gasPressureText(input.gaugeKpa, units),
  })
  if (!cylinder.isUsable) {
    return [{ name, value: say('{filling}: nothing to use, take a full one', { filling }) }]
  }
  const value = say(
    'change at {change} or at {left}, empty at {empty} ({filling}, drawing up to {draw})',
    {
      change: momentText(cylinder.changeAt),
      left: gasPressureText(input.leftGaugeKpa, units),
      empty: momentText(cylinder.emptyAt),
      filling,
      draw: drawText(cylinder.drawLpm),
    },
  )
  return [{ name, value }]
}
