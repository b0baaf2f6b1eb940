// Whole transfers: reserve, worst case, lift, scanner, thin air, and the laws they keep. Leaves out contents and needs, which their own tests judge.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { kpaFromBar, kpaFromPsi } from '../units/pressure.ts'
import type { StoreRow } from './store.ts'
import type { PlannedLeg } from './transfer-leg.ts'
import { planTransfer, whenItStandsStill, type TransferQuestion } from './transfer.ts'

const MASK: SetUpOnNow = { family: 'simple-mask', sourceKind: 'wall-flowmeter', flowLpm: 6 }
const STORE: readonly StoreRow[] = [
  row('small', { waterVolumeL: 2, count: 4, mrSafety: 'conditional' }),
  row('middle', { waterVolumeL: 5, count: 2 }),
  row('large', { waterVolumeL: 10, count: 1 }),
]
const WAY: readonly PlannedLeg[] = [
  { kind: 'corridor', minutes: 6 },
  { kind: 'lift', minutes: 3 },
  { kind: 'corridor', minutes: 5 },
]

function row(id: string, rest: Partial<StoreRow> & { readonly waterVolumeL: number }): StoreRow {
  const base = { gaugeKpa: kpaFromBar(137), count: 1, mrSafety: 'not', place: 'heron' } as const
  return { id, label: id, ...base, ...rest }
}

function ask(rest: Partial<TransferQuestion> = {}): TransferQuestion {
  return {
    setUp: MASK,
    legs: WAY,
    barometricKpa: 101.325,
    store: STORE,
    leftGaugeKpa: kpaFromBar(10),
    readAtC: 20,
    shelf: DEMO_SHELF,
    body: { ageYears: 60 },
    ...rest,
  }
}

const codes = (question: TransferQuestion): readonly string[] => {
  const { legs, remarks } = planTransfer(question)
  return [...legs.flatMap((leg) => leg.remarks), ...remarks].map(({ code }) => code)
}

