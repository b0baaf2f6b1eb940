// How fast the periodic solver is beside the judge, a general ODE library and a fixed-step loop, all at the same accuracy, in one run. Leaves out whole plans.
import type { BreathPattern } from '../src/delivery/breath.ts'
import { BARE_NETWORK } from '../src/delivery/network.ts'
import type { Network } from '../src/delivery/network.ts'
import { createPeriodicSolver } from '../src/delivery/periodic.ts'
import { TRANSIENT_LUNGS } from '../src/delivery/transient-system.ts'
import { solveTransient } from '../src/delivery/transient.ts'
import { AGREEMENT_TOLERANCE, fastFraction } from '../test/support/agreement.ts'
import { solveByOdex } from '../test/support/odex-judge.ts'
import { solveFixedStep } from './fixed-step.ts'

/** From room air until a breath changes the effective fraction by less than this. */
const SETTLED_CHANGE = 1e-5
/** How much faster than the general library the periodic solver must be. */
const TARGET_RATIO = 500
const REPEATS = 5

const BREATH: BreathPattern = {
  tidalVolumeL: 0.5,
  ratePerMin: 16,
  dutyFraction: 0.38,
  inspiration: { kind: 'half-sine' },
  expiration: { kind: 'passive', timeConstantS: 0.5 },
}

const BAG = {
  volumeL: 0.75,
  leakRatio: 0.5,
  forwardLoss: 0.6,
  hasInletValve: true,
  expiredShareIntoBag: 0,
}

/** Plain examples of each kind of network, not the sizes of any product. Flows L/s. */
const NETWORKS: Readonly<Record<string, Network>> = {
  'nasal cannula': { ...BARE_NETWORK, deviceFlowLps: 0.056, innerL: 0.05 },
  'simple mask': { ...BARE_NETWORK, deviceFlowLps: 0.113, innerL: 0.15, exchangeLps: 0.1 },
  'reservoir mask': {
    ...BARE_NETWORK,
    deviceFlowLps: 0.15,
    innerL: 0.15,
    exchangeLps: 0.05,
    bag: BAG,
  },
  'nasal high flow': {
    ...BARE_NETWORK,
    deviceFlowLps: 0.67,
    innerL: 0.05,
    sideL: 0.03,
    innerShareIn: 0.8,
    innerShareOut: 0.5,
    flushLps: 0.3,
  },
  'cannula under mask': {
    ...BARE_NETWORK,
    deviceFlowLps: 0.05,
    innerL: 0.05,
    sideL: 0.04,
    outerL: 0.12,
    hasOuter: true,
    sideFromOuter: true,
    innerShareIn: 0.6,
    innerShareOut: 0.6,
    outerDeviceFlowLps: 0.1,
    exchangeLps: 0.1,
  },
}

/** Processor time of one call, ms, the least of a few rounds: other work on the machine counts little. */
function costMs(call: () => void, callsPerRound: number): number {
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < REPEATS; round++) {
    const before = process.cpuUsage().user
    for (let i = 0; i < callsPerRound; i++) call()
    least = Math.min(least, (process.cpuUsage().user - before) / 1000 / callsPerRound)
  }
  return least
}

interface Measured {
  readonly setting: string
  readonly miss: number
  readonly ms: number
}

/** The cheapest setting of a method, tried from coarse to fine, that comes within the tolerance of the truth. */
function cheapestWithin<Setting>(
  settings: readonly Setting[],
  truth: number,
  solve: (setting: Setting) => number,
): Measured {
  for (const setting of settings) {
    const miss = Math.abs(solve(setting) - truth)
    if (!(miss < AGREEMENT_TOLERANCE)) continue
    return { setting: JSON.stringify(setting), miss, ms: costMs(() => solve(setting), 1) }
  }
  throw new Error('no setting is fine enough')
}

const TOLERANCES = [1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-6, 1e-7]
const STEPS = Array.from({ length: 24 }, (_, i) => Math.round(16 * 2 ** (i / 2)))

function measure(network: Network): Readonly<Record<string, Measured>> {
  const strict = { settledChange: 1e-10, tolerance: 1e-9, withOrigins: false }
  const truth = solveTransient(network, BREATH, strict).effectiveO2Fraction
  const solver = createPeriodicSolver()
  const each = { network, breath: BREATH }
  const miss = Math.abs(fastFraction(solver, each) - truth)
  for (let i = 0; i < 5000; i++) fastFraction(solver, each)
  const ms = costMs(() => void fastFraction(solver, each), 5000)
  const lungs = TRANSIENT_LUNGS
  const settledChange = SETTLED_CHANGE
  return {
    periodic: { setting: 'default', miss, ms },
    judge: cheapestWithin(TOLERANCES, truth, (tolerance) => {
      const options = { settledChange, tolerance, withOrigins: false }
      return solveTransient(network, BREATH, options).effectiveO2Fraction
    }),
    odex: cheapestWithin(TOLERANCES, truth, (tolerance) => {
      const result = solveByOdex(network, BREATH, { settledChange, tolerance, lungs })
      return result.settled ? result.effectiveO2Fraction : Number.NaN
    }),
    'fixed euler': cheapestWithin(STEPS, truth, (stepsPerBreath) =>
      solveFixedStep(network, BREATH, { method: 'euler', stepsPerBreath, settledChange }),
    ),
    'fixed rk4': cheapestWithin(STEPS, truth, (stepsPerBreath) =>
      solveFixedStep(network, BREATH, { method: 'rk4', stepsPerBreath, settledChange }),
    ),
  }
}

function printRow(name: string, method: string, measured: Measured, periodicMs: number): void {
  const cells = [
    name.padEnd(20),
    method.padEnd(12),
    measured.setting.padStart(8),
    measured.miss.toExponential(1).padStart(9),
    measured.ms.toPrecision(3).padStart(10),
    (measured.ms / periodicMs).toPrecision(3).padStart(9),
  ]
  console.log(cells.join(' '))
}

console.log('network              method        setting      miss   ms/solve  x slower')
const logs = new Map<string, number[]>()
let worstMiss = 0
for (const [name, network] of Object.entries(NETWORKS)) {
  const methods = measure(network)
  const periodicMs = methods['periodic']?.ms ?? Number.NaN
  for (const [method, measured] of Object.entries(methods)) {
    printRow(name, method, measured, periodicMs)
    logs.set(method, [...(logs.get(method) ?? []), Math.log(measured.ms / periodicMs)])
  }
  worstMiss = Math.max(worstMiss, methods['periodic']?.miss ?? Number.NaN)
  console.log(`${name.padEnd(20)} ${Math.round(1000 / periodicMs)} solves per second per core`)
}
console.log('\ngeometric mean over the networks, times slower than the periodic solver:')
for (const [method, values] of logs) {
  const mean = Math.exp(values.reduce((sum, value) => sum + value, 0) / values.length)
  console.log(`  ${method.padEnd(12)} ${mean.toPrecision(3)}`)
}
const least = Math.exp(Math.min(...(logs.get('odex') ?? [Number.NaN])))
const isMet = least >= TARGET_RATIO && worstMiss < AGREEMENT_TOLERANCE
console.log(
  `least against odex ${least.toPrecision(3)}, target ${TARGET_RATIO}: ${isMet ? 'met' : 'NOT met'}`,
)
process.exitCode = isMet ? 0 : 1
