// Laws that every network and breath must keep: nothing is made or lost, nothing is inhaled that was not given. Leaves out whether the numbers are right.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { solveBag } from '../src/delivery/bag.ts'
import { breathPeriodS } from '../src/delivery/breath.ts'
import type { BreathPattern } from '../src/delivery/breath.ts'
import { MAX_STEPS } from '../src/delivery/grid.ts'
import type { Network } from '../src/delivery/network.ts'
import { originCourse } from '../src/delivery/origins.ts'
import {
  alveolarInflow,
  createPeriodicSolver,
  solvePeriodic,
  tracerSources,
} from '../src/delivery/periodic.ts'
import { passBreath, STATE_SIZE } from '../src/delivery/tracer.ts'
import type { TracerTotals } from '../src/delivery/tracer.ts'
import { AIR_O2_FRACTION } from '../src/units/constants.ts'
import { bracketedBagStartL, breathEndL } from './support/bag-search.ts'
import { arbitraryCase } from './support/random-network.ts'
import type { RandomCase } from './support/random-network.ts'
import { seeded } from './support/seed.ts'

const CASES = 500
const TRACERS = ['source', 'room', 'expired'] as const
type Tracer = (typeof TRACERS)[number]

const solver = createPeriodicSolver()

interface Run {
  readonly start: Float64Array
  readonly end: Float64Array
  readonly totals: TracerTotals
  /** Concentrations in the pockets and in what is inhaled; and in the inner pocket during expiration. */
  readonly seen: readonly Float64Array[]
  readonly expired: Float64Array
}

/** One more steady breath of a tracer, by its own sources. */
function runTracer(network: Network, tracer: Tracer): Run {
  const start = solver[tracer]
  const end = Float64Array.from(start)
  const totals: TracerTotals = { openingInL: 0, openingOutL: 0, tracheaInL: 0, alveoliInL: 0 }
  const trace = {
    opening: new Float64Array(MAX_STEPS),
    trachea: new Float64Array(MAX_STEPS),
    inner: new Float64Array(MAX_STEPS),
  }
  passBreath(solver.program, end, tracerSources(network, tracer), totals, trace)
  const { inspiratorySteps, steps } = solver.grid
  const seen = [
    trace.opening.subarray(0, inspiratorySteps),
    trace.trachea.subarray(0, inspiratorySteps),
    trace.inner.subarray(0, inspiratorySteps),
    activeOnly(start),
    activeOnly(end),
  ]
  const expired = trace.inner.subarray(inspiratorySteps, steps)
  return { start: activeOnly(start), end: activeOnly(end), totals, seen, expired }
}

function activeOnly(state: Float64Array): Float64Array {
  return Float64Array.from(
    solver.active.subarray(0, solver.activeCount),
    (pocket) => state[pocket] ?? Number.NaN,
  )
}

function onEveryCase(law: (each: RandomCase, runs: Record<Tracer, Run>) => void): void {
  const property = fc.property(arbitraryCase(), (each) => {
    solvePeriodic(solver, each.network, each.breath)
    const { network } = each
    law(each, {
      source: runTracer(network, 'source'),
      room: runTracer(network, 'room'),
      expired: runTracer(network, 'expired'),
    })
  })
  fc.assert(property, seeded(CASES))
}

function sum(runs: Record<Tracer, Run>, of: (run: Run) => number): number {
  return of(runs.source) + of(runs.room) + of(runs.expired)
}

function expectWithin(values: Float64Array, tolerance: number): void {
  for (const value of values) {
    expect(value).toBeGreaterThan(-tolerance)
    expect(value).toBeLessThan(1 + tolerance)
  }
}

/** All gas that devices give in a breath, L, and the source gas in it. */
function given(network: Network, breath: BreathPattern): { allL: number; sourceL: number } {
  const periodS = breathPeriodS(breath)
  const innerL = network.deviceFlowLps * periodS
  const outerL = network.hasOuter ? network.outerDeviceFlowLps * periodS : 0
  return {
    allL: innerL + outerL,
    sourceL: innerL * network.sourceShare + outerL * network.outerSourceShare,
  }
}

