// Breaths of one person one after the other: each remembers the last a little. Leaves out sighs, pauses and slow waves.
import type { BreathVariability } from '../physiology/breathing-states.ts'
import { normalQuantile } from '../units/normal.ts'
import type { BreathPattern } from './breath.ts'

/** Deviations beyond this many standard deviations are drawn back inside by the truncated quantile, so no breath is absurd. */
const DEVIATION_MAX = 2.5

/**
 * A series of breaths around a mean pattern: lognormal deviations in rate, volume and duty, first-order autoregressive with the
 * given lag-1 correlation, so that means and coefficients of variation are kept in the long run (breath-series.test.ts).
 * `uniform` gives numbers in (0, 1). Source of usual values: [Tobin1988], [Tobin1995].
 */
export function breathSeries(question: {
  readonly mean: BreathPattern
  readonly variability: BreathVariability
  readonly breaths: number
  readonly uniform: () => number
}): readonly BreathPattern[] {
  const { mean, variability, uniform } = question
  const memory = variability.tidalVolumeLag1
  const fresh = Math.sqrt(1 - memory * memory)
  const state = {
    rate: truncatedNormal(uniform()),
    volume: truncatedNormal(uniform()),
    duty: truncatedNormal(uniform()),
  }
  return Array.from({ length: question.breaths }, () => {
    state.rate = memory * state.rate + fresh * truncatedNormal(uniform())
    state.volume = memory * state.volume + fresh * truncatedNormal(uniform())
    state.duty = memory * state.duty + fresh * truncatedNormal(uniform())
    return {
      ...mean,
      ratePerMin: mean.ratePerMin * lognormalFactor(variability.rateCv, state.rate),
      tidalVolumeL: mean.tidalVolumeL * lognormalFactor(variability.tidalVolumeCv, state.volume),
      dutyFraction: withinDuty(mean.dutyFraction, variability.dutyCv, state.duty),
    }
  })
}

/** Mean one, the given coefficient of variation. */
function lognormalFactor(cv: number, z: number): number {
  const logVariance = Math.log1p(cv * cv)
  return Math.exp(Math.sqrt(logVariance) * z - logVariance / 2)
}

/** Duty varies on its odds, so that it stays between 0 and 1. */
function withinDuty(dutyFraction: number, cv: number, z: number): number {
  const odds = (dutyFraction / (1 - dutyFraction)) * Math.exp((cv / (1 - dutyFraction)) * z)
  return odds / (1 + odds)
}

function truncatedNormal(u: number): number {
  const z = normalQuantile(u)
  return Math.abs(z) <= DEVIATION_MAX ? z : (DEVIATION_MAX * DEVIATION_MAX) / z
}
