// Carries tracers through one breath, several side by side. Every tracer follows the same linear steps; only its sources differ.
import { AT, MAX_SERIAL, POCKET, STRIDE } from './program.ts'
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
export { MAX_SERIAL } from './program.ts'
export const STATE_SIZE = STATE.serial + MAX_SERIAL

/** Tracers side by side. Arrays of pockets hold one row of `capacity` numbers for each pocket; sources hold one number per tracer. */
export interface TracerBlock {
  readonly capacity: number
  width: number
  /** The first so many tracers may have sources or hold something outside the serial tanks at the start of inspiration. */
  upstreamWidth: number
  readonly state: Float64Array
  readonly innerDevice: Float64Array
  readonly outerDevice: Float64Array
  readonly room: Float64Array
  readonly alveolar: Float64Array
  readonly bag: Float64Array
  readonly leavingAirway: Float64Array
  /** Whether all gas that leaves the airway takes `leavingAirway`. */
  leavingFixed: boolean
  readonly openingInL: Float64Array
  readonly openingOutL: Float64Array
  readonly tracheaInL: Float64Array
  readonly alveoliInL: Float64Array
  /** What the serial tanks will hold at the end of inspiration of what entered them in it. */
  readonly arriving: Float64Array
}

export function createTracerBlock(capacity: number): TracerBlock {
  const row = (): Float64Array => new Float64Array(capacity)
  return {
    capacity,
    width: 0,
    upstreamWidth: 0,
    state: new Float64Array(STATE_SIZE * capacity),
    innerDevice: row(),
    outerDevice: row(),
    room: row(),
    alveolar: row(),
    bag: row(),
    leavingAirway: row(),
    leavingFixed: false,
    openingInL: row(),
    openingOutL: row(),
    tracheaInL: row(),
    alveoliInL: row(),
    arriving: new Float64Array(MAX_SERIAL * capacity),
  }
}

export function setBlockSources(block: TracerBlock, column: number, sources: TracerSources): void {
  block.innerDevice[column] = sources.innerDevice
  block.outerDevice[column] = sources.outerDevice
  block.room[column] = sources.room
  block.alveolar[column] = sources.alveolar
  block.bag[column] = sources.bag ?? 0
  block.leavingAirway[column] = sources.leavingAirway ?? 0
  block.leavingFixed = sources.leavingAirway !== null
}

/**
 * Advances `z` (concentrations at the start of inspiration) by one breath in place and adds up what passed.
 * Every step is a convex mixture, so concentrations stay within those of their sources, and no gas is lost.
 */
export function passBreath(
  program: Program,
  z: Float64Array,
  sources: TracerSources,
  totals: TracerTotals | null = null,
  trace: TracerTrace | null = null,
): void {
  const block = createTracerBlock(1)
  block.width = 1
  block.upstreamWidth = 1
  block.state.set(z)
  setBlockSources(block, 0, sources)
  passBlock(program, block, trace)
  z.set(block.state)
  if (totals === null) return
  totals.openingInL = block.openingInL[0] ?? 0
  totals.openingOutL = block.openingOutL[0] ?? 0
  totals.tracheaInL = block.tracheaInL[0] ?? 0
  totals.alveoliInL = block.alveoliInL[0] ?? 0
}

/** passBreath for all tracers of a block at once; `trace` follows the first. */
export function passBlock(
  program: Program,
  block: TracerBlock,
  trace: TracerTrace | null = null,
): void {
  passInspiration(program, block, trace)
  moveTanksIn(program, block)
  passExpiration(program, block, trace)
  moveTanksOut(program, block)
}

// Every index below lies within its array by construction (STRIDE × steps, STATE_SIZE × capacity); the casts only say so.

