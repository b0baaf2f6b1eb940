// Hazards of a plan: what it must rank otherwise, rule out, say or keep silent about. Real cases of examples/ on the demo shelf.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import { flowSteps } from '../../src/kit/flow-steps.ts'
import { readCase } from '../../src/patient/read-case.ts'
import type { Case } from '../../src/patient/case.ts'
import { MODEL_VERSION, makePlan } from '../../src/planning/plan.ts'
import type { Plan, RankedSetUp } from '../../src/planning/plan-types.ts'
import { parsedExample } from '../support/examples.ts'

function caseOf(example: string, change: (about: Case) => Case = (about) => about): Case {
  const read = readCase(parsedExample(example))
  if (!read.ok) throw new Error(`example ${example} does not read`)
  return change(read.case)
}

const plans = new Map<string, Plan>()

/** Plans are pure, so each question is asked once. */
function planOf(example: string): Plan {
  const known = plans.get(example)
  if (known !== undefined) return known
  const plan = makePlan({ case: caseOf(example), shelf: DEMO_SHELF, draws: 128 })
  plans.set(example, plan)
  return plan
}

function codesOf(remarks: readonly { readonly code: string }[]): readonly string[] {
  return remarks.map(({ code }) => code)
}

function allNumbers(node: unknown): readonly number[] {
  if (typeof node === 'number') return [node]
  if (typeof node !== 'object' || node === null) return []
  return Object.values(node).flatMap((value: unknown) => allNumbers(value))
}

function firstOf(ranked: readonly RankedSetUp[]): RankedSetUp {
  const [first] = ranked
  if (first === undefined) throw new Error('nothing is ranked')
  return first
}

function medianFraction(one: RankedSetUp): number {
  return one.effectiveO2Fraction.median
}

describe('a plan for carbon monoxide', () => {
  it('ranks by fraction and shows no saturation, though a cannula would read 99 %', () => {
    const { ranked } = planOf('carbon-monoxide')
    const best = Math.max(...ranked.map(medianFraction))
    expect(best - medianFraction(firstOf(ranked))).toBeLessThan(0.03)
    expect(ranked.every((one) => one.saturationPercent === null)).toBe(true)
  })
})

describe('a plan for a patient at risk of retention', () => {
  it('warns that arterial carbon dioxide is not predictable and asks for a blood gas', () => {
    const plan = planOf('entrainment-mask')
    expect(codesOf(plan.cautions)).toContain('PACO2_NOT_PREDICTABLE')
    for (const one of plan.ranked) expect(codesOf(one.watch)).toContain('BLOOD_GAS_30_60')
  })

  it('puts nothing first that is likely to overshoot the goal', () => {
    const [first] = planOf('entrainment-mask').ranked
    expect(first?.chance?.above).toBeLessThan(0.5)
  })

  it('forecasts no arterial carbon dioxide anywhere', () => {
    expect(JSON.stringify(planOf('entrainment-mask').ranked)).not.toMatch(/pco2/i)
  })
})

describe('a plan for a preterm infant', () => {
  it('says that too much oxygen harms and offers no mask', () => {
    const plan = planOf('preterm')
    expect(codesOf(plan.cautions)).toContain('PRETERM_TOO_MUCH_HARMS')
    expect(plan.ranked.filter(({ setUp }) => setUp.family.endsWith('mask'))).toEqual([])
    expect(plan.ranked.length).toBeGreaterThan(0)
  })
})

