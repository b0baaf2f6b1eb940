// The steady breath: solves the affine fixed point of all pockets at once instead of simulating hundreds of breaths.
import { assert } from '../errors.ts'
import { createBagCourse, solveBag } from './bag.ts'
import type { BagCourse } from './bag.ts'
import type { BreathPattern } from './breath.ts'
import { createGrid, fillGrid, MAX_STEPS } from './grid.ts'
import type { Grid } from './grid.ts'
import type { Network } from './network.ts'
import { createProgram, MAX_SERIAL } from './program-layout.ts'
import type { Program } from './program-layout.ts'
import { compileProgram } from './program.ts'
import { createTracerBlock, STATE, STATE_SIZE } from './tracer-block.ts'
import type { TracerBlock, TracerSources, TracerTotals } from './tracer-block.ts'
import { passBlock, passBreath } from './tracer.ts'

/** Basic steps in each phase; see fillGrid for the accuracy this gives. */
export const DEFAULT_RESOLUTION = 10

/** Gas that enters the alveoli in one steady breath, by origin, L BTPS; the sum is the tidal volume. */
export interface AlveolarInflow {
  sourceL: number
  roomL: number
  expiredL: number
}

/** Memory for one solver, reused from breath to breath; not shared between callers that interleave. */
export interface PeriodicSolver {
  readonly grid: Grid
  readonly bag: BagCourse
  readonly program: Program
  /** Concentrations at the start of inspiration in the steady breath, one array per tracer. */
  readonly source: Float64Array
  readonly room: Float64Array
  readonly expired: Float64Array
  readonly inflow: AlveolarInflow
  readonly active: Int32Array
  activeCount: number
  readonly block: TracerBlock
  readonly matrix: Float64Array
}

/** Columns of the block and of the matrix: two tracers, then one for each pocket that remembers. */
const SOURCE = 0
const ROOM = 1
const FIRST = 2
const WIDTH = FIRST + STATE_SIZE

export function createPeriodicSolver(): PeriodicSolver {
  return {
    grid: createGrid(),
    bag: createBagCourse(MAX_STEPS),
    program: createProgram(),
    source: new Float64Array(STATE_SIZE),
    room: new Float64Array(STATE_SIZE),
    expired: new Float64Array(STATE_SIZE),
    inflow: { sourceL: 0, roomL: 0, expiredL: 0 },
    active: new Int32Array(STATE_SIZE),
    activeCount: 0,
    block: createTracerBlock(WIDTH),
    matrix: new Float64Array(STATE_SIZE * WIDTH),
  }
}

/** Sources of the three passive tracers: source gas of the device, room air, alveolar gas. */
export function tracerSources(
  network: Network,
  tracer: 'source' | 'room' | 'expired',
): TracerSources {
  const valved = network.bag !== null && network.bag.hasInletValve
  const { sourceShare, outerSourceShare } = network
  const own = tracer === 'source' ? sourceShare : tracer === 'room' ? 1 - sourceShare : 0
  const outer =
    tracer === 'source' ? outerSourceShare : tracer === 'room' ? 1 - outerSourceShare : 0
  return {
    innerDevice: own,
    outerDevice: outer,
    room: tracer === 'room' ? 1 : 0,
    alveolar: tracer === 'expired' ? 1 : 0,
    bag: valved ? own : null,
    leavingAirway: null,
  }
}

/**
 * Prepares the steps of one breath and solves z = Φz + ψ for the three tracers. Afterwards `source`, `room` and `expired` hold the
 * steady state at the start of inspiration and `inflow` what reaches the alveoli. Range: any breath within BREATH_LIMITS; serial
 * tanks 1–8. Effective fraction within 0.001 of the adaptive integrator (test/delivery-agreement.test.ts).
 */
export function solvePeriodic(
  solver: PeriodicSolver,
  network: Network,
  breath: BreathPattern,
  resolution = DEFAULT_RESOLUTION,
): void {
  assert(
    network.serialTanks >= 1 && network.serialTanks <= MAX_SERIAL,
    'serial tanks between 1 and MAX_SERIAL',
  )
  fillGrid(solver.grid, breath, network, resolution)
  solveBag(solver.bag, network, breath, solver.grid)
  compileProgram(solver.program, network, solver.grid, solver.bag)
  listActive(solver, network)
  fillBlock(solver, network)
  passBlock(solver.program, solver.block)
  eliminate(solver)
  readSolution(solver, breath.tidalVolumeL)
}

/** What reaches the alveoli in the steady breath last solved. */
export function alveolarInflow(
  solver: PeriodicSolver,
  _network: Network,
  into: AlveolarInflow,
): AlveolarInflow {
  into.sourceL = solver.inflow.sourceL
  into.roomL = solver.inflow.roomL
  into.expiredL = solver.inflow.expiredL
  return into
}

/** Totals of one tracer over the steady breath. The stored state is left as it was. */
export function steadyTotals(
  solver: PeriodicSolver,
  network: Network,
  tracer: 'source' | 'room' | 'expired',
): TracerTotals {
  const totals: TracerTotals = { openingInL: 0, openingOutL: 0, tracheaInL: 0, alveoliInL: 0 }
  const state = Float64Array.from(solver[tracer])
  passBreath(solver.program, state, tracerSources(network, tracer), totals)
  return totals
}

