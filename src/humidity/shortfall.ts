// Water brought against water required: enough, perhaps, or short, and by how much. Leaves out the words.
import type { HumidityBand } from './band.ts'
import type { Requirement } from './required-content.ts'

/** `perhaps`: the band straddles the requirement. `not-required`: nothing to fall short of. */
export type ShortfallVerdict = 'enough' | 'perhaps' | 'short' | 'not-required'

export interface Shortfall {
  readonly verdict: ShortfallVerdict
  /** Required less brought, mg per body litre; 0 where the middle is enough or nothing is required. */
  readonly mgPerL: HumidityBand
}

const NONE: HumidityBand = { low: 0, middle: 0, high: 0 }

export function shortfallOf(vapour: HumidityBand, requirement: Requirement): Shortfall {
  const least = requirement.leastMgPerL
  if (least === null) return { verdict: 'not-required', mgPerL: NONE }
  const short = (value: number): number => Math.max(0, least - value)
  const mgPerL = { low: short(vapour.high), middle: short(vapour.middle), high: short(vapour.low) }
  if (mgPerL.high === 0) return { verdict: 'enough', mgPerL }
  return { verdict: mgPerL.low > 0 ? 'short' : 'perhaps', mgPerL }
}
