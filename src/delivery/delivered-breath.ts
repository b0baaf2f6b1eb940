// Everything that one steady breath on a network tells: inspired and effective fractions, origins, margins, alveolar gas. Leaves out blood.
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { lpmFromLps } from '../units/flow.ts'
import {
  breathPeriodS,
  checkBreath,
  checkShapes,
  inspirationS,
  inspiredFlowRelative,
  peakInspiratoryFlowLpmBtps,
} from './breath.ts'
import type { BreathPattern } from './breath.ts'
import { MAX_STEPS } from './grid.ts'
import type { Network } from './network.ts'
import { originCourse } from './origins.ts'
import type { Origins } from './origins.ts'
import { alveolarInflow, createPeriodicSolver, solvePeriodic, tracerSources } from './periodic.ts'
import type { PeriodicSolver } from './periodic.ts'
import { passBreath } from './tracer.ts'
import type { TracerTotals } from './tracer.ts'

/** Oxygen uptake and carbon dioxide output, as dry gas at body temperature and ambient pressure, L/min. */
export interface Metabolism {
  readonly oxygenUptakeLpmBtps: number
  readonly carbonDioxideOutputLpmBtps: number
}

export interface BreathQuestion {
  readonly network: Network
  readonly breath: BreathPattern
  readonly sourceO2Fraction: number
  readonly metabolism: Metabolism
  /** Oxygen fraction of room air; handbooks use 0.20 or 0.21. */
  readonly airO2Fraction?: number
  readonly resolution?: number
}

/** One point of the breath ribbon: a step of inspiration. */
export interface RibbonStep {
  readonly startS: number
  readonly durationS: number
  readonly inspiratoryFlowLps: number
  readonly origins: Origins
  readonly openingO2Fraction: number
  readonly tracheaO2Fraction: number
}

export interface DeliveredBreath {
  /** The constant dry fraction that would give the same alveolar PO2 at the same alveolar PCO2. */
  readonly effectiveO2Fraction: number
  /** Flow-weighted means over inspiration, dry, re-inhaled gas included. */
  readonly openingO2Fraction: number
  readonly tracheaO2Fraction: number
  /** Flow-weighted mean of what is inhaled for the first time, re-inhaled gas counted as room air. */
  readonly freshO2Fraction: number
  readonly origins: Origins
  readonly inspiredCo2Fraction: number
  readonly wastedShare: number
  /** Device stream minus peak inspiratory flow, L/min BTPS; negative: room air must be drawn in. */
  readonly demandMarginLpm: number
  readonly lowestBagL: number | null
  readonly bagRunsEmpty: boolean
  readonly alveolarO2Fraction: number
  readonly alveolarCo2Fraction: number
  /** Fresh gas that reaches the alveoli, L/min BTPS. */
  readonly alveolarVentilationLpm: number
  /** Mean fraction in the inner pocket over the whole breath, as an analyser in the mask would show. */
  readonly pocketO2Fraction: number
  readonly ribbon: readonly RibbonStep[]
}

/** Effective fraction alone, for many breaths. Formula: (source × Fs + room × Fair) / (source + room), amounts reaching the alveoli. */
export function effectiveO2Fraction(
  solver: PeriodicSolver,
  question: Omit<BreathQuestion, 'metabolism'>,
): number {
  checkShapes(question.breath)
  solvePeriodic(solver, question.network, question.breath, question.resolution)
  const inflow = alveolarInflow(solver, question.network, { sourceL: 0, roomL: 0, expiredL: 0 })
  const airO2Fraction = question.airO2Fraction ?? AIR_O2_FRACTION
  return (
    (inflow.sourceL * question.sourceO2Fraction + inflow.roomL * airO2Fraction) /
    (inflow.sourceL + inflow.roomL)
  )
}

/**
 * The whole answer for one breath. Alveolar gas: fresh volume Vf per breath carries O2 in, uptake leaves:
 * FAO2 = (Vf F − VO2)/(Vf − VO2 + VCO2) and the like, which is the full alveolar gas equation.
 * Throws a DomainError for a breath outside BREATH_LIMITS.
 */
