// A set-up in one line, as it would be said at the bed. Leaves out what it delivers.
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { FlowStep, SourceRow } from '../kit/source-row.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { FAMILY_NAMES, FIT_NAMES, HUMIDIFICATION_NAMES, SIZE_NAMES, SOURCE_NAMES } from './names.ts'
import { flowText, fractionText } from './number-text.ts'
import { decimalSign, say, translated } from './say.ts'

export function flowStepText(step: FlowStep): string {
  return step.kind === 'flush' ? say('flush, meter fully open') : flowText(step.flowLpm)
}

function typedFlowText(flowLpm: number | 'flush'): string {
  return flowStepText(flowLpm === 'flush' ? { kind: 'flush' } : { kind: 'scale', flowLpm })
}

/** "non-rebreather mask, adult, 15 L/min" */
export function setUpShortText(setUp: SetUp): string {
  return listed([
    FAMILY_NAMES[setUp.family],
    SIZE_NAMES[setUp.size],
    setUp.setO2Fraction === null
      ? ''
      : say('set to {fraction}', { fraction: fractionText(setUp.setO2Fraction) }),
    flowStepText(setUp.flow),
    overText(setUp),
  ])
}

/** The source as the shelf labels it, else by its kind. */
export function sourceText(source: SourceRow): string {
  return source.label === '' ? SOURCE_NAMES[source.kind] : translated(source.label)
}

/** With source, humidifier and a fit that is not the usual one; the shelf tells two interfaces of one family apart. */
export function setUpText(setUp: SetUp, shelf?: Pick<Shelf, 'interfaces'>): string {
  return listed([
    `${setUpShortText(setUp)} (${sourceText(setUp.source)})`,
    shelf === undefined ? '' : ownLabel(setUp, shelf),
    setUp.humidification === 'none' ? '' : HUMIDIFICATION_NAMES[setUp.humidification],
    setUp.fit === 'gentle' ? '' : FIT_NAMES[setUp.fit],
  ])
}

/** What is on now, as typed; null is room air. */
export function setUpOnNowText(setUp: SetUpOnNow | null): string {
  if (setUp === null) return say('room air')
  const over = setUp.over
  return listed([
    FAMILY_NAMES[setUp.family],
    setUp.size === undefined ? '' : SIZE_NAMES[setUp.size],
    setUp.setO2Fraction === undefined
      ? ''
      : say('set to {fraction}', { fraction: fractionText(setUp.setO2Fraction) }),
    typedFlowText(setUp.flowLpm),
    over === undefined
      ? ''
      : say('under a {family} at {flow}', {
          family: FAMILY_NAMES[over.family],
          flow: typedFlowText(over.flowLpm),
        }),
    SOURCE_NAMES[setUp.sourceKind],
    setUp.fit === undefined ? '' : FIT_NAMES[setUp.fit],
  ])
}

/** The interface's own label where the shelf holds more than one row of the family. */
export function ownLabel(setUp: SetUp, shelf: Pick<Shelf, 'interfaces'>): string {
  const rows = shelf.interfaces.filter(({ family }) => family === setUp.family)
  const row = rows.find(({ id }) => id === setUp.interfaceId)
  return rows.length > 1 && row !== undefined ? translated(row.label) : ''
}

function overText(setUp: SetUp): string {
  if (setUp.over === null) return ''
  return say('{family} over it at {flow}', {
    family: FAMILY_NAMES[setUp.over.family],
    flow: flowStepText(setUp.over.flow),
  })
}

/** Between two numbers a decimal comma asks for a stronger sign: "eingestellt auf 0,6; 15 L/min". */
function listed(parts: readonly string[]): string {
  return parts
    .filter((part) => part !== '')
    .reduce((said, part) => {
      if (said === '') return part
      const isAmbiguous = decimalSign() === ',' && /\d$/.test(said) && /^\d/.test(part)
      return said + (isAmbiguous ? '; ' : ', ') + part
    }, '')
}
