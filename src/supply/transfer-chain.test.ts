// What a transfer takes from the chain of parts: against the shelf's own rows, and that what is typed wins. Leaves out how chains are found, which joining's tests judge.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { kpaFromBar } from '../units/pressure.ts'
import type { TakenChain } from './chain-taken.ts'
import type { PlannedLeg } from './transfer-leg.ts'
import { planTransfer, withChains, type TransferPlan, type TransferQuestion } from './transfer.ts'

const MASK: SetUpOnNow = { family: 'simple-mask', sourceKind: 'wall-flowmeter', flowLpm: 6 }
const VALVE: SetUpOnNow = { ...MASK, family: 'entrainment-mask', flowLpm: 8, setO2Fraction: 0.35 }
const VENTILATOR: SetUpOnNow = {
  family: 'nasal-high-flow',
  sourceKind: 'ventilator',
  flowLpm: 40,
  setO2Fraction: 0.6,
}
const TO_SCANNER: readonly PlannedLeg[] = [
  { kind: 'corridor', minutes: 5 },
  { kind: 'scanner', minutes: 30 },
]

function ask(rest: Partial<TransferQuestion> = {}): TransferQuestion {
  const cylinder = {
    waterVolumeL: 10,
    gaugeKpa: kpaFromBar(137),
    count: 9,
    mrSafety: 'not',
  } as const
  return {
    setUp: MASK,
    legs: TO_SCANNER,
    barometricKpa: 101.325,
    store: [{ ...cylinder, id: 'a', label: 'a', place: 'heron' }],
    leftGaugeKpa: kpaFromBar(10),
    readAtC: 20,
    shelf: DEMO_SHELF,
    body: { ageYears: 60 },
    ...rest,
  }
}

const planned = (rest: Partial<TransferQuestion> = {}): TransferPlan =>
  planTransfer(withChains(ask(rest)))

function taken({ legs }: TransferPlan, leg = 0): TakenChain {
  const chain = legs[leg]?.leg.chain
  if (chain?.kind !== 'chain') throw new Error(`no chain: ${JSON.stringify(chain)}`)
  return chain
}

const codes = ({ remarks, legs }: TransferPlan): readonly string[] =>
  [...remarks, ...legs.flatMap((leg) => leg.remarks)].map(({ code }) => code)

const SHELF_WITHOUT_BIAS: Shelf = {
  ...DEMO_SHELF,
  sources: DEMO_SHELF.sources.map((row) =>
    row.kind === 'ventilator' ? { ...row, biasFlowAddsToUse: 'no' } : row,
  ),
}

describe('a transfer with the joined chain', () => {
  it('takes the tube and the meter that the shelf’s own rows have', () => {
    const plan = planned()
    const { tubes, meter, drivingLpm } = taken(plan)
    const rows = (DEMO_SHELF.tubes ?? []).map(({ lengthM, boreMm }) => ({ lengthM, boreMm }))
    expect(tubes).toHaveLength(1)
    expect(rows).toContainEqual(tubes[0])
    const regulators = DEMO_SHELF.sources.filter(({ kind }) => kind === 'cylinder-regulator')
    expect(regulators.map(({ label }) => label)).toContain(meter)
    expect(drivingLpm).toBeNull()
    expect(plan.scanner?.tube).toEqual({ lengths: tubes, lengthFrom: 'chain', boreFrom: 'chain' })
    expect(codes(plan)).toContain('TUBE_FROM_CHAIN')
    expect(codes(plan)).not.toContain('TUBE_LENGTH_UNKNOWN')
  })

  it('lets a typed length or bore win, and says where each is from', () => {
    const kit = { regulator: 'not', flowmeter: 'not' } as const
    const { tubes } = taken(planned())
    const long = planned({ scanner: { ...kit, tubeLengthM: 12 } })
    expect(long.scanner?.tube).toEqual({
      lengths: [{ lengthM: 12, boreMm: tubes[0]?.boreMm }],
      lengthFrom: 'typed',
      boreFrom: 'chain',
    })
    expect(codes(long)).not.toContain('TUBE_FROM_CHAIN')
    const narrow = planned({ scanner: { ...kit, tubeLengthM: 12, tubeBoreMm: 3 } })
    expect(narrow.scanner?.tube).toMatchObject({
      lengths: [{ lengthM: 12, boreMm: 3 }],
      boreFrom: 'typed',
    })
    const unjoined = planTransfer(ask({ scanner: { ...kit, tubeLengthM: 12 } }))
    expect(unjoined.scanner?.tube?.boreFrom).toBe('assumed')
  })

  it('draws through a jet what the chain’s meter drives it with', () => {
    const plan = planned({ setUp: VALVE })
    expect(taken(plan).drivingLpm).toBe(8)
    expect(plan.legs[0]?.drawn?.oxygenLpm).toBeCloseTo(8, 1)
  })

  it('counts no bias flow where the shelf says that none adds, else asks for it; a typed one wins', () => {
    const asked = ask({
      setUp: VENTILATOR,
      legs: TO_SCANNER.slice(0, 1),
      shelf: SHELF_WITHOUT_BIAS,
    })
    const joined = withChains(asked)
    const none = planTransfer(joined)
    const chain = taken(none)
    expect(chain).toMatchObject({ tubes: [], biasFlowAddsToUse: 'no' })
    expect(codes(none)).toContain('BIAS_FLOW_NONE_BY_SHELF')
    expect(codes(none)).not.toContain('BIAS_FLOW_UNKNOWN')
    // The demo shelf says that its ventilator's bias flow adds.
    expect(codes(planTransfer({ ...joined, shelf: DEMO_SHELF }))).toContain('BIAS_FLOW_UNKNOWN')
    const typed = planTransfer({ ...joined, beside: { biasFlowLpm: 5 } })
    expect(codes(typed)).not.toContain('BIAS_FLOW_NONE_BY_SHELF')
    expect(typed.need.neededL).toBeGreaterThan(none.need.neededL)
  })

  it('takes nothing, and says why, where the shelf has no such interface or the parts are missing', () => {
    const reasonWith = (shelf: Shelf): unknown => planned({ shelf }).legs[0]?.leg.chain
    expect(reasonWith({ ...DEMO_SHELF, interfaces: [] })).toMatchObject({ reason: 'NOT_ON_SHELF' })
    expect(reasonWith({ ...DEMO_SHELF, tubes: [] })).toMatchObject({
      reason: 'PARTS_MISSING',
      lacking: ['Oxygen tubing'],
    })
    const plan = planned({ shelf: { ...DEMO_SHELF, tubes: [] } })
    expect(codes(plan)).toContain('TUBE_LENGTH_UNKNOWN')
    expect(plan.need).toEqual(planTransfer(ask()).need)
  })

  it('asks once for each set-up, and each leg has the chain of its own', () => {
    const solved = new Map()
    const legs: readonly PlannedLeg[] = [
      { kind: 'corridor', minutes: 5 },
      { kind: 'lift', minutes: 5 },
      { kind: 'ambulance', minutes: 5, setUp: VALVE },
      { kind: 'corridor', minutes: 5 },
    ]
    const plan = planTransfer(withChains(ask({ legs }), solved))
    expect(solved.size).toBe(2)
    expect(taken(plan, 1)).toBe(taken(plan, 0))
    expect(taken(plan, 2).drivingLpm).toBe(8)
    expect(taken(plan, 3)).toBe(taken(plan, 2))
  })
})