/** A tank of which less than this is left by the next breath has forgotten. */
const FORGOTTEN = 1e-7

/** Pockets that remember from one breath to the next; the serial tanks last. */
function listActive(solver: PeriodicSolver, network: Network): void {
  const { active, program, block } = solver
  let n = 0
  if (network.hasOuter && network.outerL > 0) active[n++] = STATE.outer
  if (network.sideL > 0) active[n++] = STATE.side
  if (network.innerL > 0) active[n++] = STATE.inner
  if (network.mixedL > 0) active[n++] = STATE.mixed
  if (network.bag !== null && !network.bag.hasInletValve) active[n++] = STATE.bag
  block.upstreamWidth = FIRST + n
  for (let i = 0; i < network.serialTanks; i++) {
    if (remembers(program, i)) active[n++] = STATE.serial + i
  }
  solver.activeCount = n
  block.width = FIRST + n
}

/** Whether what tank i holds at the start of inspiration is still in the serial tanks after it. */
function remembers({ passed, serialTanks, tankL }: Program, i: number): boolean {
  if (tankL <= 0) return false
  let left = 0
  for (let m = 0; m < serialTanks - i; m++) left += passed[m] as number // m < MAX_SERIAL
  return left > FORGOTTEN
}

// All indexes below stay within the block, n × WIDTH and the state; the casts only say so.

/** The two tracers from an empty start, and one unit in each pocket that remembers. */
function fillBlock({ block, active, activeCount }: PeriodicSolver, network: Network): void {
  const { sourceShare, outerSourceShare } = network
  const { state, capacity } = block
  state.fill(0)
  block.innerDevice[SOURCE] = sourceShare
  block.innerDevice[ROOM] = 1 - sourceShare
  block.outerDevice[SOURCE] = outerSourceShare
  block.outerDevice[ROOM] = 1 - outerSourceShare
  block.bag[SOURCE] = sourceShare
  block.bag[ROOM] = 1 - sourceShare
  block.room[ROOM] = 1
  for (let j = 0; j < activeCount; j++) state[(active[j] as number) * capacity + FIRST + j] = 1
}

/** A pocket that nothing passes keeps its unit: its pivot is zero but for rounding. */
const STAGNANT = 1e-13

/**
 * Gaussian elimination of (I − Φ) z = ψ with two right sides in columns 0 and 1. I − Φ is diagonally dominant by rows (Φ ≥ 0, row
 * sums ≤ 1), so no pivoting is needed. A stagnant pocket holds the room air it started with.
 */
function eliminate({ block, matrix: a, active, activeCount: n }: PeriodicSolver): void {
  const { state, capacity } = block
  for (let i = 0; i < n; i++) {
    const from = (active[i] as number) * capacity
    const to = i * WIDTH
    a[to + SOURCE] = state[from + SOURCE] as number
    a[to + ROOM] = state[from + ROOM] as number
    for (let j = FIRST; j < FIRST + n; j++) a[to + j] = -(state[from + j] as number)
    a[to + FIRST + i] = 1 + (a[to + FIRST + i] as number)
  }
  for (let p = 0; p < n; p++) {
    const pivotRow = p * WIDTH
    const pivot = a[pivotRow + FIRST + p] as number
    if (pivot < STAGNANT) continue
    for (let i = p + 1; i < n; i++) {
      const row = i * WIDTH
      const factor = (a[row + FIRST + p] as number) / pivot
      if (factor === 0) continue
      for (let j = FIRST + p + 1; j < FIRST + n; j++) {
        a[row + j] = (a[row + j] as number) - factor * (a[pivotRow + j] as number)
      }
      a[row] = (a[row] as number) - factor * (a[pivotRow] as number)
      a[row + ROOM] = (a[row + ROOM] as number) - factor * (a[pivotRow + ROOM] as number)
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = i * WIDTH
    const pivot = a[row + FIRST + i] as number
    const isStagnant = pivot < STAGNANT
    let source = a[row + SOURCE] as number
    let room = a[row + ROOM] as number
    for (let j = i + 1; j < n; j++) {
      const weight = a[row + FIRST + j] as number
      source -= weight * (a[j * WIDTH + SOURCE] as number)
      room -= weight * (a[j * WIDTH + ROOM] as number)
    }
    a[row + SOURCE] = isStagnant ? 0 : source / pivot
    a[row + ROOM] = isStagnant ? 1 : room / pivot
  }
}

/** Tracers sum to one everywhere, so the third is what the other two leave. */
function readSolution(solver: PeriodicSolver, tidalVolumeL: number): void {
  const { source, room, expired, inflow, active, activeCount, matrix, block } = solver
  source.fill(0)
  room.fill(0)
  expired.fill(1)
  let sourceL = block.alveoliInL[SOURCE] as number
  let roomL = block.alveoliInL[ROOM] as number
  for (let i = 0; i < activeCount; i++) {
    const pocket = active[i] as number
    const s = matrix[i * WIDTH + SOURCE] as number
    const r = matrix[i * WIDTH + ROOM] as number
    const perUnitL = block.alveoliInL[FIRST + i] as number
    source[pocket] = s
    room[pocket] = r
    expired[pocket] = 1 - s - r
    sourceL += perUnitL * s
    roomL += perUnitL * r
  }
  inflow.sourceL = sourceL
  inflow.roomL = roomL
  inflow.expiredL = tidalVolumeL - sourceL - roomL
}
