// The standard normal distribution: cumulative probability and its inverse, to near machine precision. Leaves out the density and every other distribution.
import { requireWithin } from '../errors.ts'

const TAIL_LIMIT = 38
const HART_SPLIT = 7.07106781186547
const SQRT_TWO_PI = 2.506628274631

/** Rational coefficients of Hart's algorithm 5666 [West2005], highest power first. */
const HART_NUMERATOR = [
  0.0352624965998911, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
] as const
const HART_DENOMINATOR = [
  0.0883883476483184, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
] as const

/** Coefficients of algorithm AS 241, routine PPND16 [Wichura1988], lowest power first. */
const CENTRE_A = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
] as const
const CENTRE_B = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
] as const
const MIDDLE_C = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
] as const
const MIDDLE_D = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
  0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
] as const
const FAR_E = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
  0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
] as const
const FAR_F = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
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
