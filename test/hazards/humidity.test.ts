// Hazards of humidity at a neck opening: each is noticed on the path that has it and not on the one that has not.
import { describe, expect, it } from 'vitest'
import type { AirwayFacts } from '../../src/humidity/facts.ts'
import { humidityOfPath } from '../../src/humidity/humidity-of-path.ts'
import type { HumidityAnswer, HumidityQuestion } from '../../src/humidity/humidity-of-path.ts'
import type { Stage } from '../../src/humidity/water-path.ts'
import { candidateSetUps } from '../../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import type { Case } from '../../src/patient/case.ts'
import { readCase } from '../../src/patient/read-case.ts'
import { airwayFactsOf } from '../../src/planning/airway-facts.ts'
import { planCautions } from '../../src/planning/cautions.ts'
import { sheetFacts } from '../../src/sheet/facts.ts'
import { stepsFor } from '../../src/sheet/step-table.ts'

const NECK: AirwayFacts = {
  isBypassed: true,
  hasNeckOpening: true,
  ageYears: 60,
  secretions: 'thin',
  isNewOpening: false,
  tracheostomyAgeDays: 100,
  wearsExchanger: false,
  returnsThroughNeck: true,
  nebulisesDrug: false,
  tidalVolumeMl: null,
}
const VESSEL = { partId: 'bottle', waterMl: 350, labelMgPerL: null }
const HEATED: Stage = { kind: 'heated-chamber', ...VESSEL }
const MIST: Stage = { kind: 'nebuliser', isHeated: false, ...VESSEL }
const EXCHANGER: Stage = { kind: 'exchanger', partId: 'exchanger', labelMgPerL: null }

function ask(stages: readonly Stage[], more: Partial<HumidityQuestion> = {}): HumidityAnswer {
  return humidityOfPath({
    path: { stages },
    family: 't-piece',
    flowLpm: 10,
    room: { temperatureC: 22, relativeHumidityFraction: 0.5, barometricKpa: 101.325 },
    heaterTemperatureC: 37,
    airway: NECK,
    ...more,
  })
}

function codes(answer: HumidityAnswer): readonly string[] {
  return answer.rules.map(({ code }) => code)
}

describe('humidity at the neck', () => {
  it('calls dry gas to a bypassed airway a breach and says how much water is missing', () => {
    const dry = ask([])
    expect(dry.rules[0]).toMatchObject({ code: 'NEVER_DRY_TO_BYPASSED', weight: 'breach' })
    expect(dry.shortfall).toMatchObject({ verdict: 'short', mgPerL: { middle: 33 } })
    expect(codes(ask([HEATED]))).not.toContain('NEVER_DRY_TO_BYPASSED')
  })

  it('warns of gas that scalds, and refuses a heater set beyond what gas may have', () => {
    const hose = { kind: 'hose', partId: 'hose', lengthM: 1.5, boreMm: 22 } as const
    const wire: Stage = { ...hose, isHeated: true, hasWaterTrap: false }
    const hot = ask([HEATED, wire], { heaterTemperatureC: 41 })
    expect(hot.rules[0]).toMatchObject({ code: 'GAS_TOO_HOT', weight: 'breach' })
    expect(codes(ask([HEATED, wire]))).not.toContain('GAS_TOO_HOT')
    expect(() => ask([HEATED], { heaterTemperatureC: 53 })).toThrow('TEMPERATURE_OUT_OF_RANGE')
  })

  it('says to switch the heater off when flow stops wherever there is a heater', () => {
    for (const heater of [HEATED, { ...MIST, isHeated: true }])
      expect(codes(ask([heater]))).toContain('HEATER_OFF_WHEN_FLOW_STOPS')
    expect(codes(ask([MIST]))).not.toContain('HEATER_OFF_WHEN_FLOW_STOPS')
  })

  it('says to drain condensate away from the patient wherever water gathers', () => {
    const hose: Stage = {
      kind: 'hose',
      partId: 'hose',
      lengthM: 1.5,
      boreMm: 22,
      isHeated: false,
      hasWaterTrap: false,
    }
    const answer = ask([HEATED, hose])
    expect(answer.condensate[0]).toMatchObject({ partId: 'hose', place: 'lowest-loop' })
    expect(codes(answer)).toContain('DRAIN_AWAY_FROM_PATIENT')
  })

  it('never accepts an exchanger together with a humidifier', () => {
    for (const other of [HEATED, { kind: 'bubble', ...VESSEL } as const]) {
      const both = ask([other, EXCHANGER])
      expect(codes(both)).toContain('NEVER_BOTH_HUMIDIFIERS')
      const worn = ask([other], { airway: { ...NECK, wearsExchanger: true } })
      expect(codes(worn)).toContain('NEVER_BOTH_HUMIDIFIERS')
    }
    expect(codes(ask([EXCHANGER]))).not.toContain('NEVER_BOTH_HUMIDIFIERS')
  })

  it('takes the exchanger off before a nebuliser soaks it', () => {
    expect(codes(ask([MIST, EXCHANGER]))).toContain('NEVER_BOTH_HUMIDIFIERS')
    const drug = { airway: { ...NECK, nebulisesDrug: true } }
    expect(codes(ask([EXCHANGER], drug))).toContain('EXCHANGER_OFF_FOR_NEBULISED_DRUG')
    expect(codes(ask([EXCHANGER]))).toContain('CHANGE_SOAKED_EXCHANGER')
  })

  it('hears of a nebulised drug from the case, in plan and sheet', () => {
    const about = (changes: readonly string[], heatMoistureExchanger: boolean): Case => {
      const tube = { cuff: 'up', heatMoistureExchanger }
      const airway = { route: 'tracheostomy', nose: 'open', tube }
      const read = readCase({
        version: 1,
        patient: { ageYears: 60, weightKg: 70, retentionRisk: 'none', airway, changes },
        breathing: { state: 'rest' },
        goal: { kind: 'saturation', lowPercent: 92, highPercent: 96 },
      })
      if (!read.ok) throw new Error(JSON.stringify(read.problems))
      return read.case
    }
    const facts = (one: Case) => airwayFactsOf(one, 't-piece')
    expect(facts(about(['nebulised-drug'], true)).nebulisesDrug).toBe(true)
    expect(facts(about([], true)).nebulisesDrug).toBeNull()
    const cautions = (one: Case) => planCautions(one).map(({ code }) => code)
    const code = 'EXCHANGER_OFF_WHILE_NEBULISED'
    expect(cautions(about(['nebulised-drug'], true))).toContain(code)
    expect(cautions(about(['nebulised-drug'], false))).not.toContain(code)
    expect(cautions(about([], true))).not.toContain(code)
    const setUp = candidateSetUps(DEMO_SHELF).find(
      (one) => one.setUp.family === 'tracheostomy-mask' && one.setUp.humidification === 'none',
    )?.setUp
    if (setUp === undefined) throw new Error('the demo shelf has no tracheostomy mask')
    const steps = (one: Case) =>
      stepsFor({
        ...sheetFacts({
          about: one,
          setUp,
          shelf: DEMO_SHELF,
          isReadingUsed: false,
          hasHoldRate: false,
        }),
        humidifier: 'none',
      }).map(({ id }) => id)
    expect(steps(about(['nebulised-drug'], true))).toContain('EXCHANGER_OFF_FOR_DRUG')
    expect(steps(about([], true))).not.toContain('EXCHANGER_OFF_FOR_DRUG')
  })
})
