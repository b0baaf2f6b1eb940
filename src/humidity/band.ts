// How far the answer moves with each uncertain parameter: one at a time from its middle to its ends, the moves added as squares. Leaves out how parameters go together, of which nothing is known.
import { fixed, medianOf, quantile } from '../units/spread.ts'
import type { Spread } from '../units/spread.ts'
import { PARAMETER_IDS, PARAMETERS } from './parameters.ts'
import type { ParameterId, ParameterValues } from './parameters.ts'

/** Middle with the 10 % and 90 % ends. */
export interface HumidityBand {
  readonly low: number
  readonly middle: number
  readonly high: number
}

const LOW = 0.1
const HIGH = 0.9

/** Spreads in use: those of the table, or the number given for this bed. */
export type Spreads = Readonly<Record<ParameterId, Spread>>

export function spreadsWith(given: Readonly<Partial<Record<ParameterId, number>>>): Spreads {
  const entries = PARAMETER_IDS.map((id) => {
    const value = given[id]
    return [id, value === undefined ? PARAMETERS[id].spread : fixed(value)] as const
  })
  // Safe: every id of the list is there once.
  return Object.fromEntries(entries) as Spreads
}

export function middleValues(spreads: Spreads): ParameterValues {
  const entries = PARAMETER_IDS.map((id) => [id, medianOf(spreads[id])] as const)
  // Safe: every id of the list is there once.
  return Object.fromEntries(entries) as ParameterValues
}

/** Runs at the middle, and at both ends of each parameter that is used and not fixed. */
export interface Runs<Run> {
  readonly middle: Run
  readonly ends: readonly (readonly [low: Run, high: Run])[]
}

export function runsOver<Run>(options: {
  readonly spreads: Spreads
  readonly used: readonly ParameterId[]
  readonly run: (values: ParameterValues) => Run
}): Runs<Run> {
  const { spreads, used, run } = options
  const middle = middleValues(spreads)
  const ends = used
    .filter((id) => spreads[id].kind !== 'fixed')
    .map((id) => {
      const at = (share: number): Run => run({ ...middle, [id]: quantile(spreads[id], share) })
      return [at(LOW), at(HIGH)] as const
    })
  return { middle: run(middle), ends }
}

/** Band of one number of the runs: the moves up and down, each added as squares; cut at 0, below which no amount of water goes. */
export function bandOf<Run>(runs: Runs<Run>, of: (run: Run) => number): HumidityBand {
  const middle = of(runs.middle)
  let up = 0
  let down = 0
  for (const pair of runs.ends) {
    const moves = pair.map((run) => of(run) - middle)
    up += Math.max(0, ...moves) ** 2
    down += Math.min(0, ...moves) ** 2
  }
  return { low: Math.max(0, middle - Math.sqrt(down)), middle, high: middle + Math.sqrt(up) }
}
