// The ward's demand as it varies: meters err, patients are away, stepped up or down. Seeded; the shares are assumptions that can be changed. Leaves out new patients.
import { requireWithin } from '../errors.ts'
import { seededUniform } from '../inference/latin-hypercube.ts'
import { nextStep } from '../kit/flow-steps.ts'
import type { SetUp } from '../kit/set-up.ts'
import { oxygenDrawnLpm, type BesideFlows } from './gas-drawn.ts'
import type { BedAnswer } from './ward-bed.ts'

export interface SimulationRule {
  readonly draws: number
  readonly seed: number
  /** Share of the time in which a patient is away or off oxygen, one step up, one step down. */
  readonly awayShare: number
  readonly upShare: number
  readonly downShare: number
}

/** Shares assumed, for want of a measurement. */
export const USUAL_SIMULATION: SimulationRule = {
  draws: 4000,
  seed: 1,
  awayShare: 0.1,
  upShare: 0.15,
  downShare: 0.15,
}

export interface SimulatedDemand {
  readonly rule: SimulationRule
  readonly meanLpm: number
  readonly percentilesLpm: {
    readonly p5: number
    readonly p50: number
    readonly p90: number
    readonly p95: number
    readonly p99: number
  }
  readonly shareAbove: (limitLpm: number) => number
}

/** Meter positions from which each draw takes one. */
const METER_POSITIONS = [0.05, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95]

/** Demand of the ward's beds drawn again and again, meters, changes of flow and patients away included; L/min at shares of the draws.
 *  Valid 64–100 000 draws, shares 0–1 that together leave room, else COUNT_ or PROBABILITY_OUT_OF_RANGE. Without errors and changes it
 *  is the plain sum (ward-demand.test.ts). */
export function simulatedDemand(
  beds: readonly BedAnswer[],
  barometricKpa: number,
  rule: SimulationRule,
): SimulatedDemand {
  checkRule(rule)
  const tables = beds
    .filter(({ feed }) => feed === 'pipeline')
    .flatMap(({ setUp, bed }) =>
      setUp === null ? [] : [tableOf(setUp, bed.beside ?? {}, barometricKpa)],
    )
  const uniform = seededUniform(rule.seed)
  const sums = Array.from({ length: rule.draws }, () =>
    tables.reduce((sum, table) => sum + drawOne(table, rule, uniform), 0),
  ).sort((a, b) => a - b)
  return {
    rule,
    meanLpm: sums.reduce((sum, value) => sum + value, 0) / rule.draws,
    percentilesLpm: {
      p5: at(sums, 0.05),
      p50: at(sums, 0.5),
      p90: at(sums, 0.9),
      p95: at(sums, 0.95),
      p99: at(sums, 0.99),
    },
    shareAbove: (limitLpm) => sums.filter((value) => value > limitLpm).length / rule.draws,
  }
}

interface DrawTable {
  readonly same: readonly number[]
  readonly up: readonly number[]
  readonly down: readonly number[]
}

function tableOf(setUp: SetUp, beside: BesideFlows, barometricKpa: number): DrawTable {
  const at = (one: SetUp): readonly number[] =>
    METER_POSITIONS.map((meterU) => oxygenDrawnLpm({ setUp: one, barometricKpa, beside }, meterU))
  const moved = (direction: 'up' | 'down'): SetUp => ({
    ...setUp,
    flow: nextStep(setUp.source, setUp.flow, direction) ?? setUp.flow,
  })
  return { same: at(setUp), up: at(moved('up')), down: at(moved('down')) }
}

function drawOne(table: DrawTable, rule: SimulationRule, uniform: () => number): number {
  const state = uniform()
  const position = Math.floor(uniform() * METER_POSITIONS.length)
  const { awayShare, upShare, downShare } = rule
  if (state < awayShare) return 0
  if (state < awayShare + upShare) return table.up[position] ?? 0
  if (state < awayShare + upShare + downShare) return table.down[position] ?? 0
  return table.same[position] ?? 0
}

function at(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
}

function checkRule(rule: SimulationRule): void {
  const { draws, seed, awayShare, upShare, downShare } = rule
  requireWithin({ code: 'COUNT_OUT_OF_RANGE', path: 'draws', value: draws, min: 64, max: 100_000 })
  requireWithin({ code: 'VALUE_OUT_OF_RANGE', path: 'seed', value: seed, min: 0, max: 2 ** 32 - 1 })
  for (const [path, value] of Object.entries({ awayShare, upShare, downShare }))
    requireWithin({ code: 'PROBABILITY_OUT_OF_RANGE', path, value, min: 0, max: 1 })
  const path = 'awayShare'
  const value = awayShare + upShare + downShare
  requireWithin({ code: 'PROBABILITY_OUT_OF_RANGE', path, value, min: 0, max: 1 })
}
