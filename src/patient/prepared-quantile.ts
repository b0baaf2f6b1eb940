// A spread's quantile function with its truncation worked out once, for thousands of draws from one spread. Adds no distribution of its own.
import { normalProbability, normalQuantile } from '../units/normal.ts'
import { quantile, type Spread } from '../units/spread.ts'

/** As quantile(spread, u), several times faster per draw; within 1e-9 of it, relative (prepared-quantile.test.ts). Valid 0 < u < 1. */
export function preparedQuantile(spread: Spread): (u: number) => number {
  switch (spread.kind) {
    case 'normal': {
      const { mean, sd } = spread
      const z = truncated((x) => (x - mean) / sd, spread)
      return z === undefined ? (u) => quantile(spread, u) : (u) => mean + sd * z(u)
    }
    case 'lognormal': {
      const { median, logSd } = spread
      const z = truncated((x) => Math.log(x / median) / logSd, spread)
      return z === undefined
        ? (u) => quantile(spread, u)
        : (u) => Math.min(spread.max, Math.max(spread.min, median * Math.exp(logSd * z(u))))
    }
    case 'fixed':
    case 'uniform':
    case 'triangular':
    case 'box-cox':
      return (u) => quantile(spread, u)
  }
}

/** Where the truncation lies in a tail or leaves nothing, the careful way of quantile is kept. */
const CENTRAL_Z = 5

function truncated(
  zOf: (x: number) => number,
  limits: { readonly min: number; readonly max: number },
): ((u: number) => number) | undefined {
  const zMin = zOf(limits.min)
  const zMax = zOf(limits.max)
  if (!(zMin < zMax) || zMin > 0 || zMax < 0 || zMin < -CENTRAL_Z || zMax > CENTRAL_Z)
    return undefined
  const below = normalProbability(zMin)
  const inside = normalProbability(zMax) - below
  return (u) => Math.min(zMax, Math.max(zMin, normalQuantile(below + u * inside)))
}
