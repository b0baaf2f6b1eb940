// Breathing presets: measured groups, plausible ventilation and carbon dioxide for every state and age, and the draws.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { mmhgFromKpa } from '../units/pressure.ts'
import { limitsOf, medianOf, quantile } from '../units/spread.ts'
import { BREATHING_STATES, type BreathingState } from './breathing-state-rows.ts'
import {
  breathingPreset,
  breathingStateAges,
  drawBreathing,
  requirePlausibleVentilation,
  tidalVolumeAtRateMl,
} from './breathing-states.ts'
import { heightSpreadCm, weightSpreadKg, type Body } from './body.ts'
import { anatomicalDeadSpace } from './dead-space.ts'
import { gasExchangePreset } from './gas-exchange-presets.ts'
import { metabolicWeightKg, oxygenUptakeSpread } from './metabolism.ts'

/** Alveolar pressure of carbon dioxide, mmHg = 0.863 · output mL/min STPD / alveolar ventilation L/min BTPS. */
const CO2_CONSTANT = 0.863
const ADULT: Body = { ageYears: 45, sex: 'male', weightKg: 75, heightCm: 175 }
const ALL = { rate: 0.5, tidalVolume: 0.5, duty: 0.5, timeConstant: 0.5, nasalShare: 0.5 }

function bodyAt(ageYears: number, state: BreathingState): Body {
  if (state === 'preterm') return { ageYears, sex: 'male', weightKg: 1.2, heightCm: 38 }
  const sex = 'female'
  const heightCm = medianOf(heightSpreadCm({ ageYears, sex }))
  const weightKg =
    state === 'obesity-hypoventilation'
      ? 115
      : medianOf(weightSpreadKg({ ageYears, sex, heightCm }))
  return { ageYears, sex, weightKg, heightCm }
}

/** Carbon dioxide that anatomical dead space alone would leave; illness adds dead space and so raises it. */
function anatomicalPco2Mmhg(state: BreathingState, body: Body): number {
  const preset = breathingPreset({ state, body })
  const weightKg = Math.min(body.weightKg, metabolicWeightKg(body))
  const { totalMl } = anatomicalDeadSpace({ ageYears: body.ageYears, weightKg })
  const alveolarLpm =
    ((medianOf(preset.tidalVolumeMl) - totalMl) * medianOf(preset.ratePerMin)) / 1000
  const outputMlPerMin = 0.8 * medianOf(oxygenUptakeSpread(body)) * medianOf(preset.metabolicFactor)
  return (CO2_CONSTANT * outputMlPerMin) / alveolarLpm
}

function everyStateAndAge(): readonly { readonly state: BreathingState; readonly body: Body }[] {
  return BREATHING_STATES.flatMap((state) => {
    const ages = breathingStateAges(state)
    return [0.02, 0.25, 1, 3, 6, 10, 14, 19, 45, 80]
      .filter((ageYears) => ageYears >= ages.min && ageYears <= ages.max)
      .map((ageYears) => ({ state, body: bodyAt(ageYears, state) }))
  })
}

function adultIn(state: BreathingState) {
  return breathingPreset({ state, body: ADULT })
}

