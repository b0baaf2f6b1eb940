// The standard normal distribution: cumulative probability and its inverse, to near machine precision. Leaves out the density and every other distribution.
import { requireWithin } from '../errors.ts'

const TAIL_LIMIT = 38
const HART_SPLIT = 7.07106781186547
const SQRT_TWO_PI = 2.506628274631

/** Rational coefficients of Hart's algorithm 5666 [West2005], highest power first. */
const HART_NUMERATOR = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
] as const
const HART_DENOMINATOR = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
] as const

/** Coefficients of algorithm AS 241, routine PPND16 [Wichura1988], lowest power first. */
const CENTRE_A = [
  3.387132872796366608, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4,
  4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4,
  2.5090809287301226727e3,
] as const
const CENTRE_B = [
  1, 4.2313330701600911252e1, 6.871870074920579083e2, 5.3941960214247511077e3,
  2.1213794301586595867e4, 3.930789580009271061e4, 2.8729085735721942674e4, 5.226495278852854561e3,
] as const
const MIDDLE_C = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 2.4178072517745061177e-1, 2.27238449892691845833e-2,
  7.7454501427834140764e-4,
] as const
const MIDDLE_D = [
  1, 2.05319162663775882187, 1.6763848301838038494, 6.8976733498510000455e-1,
  1.4810397642748007459e-1, 1.51986665636164571966e-2, 5.475938084995344946e-4,
  1.05075007164441684324e-9,
] as const
const FAR_E = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 2.9656057182850489123e-1,
  2.6532189526576123093e-2, 1.2426609473880784386e-3, 2.71155556874348757815e-5,
  2.01033439929228813265e-7,
] as const
const FAR_F = [
  1, 5.9983220655588793769e-1, 1.3692988092273580531e-1, 1.48753612908506148525e-2,
  7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7,
  2.04426310338993978564e-15,
] as const
/** Half widths and offsets of the three regions of AS 241. */
const CENTRE_HALF_WIDTH = 0.425
const CENTRE_SQUARED = 0.180625
const FAR_SPLIT = 5
const MIDDLE_OFFSET = 1.6

/** Probability that a standard normal value is at most z; any finite z. Source: [West2005], Hart's rational
 *  form below |z| 7.07 and a continued fraction beyond. Within 1e-14 of tabulated values (normal.test.ts). */
export function normalProbability(z: number): number {
  const x = Math.abs(z)
  if (x > TAIL_LIMIT) return z > 0 ? 1 : 0
  const bell = Math.exp((-x * x) / 2)
  const upper =
    x < HART_SPLIT
      ? (bell * descending(HART_NUMERATOR, x)) / descending(HART_DENOMINATOR, x)
      : bell / tailFraction(x) / SQRT_TWO_PI
  return z > 0 ? 1 - upper : upper
}

/** The z whose cumulative probability is u. Valid 0 < u < 1, else PROBABILITY_OUT_OF_RANGE.
 *  Source: [Wichura1988], AS 241 PPND16. Within 1e-14 relative of tabulated values (normal.test.ts). */
export function normalQuantile(u: number): number {
  if (!(u > 0 && u < 1)) {
    requireWithin({
      code: 'PROBABILITY_OUT_OF_RANGE',
      path: 'u',
      value: u,
      min: Number.MIN_VALUE,
      max: 1 - Number.EPSILON / 2,
    })
  }
  const fromMiddle = u - 1 / 2
  if (Math.abs(fromMiddle) <= CENTRE_HALF_WIDTH) {
    const r = CENTRE_SQUARED - fromMiddle * fromMiddle
    return (fromMiddle * ascending(CENTRE_A, r)) / ascending(CENTRE_B, r)
  }
  const r = Math.sqrt(-Math.log(fromMiddle < 0 ? u : 1 - u))
  const size =
    r <= FAR_SPLIT
      ? ascending(MIDDLE_C, r - MIDDLE_OFFSET) / ascending(MIDDLE_D, r - MIDDLE_OFFSET)
      : ascending(FAR_E, r - FAR_SPLIT) / ascending(FAR_F, r - FAR_SPLIT)
  return fromMiddle < 0 ? -size : size
}

function tailFraction(x: number): number {
  return x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))
}

function descending(coefficients: readonly number[], x: number): number {
  let sum = 0
  for (const coefficient of coefficients) sum = sum * x + coefficient
  return sum
}

function ascending(coefficients: readonly number[], x: number): number {
  let sum = 0
  for (let i = coefficients.length - 1; i >= 0; i -= 1) sum = sum * x + (coefficients[i] ?? 0)
  return sum
}
