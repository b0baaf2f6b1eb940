// Carries one tracer through one breath. Every tracer follows the same linear steps; only its sources differ.
import { AT, STRIDE } from './program.ts'
import type { Program } from './program.ts'

/** Concentration of the tracer in what enters the pockets. */
export interface TracerSources {
  readonly innerDevice: number
  readonly outerDevice: number
  readonly room: number
  readonly alveolar: number
  /** What the bag of a non-rebreather holds; null lets the bag mix its own. */
  readonly bag: number | null
  /** Null: expired gas keeps what it carries. A number: all gas that leaves the airway takes this value (origin tracers). */
  readonly leavingAirway: number | null
}

/** Amounts of the tracer that passed in one breath, L. */
export interface TracerTotals {
  openingInL: number
  openingOutL: number
  /** Inspired past the mixed airway, into the trachea. */
  tracheaInL: number
  alveoliInL: number
}

/** Mean concentration in each inspiratory step at the opening and at the trachea, and in each step in the inner pocket. */
export interface TracerTrace {
  readonly opening: Float64Array
  readonly trachea: Float64Array
  /** In the inner pocket, in every step of the breath. */
  readonly inner: Float64Array
}

/** Where each pocket stands in the state vector; the serial tanks follow. */
export const STATE = { outer: 0, side: 1, inner: 2, mixed: 3, bag: 4, serial: 5 } as const
export const MAX_SERIAL = 8
export const STATE_SIZE = STATE.serial + MAX_SERIAL

/**
 * Advances `z` (concentrations at the start of inspiration) by one breath in place and adds up what passed.
 * Every step is a convex mixture, so concentrations stay within those of their sources, and no gas is lost.
 */