function passInspiration(program: Program, block: TracerBlock, trace: TracerTrace | null): void {
  const A = AT
  const P = POCKET
  const c = program.coefficients
  const { hasOuter, sideFromOuter, serialTanks, inspiratorySteps, hasBag, bagValved } = program
  const { state: z, upstreamWidth, capacity, innerDevice, outerDevice, room, arriving } = block
  const { openingInL, tracheaInL } = block
  const bagGas = block.bag
  const side0 = STATE.side * capacity
  const inner0 = STATE.inner * capacity
  const mixed0 = STATE.mixed * capacity
  const bag0 = STATE.bag * capacity
  arriving.fill(0)
  openingInL.fill(0)
  tracheaInL.fill(0)
  for (let k = 0; k < inspiratorySteps; k++) {
    const at = k * STRIDE
    const overflows = (c[at + A.reverse] as number) > 0
    const outerAt = at + A.outer
    const sideAt = at + A.side
    const innerAt = at + A.inner
    const mixedAt = at + A.mixed
    const mixedInner = c[at + A.mixedInner] as number
    const mixedSide = c[at + A.mixedOther] as number
    const volumeL = c[at + A.lungL] as number
    for (let j = 0; j < upstreamWidth; j++) {
      const roomGas = room[j] as number
      const device = innerDevice[j] as number
      let outerMean = roomGas
      let outerRise = 0
      let outerIn = 0
      let outerInRise = 0
      if (hasOuter) {
        const own = outerDevice[j] as number
        outerIn =
          (c[at + A.outerRoom] as number) * roomGas + (c[at + A.outerDevice] as number) * own
        outerInRise =
          (c[at + A.outerRoomRise] as number) * roomGas +
          (c[at + A.outerDeviceRise] as number) * own
        if (!overflows) {
          const gap = (z[j] as number) - outerIn
          outerMean =
            outerIn +
            (c[outerAt + P.stay] as number) * gap -
            (c[outerAt + P.lag] as number) * outerInRise
          outerRise =
            (c[outerAt + P.rise] as number) * gap + (c[outerAt + P.pass] as number) * outerInRise
          z[j] =
            outerIn +
            (c[outerAt + P.keep] as number) * gap +
            (c[outerAt + P.gain] as number) * outerInRise
        }
      }
      const fromOuter = c[at + A.innerDraw] as number
      const drawn = outerMean + (c[at + A.outerToInnerSkew] as number) * outerRise
      let innerIn =
        (c[at + A.innerDevice] as number) * device +
        fromOuter * drawn +
        (c[at + A.innerRoom] as number) * roomGas
      let innerInRise =
        (c[at + A.innerDeviceRise] as number) * device +
        (c[at + A.innerDrawRise] as number) * drawn +
        fromOuter * outerRise +
        (c[at + A.innerRoomRise] as number) * roomGas
      if (hasBag) {
        const bag = z[bag0 + j] as number
        const gas = bagValved ? (bagGas[j] as number) : bag
        innerIn += (c[at + A.innerBag] as number) * gas
        innerInRise += (c[at + A.innerBagRise] as number) * gas
        z[bag0 + j] = (c[at + A.bagKeep] as number) * bag + (c[at + A.bagDevice] as number) * device
      }
      const innerGap = (z[inner0 + j] as number) - innerIn
      const innerMean =
        innerIn +
        (c[innerAt + P.stay] as number) * innerGap -
        (c[innerAt + P.lag] as number) * innerInRise
      const innerRise =
        (c[innerAt + P.rise] as number) * innerGap + (c[innerAt + P.pass] as number) * innerInRise
      z[inner0 + j] =
        innerIn +
        (c[innerAt + P.keep] as number) * innerGap +
        (c[innerAt + P.gain] as number) * innerInRise
      if (hasOuter && overflows) {
        const fromInner = c[at + A.outerInner] as number
        const surplus = innerMean + (c[at + A.innerToOuterSkew] as number) * innerRise
        outerIn += fromInner * surplus
        outerInRise += (c[at + A.outerInnerRise] as number) * surplus + fromInner * innerRise
        const gap = (z[j] as number) - outerIn
        outerMean =
          outerIn +
          (c[outerAt + P.stay] as number) * gap -
          (c[outerAt + P.lag] as number) * outerInRise
        outerRise =
          (c[outerAt + P.rise] as number) * gap + (c[outerAt + P.pass] as number) * outerInRise
        z[j] =
          outerIn +
          (c[outerAt + P.keep] as number) * gap +
          (c[outerAt + P.gain] as number) * outerInRise
      }
      let opening = innerMean + (c[at + A.innerToMixedSkew] as number) * innerRise
      let openingRise = innerRise
      if (mixedSide > 0) {
        const sideIn = sideFromOuter
          ? outerMean + (c[at + A.outerToSideSkew] as number) * outerRise
          : roomGas
        const sideInRise = sideFromOuter ? outerRise : 0
        const gap = (z[side0 + j] as number) - sideIn
        const sideMean =
          sideIn + (c[sideAt + P.stay] as number) * gap - (c[sideAt + P.lag] as number) * sideInRise
        const sideRise =
          (c[sideAt + P.rise] as number) * gap + (c[sideAt + P.pass] as number) * sideInRise
        z[side0 + j] =
          sideIn +
          (c[sideAt + P.keep] as number) * gap +
          (c[sideAt + P.gain] as number) * sideInRise
        opening = mixedInner * opening + mixedSide * sideMean
        openingRise = mixedInner * innerRise + mixedSide * sideRise
      }
      const mixedGap = (z[mixed0 + j] as number) - opening
      const through =
        opening +
        (c[mixedAt + P.stay] as number) * mixedGap -
        (c[mixedAt + P.lag] as number) * openingRise
      const throughRise =
        (c[mixedAt + P.rise] as number) * mixedGap + (c[mixedAt + P.pass] as number) * openingRise
      z[mixed0 + j] =
        opening +
        (c[mixedAt + P.keep] as number) * mixedGap +
        (c[mixedAt + P.gain] as number) * openingRise
      openingInL[j] = (openingInL[j] as number) + volumeL * opening
      tracheaInL[j] = (tracheaInL[j] as number) + volumeL * through
      for (let i = 0; i < serialTanks; i++) {
        const slot = i * capacity + j
        arriving[slot] =
          (arriving[slot] as number) +
          (c[at + A.tank + i] as number) * through +
          (c[at + A.tankRise + i] as number) * throughRise
      }
      if (trace !== null && j === 0) {
        trace.opening[k] = opening
        trace.trachea[k] = through
        trace.inner[k] = innerMean
      }
    }
  }
}