export function deliveredBreath(
  question: BreathQuestion,
  solver = createPeriodicSolver(),
): DeliveredBreath {
  const { network, breath, sourceO2Fraction, metabolism } = question
  checkBreath(breath)
  const airO2Fraction = question.airO2Fraction ?? AIR_O2_FRACTION
  const effective = effectiveO2Fraction(solver, question)
  const source = tracedRun(solver, network, 'source')
  const room = tracedRun(solver, network, 'room')
  const expired = tracedRun(solver, network, 'expired')
  const periodS = breathPeriodS(breath)
  const freshL = source.totals.alveoliInL + room.totals.alveoliInL
  const upL = (metabolism.oxygenUptakeLpmBtps * periodS) / 60
  const outL = (metabolism.carbonDioxideOutputLpmBtps * periodS) / 60
  const alveolarL = freshL - upL + outL
  const alveolarO2 = (freshL * effective - upL) / alveolarL
  const alveolarCo2 = outL / alveolarL
  // The tracer of alveolar gas is counted in inspired litres: one of them holds less gas where uptake exceeds output.
  const perTracer = alveolarL / freshL
  const o2 = (s: number, r: number, e: number): number =>
    (s * sourceO2Fraction + r * airO2Fraction + e * alveolarO2 * perTracer) /
    (s + r + e * perTracer)
  const course = originCourse(solver, network)
  const ribbon = course.perStep.map((origins, k) => {
    const startS = solver.grid.startS[k] ?? 0
    const durationS = solver.grid.durationS[k] ?? 0
    const middle = (startS + durationS / 2) / inspirationS(breath)
    return {
      startS,
      durationS,
      inspiratoryFlowLps:
        (inspiredFlowRelative(breath.inspiration, middle) * breath.tidalVolumeL) /
        inspirationS(breath),
      origins,
      openingO2Fraction: o2(source.opening[k] ?? 0, room.opening[k] ?? 0, expired.opening[k] ?? 0),
      tracheaO2Fraction: o2(source.trachea[k] ?? 0, room.trachea[k] ?? 0, expired.trachea[k] ?? 0),
    }
  })
  const freshShare = course.totals.device + course.totals.stored
  const deviceO2 =
    network.sourceShare * sourceO2Fraction + (1 - network.sourceShare) * airO2Fraction
  return {
    effectiveO2Fraction: effective,
    openingO2Fraction: o2(
      source.totals.openingInL,
      room.totals.openingInL,
      expired.totals.openingInL,
    ),
    tracheaO2Fraction: o2(
      source.totals.tracheaInL,
      room.totals.tracheaInL,
      expired.totals.tracheaInL,
    ),
    freshO2Fraction: freshShare * deviceO2 + (1 - freshShare) * airO2Fraction,
    origins: course.totals,
    inspiredCo2Fraction:
      (expired.totals.openingInL * alveolarCo2 * perTracer) / breath.tidalVolumeL,
    wastedShare: course.wastedShare,
    demandMarginLpm:
      lpmFromLps(network.deviceFlowLps + network.outerDeviceFlowLps) -
      peakInspiratoryFlowLpmBtps(breath),
    lowestBagL: network.bag === null ? null : solver.bag.lowestL,
    bagRunsEmpty: network.bag !== null && solver.bag.runsEmpty,
    alveolarO2Fraction: alveolarO2,
    alveolarCo2Fraction: alveolarCo2,
    alveolarVentilationLpm: freshL * breath.ratePerMin,
    pocketO2Fraction: o2(source.pocket, room.pocket, expired.pocket),
    ribbon,
  }
}

interface TracedRun {
  readonly totals: TracerTotals
  readonly opening: Float64Array
  readonly trachea: Float64Array
  /** Time mean in the inner pocket. */
  readonly pocket: number
}

function tracedRun(
  solver: PeriodicSolver,
  network: Network,
  tracer: 'source' | 'room' | 'expired',
): TracedRun {
  const totals: TracerTotals = { openingInL: 0, openingOutL: 0, tracheaInL: 0, alveoliInL: 0 }
  const trace = {
    opening: new Float64Array(MAX_STEPS),
    trachea: new Float64Array(MAX_STEPS),
    inner: new Float64Array(MAX_STEPS),
  }
  passBreath(
    solver.program,
    Float64Array.from(solver[tracer]),
    tracerSources(network, tracer),
    totals,
    trace,
  )
  let sum = 0
  let timeS = 0
  for (let k = 0; k < solver.grid.steps; k++) {
    sum += (trace.inner[k] ?? 0) * (solver.grid.durationS[k] ?? 0)
    timeS += solver.grid.durationS[k] ?? 0
  }
  return { totals, opening: trace.opening, trachea: trace.trachea, pocket: sum / timeS }
}
