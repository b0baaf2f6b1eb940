// The humidity answer of whole paths: laws on random paths, and the cases every bedside meets. Leaves out chains of parts.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { FAMILY_IDS } from '../kit/family-id.ts'
import { saturatedMgPerLBtps } from './body-litre.ts'
import type { AirwayFacts } from './facts.ts'
import { humidityOfPath } from './humidity-of-path.ts'
import type { HumidityAnswer, HumidityQuestion } from './humidity-of-path.ts'
import { HUMIDITY_RULES } from './rules.ts'
import type { Stage } from './water-path.ts'

const ADULT: AirwayFacts = {
  isBypassed: false,
  hasNeckOpening: false,
  ageYears: 60,
  secretions: null,
  isNewOpening: false,
  tracheostomyAgeDays: null,
  wearsExchanger: false,
  returnsThroughNeck: false,
  nebulisesDrug: null,
  tidalVolumeMl: null,
}
const NECK: AirwayFacts = {
  ...ADULT,
  isBypassed: true,
  hasNeckOpening: true,
  secretions: 'thin',
  returnsThroughNeck: true,
}
const ROOM = { temperatureC: 22, relativeHumidityFraction: 0.5, barometricKpa: 101.325 }
const VESSEL = { partId: 'bottle', waterMl: 350, labelMgPerL: null }
const COLD_HOSE: Stage = {
  kind: 'hose',
  partId: 'hose',
  lengthM: 1.5,
  boreMm: 22,
  isHeated: false,
  hasWaterTrap: true,
}

function ask(stages: readonly Stage[], more: Partial<HumidityQuestion> = {}): HumidityAnswer {
  return humidityOfPath({
    path: { stages },
    family: 't-piece',
    flowLpm: 10,
    room: ROOM,
    heaterTemperatureC: 37,
    airway: NECK,
    ...more,
  })
}

function codes(answer: HumidityAnswer, weight: string): readonly string[] {
  return answer.rules.filter((rule) => rule.weight === weight).map(({ code }) => code)
}

const vessel = fc.constantFrom<Stage>(
  { kind: 'bubble', ...VESSEL },
  { kind: 'pass-over', ...VESSEL },
  { kind: 'heated-chamber', ...VESSEL },
  { kind: 'nebuliser', isHeated: false, ...VESSEL },
  { kind: 'nebuliser', isHeated: true, ...VESSEL },
  { kind: 'exchanger', partId: 'exchanger', labelMgPerL: null },
)
const jet = fc
  .double({ min: 0, max: 10, noNaN: true })
  .map((airPerGas): Stage => ({ kind: 'entrainment', airPerGas, hasCollar: false }))
const hose = fc
  .record({
    lengthM: fc.double({ min: 0, max: 2.5, noNaN: true }),
    isHeated: fc.boolean(),
    hasWaterTrap: fc.boolean(),
  })
  .map((drawn): Stage => ({ kind: 'hose', partId: 'hose', boreMm: 22, ...drawn }))
const question = fc.record({
  path: fc
    .tuple(fc.option(jet), fc.option(vessel), fc.option(hose))
    .map((stages) => ({ stages: stages.filter((stage) => stage !== null) })),
  family: fc.constantFrom(...FAMILY_IDS),
  flowLpm: fc.double({ min: 0.1, max: 60, noNaN: true }),
  room: fc.record({
    temperatureC: fc.double({ min: 15, max: 38, noNaN: true }),
    relativeHumidityFraction: fc.double({ min: 0, max: 1, noNaN: true }),
    barometricKpa: fc.double({ min: 54, max: 106, noNaN: true }),
  }),
  heaterTemperatureC: fc.double({ min: 28, max: 41, noNaN: true }),
  airway: fc.constantFrom(ADULT, NECK),
  roomAirShare: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
})

