// Every named check a planted fault may turn red: all evidence rows and the laws of the breath engine. Prints one JSON object; run from a patched bundle.
import { caseNetwork, runEngine } from '../../src/evidence/engine-case.ts'
import type { EngineCase } from '../../src/evidence/engine-case.ts'
import { EVIDENCE_ROWS } from '../../src/evidence/all-rows.ts'
import { RESTING_ADULT } from '../../src/evidence/breathings.ts'
import { judgeRow } from '../../src/evidence/verdict.ts'
import { createPeriodicSolver, solvePeriodic, steadyTotals } from '../../src/delivery/periodic.ts'
import { solveTransient } from '../../src/delivery/transient.ts'
import { dilutedO2Fraction } from '../../src/physics/gas-mixing.ts'
import { lpmFromLps } from '../../src/units/flow.ts'

const CASES: readonly EngineCase[] = [
  plain('nasal-cannula', 3),
  plain('simple-mask', 8),
  plain('non-rebreather-mask', 9),
  { ...plain('non-rebreather-mask', 12), fit: 'loose' },
  { ...plain('entrainment-mask', 8), setO2Fraction: 0.35 },
  { ...plain('nasal-high-flow', 30), setO2Fraction: 0.6 },
]

const BARE: EngineCase = { ...plain('simple-mask', 0), parameters: { 'gas-space-l': 0.001 } }
const CLOSE = 1e-9
const AGREEMENT = 0.001
/** Airway of the middle adult, L: a breath from room air loses most of it, but not more. */
const DEAD_SPACE_L = 0.138

const LAWS: Readonly<Record<string, () => boolean>> = {
  'law-tracers-sum-to-one': () =>
    CASES.every((engine) => {
      const { network } = caseNetwork(engine)
      const solver = createPeriodicSolver()
      solvePeriodic(solver, network, engine.breath)
      const sum = (['source', 'room', 'expired'] as const).reduce(
        (total, tracer) => total + steadyTotals(solver, network, tracer).openingInL,
        0,
      )
      return Math.abs(sum - engine.breath.tidalVolumeL) < CLOSE
    }),
  'law-nothing-lost': () =>
    CASES.every((engine) => {
      const { network } = caseNetwork(engine)
      const solver = createPeriodicSolver()
      solvePeriodic(solver, network, engine.breath)
      return (['source', 'room'] as const).every((tracer) => {
        const totals = steadyTotals(solver, network, tracer)
        return Math.abs(totals.openingInL - totals.openingOutL - totals.alveoliInL) < CLOSE
      })
    }),
  'law-fresh-gas-bound': () =>
    CASES.every((engine) => {
      const { network, sourceO2Fraction } = caseNetwork(engine)
      const bound = dilutedO2Fraction({
        deviceFlowLpm: lpmFromLps(network.deviceFlowLps),
        demandFlowLpm: engine.breath.tidalVolumeL * engine.breath.ratePerMin,
        sourceO2Fraction: 0.2095 + network.sourceShare * (sourceO2Fraction - 0.2095),
      })
      return runEngine(engine).freshO2Fraction <= bound + CLOSE
    }),
  'law-dead-space-takes-its-share': () => {
    const { tidalVolumeL, ratePerMin } = BARE.breath
    const lostL = tidalVolumeL - runEngine(BARE).alveolarVentilationLpm / ratePerMin
    return lostL > 0.7 * DEAD_SPACE_L && lostL < 1.05 * DEAD_SPACE_L
  },
  'law-agrees-with-the-integrator': () =>
    CASES.every((engine) => {
      const { network, sourceO2Fraction } = caseNetwork(engine)
      const { source, room } = solveTransient(network, engine.breath, {
        settledChange: 1e-6,
        tolerance: 1e-6,
      })
      const theirs =
        (source.alveoliInL * sourceO2Fraction + room.alveoliInL * 0.2095) /
        (source.alveoliInL + room.alveoliInL)
      return Math.abs(theirs - runEngine(engine).effectiveO2Fraction) < AGREEMENT
    }),
  'law-expired-gas-balances': () =>
    CASES.every((engine) => {
      const breath = runEngine(engine)
      const uptakeLpm = 0.25 * 1.2105
      const outputLpm = 0.2 * 1.2105
      const freshLpm = breath.alveolarVentilationLpm
      const expiredLpm = freshLpm - uptakeLpm + outputLpm
      const inLpm = freshLpm * breath.effectiveO2Fraction
      return Math.abs(inLpm - expiredLpm * breath.alveolarO2Fraction - uptakeLpm) < CLOSE
    }),
  'law-clearance-frees-fresh-gas': () => {
    const cleared = { ...plain('nasal-high-flow', 30), setO2Fraction: 0.4 }
    const still = { ...cleared, parameters: { 'clearance-ml-per-s-per-lpm': 0 } }
    return runEngine(cleared).alveolarVentilationLpm > runEngine(still).alveolarVentilationLpm + 0.1
  },
  'law-late-breath-counts-less': () => {
    // A store emptied first: early oxygen reaches the alveoli, late air stays in the airway.
    const breath = runEngine(plain('nasal-cannula', 2))
    return breath.effectiveO2Fraction > breath.tracheaO2Fraction + 0.005
  },
}

function plain(family: EngineCase['family'], flowLpm: number): EngineCase {
  return { family, flowLpm, breath: RESTING_ADULT, gas: 'btps-from-meter' }
}

/** Ids given on the command line; none means all. */
const wanted = new Set(process.argv.slice(2))

function isWanted(id: string): boolean {
  return wanted.size === 0 || wanted.has(id)
}

/** Check ids with whether they hold; a check that throws does not. */
function runChecks(): Record<string, boolean> {
  const results: Record<string, boolean> = {}
  for (const row of EVIDENCE_ROWS) {
    if ((row.use === 'judge' || row.use === 'trend') && isWanted(row.id))
      results[row.id] = holds(() => judgeRow(row).verdict === 'pass')
  }
  for (const [id, law] of Object.entries(LAWS)) {
    if (isWanted(id)) results[id] = holds(law)
  }
  return results
}

function holds(check: () => boolean): boolean {
  try {
    return check()
  } catch {
    return false
  }
}

console.log(JSON.stringify(runChecks()))
