// Judges one chain, found by the solver or put together by hand: every fault at once, and for a sound one its openings, pressures, leak points and remarks. Leaves out better chains.
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import type { Chain } from './chain.ts'
import { gasFaults, openingFaults } from './check-gas.ts'
import { joinFaults } from './check-joins.ts'
import { limitFaults } from './check-limits.ts'
import { orderFaults } from './check-order.ts'
import { patientFaults } from './check-patient.ts'
import { scaleFaults } from './check-scale.ts'
import { passingFlows } from './flows.ts'
import type { PassingFlow } from './flows.ts'
import { leakPointsOf } from './leak-points.ts'
import type { LeakPoint } from './leak-points.ts'
import type { ChainPatient } from './patient-part.ts'
import { chainPressures } from './pressures.ts'
import type { PartPressure } from './pressures.ts'
import type { Refusal } from './refusal.ts'
import { chainRemarks } from './remarks.ts'
import type { ChainRemark } from './remarks.ts'
import { openingsOfChain } from './ways-out.ts'
import type { WayOut } from './ways-out.ts'

export interface ChainQuestion {
  readonly chain: Chain
  readonly patient: ChainPatient
  /** Standard pressure where absent. */
  readonly barometricKpa?: number
}

export interface ChainCheck {
  readonly isAccepted: boolean
  readonly refusals: readonly Refusal[]
  /** Where surplus and expired gas leaves. */
  readonly waysOut: readonly WayOut[]
  /** In the order of the chain's parts; null where the parts do not hang together. */
  readonly flows: readonly PassingFlow[] | null
  readonly pressures: readonly PartPressure[] | null
  readonly leakPoints: readonly LeakPoint[]
  readonly remarks: readonly ChainRemark[]
}

/** Every fault at once. Faults of the joins come first: where gas cannot follow the parts, flow and pressure are not judged. */
export function checkChain(question: ChainQuestion): ChainCheck {
  const { chain, patient } = question
  const joins = joinFaults(chain)
  if (joins.some(({ code }) => code === 'GOES_IN_A_CIRCLE'))
    return { ...NOTHING_FOLLOWS, refusals: joins }
  const flows = passingFlows(chain)
  const barometricKpa = question.barometricKpa ?? STANDARD_PRESSURE_KPA
  const pressures = chainPressures({ chain, flows, barometricKpa })
  const refusals = [
    ...joins,
    ...gasFaults(chain, flows),
    ...openingFaults(chain),
    ...orderFaults(chain),
    ...scaleFaults(chain, flows),
    ...(joins.length === 0 ? limitFaults({ chain, flows, pressures }) : []),
    ...patientFaults(chain, patient),
  ]
  return {
    isAccepted: refusals.length === 0,
    refusals,
    waysOut: openingsOfChain(chain).waysOut,
    flows,
    pressures,
    leakPoints: leakPointsOf(chain),
    remarks: chainRemarks({ chain, flows, pressures, barometricKpa }),
  }
}

const NOTHING_FOLLOWS: ChainCheck = {
  isAccepted: false,
  refusals: [],
  waysOut: [],
  flows: null,
  pressures: null,
  leakPoints: [],
  remarks: [],
}
