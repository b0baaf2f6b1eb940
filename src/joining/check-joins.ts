// Faults of the joins themselves: ends that do not mate, inlets without feed, outlets that lead nowhere or to two. Leaves out gas, order and flow.
import type { EndId } from '../kit/ends.ts'
import { feederOf, placed } from './chain.ts'
import type { Chain, Join } from './chain.ts'
import { linesTo } from './lines.ts'
import { isNeverForGas, matingRule } from './mating-rules.ts'
import type { Refusal } from './refusal.ts'

/** The two ends that a join brings together; null where the giving part has no outlet. */
export function endsOf(
  chain: Chain,
  join: Join,
): { readonly from: EndId | null; readonly to: EndId | null } {
  const { part } = placed(chain, join.to)
  const ends = join.at === 'inlet' ? part.inlets : part.openEnds
  const from = placed(chain, join.from).part
  return { from: from.outlet ?? from.inlets[0] ?? null, to: ends[join.index] ?? null }
}

export function joinFaults(chain: Chain): readonly Refusal[] {
  return [
    ...chain.joins.flatMap((join, at) => mateFaults(chain, join, at)),
    ...chain.parts.flatMap((_, at) => [...inletFaults(chain, at), ...outletFaults(chain, at)]),
    ...wholeFaults(chain),
  ]
}

function mateFaults(chain: Chain, join: Join, at: number): readonly Refusal[] {
  const { from, to } = endsOf(chain, join)
  const values = { from: from ?? '', to: to ?? '' }
  if (join.at === 'inlet' && join.from >= join.to)
    return [{ code: 'GOES_IN_A_CIRCLE', values, join: at }]
  if (from === null || to === null) return [{ code: 'ENDS_DO_NOT_MATE', values, join: at }]
  if (isNeverForGas(from) || isNeverForGas(to)) return [{ code: 'NEVER_FOR_GAS', values, join: at }]
  return matingRule(from, to) === undefined ? [{ code: 'ENDS_DO_NOT_MATE', values, join: at }] : []
}

function inletFaults(chain: Chain, at: number): readonly Refusal[] {
  const { part } = placed(chain, at)
  if (part.kind === 'cap') return []
  return part.inlets.flatMap((end, index): readonly Refusal[] => {
    const feeds = chain.joins.filter(
      (join) => join.to === at && join.at === 'inlet' && join.index === index,
    ).length
    const values = { part: part.label, end }
    if (feeds === 0 && isOpenArm(chain, at)) return []
    if (feeds === 0) return [{ code: 'INLET_NOT_FED', values, part: at }]
    return feeds > 1 ? [{ code: 'INLET_FED_TWICE', values, part: at }] : []
  })
}

/** A hose or bag put on an open arm takes its gas from there. */
function isOpenArm(chain: Chain, at: number): boolean {
  return chain.joins.some((join) => join.from === at && join.at === 'open-end')
}

function outletFaults(chain: Chain, at: number): readonly Refusal[] {
  const { part } = placed(chain, at)
  const joins = chain.joins.filter(({ from }) => from === at)
  const values = { part: part.label, patients: patientsFedBy(chain, at) }
  if (joins.length === 0) {
    if (part.outlet === null) return []
    return [{ code: 'OUTLET_LEADS_NOWHERE', values, part: at }]
  }
  if (joins.length === 1) return []
  const code = values.patients > 1 ? 'SPLIT_TO_TWO_PATIENTS' : 'OUTLET_SPLIT'
  return [{ code, values, part: at }]
}

function patientsFedBy(chain: Chain, at: number): number {
  return chain.parts.filter(
    ({ part }, i) => part.kind === 'patient' && linesTo(chain, i).some((line) => line.includes(at)),
  ).length
}

function wholeFaults(chain: Chain): readonly Refusal[] {
  const patient = chain.parts.findIndex(({ part }) => part.kind === 'patient')
  if (patient < 0) return [{ code: 'NO_PATIENT', values: {} }]
  return feederOf(chain, patient, 0) === undefined
    ? [{ code: 'NO_GAS_OUTLET', values: {}, part: patient }]
    : []
}
