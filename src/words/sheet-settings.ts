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
import { started } from './sheet-value.ts'

export function settingFacts(options: {
  readonly sheet: Pick<Sheet, 'setUp' | 'humidifier' | 'hasExchangerPart'>
  readonly shelf: Pick<Shelf, 'interfaces' | 'sources'>
}): readonly SheetFact[] {
  const { setUp } = options.sheet
  return [
    { name: say('Interface'), value: interfaceText(setUp, options.shelf) },
    { name: say('Size'), value: started(SIZE_NAMES[setUp.size]) },
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
  if (hasExchangerPart) return [{ name, value: started(HUMIDIFIER_NAMES.exchanger) }]
  if (humidifier === 'none' || humidifier === 'aerosol') return []
  return [{ name, value: started(HUMIDIFIER_NAMES[humidifier]) }]
}

/** By its own label where the shelf holds more than one of the family; the family before it where the label does not tell it. */
function interfaceText(setUp: SetUp, shelf: Pick<Shelf, 'interfaces'>): string {
  const label = ownLabel(setUp, shelf)
  const family = FAMILY_NAMES[setUp.family]
  if (label === '') return started(family)
  return tells(label, family)
    ? started(label)
    : started(say('{family}: {label}', { family, label }))
}

/** All words of the name, none shorter than four letters, stand in the label. */
function tells(label: string, name: string): boolean {
  const words = name.toLowerCase().match(/\p{L}{4,}/gu) ?? []
  return words.every((word) => label.toLowerCase().includes(word))
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
