// A quantity that is not known exactly: a distribution with hard limits, drawn through its quantile function. Holds no random source: the caller brings u.
import { DomainError, requireWithin } from '../errors.ts'
import { normalProbability, normalQuantile } from './normal.ts'

/**
 * min and max truncate: every draw lies inside by construction, without a lump at the limits.
 * lognormal: median, and the standard deviation of the natural logarithm.
 * box-cox: the form of growth references, median·(1 + power·cv·z)^(1/power) with z standard normal (L, M, S).
 */
export type Spread =
  | { readonly kind: 'fixed'; readonly value: number }
  | {
      readonly kind: 'normal'
      readonly mean: number
      readonly sd: number
      readonly min: number
      readonly max: number
    }
  | {
      readonly kind: 'lognormal'
      readonly median: number
      readonly logSd: number
      readonly min: number
      readonly max: number
    }
  | {
      readonly kind: 'box-cox'
      readonly median: number
      readonly power: number
      readonly cv: number
      readonly min: number
      readonly max: number
    }
  | { readonly kind: 'uniform'; readonly min: number; readonly max: number }
  | {
      readonly kind: 'triangular'
      readonly mode: number
      readonly min: number
      readonly max: number
    }

/** Wichura's inverse is exact to rounding inside these; beyond, the cumulative probability itself has no digits left. */
const U_MIN = 1e-300
const U_MAX = 1 - 2 ** -53

export function fixed(value: number): Spread {
  return { kind: 'fixed', value }
}

/** The value below which a share u of the distribution lies. Valid 0 < u < 1, else PROBABILITY_OUT_OF_RANGE;
 *  a spread without width or reversed limits gives SPREAD_EMPTY. Monotone in u (spread.test.ts). */
export function quantile(spread: Spread, u: number): number {
  if (!(u > 0 && u < 1)) {
    requireWithin({ code: 'PROBABILITY_OUT_OF_RANGE', path: 'u', value: u, min: U_MIN, max: U_MAX })
  }
  switch (spread.kind) {
    case 'fixed':
      return spread.value
    case 'normal':
      return spread.mean + spread.sd * truncatedZ(spread, (x) => (x - spread.mean) / spread.sd, u)
    case 'lognormal': {
      const logMedian = Math.log(spread.median)
      const z = truncatedZ(spread, (x) => (Math.log(x) - logMedian) / spread.logSd, u)
      return within(spread, spread.median * Math.exp(spread.logSd * z))
    }
    case 'box-cox':
      return within(
        spread,
        boxCoxValue(
          spread,
          truncatedZ(spread, (x) => boxCoxZ(spread, x), u),
        ),
      )
    case 'uniform':
      return spread.min + u * (spread.max - spread.min)
    case 'triangular':
      return triangularQuantile(spread, u)
  }
}

/** The middle value; half the draws lie below. */
export function medianOf(spread: Spread): number {
  return spread.kind === 'fixed' ? spread.value : quantile(spread, 1 / 2)
}

/** The same distribution in another unit or for another size: every value times a positive factor. */
export function scaled(spread: Spread, factor: number): Spread {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'factor',
    value: factor,
    min: Number.MIN_VALUE,
    max: Number.MAX_VALUE,
  })
  switch (spread.kind) {
    case 'fixed':
      return { kind: 'fixed', value: spread.value * factor }
    case 'normal':
      return {
        ...spread,
        mean: spread.mean * factor,
        sd: spread.sd * factor,
        ...scaledLimits(spread, factor),
      }
    case 'lognormal':
    case 'box-cox':
      return { ...spread, median: spread.median * factor, ...scaledLimits(spread, factor) }
    case 'uniform':
      return { ...spread, ...scaledLimits(spread, factor) }
    case 'triangular':
      return { ...spread, mode: spread.mode * factor, ...scaledLimits(spread, factor) }
  }
}