/** Serial tanks at the end of inspiration; what they do not keep has reached the alveoli. */
function moveTanksIn({ passed, serialTanks, tankL }: Program, block: TracerBlock): void {
  const { state: z, width, capacity, arriving, alveoliInL, tracheaInL } = block
  for (let j = 0; j < width; j++) {
    let lostL = tracheaInL[j] as number
    for (let i = serialTanks - 1; i >= 0; i--) {
      const at = (STATE.serial + i) * capacity + j
      let after = arriving[i * capacity + j] as number
      for (let m = 0; m <= i; m++) after += (passed[m] as number) * (z[at - m * capacity] as number)
      lostL += tankL * ((z[at] as number) - after)
      z[at] = after
    }
    alveoliInL[j] = lostL
  }
}

function passExpiration(program: Program, block: TracerBlock, trace: TracerTrace | null): void {
  const A = AT
  const P = POCKET
  const c = program.coefficients
  const { hasOuter, serialTanks, inspiratorySteps, steps, hasBag } = program
  const { state: z, width, capacity, innerDevice, outerDevice, room, alveolar } = block
  const { openingOutL, leavingAirway, leavingFixed } = block
  const side0 = STATE.side * capacity
  const inner0 = STATE.inner * capacity
  const mixed0 = STATE.mixed * capacity
  const bag0 = STATE.bag * capacity
  const serial0 = STATE.serial * capacity
  openingOutL.fill(0)
  for (let k = inspiratorySteps; k < steps; k++) {
    const at = k * STRIDE
    const flushes = (c[at + A.reverse] as number) > 0
    const outerAt = at + A.outer
    const sideAt = at + A.side
    const innerAt = at + A.inner
    const mixedAt = at + A.mixed
    for (let j = 0; j < width; j++) {
      let through = (c[at + A.alveolar] as number) * (alveolar[j] as number)
      let throughRise = (c[at + A.alveolarRise] as number) * (alveolar[j] as number)
      for (let i = 0; i < serialTanks; i++) {
        const tank = z[serial0 + i * capacity + j] as number
        through += (c[at + A.tank + i] as number) * tank
        throughRise += (c[at + A.tankRise + i] as number) * tank
      }
      const device = innerDevice[j] as number
      const roomGas = room[j] as number
      const inner = z[inner0 + j] as number
      let innerIn =
        (c[at + A.innerDevice] as number) * device + (c[at + A.innerRoom] as number) * roomGas
      let innerInRise =
        (c[at + A.innerDeviceRise] as number) * device +
        (c[at + A.innerRoomRise] as number) * roomGas
      let flushed = 0
      let mixedIn = through
      let mixedInRise = throughRise
      if (flushes) {
        const gap = inner - innerIn
        flushed =
          innerIn +
          (c[innerAt + P.stay] as number) * gap -
          (c[innerAt + P.lag] as number) * innerInRise
        const flushedRise =
          (c[innerAt + P.rise] as number) * gap + (c[innerAt + P.pass] as number) * innerInRise
        flushed += (c[at + A.innerToMixedSkew] as number) * flushedRise
        const fromLung = c[at + A.mixedOther] as number
        const fromInner = c[at + A.mixedInner] as number
        mixedIn = fromLung * through + fromInner * flushed
        mixedInRise =
          fromLung * throughRise +
          (c[at + A.mixedOtherRise] as number) * through +
          fromInner * flushedRise +
          (c[at + A.mixedInnerRise] as number) * flushed
      }
      const mixedGap = (z[mixed0 + j] as number) - mixedIn
      let leaving =
        mixedIn +
        (c[mixedAt + P.stay] as number) * mixedGap -
        (c[mixedAt + P.lag] as number) * mixedInRise
      let leavingRise =
        (c[mixedAt + P.rise] as number) * mixedGap + (c[mixedAt + P.pass] as number) * mixedInRise
      z[mixed0 + j] =
        mixedIn +
        (c[mixedAt + P.keep] as number) * mixedGap +
        (c[mixedAt + P.gain] as number) * mixedInRise
      if (leavingFixed) {
        leaving = leavingAirway[j] as number
        leavingRise = 0
      }
      if (!flushes) {
        const fromMixed = c[at + A.innerMixed] as number
        const expired = leaving + (c[at + A.mixedToInnerSkew] as number) * leavingRise
        innerIn += fromMixed * expired
        innerInRise += fromMixed * leavingRise + (c[at + A.innerMixedRise] as number) * expired
      }
      const innerGap = inner - innerIn
      const innerMean =
        innerIn +
        (c[innerAt + P.stay] as number) * innerGap -
        (c[innerAt + P.lag] as number) * innerInRise
      const innerRise =
        (c[innerAt + P.rise] as number) * innerGap + (c[innerAt + P.pass] as number) * innerInRise
      z[inner0 + j] =
        innerIn +
        (c[innerAt + P.keep] as number) * innerGap +
        (c[innerAt + P.gain] as number) * innerInRise
      openingOutL[j] =
        (openingOutL[j] as number) +
        (c[at + A.leavesL] as number) * leaving -
        (c[at + A.flushedL] as number) * flushed
      const sideIn = leaving + (c[at + A.mixedToSideSkew] as number) * leavingRise
      const sideGap = (z[side0 + j] as number) - sideIn
      z[side0 + j] =
        sideIn +
        (c[sideAt + P.keep] as number) * sideGap +
        (c[sideAt + P.gain] as number) * leavingRise
      if (hasOuter) {
        const own = outerDevice[j] as number
        const sideMean =
          sideIn +
          (c[sideAt + P.stay] as number) * sideGap -
          (c[sideAt + P.lag] as number) * leavingRise
        const sideRise =
          (c[sideAt + P.rise] as number) * sideGap + (c[sideAt + P.pass] as number) * leavingRise
        const fromInner = c[at + A.outerInner] as number
        const overflow = innerMean + (c[at + A.innerToOuterSkew] as number) * innerRise
        const fromSide = c[at + A.outerSide] as number
        const outerIn =
          (c[at + A.outerRoom] as number) * roomGas +
          (c[at + A.outerDevice] as number) * own +
          (c[at + A.outerInnerDevice] as number) * device +
          fromInner * overflow +
          fromSide * sideMean
        const outerInRise =
          (c[at + A.outerRoomRise] as number) * roomGas +
          (c[at + A.outerDeviceRise] as number) * own +
          (c[at + A.outerInnerDeviceRise] as number) * device +
          (c[at + A.outerInnerRise] as number) * overflow +
          fromInner * innerRise +
          (c[at + A.outerSideRise] as number) * sideMean +
          fromSide * sideRise
        const gap = (z[j] as number) - outerIn
        z[j] =
          outerIn +
          (c[outerAt + P.keep] as number) * gap +
          (c[outerAt + P.gain] as number) * outerInRise
      }
      if (hasBag) {
        z[bag0 + j] =
          (c[at + A.bagKeep] as number) * (z[bag0 + j] as number) +
          (c[at + A.bagDevice] as number) * device +
          (c[at + A.bagInner] as number) * innerMean
      }
      if (trace !== null && j === 0) trace.inner[k] = innerMean
    }
  }
}

/** Serial tanks at the end of expiration: what stood i tanks nearer the lungs, and alveolar gas behind it. */
function moveTanksOut({ passed, serialTanks }: Program, block: TracerBlock): void {
  const { state: z, width, capacity, alveolar } = block
  for (let j = 0; j < width; j++) {
    for (let i = 0; i < serialTanks; i++) {
      const at = (STATE.serial + i) * capacity + j
      let after = 0
      let share = 0
      for (let m = 0; m < serialTanks - i; m++) {
        after += (passed[m] as number) * (z[at + m * capacity] as number)
        share += passed[m] as number
      }
      z[at] = after + (1 - share) * (alveolar[j] as number)
    }
  }
}