describe('transfer', () => {
  it('takes the set-up off the wall to a regulator, and plans 44 min for a way of 14', () => {
    const plan = planTransfer(ask())
    expect(plan.need.plannedMinutes).toBe(14)
    expect(plan.need.reservedMinutes).toBe(44)
    expect(plan.legs[0]?.setUp?.source.kind).toBe('cylinder-regulator')
    expect(plan.choice.missingL).toBe(0)
    expect(plan.course.missingL).toBe(0)
    expect(plan.saturationPath).toBeNull()
    expect(codes(ask())).toContain('NOT_COMPUTED_YET')
    expect(codes(ask())).toContain('LOCAL_POLICY_FIRST')
  })

  it('lasts at least the reserve time, whatever the way', () => {
    const leg = fc.record({
      kind: fc.constantFrom('lift', 'corridor', 'ambulance') satisfies fc.Arbitrary<
        PlannedLeg['kind']
      >,
      minutes: fc.double({ min: 1, max: 60, noNaN: true }),
    })
    fc.assert(
      fc.property(
        fc.array(leg, { minLength: 1, maxLength: 4 }),
        fc.constantFrom(1, 2, 4, 6),
        (legs, flowLpm) => {
          const plan = planTransfer(ask({ legs, setUp: { ...MASK, flowLpm } }))
          fc.pre(plan.choice.missingL === 0)
          expect(plan.course.emptyAtMinute).toBeGreaterThanOrEqual(plan.need.reservedMinutes - 1e-6)
          const worst = plan.worstCourse.emptyAtMinute ?? Number.NaN
          expect(worst).toBeLessThanOrEqual(plan.course.emptyAtMinute ?? 0)
        },
      ),
      seeded(25),
    )
  })

  it('gives the same plan whether gauges are read in bar, psi or kPa', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 200 }),
        fc.integer({ min: 0, max: 20 }),
        (bar, left) => {
          const planOf = (kpaOf: (bar: number) => number) => {
            const store = STORE.map((one) => ({ ...one, gaugeKpa: kpaOf(bar) }))
            const { choice, course, need } = planTransfer(ask({ store, leftGaugeKpa: kpaOf(left) }))
            const times = [...course.changeAtMinutes, course.emptyAtMinute ?? -1, need.neededL]
            return { picks: choice.picks.map(({ row: { id }, count }) => [id, count]), times }
          }
          const inBar = planOf(kpaFromBar)
          const inPsi = planOf((one) => kpaFromPsi((one * 100) / kpaFromPsi(1)))
          const inKpa = planOf((one) => one * 100)
          for (const other of [inPsi, inKpa]) {
            expect(other.picks).toEqual(inBar.picks)
            other.times.forEach((time, i) => expect(time).toBeCloseTo(inBar.times[i] ?? -1, 6))
          }
        },
      ),
      seeded(40),
    )
  })

  it('says when it runs out on the way, or when only the reserve is not covered', () => {
    const few = [row('only', { waterVolumeL: 0.5 })]
    expect(codes(ask({ store: few }))).toContain('RUNS_OUT_ON_THE_WAY')
    const some = [row('only', { waterVolumeL: 1.5 })]
    const tight = planTransfer(ask({ store: some }))
    expect(tight.course.missingL).toBe(0)
    expect(codes(ask({ store: some }))).toContain('RESERVE_NOT_COVERED')
  })

  it('covers or does not cover the next step up, and says when there is none', () => {
    const plan = planTransfer(ask({ store: [row('only', { waterVolumeL: 2.3 })] }))
    expect(plan.worstMissingL).toBeGreaterThan(0)
    expect(plan.legs[0]?.worstCarriedLpm).toBeGreaterThan(plan.legs[0]?.carriedLpm ?? 0)
    expect(codes(ask({ setUp: { ...MASK, flowLpm: 'flush' } }))).toContain('NO_HIGHER_STEP')
  })

  it('ends 20 minutes later when the lift stands still, with the same cylinders', () => {
    const plan = planTransfer(ask())
    const stopped = whenItStandsStill(plan, { legIndex: 1 })
    expect(stopped.course.wayEndsMinute).toBe(plan.course.wayEndsMinute + 20)
    expect(stopped.need.neededL).toBeGreaterThan(plan.need.neededL)
    expect(stopped.isCovered).toBe(true)
    expect(() => whenItStandsStill(plan, { legIndex: 9 })).toThrow(DomainError)
  })

  it('takes only MR-conditional cylinders to a scanner whose kit is MR conditional', () => {
    const legs: readonly PlannedLeg[] = [...WAY, { kind: 'scanner', minutes: 10 }]
    const scanner = { regulator: 'conditional', flowmeter: 'conditional' } as const
    const inside = planTransfer(ask({ legs, scanner }))
    expect(inside.choice.picks.map((one) => one.row.id)).toEqual(['small'])
    expect(inside.remarks.map(({ code }) => code)).toContain('CYLINDER_MAY_ENTER')
    expect(inside.checks.map(({ code }) => code)).toContain('CHECK_MR_ITEMS')
    const outside = { ...scanner, regulator: 'unknown', tubeLengthM: 12 } as const
    expect(codes(ask({ legs, scanner: outside }))).toContain('GAS_STAYS_OUTSIDE')
    const steel = STORE.map((one) => ({ ...one, mrSafety: 'not' as const }))
    expect(codes(ask({ legs, scanner, store: steel }))).toContain('GAS_STAYS_OUTSIDE')
  })

  it('changes the draw with the set-up of a leg, and draws nothing where the place feeds it', () => {
    const legs: readonly PlannedLeg[] = [
      { kind: 'corridor', minutes: 10 },
      { kind: 'ambulance', minutes: 30, feed: 'place' },
      { kind: 'corridor', minutes: 5, setUp: { ...MASK, flowLpm: 10 } },
    ]
    const { legs: answers, need } = planTransfer(ask({ legs }))
    expect(answers[1]?.carriedLpm).toBe(0)
    expect(answers[1]?.remarks.map(({ code }) => code)).toContain('PLACE_SUPPLY_TO_CHECK')
    expect(answers[2]?.carriedLpm).toBeGreaterThan(answers[0]?.carriedLpm ?? 99)
    const [first = 0, third = 0] = [answers[0]?.carriedLpm, answers[2]?.carriedLpm]
    expect(need.plannedL).toBeCloseTo(10 * first + 5 * third, 9)
  })

  it('says that air is thinner on a leg, by how much less oxygen pressure is inhaled', () => {
    const legs: readonly PlannedLeg[] = [{ kind: 'helicopter', minutes: 20, altitudeM: 2438 }]
    const [leg] = planTransfer(ask({ legs })).legs
    // 574 mmHg by the model atmosphere, 47 of it water: 527 of 713 mmHg.
    expect(leg?.inspiredPo2Share).toBeCloseTo(527 / 713, 2)
    expect(leg?.remarks.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['THIN_AIR', 'FRACTION_ON_THE_WAY_NOT_MODELLED']),
    )
  })

  it('draws nothing on room air', () => {
    const { course, need } = planTransfer(ask({ setUp: null }))
    expect(need.neededL).toBe(0)
    expect(course.emptyAtMinute).toBeNull()
  })

  it('lets each cylinder follow the other without a gap until the last is used up', () => {
    const store = [row('small', { waterVolumeL: 1, count: 5 })]
    const { course } = planTransfer(ask({ store }))
    expect(course.runs.length).toBeGreaterThan(1)
    course.runs.forEach((run, i) => {
      expect(run.fromMinute).toBeCloseTo(course.runs[i - 1]?.untilMinute ?? 0, 9)
      expect(run.untilMinute).toBeGreaterThan(run.fromMinute)
    })
    expect(course.changeAtMinutes).toHaveLength(course.runs.length - 1)
  })
})
