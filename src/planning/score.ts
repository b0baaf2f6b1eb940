// What one draw is worth against the goal: in range counts one, and being outside costs by distance and by what it harms.
import type { Goal, RetentionRisk } from '../patient/case.ts'
import type { Band, Chance } from './plan-types.ts'

/**
 * Harm weights (common practice, no source gives numbers): cost per % below and above the range, each up to `most`.
 * Too little oxygen harms everyone; too much harms those who retain carbon dioxide and preterm infants most.
 */
export const HARM = {
  below: { perPercent: 0.12, most: 1 },
  above: {
    none: { perPercent: 0.04, most: 0.2 },
    'at-risk': { perPercent: 0.15, most: 0.9 },
    'known-retainer': { perPercent: 0.2, most: 1 },
    preterm: { perPercent: 0.15, most: 0.9 },
  },
  fraction: { perPoint: 0.05, most: 0.6 },
} as const

export type AboveRisk = keyof typeof HARM.above

/** Which harm of too much oxygen applies: prematurity before retention. */
export function aboveRisk(patient: {
  readonly retentionRisk: RetentionRisk
  readonly gestationWeeks?: number
  readonly ageYears: number
}): AboveRisk {
  const isPreterm =
    patient.gestationWeeks !== undefined && patient.gestationWeeks < 37 && patient.ageYears < 0.5
  return isPreterm ? 'preterm' : patient.retentionRisk
}

/** Displayed saturation (whole %) against a range: 1 in range, else minus the harm. Range −1…1. */
export function saturationWorth(
  displayed: number,
  goal: Extract<Goal, { kind: 'saturation' }>,
  risk: AboveRisk,
): number {
  if (displayed < goal.lowPercent) {
    return -Math.min(HARM.below.most, HARM.below.perPercent * (goal.lowPercent - displayed))
  }
  if (displayed > goal.highPercent) {
    const { perPercent, most } = HARM.above[risk]
    return -Math.min(most, perPercent * (displayed - goal.highPercent))
  }
  return 1
}

/** Effective fraction against a range. Range −0.6…1. */
export function fractionWorth(
  o2Fraction: number,
  goal: Extract<Goal, { kind: 'fraction' }>,
): number {
  const outside = Math.max(goal.low - o2Fraction, o2Fraction - goal.high)
  return outside <= 0 ? 1 : -Math.min(HARM.fraction.most, HARM.fraction.perPoint * 100 * outside)
}

/** Shares below, in and above a range. */
export function chanceOf(
  values: ArrayLike<number>,
  range: { readonly low: number; readonly high: number },
): Chance {
  let below = 0
  let above = 0
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0
    if (value < range.low) below++
    else if (value > range.high) above++
  }
  const total = values.length
  return { below: below / total, inRange: (total - below - above) / total, above: above / total }
}

/** Middle and 10–90 % limits by the nearest-rank rule. */
export function bandOf(values: ArrayLike<number>): Band {
  const sorted = Float64Array.from(values).sort()
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
  return { median: at(0.5), low: at(0.1), high: at(0.9) }
}