describe('water at the airway', () => {
  it('is never negative, never beyond saturation at its temperature, and lies within its band', () => {
    fc.assert(
      fc.property(question, (drawn) => {
        const answer = humidityOfPath(drawn)
        const { vapourMgPerLBtps: vapour, temperatureC, aerosolMgPerLBtps } = answer
        const { barometricKpa } = drawn.room
        const most = saturatedMgPerLBtps({ temperatureC: temperatureC.middle, barometricKpa })
        expect(vapour.middle).toBeLessThanOrEqual(most + 1e-6)
        for (const band of [vapour, aerosolMgPerLBtps, answer.waterUseMlPerHour]) {
          expect(band.low).toBeGreaterThanOrEqual(0)
          expect(band.low).toBeLessThanOrEqual(band.middle + 1e-9)
          expect(band.middle).toBeLessThanOrEqual(band.high + 1e-9)
        }
        expect(answer.shortfall.mgPerL.middle).toBeGreaterThanOrEqual(0)
      }),
      seeded(150),
    )
  })

  it('falls with more room air that is drier than the stream', () => {
    const heated: Stage = { kind: 'heated-chamber', ...VESSEL }
    const middles = [0, 0.25, 0.5, 0.75, 1].map(
      (roomAirShare) => ask([heated], { roomAirShare }).vapourMgPerLBtps.middle,
    )
    expect(middles).toEqual(middles.toSorted((a, b) => b - a))
    expect(new Set(middles).size).toBe(5)
  })

  it('is 43.9 mg/L from a chamber at 37 °C with a heated hose, and enough', () => {
    const answer = ask([
      { kind: 'heated-chamber', ...VESSEL },
      { ...COLD_HOSE, isHeated: true },
    ])
    expect(answer.vapourMgPerLBtps.middle).toBeCloseTo(43.89, 1)
    expect(answer.shortfall.verdict).toBe('enough')
    expect(answer.condensate).toEqual([])
  })

  it('loses water in a cold hose, most at low flow, and says where it gathers', () => {
    const at = (flowLpm: number): HumidityAnswer =>
      ask([{ kind: 'heated-chamber', ...VESSEL }, COLD_HOSE], { flowLpm })
    const [slow, fast] = [at(5), at(40)]
    expect(slow.vapourMgPerLBtps.middle).toBeLessThan(fast.vapourMgPerLBtps.middle)
    expect(slow.condensate[0]?.place).toBe('water-trap')
    expect(slow.condensate[0]?.mlPerHour.middle).toBeGreaterThan(3)
  })

  it('keeps the droplets of a cold nebuliser apart from its vapour', () => {
    const answer = ask([
      { kind: 'entrainment', airPerGas: 3, hasCollar: false },
      { kind: 'nebuliser', isHeated: false, ...VESSEL },
    ])
    expect(answer.aerosolMgPerLBtps.middle).toBeGreaterThan(5)
    expect(answer.temperatureC.middle).toBeLessThan(22)
    expect(answer.shortfall.mgPerL.low).toBeGreaterThan(0)
  })

  it('needs more water higher up, where the metered litre grows', () => {
    const use = (barometricKpa: number): number =>
      ask([{ kind: 'heated-chamber', ...VESSEL }], { room: { ...ROOM, barometricKpa } })
        .waterUseMlPerHour.middle
    expect(use(87.9)).toBeGreaterThan(use(101.325) * 1.1)
  })

  it('gives the water use of the table: 632 mL a day for each 10 L/min at body conditions, 1.128 times that as metered', () => {
    const metered = ask([{ kind: 'heated-chamber', ...VESSEL }]).waterUseMlPerHour.middle * 24
    expect(Math.abs(metered - 632 * 1.1279)).toBeLessThan(2)
  })

  it('fills again after volume over use, soonest reckoned with the greatest use', () => {
    const answer = ask([{ kind: 'heated-chamber', ...VESSEL }])
    const hours = answer.refillAfterHours
    expect(hours?.middle).toBeCloseTo(350 / answer.waterUseMlPerHour.middle, 6)
    expect(hours?.low).toBeLessThan(hours?.middle ?? 0)
  })

  it('takes what is not known as a spread and says so', () => {
    const unknown = {
      temperatureC: null,
      relativeHumidityFraction: null,
      barometricKpa: 101.325,
    }
    const stages: readonly Stage[] = [{ kind: 'heated-chamber', ...VESSEL, waterMl: null }]
    const answer = ask(stages, { room: unknown, heaterTemperatureC: null })
    const told = answer.assumptions.map(({ code }) => code)
    expect(told).toContain('ROOM_TEMPERATURE_ASSUMED')
    expect(told).toContain('HEATER_SETTING_ASSUMED')
    expect(told).toContain('WATER_VOLUME_ASSUMED')
    expect(answer.vapourMgPerLBtps.low).toBeLessThan(ask(stages).vapourMgPerLBtps.low)
  })

  it('refuses a reading of the heater plate, an impossible room and an impossible flow', () => {
    const stages: readonly Stage[] = [{ kind: 'heated-chamber', ...VESSEL }]
    expect(() => ask(stages, { heaterTemperatureC: 61 })).toThrow('TEMPERATURE_OUT_OF_RANGE')
    expect(() => ask(stages, { room: { ...ROOM, temperatureC: 5 } })).toThrow(
      'TEMPERATURE_OUT_OF_RANGE',
    )
    expect(() => ask(stages, { room: { ...ROOM, relativeHumidityFraction: 50 } })).toThrow(
      'FRACTION_OUT_OF_RANGE',
    )
    expect(() => ask(stages, { flowLpm: Number.NaN })).toThrow('NOT_A_NUMBER')
    expect(() => ask(stages, { roomAirShare: 2 })).toThrow('FRACTION_OUT_OF_RANGE')
  })
})

