// Faults of what is set: flows and fractions that are no marks, a drive above the jet's, a ventilator mode that cycles. Leaves out flow through the other parts.
import { hasNoEvenMode } from '../kit/shelf.ts'
import { placed } from './chain.ts'
import type { Chain, PlacedPart } from './chain.ts'
import type { PassingFlow } from './flows.ts'
import type { Refusal } from './refusal.ts'

export function scaleFaults(chain: Chain, flows: readonly PassingFlow[]): readonly Refusal[] {
  return chain.parts.flatMap((one, at) => [
    ...markFaults(one, at),
    ...fractionFaults(one, at),
    ...modeFaults(one, at),
    ...driveFaults(chain, flows, at),
  ])
}

function markFaults({ part, setting }: PlacedPart, at: number): readonly Refusal[] {
  const marks = part.marksLpm
  const { flowLpm, isFlush } = setting
  if (marks === undefined || flowLpm === undefined || isFlush === true) return []
  if (marks.some((mark) => Math.abs(mark - flowLpm) < SAME)) return []
  return [{ code: 'FLOW_NOT_ON_METER', values: { part: part.label, flowLpm }, part: at }]
}

/** Sums of two marks may differ from the third by rounding, L/min. */
const SAME = 1e-9

function fractionFaults({ part, setting }: PlacedPart, at: number): readonly Refusal[] {
  const { o2Fraction } = setting
  const scale = part.fractions
  if (o2Fraction === undefined || scale === undefined || scale.includes(o2Fraction)) return []
  return [{ code: 'FRACTION_NOT_ON_SCALE', values: { part: part.label, o2Fraction }, part: at }]
}

/** Any mode that gives or supports breaths is refused: gas must stream evenly. So is a machine that has no other. */
function modeFaults({ part, setting }: PlacedPart, at: number): readonly Refusal[] {
  const values = { part: part.label }
  if (setting.mode === 'cycles-pressure')
    return [{ code: 'MODE_CYCLES_PRESSURE', values, part: at }]
  const { source } = part
  return source !== undefined && hasNoEvenMode(source)
    ? [{ code: 'NO_EVEN_MODE', values, part: at }]
    : []
}

function driveFaults(chain: Chain, flows: readonly PassingFlow[], at: number): readonly Refusal[] {
  const { part } = placed(chain, at)
  const limitLpm = part.source?.kind === 'jet-nebuliser' ? part.source.driveLpmMax : undefined
  if (limitLpm === undefined) return []
  return chain.joins.flatMap((join): readonly Refusal[] => {
    const flowLpm = flows[join.from]?.flowLpm ?? 0
    if (join.to !== at || join.at !== 'inlet' || flowLpm <= limitLpm) return []
    return [{ code: 'DRIVE_ABOVE_JET', values: { part: part.label, flowLpm, limitLpm }, part: at }]
  })
}
