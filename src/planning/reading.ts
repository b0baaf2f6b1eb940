// Whether the reading in the case can weigh the sample, and what to say about it.
import type { PlanSample, UsableReading } from '../inference/plan-sample.ts'
import { TESTED_PERCENT_MIN } from '../physiology/oximeter.ts'
import type { SetUp } from '../kit/set-up.ts'
import { CARBON_MONOXIDE_REASONS } from '../patient/warn-oximeter.ts'
import type { Case } from '../patient/case.ts'
import type { ReadingUse, Remark } from './plan-types.ts'

export interface ReadingChoice {
  readonly usable: UsableReading | null
  readonly remarks: readonly Remark[]
}

/** Five minutes on a set-up is the least before its saturation is written down. Source: ODriscoll2017. */
const SETTLED_MINUTES = 5
/** Extra standard deviation of a reading taken earlier or at an unknown time, % points (common practice). */
const EARLY_SD_PERCENT = 3
const UNKNOWN_TIME_SD_PERCENT = 1

/** A saturation on a known set-up or on air weighs the sample, unless carbon monoxide makes it worthless or it lies below the tested range. */
export function usableReading(about: Case, onNowSetUp: SetUp | null): ReadingChoice {
  const { onNow, goal } = about
  if (onNow?.saturationPercent === undefined)
    return { usable: null, remarks: [{ code: 'NO_READING', values: {} }] }
  const { saturationPercent } = onNow
  if (goal.reason !== undefined && CARBON_MONOXIDE_REASONS.includes(goal.reason)) {
    return {
      usable: null,
      remarks: [{ code: 'READING_NOT_TRUSTED', values: { saturationPercent } }],
    }
  }
  if (saturationPercent < TESTED_PERCENT_MIN) {
    return {
      usable: null,
      remarks: [
        {
          code: 'READING_BELOW_TESTED',
          values: { saturationPercent, testedPercent: TESTED_PERCENT_MIN },
        },
      ],
    }
  }
  const isEarly = onNow.sinceMinutes !== undefined && onNow.sinceMinutes < SETTLED_MINUTES
  return {
    usable: {
      setUp: onNowSetUp,
      saturationPercent: Math.round(saturationPercent),
      extraSdPercent: isEarly
        ? EARLY_SD_PERCENT
        : onNow.sinceMinutes === undefined
          ? UNKNOWN_TIME_SD_PERCENT
          : 0,
    },
    remarks: isEarly
      ? [
          {
            code: 'READING_TAKEN_EARLY',
            values: { minutes: onNow.sinceMinutes ?? 0, settledMinutes: SETTLED_MINUTES },
          },
        ]
      : [],
  }
}

export function readingUse(choice: ReadingChoice, sample: PlanSample): Omit<ReadingUse, 'remarks'> {
  return {
    isUsed: choice.usable !== null,
    effectiveDraws: sample.effectiveDraws,
    wasRedrawn: sample.wasRedrawn,
  }
}

/** Fewer effective draws than this after a larger sample: the reading fits hardly anyone like this. */
const TOO_FEW_DRAWS = 64

export function unlikelyReading(choice: ReadingChoice, sample: PlanSample): readonly Remark[] {
  if (choice.usable === null || sample.effectiveDraws >= TOO_FEW_DRAWS) return []
  return [
    { code: 'READING_UNLIKELY', values: { saturationPercent: choice.usable.saturationPercent } },
  ]
}
