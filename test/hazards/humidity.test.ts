// Hazards of humidity at a neck opening: each is noticed on the path that has it and not on the one that has not.
import { describe, expect, it } from 'vitest'
import type { AirwayFacts } from '../../src/humidity/facts.ts'
import { humidityOfPath } from '../../src/humidity/humidity-of-path.ts'
import type { HumidityAnswer, HumidityQuestion } from '../../src/humidity/humidity-of-path.ts'
import type { Stage } from '../../src/humidity/water-path.ts'

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
})
