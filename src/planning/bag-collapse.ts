// Rules out a reservoir mask whose bag would run empty, and finds the flow that keeps it filled.
import { deliverySample } from '../inference/delivery-points.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Evaluation, Setting } from './evaluate.ts'
import type { ExcludedSetUp } from './plan-types.ts'

/** Share of draws whose bag runs empty from which the mask is ruled out: the bag must not collapse. Source: ODriscoll2017. */
export const BAG_EMPTY_SHARE = 0.5
/** Flows searched, L/min; beyond, no meter helps. */
const FLOW_LPM_MAX = 60

/** Null while the bag stays filled in most draws, or where the meter is flushed. */
export function bagCollapse(
  setting: Setting,
  candidate: CandidateSetUp,
  evaluation: Evaluation,
): ExcludedSetUp | null {
  const { setUp } = candidate
  const share = emptyShare(evaluation.delivered.bagRunsEmpty)
  if (share < BAG_EMPTY_SHARE || setUp.flow.kind === 'flush') return null
  const neededLpm = flowThatFills(setting, setUp, setUp.flow.flowLpm)
  return {
    id: candidate.id,
    setUp,
    reasons: [
      {
        code: 'BAG_COLLAPSES',
        values: { bagEmptyShare: share, flowLpm: setUp.flow.flowLpm },
        flip:
          neededLpm === null ? null : { path: 'setUp.flowLpm', value: neededLpm, unit: 'L/min' },
        known: 'seen',
        source: 'ODriscoll2017',
      },
    ],
  }
}

/** Smallest whole flow above the set one at which the bag stays filled in most draws; null if none up to the limit. */
function flowThatFills(setting: Setting, setUp: SetUp, fromLpm: number): number | null {
  let low = Math.floor(fromLpm)
  let high = FLOW_LPM_MAX
  if (collapsesAt(setting, setUp, high)) return null
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (collapsesAt(setting, setUp, middle)) low = middle
    else high = middle
  }
  return high
}

function collapsesAt(setting: Setting, setUp: SetUp, flowLpm: number): boolean {
  const { solver, sample, barometricKpa } = setting
  const tried: SetUp = { ...setUp, flow: { kind: 'scale', flowLpm } }
  const { bagRunsEmpty } = deliverySample(solver, sample.points, tried, barometricKpa)
  return emptyShare(bagRunsEmpty) >= BAG_EMPTY_SHARE
}

function emptyShare(bagRunsEmpty: Uint8Array): number {
  return bagRunsEmpty.reduce((sum, one) => sum + one, 0) / bagRunsEmpty.length
}
