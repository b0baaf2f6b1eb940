// The settings of a sheet in large type: interface, size, source, flow, setting. Leaves out what they give.
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { HUMIDIFIER_NAMES } from './joining-names.ts'
import { FAMILY_NAMES, SIZE_NAMES } from './names.ts'
import { fractionText, numberText } from './number-text.ts'
import { say } from './say.ts'
import { flowStepText, ownLabel, sourceText } from './set-up-text.ts'
import type { SheetFact } from './sheet-text.ts'

export function settingFacts(options: {
  readonly sheet: Pick<Sheet, 'setUp' | 'humidifier' | 'hasExchangerPart'>
  readonly shelf: Pick<Shelf, 'interfaces' | 'sources'>
}): readonly SheetFact[] {
  const { setUp } = options.sheet
  const label = ownLabel(setUp, options.shelf)
  const family = FAMILY_NAMES[setUp.family]
  return [
    {
      name: say('Interface'),
      value: label === '' ? family : say('{family}: {label}', { family, label }),
    },
    { name: say('Size'), value: SIZE_NAMES[setUp.size] },
    { name: say('Source'), value: sourceText(setUp.source) },
    ...(setUp.setO2Fraction === null
      ? []
      : [{ name: say('Setting'), value: fractionText(setUp.setO2Fraction) }]),
    {
      name: setUp.over === null ? say('Flow') : say('Flow of the cannula'),
      value: markedFlowText(setUp, options.shelf),
    },
    ...(setUp.over === null
      ? []
      : [{ name: say('Flow of the mask'), value: flowStepText(setUp.over.flow) }]),
    ...humidifierFacts(options.sheet),
  ]
}

/** A jet nebuliser is named as the source. */
function humidifierFacts({
  humidifier,
  hasExchangerPart,
}: Pick<Sheet, 'humidifier' | 'hasExchangerPart'>): readonly SheetFact[] {
  const name = say('Humidifier')
  if (hasExchangerPart) return [{ name, value: HUMIDIFIER_NAMES.exchanger }]
  if (humidifier === 'none' || humidifier === 'aerosol') return []
  return [{ name, value: HUMIDIFIER_NAMES[humidifier] }]
}

const ML_PER_L = 1000

/** As the meter is marked: on one in mL/min a number in L/min, read off in haste, would be a thousandth. */
function markedFlowText({ source, flow }: SetUp, shelf: Pick<Shelf, 'sources'>): string {
  const row = shelf.sources.find(({ id }) => id === source.id)
  if (row?.markedIn !== 'mL/min' || flow.kind === 'flush') return flowStepText(flow)
  return say('{marked} mL/min ({flow})', {
    marked: numberText(flow.flowLpm * ML_PER_L, 1),
    flow: flowStepText(flow),
  })
}
