// Where each coefficient of a breath's program stands. Leaves out how it is worked out and what is done with it.
import { MAX_STEPS } from './grid.ts'

/**
 * Where the coefficients of one pocket start; POCKET tells what they are. Between pockets goes a mean concentration and its rise
 * over the step, so the order is higher than that of the mean alone.
 */
export const POCKET = { keep: 0, stay: 1, gain: 2, lag: 3, rise: 4, pass: 5 } as const
const POCKET_SIZE = 6

/** Position of each coefficient within a step. Shares of an inflow come with their rise over the step. */
export const AT = {
  outer: 0,
  side: POCKET_SIZE,
  inner: 2 * POCKET_SIZE,
  mixed: 3 * POCKET_SIZE,
  outerRoom: 24,
  outerRoomRise: 25,
  outerDevice: 26,
  outerDeviceRise: 27,
  outerInnerDevice: 28,
  outerInnerDeviceRise: 29,
  outerInner: 30,
  outerInnerRise: 31,
  outerSide: 32,
  outerSideRise: 33,
  innerDevice: 34,
  innerDeviceRise: 35,
  innerBag: 36,
  innerBagRise: 37,
  innerDraw: 38,
  innerDrawRise: 39,
  innerMixed: 40,
  innerMixedRise: 41,
  innerRoom: 42,
  innerRoomRise: 43,
  mixedInner: 44,
  mixedInnerRise: 45,
  mixedOther: 46,
  mixedOtherRise: 47,
  bagKeep: 48,
  bagDevice: 49,
  bagInner: 50,
  /** Volume through the serial tanks, L. */
  lungL: 51,
  /** Expiration: what leaves the mixed airway, and what the flush brought in from the inner pocket, L. */
  leavesL: 52,
  flushedL: 53,
  /** Inspiration: the inner pocket overflows. Expiration: the flush is stronger than what is breathed out. */
  reverse: 54,
  /** Expiration: share of alveolar gas in what leaves the serial tanks, and its rise. */
  alveolar: 55,
  alveolarRise: 56,
  /**
   * One weight per serial tank, then as many for the rise. Inspiration: how much of the step's gas the tank holds at the end of
   * inspiration. Expiration: how much of the tank's first content is in what leaves the tanks in this step.
   */
  tank: 57,
  tankRise: 65,
  /** How far the flow of one outlet leans to the end of the step, against all that the pocket gives off: shifts that outlet's mean by skew × rise. */
  innerToMixedSkew: 73,
  innerToOuterSkew: 74,
  outerToInnerSkew: 75,
  outerToSideSkew: 76,
  mixedToInnerSkew: 77,
  mixedToSideSkew: 78,
  innerToBagSkew: 79,
} as const

export const MAX_SERIAL = 8
export const STRIDE = AT.innerToBagSkew + 1

export interface Program {
  steps: number
  inspiratorySteps: number
  serialTanks: number
  hasOuter: boolean
  sideFromOuter: boolean
  /** A valve keeps the bag at pure device gas. */
  bagValved: boolean
  hasBag: boolean
  /** Volume of one serial tank, L. */
  tankL: number
  readonly coefficients: Float64Array
  /** Share of a tank's content that stands i tanks further on after one tidal volume. */
  readonly passed: Float64Array
}

export function createProgram(): Program {
  return {
    steps: 0,
    inspiratorySteps: 0,
    serialTanks: 1,
    hasOuter: false,
    sideFromOuter: false,
    bagValved: false,
    hasBag: false,
    tankL: 0,
    coefficients: new Float64Array(MAX_STEPS * STRIDE),
    passed: new Float64Array(MAX_SERIAL),
  }
}
