// What is worked out along a chain, as lines: pressure behind what sets the flow, joints that come apart, nominal sizes. Leaves out parts and remarks (joining-text.ts).
import type { Chain } from '../joining/chain.ts'
import type { ChainCheck } from '../joining/check-chain.ts'
import { endsOf } from '../joining/check-joins.ts'
import { CONNECTORS, ENDS } from '../kit/ends.ts'
import { END_NAMES } from './joining-names.ts'
import { joinText } from './joining-text.ts'
import { KNOWN_NAMES } from './names.ts'
import { numberText } from './number-text.ts'
import { say, translated } from './say.ts'

export interface ChainFacts {
  readonly chain: Chain
  readonly check: Pick<ChainCheck, 'pressures' | 'leakPoints'>
}

/** At every part that sets a flow. */
export function pressureLines({ chain, check }: ChainFacts): readonly string[] {
  return chain.parts.flatMap(({ part, setting }, at) => {
    const pressure = check.pressures?.[at]
    if (pressure === undefined || setting.flowLpm === undefined) return []
    const { outletKpa, isComplete } = pressure
    return [`${translated(part.label)}: ${chainPressureText({ outletKpa, isComplete })}`]
  })
}

/** Joints pushed on, coned or clipped, in the order of the chain; the same joint twice is told once. */
export function leakPointLines({ chain, check }: ChainFacts): readonly string[] {
  return once(check.leakPoints.map(({ join }) => joinText(chain, join)))
}

/** Joints whose connector has one number for its size, with how that number is known. */
export function jointSizeLines(chain: Chain): readonly string[] {
  return once(
    chain.joins.flatMap((join) => {
      const { from, to } = endsOf(chain, join)
      if (from === null || to === null) return []
      const { sizeMm, sizeKnown } = CONNECTORS[ENDS[from].connector]
      if (sizeMm === undefined || sizeKnown === undefined) return []
      return [
        say('{from} to {to}: {size} mm ({known})', {
          from: END_NAMES[from],
          to: END_NAMES[to],
          size: numberText(sizeMm, SIZE_STEP_MM),
          known: KNOWN_NAMES[sizeKnown],
        }),
      ]
    }),
  )
}

const PRESSURE_STEP_KPA = 0.1
const SIZE_STEP_MM = 0.1

function once(lines: readonly string[]): readonly string[] {
  return [...new Set(lines)]
}

export function chainPressureText(pressure: {
  readonly outletKpa: number
  readonly isComplete: boolean
}): string {
  const value = numberText(pressure.outletKpa, PRESSURE_STEP_KPA)
  return pressure.isComplete
    ? say('{value} kPa', { value })
    : say('{value} kPa and what is lost in parts that are not known', { value })
}
