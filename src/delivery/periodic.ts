// The steady breath: solves the affine fixed point of all pockets at once instead of simulating hundreds of breaths.
import { assert } from '../errors.ts'
import { createBagCourse, solveBag } from './bag.ts'
import type { BagCourse } from './bag.ts'
import type { BreathPattern } from './breath.ts'
import { createGrid, fillGrid, MAX_STEPS } from './grid.ts'
import type { Grid } from './grid.ts'
import type { Network } from './network.ts'
import { compileProgram, createProgram } from './program.ts'
import type { Program } from './program.ts'
import { MAX_SERIAL, passBreath, STATE, STATE_SIZE } from './tracer.ts'
import type { TracerSources, TracerTotals } from './tracer.ts'

/** Basic steps in each phase; see fillGrid for the accuracy this gives. */
export const DEFAULT_RESOLUTION = 20

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
  readonly active: Int32Array
  activeCount: number
  readonly matrix: Float64Array
  readonly right: Float64Array
  readonly column: Float64Array
}

export function createPeriodicSolver(): PeriodicSolver {
  return {
    grid: createGrid(),
    bag: createBagCourse(MAX_STEPS),
    program: createProgram(),
    source: new Float64Array(STATE_SIZE),
    room: new Float64Array(STATE_SIZE),
    expired: new Float64Array(STATE_SIZE),
    active: new Int32Array(STATE_SIZE),
    activeCount: 0,
    matrix: new Float64Array(STATE_SIZE * STATE_SIZE),
    right: new Float64Array(STATE_SIZE * 3),
    column: new Float64Array(STATE_SIZE),
  }
}

/** Sources of the three passive tracers: source gas of the device, room air, gas from the alveoli. */
export function tracerSources(
  network: Network,
  tracer: 'source' | 'room' | 'expired',
): TracerSources {
  const valved = network.bag !== null && network.bag.hasInletValve
  const own =
    tracer === 'source' ? network.sourceShare : tracer === 'room' ? 1 - network.sourceShare : 0
  const outer =
    tracer === 'source'
      ? network.outerSourceShare
      : tracer === 'room'
        ? 1 - network.outerSourceShare
        : 0
  return {
    innerDevice: own,
    outerDevice: outer,
    room: tracer === 'room' ? 1 : 0,
    alveolar: tracer === 'expired' ? 1 : 0,
    bag: valved ? own : null,
    leavingAirway: null,
  }
}

const HOMOGENEOUS: TracerSources = {
  innerDevice: 0,
  outerDevice: 0,
  room: 0,
  alveolar: 0,
  bag: null,
  leavingAirway: null,
}
const HOMOGENEOUS_VALVED: TracerSources = { ...HOMOGENEOUS, bag: 0 }

/**
 * Prepares the steps of one breath and solves z = Φz + ψ for the three tracers. Afterwards `source`, `room` and `expired` hold the
 * steady state at the start of inspiration. Range: any breath within BREATH_LIMITS; serial tanks 1–8.
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
  solveBag(solver.bag, network, solver.grid)
  compileProgram(solver.program, network, solver.grid, solver.bag)
  listActive(solver, network)
  fillMatrix(solver, network)
  solver.source.fill(0)
  solver.room.fill(0)
  solver.expired.fill(0)
  passBreath(solver.program, solver.source, tracerSources(network, 'source'))
  passBreath(solver.program, solver.room, tracerSources(network, 'room'))
  passBreath(solver.program, solver.expired, tracerSources(network, 'expired'))
  eliminate(solver)
}

/** Runs the steady breath once more and adds up what reaches the alveoli. */
export function alveolarInflow(
  solver: PeriodicSolver,
  network: Network,
  into: AlveolarInflow,
): AlveolarInflow {
  into.sourceL = steadyTotals(solver, network, 'source').alveoliInL
  into.roomL = steadyTotals(solver, network, 'room').alveoliInL
  into.expiredL = steadyTotals(solver, network, 'expired').alveoliInL
  return into
}

/** Totals of one tracer over the steady breath. The stored state is left as it was. */
export function steadyTotals(
  solver: PeriodicSolver,
  network: Network,
  tracer: 'source' | 'room' | 'expired',
): TracerTotals {
  const totals: TracerTotals = { openingInL: 0, openingOutL: 0, tracheaInL: 0, alveoliInL: 0 }
  solver.column.set(solver[tracer])
  passBreath(solver.program, solver.column, tracerSources(network, tracer), totals)
  return totals
}

/** Pockets that remember from one breath to the next. */
function listActive(solver: PeriodicSolver, network: Network): void {
  let n = 0
  const add = (index: number): void => {
    solver.active[n++] = index
  }
  if (network.hasOuter && network.outerL > 0) add(STATE.outer)
  if (network.sideL > 0 && network.innerShareIn < 1) add(STATE.side)
  if (network.innerL > 0) add(STATE.inner)
  if (network.mixedL > 0) add(STATE.mixed)
  if (network.bag !== null && !network.bag.hasInletValve) add(STATE.bag)
  if (network.serialL > 0) for (let i = 0; i < network.serialTanks; i++) add(STATE.serial + i)
  solver.activeCount = n
}

/** I − Φ, column by column: what one breath makes of a unit in each pocket. */
function fillMatrix(solver: PeriodicSolver, network: Network): void {
  const n = solver.activeCount
  const sources =
    network.bag !== null && network.bag.hasInletValve ? HOMOGENEOUS_VALVED : HOMOGENEOUS
  for (let j = 0; j < n; j++) {
    solver.column.fill(0)
    solver.column[solver.active[j] as number] = 1 // within activeCount
    passBreath(solver.program, solver.column, sources)
    for (let i = 0; i < n; i++) {
      solver.matrix[i * n + j] =
        (i === j ? 1 : 0) - (solver.column[solver.active[i] as number] as number) // active indexes lie within the state
    }
  }
}

/** Gaussian elimination with three right sides. I − Φ is diagonally dominant by rows (Φ ≥ 0, row sums < 1), so no pivoting is needed. */
function eliminate(solver: PeriodicSolver): void {
  const n = solver.activeCount
  const { matrix: a, right: b, active } = solver
  const tracers = [solver.source, solver.room, solver.expired] as const
  // All indexes below stay under n × n and n × 3, within the arrays.
  for (let i = 0; i < n; i++)
    for (let t = 0; t < 3; t++)
      b[i * 3 + t] = (tracers[t] as Float64Array)[active[i] as number] as number
  for (let p = 0; p < n; p++) {
    const pivot = a[p * n + p] as number
    for (let i = p + 1; i < n; i++) {
      const factor = (a[i * n + p] as number) / pivot
      if (factor === 0) continue
      for (let j = p; j < n; j++)
        a[i * n + j] = (a[i * n + j] as number) - factor * (a[p * n + j] as number)
      for (let t = 0; t < 3; t++)
        b[i * 3 + t] = (b[i * 3 + t] as number) - factor * (b[p * 3 + t] as number)
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let t = 0; t < 3; t++) {
      let sum = b[i * 3 + t] as number
      for (let j = i + 1; j < n; j++) sum -= (a[i * n + j] as number) * (b[j * 3 + t] as number)
      b[i * 3 + t] = sum / (a[i * n + i] as number)
    }
  }
  for (let i = 0; i < n; i++)
    for (let t = 0; t < 3; t++)
      (tracers[t] as Float64Array)[active[i] as number] = b[i * 3 + t] as number
}
