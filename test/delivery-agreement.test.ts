// The fast solver against the adaptive judge, and both against a general-purpose ODE library, on random networks. A small version of `npm run bench -- agreement`.
import { describe, expect, it } from 'vitest'
import {
  AGREEMENT_TOLERANCE,
  climb,
  compareAt,
  fastFraction,
  judgeCase,
  QUICK_LUNGS,
} from './support/agreement.ts'
import { createPeriodicSolver } from '../src/delivery/periodic.ts'
import { solveTransient } from '../src/delivery/transient.ts'
import { solveByOdex } from './support/odex-judge.ts'
import { ONCE_MISSED } from './support/once-missed.ts'
import { caseFromPoint, randomPoints } from './support/random-network.ts'
import { randomStream, runSeed } from './support/seed.ts'

const CASES = 150
const CLIMBS = 5
const TRIES = 8
const ODEX_CASES = 12
/** The stored sample: always these cases, also under WANDER. */
const ODEX_SEED = 1_717

describe('fast solver and judge', () => {
  it(`agree within ${AGREEMENT_TOLERANCE} on ${CASES} random cases and on a climb from the ${CLIMBS} worst`, () => {
    const seed = runSeed()
    const found = randomPoints(CASES, randomStream(seed)).map(compareAt)
    const ranked = found.toSorted((a, b) => b.miss - a.miss)
    expect(ranked.filter((each) => !each.judge.settled)).toEqual([])
    expect(ranked[0]?.miss, JSON.stringify(ranked[0]?.point)).toBeLessThan(AGREEMENT_TOLERANCE)
    const random = randomStream(seed + 1)
    for (const start of ranked.slice(0, CLIMBS)) {
      const worst = climb(start, TRIES, random)
      expect(worst.miss, JSON.stringify(worst.point)).toBeLessThan(AGREEMENT_TOLERANCE)
    }
  })

  it('cover every kind of pocket', () => {
    const cases = randomPoints(CASES, randomStream(runSeed())).map(caseFromPoint)
    const share = (has: (index: number) => boolean): number =>
      cases.filter((_, i) => has(i)).length / CASES
    const network = (i: number) => cases[i]?.network
    expect(share((i) => network(i)?.hasOuter === true)).toBeGreaterThan(0.2)
    expect(share((i) => (network(i)?.innerShareIn ?? 1) < 1)).toBeGreaterThan(0.2)
    expect(share((i) => (network(i)?.flushLps ?? 0) > 0)).toBeGreaterThan(0.1)
    expect(share((i) => network(i)?.bag?.hasInletValve === true)).toBeGreaterThan(0.1)
    expect(share((i) => network(i)?.bag?.hasInletValve === false)).toBeGreaterThan(0.05)
    expect(share((i) => (cases[i]?.breath.tidalVolumeL ?? 1) < 0.01)).toBeGreaterThan(0.1)
    expect(share((i) => (cases[i]?.breath.tidalVolumeL ?? 0) > 1)).toBeGreaterThan(0.05)
  })
})

describe('fast solver where the gas of a step is not smooth', () => {
  it.each(ONCE_MISSED)('holds with $cause', ({ network, breath }) => {
    const solver = createPeriodicSolver()
    const fast = fastFraction(solver, { network, breath })
    const judge = judgeCase({ network, breath }, solver.bag.startL)
    expect(judge.settled).toBe(true)
    expect(Math.abs(fast - judge.effectiveO2Fraction)).toBeLessThan(AGREEMENT_TOLERANCE / 2)
  })
})

describe('a general-purpose ODE library', () => {
  it(`agrees with both on ${ODEX_CASES} stored cases`, () => {
    const solver = createPeriodicSolver()
    const cases = randomPoints(ODEX_CASES, randomStream(ODEX_SEED)).map(caseFromPoint)
    for (const each of cases) {
      const { network, breath } = each
      const options = { settledChange: 1e-5, tolerance: 1e-5, lungs: QUICK_LUNGS }
      const library = solveByOdex(network, breath, options)
      const odex = library.effectiveO2Fraction
      const judge = solveTransient(network, breath, { ...options, withOrigins: false })
      const label = JSON.stringify(each)
      expect(library.settled, label).toBe(true)
      expect(Math.abs(odex - judge.effectiveO2Fraction), label).toBeLessThan(AGREEMENT_TOLERANCE)
      expect(Math.abs(odex - fastFraction(solver, each)), label).toBeLessThan(AGREEMENT_TOLERANCE)
    }
  })
})