describe('breathing presets', () => {
  it('leave room for the carbon dioxide of every state at every age', () => {
    const all = everyStateAndAge()
    expect(all.length).toBeGreaterThan(100)
    for (const { state, body } of all) {
      const pco2Mmhg = anatomicalPco2Mmhg(state, body)
      const preset = breathingPreset({ state, body })
      const expected = gasExchangePreset({
        condition: preset.lungCondition,
        ageYears: body.ageYears,
      })
      const high = mmhgFromKpa(quantile(expected.arterialPco2Kpa.spread, 0.98))
      expect(pco2Mmhg, `${state} ${body.ageYears} y`).toBeGreaterThan(12)
      // Never so little ventilation that the usual arterial value could not be held, within 25 %.
      expect(pco2Mmhg, `${state} ${body.ageYears} y`).toBeLessThan(1.25 * high)
    }
  })

  it('give quiet people of every age an arterial carbon dioxide of 30 to 47 mmHg', () => {
    for (const ageYears of [0.02, 0.25, 1, 3, 6, 10, 14, 19, 45, 80]) {
      const pco2Mmhg = anatomicalPco2Mmhg('rest', bodyAt(ageYears, 'rest'))
      expect(pco2Mmhg, `${ageYears} y`).toBeGreaterThan(30)
      expect(pco2Mmhg, `${ageYears} y`).toBeLessThan(47)
    }
  })

  it('give the resting adult of the plethysmograph studies within one SD [Tobin1983]', () => {
    // 383 ± 91 mL, 16.6 ± 2.8/min, Ti/Ttot 0.42 ± 0.03; 0.37 ± 0.04 by flow [Sanchis1990].
    const preset = breathingPreset({
      state: 'rest',
      body: { ageYears: 25, sex: 'male', weightKg: 68, heightCm: 172 },
    })
    expect(Math.abs(medianOf(preset.tidalVolumeMl) - 383)).toBeLessThan(91)
    expect(Math.abs(medianOf(preset.ratePerMin) - 16.6)).toBeLessThan(2.8)
    expect(medianOf(preset.dutyFraction)).toBeGreaterThan(0.37)
    expect(medianOf(preset.dutyFraction)).toBeLessThan(0.42)
    expect(preset.variability.tidalVolumeCv).toBe(0.33)
  })

  it('give the published adults of obesity hypoventilation, opioids and distress', () => {
    const obese = breathingPreset({
      state: 'obesity-hypoventilation',
      body: bodyAt(50, 'obesity-hypoventilation'),
    })
    // 633 ± 149 mL, 17.5 ± 5.2/min.
    expect(Math.abs(medianOf(obese.tidalVolumeMl) - 633)).toBeLessThan(15)
    expect(Math.abs(medianOf(obese.ratePerMin) - 17.5)).toBeLessThan(1)
    const opioid = breathingPreset({ state: 'opioid-slow', body: ADULT })
    expect(quantile(opioid.ratePerMin, 0.06)).toBeGreaterThan(6)
    expect(quantile(opioid.ratePerMin, 0.94)).toBeLessThan(10)
    // Rule of thumb 25–40/min, 350–1000 mL, minute ventilation 15–30 L/min.
    const distress = breathingPreset({ state: 'severe-distress', body: ADULT })
    const ventilationLpm = (medianOf(distress.ratePerMin) * medianOf(distress.tidalVolumeMl)) / 1000
    expect(ventilationLpm).toBeGreaterThan(15)
    expect(ventilationLpm).toBeLessThan(30)
  })

  it('give newborn and preterm babies the volumes and rates measured', () => {
    // Preterm week 1: 5.4–6.7 mL/kg, Ti/Ttot 0.40–0.44 [EarlyHumDev1995].
    const preterm = breathingPreset({ state: 'preterm', body: bodyAt(0.02, 'preterm') })
    const perKg = medianOf(preterm.tidalVolumeMl) / 1.2
    expect(perKg).toBeGreaterThan(5.4)
    expect(perKg).toBeLessThan(6.7)
    expect(medianOf(preterm.dutyFraction)).toBeGreaterThan(0.4)
    expect(medianOf(preterm.dutyFraction)).toBeLessThan(0.44)
    const newborn = breathingPreset({ state: 'newborn', body: bodyAt(0.02, 'newborn') })
    expect(medianOf(newborn.ratePerMin)).toBeGreaterThan(44)
    expect(medianOf(newborn.ratePerMin)).toBeLessThan(59.3)
    expect(medianOf(newborn.expiratoryTimeConstantS)).toBeLessThan(0.25)
    expect(limitsOf(newborn.nasalShareFraction).min).toBeGreaterThan(0.8)
  })

  it('keep obstruction slow to empty and distress through the mouth', () => {
    expect(medianOf(adultIn('copd-exacerbation').expiratoryTimeConstantS)).toBeGreaterThan(
      2 * medianOf(adultIn('rest').expiratoryTimeConstantS),
    )
    expect(medianOf(adultIn('copd-stable').dutyFraction)).toBeLessThan(
      medianOf(adultIn('rest').dutyFraction),
    )
    expect(medianOf(adultIn('severe-distress').nasalShareFraction)).toBeLessThan(0.5)
    expect(medianOf(adultIn('rest').nasalShareFraction)).toBeGreaterThan(0.7)
    expect(adultIn('rest').sources.length).toBeGreaterThan(2)
  })
})

describe('drawn breathing', () => {
  const u = fc.double({ min: 0.001, max: 0.999, noNaN: true })
  const draws = fc.record({ rate: u, tidalVolume: u, duty: u, timeConstant: u, nasalShare: u })

  it('is always a breath that can be, for any state, body and chance', () => {
    fc.assert(
      fc.property(fc.constantFrom(...everyStateAndAge()), draws, (person, chance) => {
        const preset = breathingPreset(person)
        const drawn = drawBreathing(preset, { u: chance })
        expect(drawn.dutyFraction).toBeGreaterThanOrEqual(0.15)
        expect(drawn.dutyFraction).toBeLessThanOrEqual(0.6)
        expect(drawn.nasalShareFraction).toBeGreaterThanOrEqual(0)
        expect(drawn.nasalShareFraction).toBeLessThanOrEqual(1)
        expect(drawn.expiratoryTimeConstantS).toBeGreaterThan(0.03)
        expect(() => requirePlausibleVentilation({ ...drawn, body: person.body })).not.toThrow()
      }),
      seeded(3000),
    )
  })

  it('takes a measured rate as it is and gives faster breathers smaller breaths', () => {
    const preset = breathingPreset({ state: 'rest', body: ADULT })
    const slow = drawBreathing(preset, { u: ALL, ratePerMin: 10 })
    const fast = drawBreathing(preset, { u: ALL, ratePerMin: 40 })
    expect(slow.ratePerMin).toBe(10)
    expect(slow.tidalVolumeMl / fast.tidalVolumeMl).toBeCloseTo(2, 10)
    expect(fast.tidalVolumeMl * 40).toBeGreaterThan(slow.tidalVolumeMl * 10)
    expect(() => tidalVolumeAtRateMl({ preset, tidalVolumeMl: 400, ratePerMin: 0 })).toThrow(
      'RATE_OUT_OF_RANGE',
    )
  })

  it('refuses a state at the wrong age, an unknown one, and impossible ventilation', () => {
    expect(() => breathingPreset({ state: 'bronchiolitis', body: ADULT })).toThrow(
      'AGE_OUT_OF_RANGE',
    )
    expect(() => breathingPreset({ state: 'copd-stable', body: bodyAt(10, 'rest') })).toThrow(
      'AGE_OUT_OF_RANGE',
    )
    // Unchecked text from outside, as a reader might pass it.
    const unknown = 'asleep' as BreathingState
    expect(() => breathingPreset({ state: unknown, body: ADULT })).toThrow('UNKNOWN_CHOICE')
    expect(() =>
      requirePlausibleVentilation({ ratePerMin: 20, tidalVolumeMl: 6, body: ADULT }),
    ).toThrow('BREATH_OUT_OF_RANGE')
  })
})
