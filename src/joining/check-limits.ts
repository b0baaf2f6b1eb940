// Faults of flow, pressure and reach: what the parts cannot carry, hold or bridge. Leaves out scales (check-scale.ts).
import { feederOf, placed } from './chain.ts'
import type { Chain, PlacedPart } from './chain.ts'
import type { PassingFlow } from './flows.ts'
import { PUSH_FIT_HOLDS_KPA, REACH_M } from './limits.ts'
import { entersByAirPorts, linesToPatients } from './lines.ts'
import type { PartPressure } from './pressures.ts'
import type { Refusal } from './refusal.ts'

export interface LimitQuestion {
  readonly chain: Chain
  readonly flows: readonly PassingFlow[]
  readonly pressures: readonly PartPressure[]
}

export function limitFaults(question: LimitQuestion): readonly Refusal[] {
  const { chain } = question
  return [
    ...chain.parts.flatMap((one, at) => [
      ...ratedFaults(question, one, at),
      ...pressureFaults(question, one, at),
    ]),
    ...reachFaults(chain),
  ]
}

/** Rated flow of humidifiers and tubes by label, of interfaces by label or family. At flush the upper end of an interface does not count: it is chosen on purpose. */
function ratedFaults(
  { chain, flows, pressures }: LimitQuestion,
  { part }: PlacedPart,
  at: number,
): readonly Refusal[] {
  const { minLpm, maxLpm, isFromLabel } = part.flow
  const flowLpm = flowInto({ chain, flows, at })
  const values = { part: part.label, flowLpm, from: isFromLabel ? 'label' : 'usual' }
  if (minLpm !== undefined && flowLpm < minLpm)
    return [{ code: 'FLOW_BELOW_RATED', values: { ...values, limitLpm: minLpm }, part: at }]
  const isFlush = chain.parts.some(({ setting }) => setting.isFlush === true)
  if (maxLpm === undefined || flowLpm <= maxLpm) return []
  if (isFlush && part.kind === 'interface') return []
  if (part.kind === 'oxygen-tubing') {
    const pressureKpa = pressures[at]?.inletKpa ?? 0
    const held = { part: part.label, flowLpm, pressureKpa, limitLpm: maxLpm }
    return [{ code: 'TUBE_ABOVE_ITS_LABEL', values: held, part: at }]
  }
  return [{ code: 'FLOW_ABOVE_RATED', values: { ...values, limitLpm: maxLpm }, part: at }]
}

/** Flow by the first inlet: of a cannula under a mask the cannula's, which its rated flow is for. */
export function flowInto(options: {
  readonly chain: Chain
  readonly flows: readonly PassingFlow[]
  readonly at: number
}): number {
  const { chain, flows, at } = options
  const { part } = placed(chain, at)
  if (part.family !== 'cannula-under-mask') return flows[at]?.flowLpm ?? 0
  const from = feederOf(chain, at, 0)
  return from === undefined ? 0 : (flows[from]?.flowLpm ?? 0)
}

function pressureFaults(
  { chain, flows, pressures }: LimitQuestion,
  { part }: PlacedPart,
  at: number,
): readonly Refusal[] {
  const pressure = pressures[at]
  if (pressure === undefined) return []
  const values = { part: part.label, flowLpm: flows[at]?.flowLpm ?? 0 }
  const pressureKpa = pressure.outletKpa
  const reliefKpa = part.humidifier?.reliefKpa
  if (reliefKpa !== undefined && pressureKpa >= reliefKpa)
    return [
      {
        code: 'RELIEF_VALVE_OPENS',
        values: { ...values, pressureKpa, limitKpa: reliefKpa },
        part: at,
      },
    ]
  const pushesKpa = part.source?.pushesKpaMax
  if (pushesKpa !== undefined && pressureKpa > pushesKpa)
    return [
      {
        code: 'SOURCE_CANNOT_PUSH',
        values: { ...values, pressureKpa, limitKpa: pushesKpa },
        part: at,
      },
    ]
  return tubeFault(chain, pressure, values, at)
}

/** A pushed-on tube holds only so much; the pressure stands at its near end. */
function tubeFault(
  chain: Chain,
  pressure: PartPressure,
  values: { readonly part: string; readonly flowLpm: number },
  at: number,
): readonly Refusal[] {
  const { part } = placed(chain, at)
  const limitKpa = PUSH_FIT_HOLDS_KPA.value
  if (part.tube === null || part.inlets[0] !== 'funnel' || pressure.inletKpa <= limitKpa) return []
  return [
    {
      code: 'TUBE_ABOVE_ITS_FLOW',
      values: { ...values, pressureKpa: pressure.inletKpa, limitKpa },
      part: at,
    },
  ]
}

/** Every line of the patient's own stream must bridge the way from the wall. */
function reachFaults(chain: Chain): readonly Refusal[] {
  const short = linesToPatients(chain)
    .filter((line) => !entersByAirPorts(chain, line))
    .map((line) => lengthOf(chain, line))
    .filter((lengthM) => lengthM < REACH_M.value)
  const [lengthM] = short.toSorted((a, b) => a - b)
  return lengthM === undefined
    ? []
    : [{ code: 'DOES_NOT_REACH', values: { lengthM, neededM: REACH_M.value } }]
}

/** Metres of tube on a line, counted in whole millimetres so that sums are exact. */
export function lengthOf(chain: Chain, line: readonly number[]): number {
  const millimetres = line.reduce(
    (sum, at) => sum + Math.round((placed(chain, at).part.tube?.lengthM ?? 0) * MM_PER_M),
    0,
  )
  return millimetres / MM_PER_M
}

const MM_PER_M = 1000
