// A set-up in one line, as it would be said at the bed. Leaves out what it delivers.
import type { SetUp } from '../kit/set-up.ts'
import type { FlowStep } from '../kit/source-row.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { FAMILY_NAMES, FIT_NAMES, HUMIDIFICATION_NAMES, SIZE_NAMES, SOURCE_NAMES } from './names.ts'
import { flowText, fractionText } from './number-text.ts'

export function flowStepText(step: FlowStep): string {
  return step.kind === 'flush' ? 'flush (meter fully open)' : flowText(step.flowLpm)
}

function typedFlowText(flowLpm: number | 'flush'): string {
  return flowStepText(flowLpm === 'flush' ? { kind: 'flush' } : { kind: 'scale', flowLpm })
}

/** "non-rebreather mask, adult, 15 L/min" */
export function setUpShortText(setUp: SetUp): string {
  return listed([
    FAMILY_NAMES[setUp.family],
    SIZE_NAMES[setUp.size],
    setUp.setO2Fraction === null ? '' : `set to ${fractionText(setUp.setO2Fraction)}`,
    flowStepText(setUp.flow),
    overText(setUp),
  ])
}

/** With source, humidifier and a fit that is not the usual one. */
export function setUpText(setUp: SetUp): string {
  return listed([
    setUpShortText(setUp),
    SOURCE_NAMES[setUp.source.kind],
    setUp.humidification === 'none' ? '' : HUMIDIFICATION_NAMES[setUp.humidification],
    setUp.fit === 'gentle' ? '' : FIT_NAMES[setUp.fit],
  ])
}

/** What is on now, as typed; null is room air. */
export function setUpOnNowText(setUp: SetUpOnNow | null): string {
  if (setUp === null) return 'room air'
  const over = setUp.over
  return listed([
    FAMILY_NAMES[setUp.family],
    setUp.size === undefined ? '' : SIZE_NAMES[setUp.size],
    setUp.setO2Fraction === undefined ? '' : `set to ${fractionText(setUp.setO2Fraction)}`,
    typedFlowText(setUp.flowLpm),
    over === undefined
      ? ''
      : `under a ${FAMILY_NAMES[over.family]} at ${typedFlowText(over.flowLpm)}`,
    SOURCE_NAMES[setUp.sourceKind],
    setUp.fit === undefined ? '' : FIT_NAMES[setUp.fit],
  ])
}

function overText(setUp: SetUp): string {
  if (setUp.over === null) return ''
  return `${FAMILY_NAMES[setUp.over.family]} over it at ${flowStepText(setUp.over.flow)}`
}

function listed(parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(', ')
}
