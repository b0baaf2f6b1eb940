// What must be said of a sound chain, as codes with values: no breaths and no alarm, supplies it needs, what fails to what, meters that read low, water in loops. Leaves out faults.
import { streamLpm } from '../kit/feeds.ts'
import { standardFlowFactor } from '../physics/flowmeter.ts'
import type { ShelfSource } from '../kit/shelf.ts'
import type { Provenance } from '../units/provenance.ts'
import type { Chain, PlacedPart } from './chain.ts'
import { drivingFlow } from './flows.ts'
import type { PassingFlow } from './flows.ts'
import { ENTRAINMENT_DISTURBED_KPA, LOOP_HANGS_M } from './limits.ts'
import type { Part } from './part.ts'
import type { PartPressure } from './pressures.ts'
import { traitsOf } from './traits.ts'

export const CHAIN_REMARKS = [
  'NO_BREATHS_GIVEN',
  'NO_ALARM_TO_COUNT_ON',
  'INSPIRATORY_LIMB_ONLY',
  'NEEDS_BOTH_GASES',
  'NEEDS_MAINS',
  'WHEN_AIR_FAILS',
  'WHEN_OXYGEN_FAILS',
  'WHEN_MAINS_FAILS',
  'BIAS_FLOW_USE',
  'LEAK_COMPENSATION_USE',
  'LIMB_FILTER',
  'MODE_TO_SET',
  'MODE_NOT_STATED',
  'METER_READS_LOW',
  'METER_READS_LOW_UNKNOWN',
  'ENTRAINMENT_DISTURBED',
  'PRESSURE_LOSS_NOT_KNOWN',
  'WATER_IN_LOOP',
  'RATED_FROM_LABEL',
  'COLLAR_TAKES_AIR',
] as const
export type ChainRemarkCode = (typeof CHAIN_REMARKS)[number]

export interface ChainRemark extends Provenance {
  readonly code: ChainRemarkCode
  readonly values: Readonly<Record<string, number | string>>
  readonly part?: number
}

interface RemarkQuestion {
  readonly chain: Chain
  readonly flows: readonly PassingFlow[]
  readonly pressures: readonly PartPressure[]
  readonly barometricKpa: number
}

const TRADE = { known: 'common-practice' } as const

export function chainRemarks(question: RemarkQuestion): readonly ChainRemark[] {
  const { chain, flows, pressures } = question
  return chain.parts.flatMap((one, part) => {
    const pressure = pressures[part]
    const flowLpm = flows[part]?.flowLpm ?? 0
    if (pressure === undefined) return []
    return [
      ...mixerRemarks(one),
      ...meterRemarks(one, pressure, question.barometricKpa),
      ...jetRemarks(question, one, part),
      ...lossRemarks(question, part),
      ...waterRemarks(question, part),
      ...labelRemarks(one, flowLpm),
    ].map((remark) => ({ ...remark, part }))
  })
}

/** A ventilator here is a source of gas: nobody breathes for the patient and nothing watches. Unknown is said as unknown. */
function mixerRemarks({ part }: PlacedPart): readonly ChainRemark[] {
  const { source } = part
  if (source === undefined || !('fractionSteps' in source)) return []
  const isVentilator = source.kind === 'ventilator'
  const values = { part: part.label }
  const say = (code: ChainRemarkCode, more: ChainRemark['values'] = {}): ChainRemark => ({
    code,
    values: { ...values, ...more },
    ...TRADE,
  })
  const { air, oxygen, mains } = source.failure ?? {}
  return [
    ...(isVentilator
      ? [say('NO_BREATHS_GIVEN'), say('NO_ALARM_TO_COUNT_ON'), say('INSPIRATORY_LIMB_ONLY')]
      : []),
    say('NEEDS_BOTH_GASES'),
    ...(isVentilator ? [say('NEEDS_MAINS')] : []),
    say('WHEN_AIR_FAILS', { after: air ?? 'unknown' }),
    say('WHEN_OXYGEN_FAILS', { after: oxygen ?? 'unknown' }),
    ...(isVentilator ? [say('WHEN_MAINS_FAILS', { after: mains ?? 'unknown' })] : []),
    say('BIAS_FLOW_USE', { adds: source.biasFlowAddsToUse ?? 'unknown' }),
    ...(isVentilator
      ? [
          say('LEAK_COMPENSATION_USE', { adds: source.leakCompensationAddsToUse ?? 'unknown' }),
          say('LIMB_FILTER', { own: source.hasOwnFilter ?? 'unknown' }),
          modeRemark(part, source.modes),
        ]
      : []),
  ]
}

/** What the machine calls its even stream. */
function modeRemark(part: Part, modes: ShelfSource['modes']): ChainRemark {
  const even = modes?.find(({ kind }) => kind === 'constant-flow')
  const values = { part: part.label }
  return even === undefined
    ? { code: 'MODE_NOT_STATED', values, ...TRADE }
    : { code: 'MODE_TO_SET', values: { ...values, mode: even.label }, ...TRADE }
}

