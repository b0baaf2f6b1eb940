// Oxygen uptake and cardiac output against published values by size.
import { describe, expect, it } from 'vitest'
import { medianOf, quantile } from '../units/spread.ts'
import { bodySurfaceM2 } from './body.ts'
import { growthShape, type Sex } from './growth.ts'
import {
  cardiacOutputSpread,
  co2OutputMlPerMin,
  metabolicWeightKg,
  oxygenUptakeSpread,
  UPTAKE_ROWS,
  uptakeMlPerKgPerMin,
} from './metabolism.ts'

function childOf(ageYears: number, sex: Sex) {
  const weightKg = growthShape('weight', { ageYears, sex }).median
  const heightCm = growthShape('height', { ageYears, sex }).median
  return { ageYears, sex, weightKg, heightCm }
}

const MAN = { ageYears: 40, sex: 'male', weightKg: 72, heightCm: 176 } as const

describe('oxygen uptake', () => {
  it('gives the measured infants [Verma2019] and the resting adult', () => {
    expect(uptakeMlPerKgPerMin(1 / 12)).toBe(9.3)
    expect(uptakeMlPerKgPerMin(2 / 12)).toBe(8.1)
    // About 250 mL/min, R 0.8: 200 mL/min.
    const man = medianOf(oxygenUptakeSpread(MAN))
    expect(Math.abs(man - 250)).toBeLessThan(15)
    expect(co2OutputMlPerMin({ o2UptakeMlPerMin: 250 })).toBe(200)
    expect(UPTAKE_ROWS).toHaveLength(9)
  })

  it('lies within one SD of the catheter-laboratory measurements below 3 years [Lundell1996]', () => {
    // 3–12 months 171 ± 37 mL/min/m².
    const infant = childOf(0.6, 'male')
    const infantPerM2 = medianOf(oxygenUptakeSpread(infant)) / bodySurfaceM2(infant)
    expect(Math.abs(infantPerM2 - 171)).toBeLessThan(37)
    // Below 3 years 3.42·H − 7.83·W + 0.38·HR − 54.1, SD 38.7; median heart rate 113 at 2 years [Fleming2011].
    const toddler = childOf(2, 'female')
    const published = 3.42 * toddler.heightCm - 7.83 * toddler.weightKg + 0.38 * 113 - 54.1
    const toddlerPerM2 = medianOf(oxygenUptakeSpread(toddler)) / bodySurfaceM2(toddler)
    expect(Math.abs(toddlerPerM2 - published)).toBeLessThan(38.7)
  })

  it('is what children of 3 to 14 years use at a heart rate children have [Lundell1996]', () => {
    // Male 0.79·HR − 7.4·BSA + 108.1, female 0.77·HR − 5.2·BSA + 106.8, solved for the heart rate.
    for (const ageYears of [3, 5, 8, 10, 14]) {
      for (const sex of ['male', 'female'] as const) {
        const child = childOf(ageYears, sex)
        const surface = bodySurfaceM2(child)
        const perM2 = medianOf(oxygenUptakeSpread(child)) / surface
        const heartRate =
          sex === 'male'
            ? (perM2 + 7.4 * surface - 108.1) / 0.79
            : (perM2 + 5.2 * surface - 106.8) / 0.77
        expect(heartRate, `${ageYears} y ${sex}`).toBeGreaterThan(55)
        expect(heartRate, `${ageYears} y ${sex}`).toBeLessThan(125)
      }
    }
  })

  it('spreads as the infants measured did, and rises with fever', () => {
    const spread = oxygenUptakeSpread(childOf(1 / 12, 'male'))
    // SD 2.0 on 9.3.
    expect(quantile(spread, 0.84) / medianOf(spread)).toBeCloseTo(1 + 2 / 9.3, 1)
    const fever = medianOf(oxygenUptakeSpread({ ...MAN, temperatureC: 39 }))
    expect(fever / medianOf(oxygenUptakeSpread(MAN))).toBeCloseTo(1.2, 10)
  })

  it('counts only part of excess weight, and all of a child', () => {
    // Predicted weight of 176 cm is 71.5 kg.
    expect(metabolicWeightKg({ ...MAN, weightKg: 60 })).toBe(60)
    expect(metabolicWeightKg({ ...MAN, weightKg: 171.476 })).toBeCloseTo(71.476 + 40, 6)
    expect(metabolicWeightKg(childOf(5, 'female'))).toBe(
      growthShape('weight', { ageYears: 5, sex: 'female' }).median,
    )
  })

  it('refuses impossible bodies', () => {
    expect(() => oxygenUptakeSpread({ ...MAN, temperatureC: 98 })).toThrow(
      'TEMPERATURE_OUT_OF_RANGE',
    )
    expect(() => oxygenUptakeSpread({ ...MAN, weightKg: 0 })).toThrow('WEIGHT_OUT_OF_RANGE')
    expect(() => co2OutputMlPerMin({ o2UptakeMlPerMin: -1 })).toThrow('VALUE_OUT_OF_RANGE')
  })
})

describe('cardiac output', () => {
  it('gives the published index by age [Katori1979] and in the young [Jegier1963]', () => {
    const surface = bodySurfaceM2(MAN)
    expect(medianOf(cardiacOutputSpread(MAN)) / surface).toBeCloseTo(4.874 - 0.023 * 40, 6)
    const child = childOf(6, 'male')
    expect(medianOf(cardiacOutputSpread(child)) / bodySurfaceM2(child)).toBeCloseTo(3.38, 6)
    // 30 % off counts as abnormal: about 2 SD.
    const spread = cardiacOutputSpread(MAN)
    expect(quantile(spread, 0.977) / medianOf(spread)).toBeGreaterThan(1.25)
    expect(quantile(spread, 0.977) / medianOf(spread)).toBeLessThan(1.4)
  })
})
