// Where each millilitre of the inhaled gas came from: device now, stored before, room, or breathed out before. One steady breath.
import { assert } from '../errors.ts'
import type { Network } from './network.ts'
import type { PeriodicSolver } from './periodic.ts'
import type { Program } from './program-layout.ts'
import { MAX_STEPS } from './grid.ts'
import { passBreath, STATE_SIZE } from './tracer.ts'
import type { TracerSources, TracerTotals, TracerTrace } from './tracer.ts'

/** Shares of the inhaled gas; they sum to one. `device` and `stored` include air that the device entrains. */
export interface Origins {
  readonly device: number
  readonly stored: number
  readonly room: number
  readonly expired: number
}

export interface OriginCourse {
  readonly totals: Origins
  /** Share of the device's gas that nobody ever inhales, 0–1. */
  readonly wastedShare: number
  /** Mean shares in each inspiratory step. */
  readonly perStep: readonly Origins[]
}

/** Gas that has been in the airway counts as breathed out, whatever it was before: only a first passage is fresh. */
const DEVICE: TracerSources = {
  innerDevice: 1,
  outerDevice: 1,
  room: 0,
  alveolar: 0,
  bag: null,
  leavingAirway: 0,
}
const ROOM: TracerSources = {
  innerDevice: 0,
  outerDevice: 0,
  room: 1,
  alveolar: 0,
  bag: null,
  leavingAirway: 0,
}
const EXPIRED: TracerSources = {
  innerDevice: 0,
  outerDevice: 0,
  room: 0,
  alveolar: 1,
  bag: null,
  leavingAirway: 1,
}
const NOTHING: TracerSources = {
  innerDevice: 0,
  outerDevice: 0,
  room: 0,
  alveolar: 0,
  bag: null,
  leavingAirway: 0,
}

/** Origins over the steady breath last solved in `solver`. Sum of shares is one within 1e-9 (test/delivery-laws.test.ts). */
export function originCourse(solver: PeriodicSolver, network: Network): OriginCourse {
  const { program } = solver
  const valved = network.bag !== null && network.bag.hasInletValve
  const device = steadyRun(program, { ...DEVICE, bag: valved ? 1 : null })
  const room = steadyRun(program, { ...ROOM, bag: valved ? 0 : null })
  const expired = steadyRun(program, { ...EXPIRED, bag: valved ? 0 : null })
  const stored = run(program, Float64Array.from(device.start), {
    ...NOTHING,
    bag: valved ? 1 : null,
  })
  const inhaledL = device.totals.openingInL + room.totals.openingInL + expired.totals.openingInL
  const givenL = deviceGivenL(solver, network)
  return {
    totals: {
      device: (device.totals.openingInL - stored.totals.openingInL) / inhaledL,
      stored: stored.totals.openingInL / inhaledL,
      room: room.totals.openingInL / inhaledL,
      expired: expired.totals.openingInL / inhaledL,
    },
    wastedShare: givenL > 0 ? 1 - device.totals.openingInL / givenL : 0,
    perStep: Array.from({ length: program.inspiratorySteps }, (_, k) => ({
      device: at(device.trace.opening, k) - at(stored.trace.opening, k),
      stored: at(stored.trace.opening, k),
      room: at(room.trace.opening, k),
      expired: at(expired.trace.opening, k),
    })),
  }
}

function deviceGivenL(solver: PeriodicSolver, network: Network): number {
  let periodS = 0
  for (let k = 0; k < solver.grid.steps; k++) periodS += at(solver.grid.durationS, k)
  return (network.deviceFlowLps + network.outerDeviceFlowLps) * periodS
}

interface Run {
  readonly start: Float64Array
  readonly totals: TracerTotals
  readonly trace: TracerTrace
}

/** Fixed point of z = Φz + ψ by columns, as periodic.ts does for the gas-exchange tracers. */
function steadyRun(program: Program, sources: TracerSources): Run {
  const origin = new Float64Array(STATE_SIZE)
  passBreath(program, origin, sources)
  const homogeneous = { ...NOTHING, bag: sources.bag === null ? null : 0 }
  const columns = Array.from({ length: STATE_SIZE }, (_, j) => {
    const column = new Float64Array(STATE_SIZE)
    column[j] = 1
    passBreath(program, column, homogeneous)
    return column
  })
  return run(program, solveFixedPoint(columns, origin), sources)
}

function run(program: Program, start: Float64Array, sources: TracerSources): Run {
  const totals: TracerTotals = { openingInL: 0, openingOutL: 0, tracheaInL: 0, alveoliInL: 0 }
  const trace = {
    opening: new Float64Array(MAX_STEPS),
    trachea: new Float64Array(MAX_STEPS),
    inner: new Float64Array(MAX_STEPS),
  }
  passBreath(program, Float64Array.from(start), sources, totals, trace)
  return { start, totals, trace }
}

/** Solves (I − Φ) z = ψ; pockets that nothing flows through keep their unit and are left at zero. */
function solveFixedPoint(columns: readonly Float64Array[], right: Float64Array): Float64Array {
  const live = columns.flatMap((column, j) => (at(column, j) > 1 - 1e-12 ? [] : [j]))
  const rows = live.map((i) => [
    ...live.map((j) => (i === j ? 1 : 0) - at(columns[j] ?? right, i)),
    at(right, i),
  ])
  for (let p = 0; p < rows.length; p++) reduceBelow(rows, p)
  const z = new Float64Array(STATE_SIZE)
  for (let p = rows.length - 1; p >= 0; p--) {
    const row = rows[p] ?? []
    let sum = row[rows.length] ?? 0
    for (let j = p + 1; j < rows.length; j++) sum -= (row[j] ?? 0) * at(z, live[j] ?? 0)
    z[live[p] ?? 0] = sum / (row[p] ?? 1)
  }
  return z
}

function reduceBelow(rows: number[][], p: number): void {
  const pivotRow = rows[p] ?? []
  const pivot = pivotRow[p] ?? 0
  assert(pivot > 0, 'pivot of a contracting breath is positive')
  for (const row of rows.slice(p + 1)) {
    const factor = (row[p] ?? 0) / pivot
    if (factor === 0) continue
    for (let j = p; j < row.length; j++) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0)
  }
}

function at(array: Float64Array, index: number): number {
  return array[index] ?? 0
}