/** Lowest and highest value a draw can take. */
export function limitsOf(spread: Spread): { readonly min: number; readonly max: number } {
  return spread.kind === 'fixed'
    ? { min: spread.value, max: spread.value }
    : { min: spread.min, max: spread.max }
}

export interface BoxCox {
  readonly median: number
  readonly power: number
  readonly cv: number
}

/** Value at z standard deviations: median·(1 + power·cv·z)^(1/power), or median·exp(cv·z) at power 0.
 *  Valid where 1 + power·cv·z > 0, else Z_SCORE_OUT_OF_RANGE. Exact. */
export function boxCoxValue(shape: BoxCox, z: number): number {
  if (shape.power === 0) return shape.median * Math.exp(shape.cv * z)
  const base = 1 + shape.power * shape.cv * z
  if (base > 0) return shape.median * base ** (1 / shape.power)
  throw new DomainError({ code: 'Z_SCORE_OUT_OF_RANGE', path: 'z', value: z })
}

/** Inverse of boxCoxValue. Valid value > 0, else VALUE_OUT_OF_RANGE. */
export function boxCoxZ(shape: BoxCox, value: number): number {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'value',
    value,
    min: Number.MIN_VALUE,
    max: Number.MAX_VALUE,
  })
  const ratio = value / shape.median
  return shape.power === 0
    ? Math.log(ratio) / shape.cv
    : (ratio ** shape.power - 1) / (shape.power * shape.cv)
}

function truncatedZ(
  limits: { readonly min: number; readonly max: number },
  zOf: (x: number) => number,
  u: number,
): number {
  const zMin = zOf(limits.min)
  const zMax = zOf(limits.max)
  // Work in the lower tail, where probabilities keep their digits.
  if (zMin > 0) return -innerZ(-zMax, -zMin, 1 - u)
  return innerZ(zMin, zMax, u)
}

function innerZ(zMin: number, zMax: number, u: number): number {
  const below = normalProbability(zMin)
  const p = below + u * (normalProbability(zMax) - below)
  if (!(zMin < zMax)) throw empty(zMax - zMin)
  return Math.min(zMax, Math.max(zMin, normalQuantile(Math.min(U_MAX, Math.max(U_MIN, p)))))
}

function within(limits: { readonly min: number; readonly max: number }, x: number): number {
  // Rounding in exp and log may step over a limit by one unit in the last place.
  return Math.min(limits.max, Math.max(limits.min, x))
}

function triangularQuantile(
  spread: { readonly mode: number; readonly min: number; readonly max: number },
  u: number,
): number {
  const width = spread.max - spread.min
  if (!(width > 0)) throw empty(width)
  const rising = spread.mode - spread.min
  const falling = spread.max - spread.mode
  return u * width < rising
    ? spread.min + Math.sqrt(u * width * rising)
    : spread.max - Math.sqrt((1 - u) * width * falling)
}

function empty(width: number): DomainError {
  return new DomainError({ code: 'SPREAD_EMPTY', path: 'spread', value: width })
}

/** The same distribution cut to narrower limits; limits wider than its own change nothing. A fixed value outside
 *  them, or limits that leave nothing, give SPREAD_EMPTY. */
export function limited(
  spread: Spread,
  limits: { readonly min: number; readonly max: number },
): Spread {
  const own = limitsOf(spread)
  const min = Math.max(own.min, limits.min)
  const max = Math.min(own.max, limits.max)
  if (spread.kind === 'fixed') {
    if (min <= max) return spread
    throw empty(max - min)
  }
  if (!(min < max)) throw empty(max - min)
  if (spread.kind === 'triangular') {
    if (spread.mode >= min && spread.mode <= max) return { ...spread, min, max }
    throw empty(max - min)
  }
  return { ...spread, min, max }
}

function scaledLimits(
  limits: { readonly min: number; readonly max: number },
  factor: number,
): { readonly min: number; readonly max: number } {
  return { min: limits.min * factor, max: limits.max * factor }
}