describe('required content', () => {
  it.each([
    ['a bypassed airway with a humidifier', NECK, 't-piece', 10, 33],
    ['high flow into the nose', ADULT, 'nasal-high-flow', 40, 12],
    ['a catheter at any flow', ADULT, 'nasal-catheter', 0.5, 12],
    ['a cannula at 6 L/min', ADULT, 'nasal-cannula', 6, 12],
    ['a cannula at 4 L/min', ADULT, 'nasal-cannula', 4, null],
  ] as const)('of %s', (_, airway, family, flowLpm, least) => {
    const answer = ask([], { airway, family, flowLpm })
    expect(answer.requirement.leastMgPerL).toBe(least)
  })

  it.each([
    [
      'a jet nebuliser',
      [{ kind: 'nebuliser', isHeated: false, ...VESSEL }],
      'NEBULISER_NOT_MEASURED',
    ],
    ['a heated jet', [{ kind: 'nebuliser', isHeated: true, ...VESSEL }], 'NEBULISER_NOT_MEASURED'],
    ['unheated water', [{ kind: 'pass-over', ...VESSEL }], 'PASS_OVER_NOT_MEASURED'],
    ['a collar', [{ kind: 'entrainment', airPerGas: 3, hasCollar: true }], 'COLLAR_NOT_MEASURED'],
  ] as const)('is not judged for %s, whose water no measurement judges', (_, stages, code) => {
    const { shortfall } = ask(stages)
    expect(shortfall).toMatchObject({ verdict: 'not-measured', notMeasured: [code] })
    expect(ask(stages, { airway: ADULT, flowLpm: 2 }).shortfall.verdict).toBe('not-required')
  })

  it('is not judged for an exchanger with the cuff not up, and is for a label, a bottle and dry gas', () => {
    const exchanger = [{ kind: 'exchanger', partId: 'x', labelMgPerL: null }] as const
    const beside = { airway: { ...NECK, returnsThroughNeck: false } }
    expect(ask(exchanger, beside).shortfall.notMeasured).toEqual(['EXCHANGER_BESIDE_NOT_MEASURED'])
    const labelled = { kind: 'nebuliser', isHeated: false, ...VESSEL, labelMgPerL: 30 } as const
    expect(ask([labelled]).shortfall).toMatchObject({ verdict: 'short', notMeasured: [] })
    expect(ask([{ kind: 'bubble', ...VESSEL }]).shortfall.verdict).toBe('short')
    expect(ask([]).shortfall.verdict).toBe('short')
  })

  it('of an exchanger alone on a bypassed airway is 30 mg/L, which most exchangers miss', () => {
    const answer = ask([{ kind: 'exchanger', partId: 'x', labelMgPerL: null }])
    expect(answer.requirement.leastMgPerL).toBe(30)
    expect(answer.shortfall.verdict).toBe('perhaps')
    expect(answer.vapourMgPerLBtps.middle).toBeCloseTo(26, 0)
  })

  it('is nothing where most of the stream is room air', () => {
    const answer = ask([{ kind: 'entrainment', airPerGas: 10, hasCollar: false }], {
      airway: ADULT,
      family: 'entrainment-mask',
      flowLpm: 6,
    })
    expect(answer.requirement.code).toBe('MOSTLY_ROOM_AIR')
    expect(answer.vapourMgPerLBtps.middle).toBeGreaterThan(7)
  })
})