/** An uncompensated tube stands at the pressure behind it and shows less than flows: told at the air pressure of the place, in litres of its scale. */
function meterRemarks(
  { part, setting }: PlacedPart,
  pressure: PartPressure,
  barometricKpa: number,
): readonly ChainRemark[] {
  const { source } = part
  if (source === undefined || !('meter' in source) || source.kind === 'jet-nebuliser') return []
  if (source.meter.kind !== 'tube-uncompensated') return []
  const indicatedFlowLpm = setting.flowLpm ?? 0
  const behind = { kind: source.meter.kind, indicatedFlowLpm, barometricKpa }
  const factor = standardFlowFactor({ ...behind, backPressureKpa: pressure.outletKpa })
  const values = {
    part: part.label,
    flowLpm: indicatedFlowLpm,
    trueLpm: indicatedFlowLpm * factor,
    pressureKpa: pressure.outletKpa,
  }
  const code = pressure.isComplete ? 'METER_READS_LOW' : 'METER_READS_LOW_UNKNOWN'
  return [{ code, values, known: 'derived' }]
}

/**
 * Pressure behind a jet lets it draw less air: total flow falls and the fraction rises, by how much no measurement of ours says.
 * What stands between is exact: air as set at the one end, none at the other, where the driving gas comes alone.
 */
function jetRemarks(
  { chain, flows, pressures }: RemarkQuestion,
  { part, setting }: PlacedPart,
  at: number,
): readonly ChainRemark[] {
  const pressureKpa = pressures[at]?.outletKpa ?? 0
  const { o2Fraction } = setting
  if (!traitsOf(part).includes('entraining-jet') || o2Fraction === undefined) return []
  if (pressureKpa <= ENTRAINMENT_DISTURBED_KPA.value) return []
  const drive = drivingFlow(chain, flows, at)
  const values = {
    part: part.label,
    pressureKpa,
    limitKpa: ENTRAINMENT_DISTURBED_KPA.value,
    setLpm: streamLpm({ flowLpm: drive.flowLpm, setO2Fraction: o2Fraction }),
    leastLpm: drive.flowLpm,
    o2Fraction,
    mostO2Fraction: drive.o2Fraction,
  }
  return [{ code: 'ENTRAINMENT_DISTURBED', values, ...TRADE }]
}

/** Said once, at the part itself. */
function lossRemarks({ chain, pressures }: RemarkQuestion, at: number): readonly ChainRemark[] {
  const next = chain.joins.find(({ from, at: end }) => from === at && end === 'inlet')
  const after = next === undefined ? undefined : pressures[next.to]
  const isHere = pressures[at]?.isComplete === false && (after?.isComplete ?? true)
  const label = chain.parts[at]?.part.label ?? ''
  return isHere ? [{ code: 'PRESSURE_LOSS_NOT_KNOWN', values: { part: label }, ...TRADE }] : []
}

/** Moist gas in a long unheated hose: water gathers where it hangs lowest, and a full loop blocks or gurgles into the airway. */
function waterRemarks({ chain }: RemarkQuestion, at: number): readonly ChainRemark[] {
  const one = chain.parts[at]
  const tube = one?.part.tube
  if (one === undefined || tube === null || tube === undefined) return []
  if (tube.isHeated || tube.lengthM < LOOP_HANGS_M.value) return []
  if (!isMoistBefore(chain, at)) return []
  const values = {
    part: one.part.label,
    lengthM: tube.lengthM,
    trap: tube.hasWaterTrap ? 'yes' : 'no',
  }
  return [{ code: 'WATER_IN_LOOP', values, ...TRADE }]
}

function isMoistBefore(chain: Chain, at: number): boolean {
  return chain.joins.some(({ from, to }) => {
    const part = chain.parts[from]?.part
    if (to !== at || part === undefined) return false
    return traitsOf(part).includes('active-humidifier') || isMoistBefore(chain, from)
  })
}

function labelRemarks({ part }: PlacedPart, flowLpm: number): readonly ChainRemark[] {
  const { flow } = part
  const bounds = {
    ...(flow.minLpm === undefined ? {} : { minLpm: flow.minLpm }),
    ...(flow.maxLpm === undefined ? {} : { maxLpm: flow.maxLpm }),
  }
  const label: readonly ChainRemark[] = flow.isFromLabel
    ? [{ code: 'RATED_FROM_LABEL', values: { part: part.label, flowLpm, ...bounds }, ...TRADE }]
    : []
  const collar: readonly ChainRemark[] =
    part.kind === 'collar'
      ? [{ code: 'COLLAR_TAKES_AIR', values: { part: part.label }, ...TRADE }]
      : []
  return [...label, ...collar]
}
