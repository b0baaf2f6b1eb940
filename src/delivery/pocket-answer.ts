// How one well-mixed pocket answers to what flows in during a step. Leaves out where the gas comes from.
import { POCKET, STRIDE } from './program-layout.ts'

/** Below this the closed form of `lag` would lose digits; its series is exact to 1e-12 there. */
const SERIES_BELOW = 0.03

/**
 * Replaces the inflow that stands at `first` in each step (L) by the pocket's coefficients. To inflow of x pocket volumes with mean m
 * and rise s, from concentration z, it answers: end = m + keep (z − m) + gain s; mean given off = m + stay (z − m) − lag s; rise of
 * it = rise (z − m) + pass s (least squares). keep = exp(-x), stay = (1 − keep)/x, gain = (1 + keep)/2 − stay, lag = gain/x,
 * rise = −12 lag, pass = 1 − 12 lag (1/2 + 1/x). `rise` is kept within 2 stay, so that no falling profile turns negative.
 * A pocket without volume passes all; one without inflow keeps all. Exact for a linear inflow (derived).
 */
export function answerPocket(c: Float64Array, steps: number, first: number, volumeL: number): void {
  const P = POCKET
  const end = steps * STRIDE
  for (let at = first; at < end; at += STRIDE) {
    const inflowL = c[at] as number // within the steps
    if (inflowL <= 0) {
      c[at + P.keep] = 1
      c[at + P.stay] = 1
      continue
    }
    if (volumeL <= 0) {
      c[at + P.keep] = 0
      c[at + P.pass] = 1
      continue
    }
    const x = inflowL / volumeL
    if (x < SERIES_BELOW) {
      const stay = 1 - (x / 2) * (1 - (x / 3) * (1 - (x / 4) * (1 - x / 5)))
      const lag = (x / 12) * (1 - x * (1 / 2 - x * (3 / 20 - x / 30)))
      c[at + P.keep] = 1 - x * stay
      c[at + P.stay] = stay
      c[at + P.gain] = lag * x
      c[at + P.lag] = lag
      c[at + P.rise] = -12 * lag
      c[at + P.pass] = x * x * (1 / 10 - x / 24)
      continue
    }
    const perX = volumeL / inflowL
    const keep = Math.exp(-x)
    const stay = (1 - keep) * perX
    const gain = (1 + keep) / 2 - stay
    const lag = gain * perX
    c[at + P.keep] = keep
    c[at + P.stay] = stay
    c[at + P.gain] = gain
    c[at + P.lag] = lag
    c[at + P.rise] = -Math.min(12 * lag, 2 * stay)
    c[at + P.pass] = 1 - 12 * lag * (1 / 2 + perX)
  }
}