describe(`on ${CASES} random networks and breaths`, () => {
  it('the steady breath ends as it began, in every pocket and for every tracer', () => {
    onEveryCase((_, runs) => {
      for (const tracer of TRACERS) {
        const { start, end } = runs[tracer]
        // 1e-6: tanks that forget to within 1e-7 are left out of the fixed point.
        end.forEach((value, i) => expect(Math.abs(value - (start[i] ?? 0))).toBeLessThan(1e-6))
      }
    })
  })

  it('the three tracers sum to one in every pocket and to the tidal volume in every total', () => {
    onEveryCase(({ breath }, runs) => {
      const tidalL = breath.tidalVolumeL
      runs.source.end.forEach((_, i) => {
        expect(sum(runs, (run) => run.end[i] ?? 0)).toBeCloseTo(1, 6)
      })
      for (const total of ['openingInL', 'tracheaInL', 'alveoliInL', 'openingOutL'] as const) {
        expect(sum(runs, (run) => run.totals[total]) / tidalL, total).toBeCloseTo(1, 6)
      }
    })
  })

  it('no concentration leaves 0 to 1, and nothing is NaN', () => {
    onEveryCase((_, runs) => {
      for (const tracer of TRACERS) {
        for (const values of runs[tracer].seen) expectWithin(values, CONVEX_TOLERANCE)
        expectWithin(runs[tracer].expired, FRONT_TOLERANCE)
      }
    })
  })

  it('O2, CO2 and N2 breathed in less breathed out are uptake, output and nothing', () => {
    onEveryCase(({ breath }, runs) => {
      const tidalL = breath.tidalVolumeL
      const freshL = runs.source.totals.alveoliInL + runs.room.totals.alveoliInL
      const freshO2L = runs.source.totals.alveoliInL + AIR_O2_FRACTION * runs.room.totals.alveoliInL
      const uptakeL = 0.03 * tidalL
      const outputL = 0.8 * uptakeL
      // One litre of the expired tracer is one litre inspired: what its fresh gas brought, less uptake, plus output.
      const gases = {
        o2: {
          source: 1,
          room: AIR_O2_FRACTION,
          expired: (freshO2L - uptakeL) / freshL,
          gainL: uptakeL,
        },
        co2: { source: 0, room: 0, expired: outputL / freshL, gainL: -outputL },
        n2: {
          source: 0,
          room: 1 - AIR_O2_FRACTION,
          expired: (freshL - freshO2L) / freshL,
          gainL: 0,
        },
      }
      for (const [name, gas] of Object.entries(gases)) {
        const netL = TRACERS.reduce((total, tracer) => {
          const { openingInL, openingOutL } = runs[tracer].totals
          return total + gas[tracer] * (openingInL - openingOutL)
        }, 0)
        expect((netL - gas.gainL) / tidalL, name).toBeCloseTo(0, 6)
      }
    })
  })

  it('fresh device gas inhaled never exceeds what the device gave, and its mean never the bound of mass balance', () => {
    onEveryCase(({ network, breath }) => {
      const { totals } = originCourse(solver, network)
      const inhaledL = (totals.device + totals.stored) * breath.tidalVolumeL
      const { allL, sourceL } = given(network, breath)
      expect(inhaledL).toBeLessThanOrEqual(allL + CONVEX_TOLERANCE * breath.tidalVolumeL)
      expect(totals.device + totals.stored + totals.room + totals.expired).toBeCloseTo(1, 6)
      // Fresh gas with re-inhaled gas counted as room air. Device gas of mixed composition is bounded as if it were all source gas.
      const richest = sourceL > 0 ? 1 : AIR_O2_FRACTION
      const share = inhaledL / breath.tidalVolumeL
      const bound = Math.min(1, allL / breath.tidalVolumeL)
      const mean = AIR_O2_FRACTION + (richest - AIR_O2_FRACTION) * share
      const most = AIR_O2_FRACTION + (richest - AIR_O2_FRACTION) * bound
      expect(mean).toBeLessThanOrEqual(most + CONVEX_TOLERANCE)
    })
  })

  it('source gas that reaches the alveoli never exceeds what the device gave', () => {
    onEveryCase(({ network, breath }) => {
      const { sourceL, roomL, expiredL } = alveolarInflow(solver, network, {
        sourceL: 0,
        roomL: 0,
        expiredL: 0,
      })
      const tolerance = CONVEX_TOLERANCE * breath.tidalVolumeL
      expect(sourceL).toBeLessThanOrEqual(given(network, breath).sourceL + tolerance)
      for (const litres of [sourceL, roomL, expiredL]) expect(litres).toBeGreaterThan(-tolerance)
      expect(sourceL + roomL + expiredL).toBeCloseTo(breath.tidalVolumeL, 9)
    })
  })

  it('the bag has one steady filling, which a search on the momentary flows finds as well', () => {
    let searched = 0
    onEveryCase(({ network, breath }) => {
      if (network.bag === null) return
      solveBag(solver.bag, network, breath, solver.grid)
      const { startL } = solver.bag
      const scaleL = Math.max(network.bag.volumeL, breath.tidalVolumeL)
      expect(Math.abs(breathEndL(network, breath, startL) - startL)).toBeLessThan(
        BAG_TOLERANCE * scaleL,
      )
      const search = bracketedBagStartL(network, breath)
      expect(search.crossings).toBe(1)
      if (search.flatShare < 1e-3) return
      searched++
      expect(Math.abs(search.startL - startL)).toBeLessThan(BAG_TOLERANCE * scaleL)
    })
    expect(searched).toBeGreaterThan(CASES / 10)
  })

  it('the state has room for all pockets', () => {
    expect(solver.source.length).toBe(STATE_SIZE)
  })
})

/** The linear profile within a step may overshoot its source by this much: 2e-4 is the worst of 40,000 random cases. */
const CONVEX_TOLERANCE = 5e-4
/** The same where a front of expired gas crosses a pocket without volume within one step: a display value, never inhaled. */
const FRONT_TOLERANCE = 0.1
/** Error of the midpoint sums in test/support/bag-search.ts. */
const BAG_TOLERANCE = 2e-3
