// Carries tracers through one breath, several side by side. Every tracer follows the same linear steps; only its sources differ.
import { AT, MAX_SERIAL, STRIDE } from './program.ts'
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
  const c = program.coefficients
  const { hasOuter, sideFromOuter, serialTanks, inspiratorySteps, hasBag, bagValved } = program
  const { state: z, width, capacity, innerDevice, outerDevice, room, arriving } = block
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
    const outerKeep = c[at + A.outerKeep] as number
    const outerStay = c[at + A.outerStay] as number
    const outerRoom = c[at + A.outerRoom] as number
    const outerOwn = c[at + A.outerDevice] as number
    const outerInner = c[at + A.outerInner] as number
    const sideKeep = c[at + A.sideKeep] as number
    const sideStay = c[at + A.sideStay] as number
    const innerKeep = c[at + A.innerKeep] as number
    const innerStay = c[at + A.innerStay] as number
    const fromDevice = c[at + A.innerDevice] as number
    const fromBag = c[at + A.innerBag] as number
    const fromOuter = c[at + A.innerDraw] as number
    const fromRoom = c[at + A.innerRoom] as number
    const mixedKeep = c[at + A.mixedKeep] as number
    const mixedStay = c[at + A.mixedStay] as number
    const mixedInner = c[at + A.mixedInner] as number
    const mixedSide = c[at + A.mixedOther] as number
    const bagKeep = c[at + A.bagKeep] as number
    const bagDevice = c[at + A.bagDevice] as number
    const volumeL = c[at + A.lungL] as number
    for (let j = 0; j < width; j++) {
      const roomGas = room[j] as number
      const device = innerDevice[j] as number
      let outerMean = roomGas
      const outer = z[j] as number
      const outerFixed = outerRoom * roomGas + outerOwn * (outerDevice[j] as number)
      if (hasOuter && !overflows) {
        outerMean = outerFixed + outerStay * (outer - outerFixed)
        z[j] = outerFixed + outerKeep * (outer - outerFixed)
      }
      let innerIn = fromDevice * device + fromOuter * outerMean + fromRoom * roomGas
      if (hasBag) {
        const bag = z[bag0 + j] as number
        innerIn += fromBag * (bagValved ? (bagGas[j] as number) : bag)
        z[bag0 + j] = bagKeep * bag + bagDevice * device
      }
      const inner = z[inner0 + j] as number
      const innerMean = innerIn + innerStay * (inner - innerIn)
      z[inner0 + j] = innerIn + innerKeep * (inner - innerIn)
      if (hasOuter && overflows) {
        const outerIn = outerFixed + outerInner * innerMean
        outerMean = outerIn + outerStay * (outer - outerIn)
        z[j] = outerIn + outerKeep * (outer - outerIn)
      }
      let opening = innerMean
      if (mixedSide > 0) {
        const sideIn = sideFromOuter ? outerMean : roomGas
        const side = z[side0 + j] as number
        opening = mixedInner * innerMean + mixedSide * (sideIn + sideStay * (side - sideIn))
        z[side0 + j] = sideIn + sideKeep * (side - sideIn)
      }
      const mixed = z[mixed0 + j] as number
      const through = opening + mixedStay * (mixed - opening)
      z[mixed0 + j] = opening + mixedKeep * (mixed - opening)
      openingInL[j] = (openingInL[j] as number) + volumeL * opening
      tracheaInL[j] = (tracheaInL[j] as number) + volumeL * through
      for (let i = 0; i < serialTanks; i++) {
        const slot = i * capacity + j
        arriving[slot] = (arriving[slot] as number) + (c[at + A.tank + i] as number) * through
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
    const outerKeep = c[at + A.outerKeep] as number
    const outerRoom = c[at + A.outerRoom] as number
    const outerOwn = c[at + A.outerDevice] as number
    const outerLost = c[at + A.outerInnerDevice] as number
    const outerInner = c[at + A.outerInner] as number
    const outerSide = c[at + A.outerSide] as number
    const sideKeep = c[at + A.sideKeep] as number
    const sideStay = c[at + A.sideStay] as number
    const innerKeep = c[at + A.innerKeep] as number
    const innerStay = c[at + A.innerStay] as number
    const fromDevice = c[at + A.innerDevice] as number
    const fromRoom = c[at + A.innerRoom] as number
    const fromMixed = c[at + A.innerMixed] as number
    const mixedKeep = c[at + A.mixedKeep] as number
    const mixedStay = c[at + A.mixedStay] as number
    const mixedInner = c[at + A.mixedInner] as number
    const mixedLung = c[at + A.mixedOther] as number
    const bagKeep = c[at + A.bagKeep] as number
    const bagDevice = c[at + A.bagDevice] as number
    const bagInner = c[at + A.bagInner] as number
    const leavesL = c[at + A.leavesL] as number
    const flushedL = c[at + A.flushedL] as number
    const alveolarShare = c[at + A.alveolar] as number
    for (let j = 0; j < width; j++) {
      let through = alveolarShare * (alveolar[j] as number)
      for (let i = 0; i < serialTanks; i++) {
        through += (c[at + A.tank + i] as number) * (z[serial0 + i * capacity + j] as number)
      }
      const device = innerDevice[j] as number
      const roomGas = room[j] as number
      const inner = z[inner0 + j] as number
      const mixed = z[mixed0 + j] as number
      let innerIn = fromDevice * device + fromRoom * roomGas
      let innerMean = innerIn + innerStay * (inner - innerIn)
      const mixedIn = flushes ? mixedLung * through + mixedInner * innerMean : through
      const mixedMean = mixedIn + mixedStay * (mixed - mixedIn)
      z[mixed0 + j] = mixedIn + mixedKeep * (mixed - mixedIn)
      const leaving = leavingFixed ? (leavingAirway[j] as number) : mixedMean
      if (!flushes) {
        innerIn += fromMixed * leaving
        innerMean = innerIn + innerStay * (inner - innerIn)
      }
      z[inner0 + j] = innerIn + innerKeep * (inner - innerIn)
      openingOutL[j] = (openingOutL[j] as number) + leavesL * leaving - flushedL * innerMean
      const side = z[side0 + j] as number
      z[side0 + j] = leaving + sideKeep * (side - leaving)
      if (hasOuter) {
        const sideMean = leaving + sideStay * (side - leaving)
        const outerIn =
          outerRoom * roomGas +
          outerOwn * (outerDevice[j] as number) +
          outerLost * device +
          outerInner * innerMean +
          outerSide * sideMean
        z[j] = outerIn + outerKeep * ((z[j] as number) - outerIn)
      }
      if (hasBag) {
        z[bag0 + j] = bagKeep * (z[bag0 + j] as number) + bagDevice * device + bagInner * innerMean
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
