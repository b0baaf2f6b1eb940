// The demand of the demo wards: sums, formula, simulation, one more, outlets. Leaves out single draws, which gas-drawn.test.ts judges.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { USUAL_SIMULATION } from './demand-simulation.ts'
import { DEMO_WARDS } from './demo-wards/demo-wards.ts'
import { wardDemand } from './ward-demand.ts'
import type { WardFile } from './ward.ts'

const demand = (ward: WardFile, rest: object = {}) =>
  wardDemand({ ward, shelf: DEMO_SHELF, ...rest })
const codes = (ward: WardFile): readonly string[] => demand(ward).remarks.map(({ code }) => code)
const HERON = DEMO_WARDS.heron

describe('ward demand', () => {
  it('is the sum of what beds take from the pipeline; cylinders, concentrators and air take nothing', () => {
    const { beds, drawnLpm, unknownBeds } = demand(HERON)
    expect(drawnLpm).toBeCloseTo(
      beds.reduce((sum, { pipelineLpm }) => sum + pipelineLpm, 0),
      9,
    )
    const outside = beds.filter(({ feed }) => feed !== 'pipeline')
    expect(outside.map(({ pipelineLpm }) => pipelineLpm)).toEqual(outside.map(() => 0))
    expect(new Set(outside.map(({ feed }) => feed))).toEqual(
      new Set(['cylinder', 'own-source', 'room-air', 'empty', 'unknown']),
    )
    expect(unknownBeds).toBe(1)
  })

  it('stands beside the design formula, 10 + 17 × 1.5 L/min for 18 beds, marked as from memory', () => {
    const answer = demand(HERON)
    expect(answer.designLpm).toBe(35.5)
    const formula = answer.remarks.find(({ code }) => code === 'DIVERSITY_FROM_MEMORY')
    expect(formula).toMatchObject({ known: 'memory', source: 'Htm2006' })
    expect(codes(HERON)).toContain('DEMAND_ABOVE_FORMULA')
  })

  it('is simulated to the plain sum where nobody moves, but for the meters’ error', () => {
    const simulation = { ...USUAL_SIMULATION, awayShare: 0, upShare: 0, downShare: 0 }
    const still = demand(HERON, { simulation })
    expect(Math.abs(still.simulation.meanLpm / still.drawnLpm - 1)).toBeLessThan(0.02)
    const { p5, p50, p90, p95, p99 } = still.simulation.percentilesLpm
    expect([p5, p50, p90, p95, p99]).toEqual([p5, p50, p90, p95, p99].toSorted((a, b) => a - b))
    expect(still.simulation.shareAbove(0)).toBe(1)
    expect(still.simulation.shareAbove(1e6)).toBe(0)
  })

  it('falls by the share of those away, and spreads when flows move', () => {
    const away = { ...USUAL_SIMULATION, awayShare: 0.5, upShare: 0, downShare: 0 }
    const half = demand(HERON, { simulation: away })
    expect(Math.abs(half.simulation.meanLpm / half.drawnLpm - 0.5)).toBeLessThan(0.03)
  })

  it('is the same for the same seed, and another for another', () => {
    const p95 = (seed: number): number =>
      demand(HERON, { simulation: { ...USUAL_SIMULATION, seed } }).simulation.percentilesLpm.p95
    expect(p95(3)).toBe(p95(3))
    expect(p95(4)).not.toBe(p95(3))
    const simulation = { ...USUAL_SIMULATION, awayShare: 0.8, upShare: 0.5 }
    expect(() => demand(HERON, { simulation })).toThrow(DomainError)
  })

  it('rises by one more high-flow patient of 60 L/min, and its hours fall', () => {
    const { oneMore, drawnLpm, autonomy } = demand(HERON)
    // Its display may count litres at body conditions (1.3 for each dry one at 1180 m) or dry ones.
    expect(oneMore.moreLpm).toBeGreaterThan(60 / 1.3)
    expect(oneMore.moreLpm).toBeLessThan(60)
    expect(oneMore.drawnLpm).toBeCloseTo(drawnLpm + oneMore.moreLpm, 9)
    expect(oneMore.autonomy.manifoldHours).toBeLessThan(autonomy.manifoldHours ?? 0)
    expect(oneMore.remarks.map(({ code }) => code)).toContain('ONE_MORE_BREAKS_FORMULA')
  })

  it('says what the file does not tell', () => {
    const bare: WardFile = { ...HERON, supply: { area: 'ward' } }
    expect(codes(bare)).toEqual(
      expect.arrayContaining(['BRANCH_LIMIT_UNKNOWN', 'AUTONOMY_UNKNOWN', 'BEDS_NOT_COUNTED']),
    )
    expect(codes(HERON)).toContain('SUPPLY_WARD_INVENTED')
    expect(codes(DEMO_WARDS.plover)).toContain('BIAS_FLOW_UNKNOWN')
  })

  it('counts outlets: two meters need two, a blend needs air', () => {
    const few: WardFile = {
      ...HERON,
      beds: HERON.beds.map((bed) => ({ ...bed, oxygenOutlets: 1, airOutlets: 0 })),
    }
    expect(codes(few)).toContain('OUTLETS_SHORT')
    expect(codes(few)).toContain('AIR_OUTLETS_SHORT')
    expect(codes(HERON)).not.toContain('OUTLETS_SHORT')
  })
})