export function passBreath(
  program: Program,
  z: Float64Array,
  s: TracerSources,
  totals: TracerTotals | null = null,
  trace: TracerTrace | null = null,
): void {
  const c = program.coefficients
  const { hasOuter, sideFromOuter, serialTanks, inspiratorySteps, steps } = program
  // Every index below lies within its array by construction (STRIDE × steps, STATE_SIZE); the casts only say so.
  let outer = z[STATE.outer] as number
  let side = z[STATE.side] as number
  let inner = z[STATE.inner] as number
  let mixed = z[STATE.mixed] as number
  let bag = z[STATE.bag] as number
  let openingIn = 0
  let openingOut = 0
  let tracheaIn = 0
  let alveoliIn = 0
  const last = STATE.serial + serialTanks
  for (let k = 0; k < steps; k++) {
    const at = k * STRIDE
    const reverse = (c[at + AT.reverse] as number) > 0
    const innerKeep = c[at + AT.innerKeep] as number
    const innerStay = c[at + AT.innerStay] as number
    const serialKeep = c[at + AT.serialKeep] as number
    const serialStay = c[at + AT.serialStay] as number
    const fromBag = s.bag ?? bag
    let innerIn =
      (c[at + AT.innerDevice] as number) * s.innerDevice + (c[at + AT.innerBag] as number) * fromBag
    innerIn += (c[at + AT.innerRoom] as number) * s.room
    const outerFixed =
      (c[at + AT.outerRoom] as number) * s.room +
      (c[at + AT.outerDevice] as number) * s.outerDevice +
      (c[at + AT.outerInnerDevice] as number) * s.innerDevice
    let innerMean: number
    let outerMean = s.room
    if (k < inspiratorySteps) {
      if (hasOuter && !reverse) {
        outerMean =
          (c[at + AT.outerStay] as number) * outer +
          (1 - (c[at + AT.outerStay] as number)) * outerFixed
        outer =
          (c[at + AT.outerKeep] as number) * outer +
          (1 - (c[at + AT.outerKeep] as number)) * outerFixed
      }
      innerIn += (c[at + AT.innerDraw] as number) * outerMean
      innerMean = innerStay * inner + (1 - innerStay) * innerIn
      inner = innerKeep * inner + (1 - innerKeep) * innerIn
      if (hasOuter && reverse) {
        const outerIn = outerFixed + (c[at + AT.outerInner] as number) * innerMean
        outerMean =
          (c[at + AT.outerStay] as number) * outer +
          (1 - (c[at + AT.outerStay] as number)) * outerIn
        outer =
          (c[at + AT.outerKeep] as number) * outer +
          (1 - (c[at + AT.outerKeep] as number)) * outerIn
      }
      const sideIn = sideFromOuter ? outerMean : s.room
      const sideMean =
        (c[at + AT.sideStay] as number) * side + (1 - (c[at + AT.sideStay] as number)) * sideIn
      side = (c[at + AT.sideKeep] as number) * side + (1 - (c[at + AT.sideKeep] as number)) * sideIn
      const opening =
        (c[at + AT.mixedInner] as number) * innerMean + (c[at + AT.mixedOther] as number) * sideMean
      const volumeL = c[at + AT.lungL] as number
      openingIn += volumeL * opening
      let through =
        (c[at + AT.mixedStay] as number) * mixed + (1 - (c[at + AT.mixedStay] as number)) * opening
      mixed =
        (c[at + AT.mixedKeep] as number) * mixed + (1 - (c[at + AT.mixedKeep] as number)) * opening
      tracheaIn += volumeL * through
      if (trace !== null) {
        trace.opening[k] = opening
        trace.trachea[k] = through
      }
      for (let i = STATE.serial; i < last; i++) {
        const tank = z[i] as number
        z[i] = serialKeep * tank + (1 - serialKeep) * through
        through = serialStay * tank + (1 - serialStay) * through
      }
      alveoliIn += volumeL * through
      bag = (c[at + AT.bagKeep] as number) * bag + (c[at + AT.bagDevice] as number) * s.innerDevice
    } else {
      let through = s.alveolar
      for (let i = last - 1; i >= STATE.serial; i--) {
        const tank = z[i] as number
        z[i] = serialKeep * tank + (1 - serialKeep) * through
        through = serialStay * tank + (1 - serialStay) * through
      }
      let leaving: number
      // Gas drawn into the nose by a flush stronger than expiration comes from the room.
      innerIn += (c[at + AT.innerDraw] as number) * s.room
      if (reverse) {
        innerMean = innerStay * inner + (1 - innerStay) * innerIn
        inner = innerKeep * inner + (1 - innerKeep) * innerIn
        const mixedIn =
          (c[at + AT.mixedOther] as number) * through +
          (c[at + AT.mixedInner] as number) * innerMean
        const mixedMean =
          (c[at + AT.mixedStay] as number) * mixed +
          (1 - (c[at + AT.mixedStay] as number)) * mixedIn
        mixed =
          (c[at + AT.mixedKeep] as number) * mixed +
          (1 - (c[at + AT.mixedKeep] as number)) * mixedIn
        leaving = s.leavingAirway ?? mixedMean
      } else {
        const mixedMean =
          (c[at + AT.mixedStay] as number) * mixed +
          (1 - (c[at + AT.mixedStay] as number)) * through
        mixed =
          (c[at + AT.mixedKeep] as number) * mixed +
          (1 - (c[at + AT.mixedKeep] as number)) * through
        leaving = s.leavingAirway ?? mixedMean
        innerIn += (c[at + AT.innerMixed] as number) * leaving
        innerMean = innerStay * inner + (1 - innerStay) * innerIn
        inner = innerKeep * inner + (1 - innerKeep) * innerIn
      }
      openingOut +=
        (c[at + AT.leavesL] as number) * leaving - (c[at + AT.flushedL] as number) * innerMean
      const sideMean =
        (c[at + AT.sideStay] as number) * side + (1 - (c[at + AT.sideStay] as number)) * leaving
      side =
        (c[at + AT.sideKeep] as number) * side + (1 - (c[at + AT.sideKeep] as number)) * leaving
      if (hasOuter) {
        const outerIn =
          outerFixed +
          (c[at + AT.outerInner] as number) * innerMean +
          (c[at + AT.outerSide] as number) * sideMean
        outer =
          (c[at + AT.outerKeep] as number) * outer +
          (1 - (c[at + AT.outerKeep] as number)) * outerIn
      }
      bag =
        (c[at + AT.bagKeep] as number) * bag +
        (c[at + AT.bagDevice] as number) * s.innerDevice +
        (c[at + AT.bagInner] as number) * innerMean
    }
    if (trace !== null) trace.inner[k] = innerMean
  }
  z[STATE.outer] = outer
  z[STATE.side] = side
  z[STATE.inner] = inner
  z[STATE.mixed] = mixed
  z[STATE.bag] = bag
  if (totals === null) return
  totals.openingInL = openingIn
  totals.openingOutL = openingOut
  totals.tracheaInL = tracheaIn
  totals.alveoliInL = alveoliIn
}