describe('every plan', () => {
  it('says on top: oxygen first, and not for who does not breathe', () => {
    for (const example of ['simple-mask', 'carbon-monoxide', 'preterm'])
      expect(codesOf(planOf(example).emergency)).toEqual(
        expect.arrayContaining(['EMERGENCY_OXYGEN_FIRST', 'EMERGENCY_NOT_BREATHING']),
      )
  })

  it('says that it is decision support, no monitor, and that oxygen feeds fire', () => {
    expect(codesOf(planOf('simple-mask').cautions)).toEqual(
      expect.arrayContaining(['DECISION_SUPPORT', 'NOT_A_MONITOR', 'FIRE']),
    )
  })

  it('carries the version of the model that made it', () => {
    expect(planOf('simple-mask').modelVersion).toBe(MODEL_VERSION)
    expect(MODEL_VERSION).toMatch(/^\d+\.\d+\.\d+$/)
  })

  it('holds no number that is none', () => {
    for (const example of ['simple-mask', 'carbon-monoxide', 'preterm', 'laryngectomy'])
      expect(allNumbers(planOf(example)).every((value) => Number.isFinite(value))).toBe(true)
  })

  it('offers only steps that the meter of its source can be set to', () => {
    for (const { setUp } of planOf('simple-mask').ranked)
      expect(flowSteps(setUp.source)).toContainEqual(setUp.flow)
  })

  it('is the same for the same question', () => {
    const question = { case: caseOf('preterm'), shelf: DEMO_SHELF, draws: 64 }
    expect(makePlan(question)).toEqual(makePlan(question))
  })

  it('marks each set-up of a family that no measurement checks', () => {
    const unchecked = planOf('laryngectomy').ranked.filter(({ isChecked }) => !isChecked)
    expect(unchecked.length).toBeGreaterThan(0)
    for (const one of unchecked)
      expect(codesOf(one.remarks)).toContain('NOT_CHECKED_AGAINST_MEASUREMENTS')
  })

  it('says to take a close-fitting mask off if the gas fails and to fill its bag first', () => {
    const bagged = planOf('simple-mask').ranked.filter(
      ({ setUp }) => setUp.family === 'non-rebreather-mask',
    )
    expect(bagged.length).toBeGreaterThan(0)
    for (const one of bagged)
      expect(codesOf(one.remarks)).toEqual(
        expect.arrayContaining(['REMOVE_IF_GAS_FAILS', 'FILL_BAG_FIRST']),
      )
  })

  it('says oxygen to face and neck for a neck breather', () => {
    expect(codesOf(planOf('laryngectomy').emergency)).toContain('EMERGENCY_NECK_BREATHER')
    expect(codesOf(planOf('simple-mask').emergency)).not.toContain('EMERGENCY_NECK_BREATHER')
  })
})

describe('a plan without a reading', () => {
  it('says so and claims no narrowing', () => {
    const { reading } = planOf('no-reading')
    expect(reading.isUsed).toBe(false)
    expect(codesOf(reading.remarks)).toContain('NO_READING')
  })
})

describe('a plan under opioids', () => {
  it('says that a good saturation hides a rising carbon dioxide', () => {
    expect(codesOf(planOf('slow-under-opioids').cautions)).toContain('OPIOID_SATURATION_HIDES_CO2')
  })
})

describe('a plan with a saturation as its goal', () => {
  it('names the limits of the oximeter where a saturation is the goal', () => {
    expect(codesOf(planOf('simple-mask').cautions)).toContain('OXIMETER_LIMITS')
  })
})

describe('holds until', () => {
  it('lies above the rate now where a set-up fails by faster breathing', () => {
    const falling = planOf('nasal-cannula').ranked.filter(
      ({ holdsUntil }) => holdsUntil.side === 'below' && holdsUntil.ratePerMin !== null,
    )
    expect(falling.length).toBeGreaterThan(0)
    for (const { holdsUntil } of falling)
      // The case counts 24/min; a count errs by a few.
      expect(holdsUntil.ratePerMin).toBeGreaterThanOrEqual(22)
  })
})

describe('a plan for a small child', () => {
  it('warns of blow-by oxygen and gives it no number', () => {
    expect(codesOf(planOf('bronchiolitis').cautions)).toContain('BLOW_BY_NO_NUMBER')
    expect(JSON.stringify(planOf('bronchiolitis').ranked)).not.toMatch(/blow-by/i)
  })
})
