// Faults of gas and of ways out: wrong gas at the patient, gases joined by a Y-piece, a circuit without an opening. Leaves out flow and pressure.
import { feederOf, placed } from './chain.ts'
import type { Chain } from './chain.ts'
import type { PassingFlow, PassingGas } from './flows.ts'
import type { Part } from './part.ts'
import type { Refusal } from './refusal.ts'
import { openingsOfChain } from './ways-out.ts'

export function gasFaults(chain: Chain, flows: readonly PassingFlow[]): readonly Refusal[] {
  return chain.parts.flatMap((_, at) => partGasFaults(chain, flows, at))
}

function partGasFaults(
  chain: Chain,
  flows: readonly PassingFlow[],
  at: number,
): readonly Refusal[] {
  const { part } = placed(chain, at)
  const fed = part.inlets.map((end, index) => {
    const from = feederOf(chain, at, index)
    return { end, gas: (from === undefined ? undefined : flows[from]?.gas) ?? ('none' as const) }
  })
  const values = { part: part.label }
  if (part.kind === 'y-piece' && flows[at]?.gas === 'mixed-by-y')
    return [{ code: 'GASES_MIXED_BY_Y', values, part: at }]
  if (part.kind === 'blender' || part.kind === 'ventilator') {
    return fed.flatMap(({ end, gas }) => {
      const wanted = end.endsWith('air') ? 'air' : 'oxygen'
      if (gas === 'none' || gas === wanted) return []
      return [{ code: 'WRONG_GAS_AT_MIXER', values: { ...values, gas, wanted }, part: at } as const]
    })
  }
  return fed.flatMap(({ end, gas }) => endFault({ at, end, gas, part }))
}

function endFault(options: {
  readonly at: number
  readonly end: string
  readonly gas: PassingGas
  readonly part: Part
}): readonly Refusal[] {
  const { at, end, gas, part } = options
  const values = { part: part.label, gas }
  if (end === 'air-ports')
    return gas === 'none' || gas === 'air'
      ? []
      : [{ code: 'COLLAR_FED_WITH_OXYGEN', values, part: at }]
  if (part.kind !== 'patient') return []
  if (gas === 'air') return [{ code: 'AIR_INSTEAD_OF_OXYGEN', values, part: at }]
  return gas === 'other' ? [{ code: 'GAS_NOT_FOR_PATIENT', values, part: at }] : []
}

/** No circuit may be closed: gas that keeps flowing, and breath, must be able to leave at the patient. */
export function openingFaults(chain: Chain): readonly Refusal[] {
  const { waysOut, tooEarly, capped } = openingsOfChain(chain)
  const early: readonly Refusal[] = tooEarly.map(({ part }) => ({
    code: 'OPEN_BEFORE_PATIENT',
    values: { part: placed(chain, part).part.label },
    part,
  }))
  if (waysOut.length > 0) return early
  const [arm] = capped
  const closed: Refusal =
    arm === undefined
      ? { code: 'CLOSED_CIRCUIT', values: {} }
      : {
          code: 'CLOSED_CIRCUIT_CAPPED',
          values: { part: placed(chain, arm).part.label },
          part: arm,
        }
  return [...early, closed]
}
