// How long a whole plan takes on the demo shelf with 512 draws, beside what the same breaths would cost by the other solvers, in one run. Leaves out the solvers' own accuracy, which solvers.ts measures.
import { createPeriodicSolver } from '../src/delivery/periodic.ts'
import { TRANSIENT_LUNGS } from '../src/delivery/transient-system.ts'
import { solveTransient } from '../src/delivery/transient.ts'
import { placeSetUp } from '../src/inference/delivery-points.ts'
import { patientSampler } from '../src/inference/patient-sampler.ts'
import { seededUniform } from '../src/inference/latin-hypercube.ts'
import { candidateSetUps } from '../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import type { SetUp } from '../src/kit/set-up.ts'
import type { Case } from '../src/patient/case.ts'
import { makePlan } from '../src/planning/plan.ts'
import { AGREEMENT_TOLERANCE, fastFraction } from '../test/support/agreement.ts'
import { solveByOdex } from '../test/support/odex-judge.ts'
import { solveFixedStep } from './fixed-step.ts'

/** A plain adult of no real person: pneumonia, one reading on a cannula. */
const CASE: Case = {
  version: 1,
  patient: {
    ageYears: 64,
    weightKg: 72,
    heightCm: 170,
    sex: 'male',
    airway: { route: 'natural', nose: 'open' },
    retentionRisk: 'none',
    changes: [],
  },
  breathing: { state: 'pneumonia' },
  site: { altitudeM: 1180 },
  goal: { kind: 'saturation', lowPercent: 94, highPercent: 98 },
  onNow: {
    setUp: { family: 'nasal-cannula', sourceKind: 'wall-flowmeter', flowLpm: 2 },
    sinceMinutes: 30,
    saturationPercent: 91,
    ratePerMin: 24,
  },
}

const DRAWS = 512
const PLANS = 5
/** Breaths of the plan that the slow solvers are tried on. */
const SAMPLED = 24
const SETTLED_CHANGE = 1e-5

function costMs(call: () => void): number {
  const before = process.cpuUsage()
  call()
  const spent = process.cpuUsage(before)
  return (spent.user + spent.system) / 1000
}

/** Least processor time of a few whole plans, after a first one that warms up. */
function planCostMs(): number {
  makePlan({ case: CASE, shelf: DEMO_SHELF, draws: DRAWS })
  let least = Number.POSITIVE_INFINITY
  for (let seed = 1; seed <= PLANS; seed++) {
    least = Math.min(
      least,
      costMs(() => void makePlan({ case: CASE, shelf: DEMO_SHELF, draws: DRAWS, seed })),
    )
  }
  return least
}

interface Pair {
  readonly network: ReturnType<typeof placeSetUp>['network']
  readonly breath: Parameters<typeof solveTransient>[1]
}

/** Breaths as a plan meets them: ranked set-ups on drawn patients. */
function sampledPairs(setUps: readonly SetUp[]): readonly Pair[] {
  const uniform = seededUniform(7)
  const sampler = patientSampler(CASE)
  return Array.from({ length: SAMPLED }, (_, i) => {
    const { body, fit } = sampler.drawDelivery(uniform)
    const u = uniform()
    const interfaceDraw = {
      pocket: u,
      exchange: uniform(),
      jet: u,
      draught: u,
      leak: uniform(),
      forwardLoss: u,
      bag: u,
      capture: uniform(),
      flush: u,
    }
    const setUp = setUps[(i * 5) % setUps.length]
    if (setUp === undefined) throw new Error('no candidate to sample')
    const point = {
      body,
      fit,
      interfaceDraw,
      meterU: u,
      secondMeterU: u,
      purityU: u,
      entrainmentU: u,
      modelU: () => 0.5,
    }
    return { network: placeSetUp(setUp, point, 88.6).network, breath: body.breath }
  })
}

/** Mean cost per breath of a solver over the pairs, and the share that it solves within the tolerance. */
function costPerBreath(
  pairs: readonly Pair[],
  truths: readonly number[],
  solve: (pair: Pair) => number,
): { readonly ms: number; readonly within: number } {
  let within = 0
  const ms = costMs(() => {
    pairs.forEach((pair, i) => {
      if (Math.abs(solve(pair) - (truths[i] ?? 0)) < AGREEMENT_TOLERANCE) within++
    })
  })
  return { ms: ms / pairs.length, within: within / pairs.length }
}

const plan = makePlan({ case: CASE, shelf: DEMO_SHELF, draws: DRAWS })
const all = candidateSetUps(DEMO_SHELF)
const evaluated = plan.ranked.reduce((sum, row) => sum + 1 + row.twins.length, 0)
const breathsPerPlan = evaluated * (DRAWS / 4)
const planMs = planCostMs()
const rankedIds = new Set(plan.ranked.map(({ id }) => id))
const pairs = sampledPairs(all.filter(({ id }) => rankedIds.has(id)).map(({ setUp }) => setUp))
const strict = { settledChange: 1e-9, tolerance: 1e-8, withOrigins: false }
const truths = pairs.map(
  ({ network, breath }) => solveTransient(network, breath, strict).effectiveO2Fraction,
)
const solver = createPeriodicSolver()

const rows = [
  ['periodic', costPerBreath(pairs, truths, (pair) => fastFraction(solver, pair))],
  [
    'judge',
    costPerBreath(
      pairs,
      truths,
      ({ network, breath }) =>
        solveTransient(network, breath, {
          settledChange: SETTLED_CHANGE,
          tolerance: 1e-3,
          withOrigins: false,
        }).effectiveO2Fraction,
    ),
  ],
  [
    'odex',
    costPerBreath(
      pairs,
      truths,
      ({ network, breath }) =>
        solveByOdex(network, breath, {
          settledChange: SETTLED_CHANGE,
          tolerance: 1e-3,
          lungs: TRANSIENT_LUNGS,
        }).effectiveO2Fraction,
    ),
  ],
  [
    'fixed rk4',
    costPerBreath(pairs, truths, ({ network, breath }) =>
      solveFixedStep(network, breath, {
        method: 'rk4',
        stepsPerBreath: 90,
        settledChange: SETTLED_CHANGE,
      }),
    ),
  ],
] as const

console.log(
  `whole plan: ${evaluated} set-ups evaluated, ${all.length} built, ${DRAWS} draws, ${breathsPerPlan} breaths for the ranking`,
)
console.log(
  `processor time ${planMs.toFixed(0)} ms, blood, reading, exclusions, holding rates and order included`,
)
console.log('the breaths of the ranking alone, by each solver:')
for (const [name, { ms, within }] of rows.slice(1)) {
  const totalMs = ms * breathsPerPlan
  console.log(
    `  ${name.padEnd(10)} ${(totalMs / 1000).toFixed(0).padStart(7)} s, ${(totalMs / planMs).toFixed(0).padStart(6)} times the whole plan (${(100 * within).toFixed(0)} % of ${SAMPLED} sampled breaths within ${AGREEMENT_TOLERANCE})`,
  )
}
console.log(
  `  periodic: ${(100 * rows[0][1].within).toFixed(0)} % of the sampled breaths within ${AGREEMENT_TOLERANCE}`,
)
if (rows[0][1].within < 1) process.exitCode = 1
