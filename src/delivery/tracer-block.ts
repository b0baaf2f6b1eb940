// Tracers side by side: what they hold, where they come from and what is counted. Leaves out how they move.
import { MAX_SERIAL } from './program-layout.ts'

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