describe('humidity rules', () => {
  const exchanger: Stage = { kind: 'exchanger', partId: 'x', labelMgPerL: null }
  const bottle: Stage = { kind: 'bubble', ...VESSEL }
  const heated: Stage = { kind: 'heated-chamber', ...VESSEL }

  it('show both guidelines that disagree above 4 L/min by nose', () => {
    const cannula = (flowLpm: number): HumidityAnswer =>
      ask([], { airway: ADULT, family: 'nasal-cannula', flowLpm })
    expect(codes(cannula(4), 'note')).toEqual([])
    const sources = cannula(6).rules.map(({ code, source }) => [code, source])
    expect(sources).toEqual([
      ['CONSIDER_ABOVE_4_LPM', 'Piraino2022'],
      ['BUBBLE_ADVISED_AGAINST', 'ODriscoll2017'],
    ])
  })

  it.each([
    ['a new opening', { isNewOpening: true }, 'ACTIVE_FOR_NEW_OPENING'],
    ['thick secretions', { secretions: 'thick' }, 'ACTIVE_FOR_SECRETIONS'],
    ['bloody secretions', { secretions: 'bloody' }, 'ACTIVE_FOR_SECRETIONS'],
    ['crusting secretions', { secretions: 'crusting' }, 'ACTIVE_FOR_SECRETIONS'],
    ['an infant', { ageYears: 0.5 }, 'ACTIVE_FOR_INFANT'],
    ['small breaths', { tidalVolumeMl: 60 }, 'EXCHANGER_NOT_WITH_SMALL_BREATHS'],
    ['a nebulised drug', { nebulisesDrug: true }, 'EXCHANGER_OFF_FOR_NEBULISED_DRUG'],
  ] as const)('forbid an exchanger alone for %s', (_, facts, code) => {
    expect(codes(ask([exchanger], { airway: { ...NECK, ...facts } }), 'breach')).toContain(code)
  })

  it('find an exchanger enough where nothing calls for more', () => {
    const answer = ask([exchanger], { flowLpm: 3 })
    expect(codes(answer, 'breach')).toEqual([])
    expect(codes(answer, 'note')).toContain('EXCHANGER_WILL_DO')
  })

  it('ask for what is not known instead of taking it for good', () => {
    const unknown = { ...NECK, secretions: null, isNewOpening: null }
    const answer = ask([exchanger], { airway: unknown, flowLpm: 3 })
    expect(codes(answer, 'ask')).toEqual([
      'ASK_AGE_OF_OPENING',
      'ASK_SECRETIONS',
      'ASK_NEBULISED_DRUG',
    ])
    expect(codes(answer, 'note')).not.toContain('EXCHANGER_WILL_DO')
  })

  it('want active humidification for high flow, wherever it goes', () => {
    const high = { family: 'nasal-high-flow', flowLpm: 40, airway: ADULT } as const
    expect(codes(ask([], high), 'breach')).toContain('ACTIVE_FOR_HIGH_FLOW')
    expect(codes(ask([heated], high), 'breach')).toEqual([])
    expect(codes(ask([bottle], { flowLpm: 20 }), 'breach')).toContain('ACTIVE_FOR_HIGH_FLOW')
  })

  it('are cited: a source for each that is not common practice', () => {
    const uncited = HUMIDITY_RULES.filter(
      ({ known, source }) => known !== 'common-practice' && source === undefined,
    )
    expect(uncited).toEqual([])
  })
})
