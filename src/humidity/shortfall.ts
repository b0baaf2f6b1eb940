// Water brought against water required: enough, perhaps, or short, and by how much. Leaves out the words.
import type { HumidityBand } from './band.ts'
import type { NotMeasuredCode } from './not-measured.ts'
import type { Requirement } from './required-content.ts'

/** `perhaps`: the band straddles the requirement. `not-required`: nothing to fall short of. `not-measured`: no measurement judges the water, so nobody may say. */
export type ShortfallVerdict = 'enough' | 'perhaps' | 'short' | 'not-required' | 'not-measured'

export interface Shortfall {
  readonly verdict: ShortfallVerdict
  /** Required less brought, mg per body litre; 0 where the middle is enough or nothing is required. */
  readonly mgPerL: HumidityBand
  /** What no measurement judges of the water brought; empty where there is nothing such. */
  readonly notMeasured: readonly NotMeasuredCode[]
}

const NONE: HumidityBand = { low: 0, middle: 0, high: 0 }

export function shortfallOf(options: {
  readonly vapour: HumidityBand
  readonly requirement: Requirement
  readonly notMeasured: readonly NotMeasuredCode[]
}): Shortfall {
  const { vapour, requirement, notMeasured } = options
  const least = requirement.leastMgPerL
  if (least === null) return { verdict: 'not-required', mgPerL: NONE, notMeasured }
  const short = (value: number): number => Math.max(0, least - value)
  const mgPerL = { low: short(vapour.high), middle: short(vapour.middle), high: short(vapour.low) }
  if (notMeasured.length > 0) return { verdict: 'not-measured', mgPerL, notMeasured }
  if (mgPerL.high === 0) return { verdict: 'enough', mgPerL, notMeasured }
  return { verdict: mgPerL.low > 0 ? 'short' : 'perhaps', mgPerL, notMeasured }
}
