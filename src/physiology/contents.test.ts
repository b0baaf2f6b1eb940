// Blood contents against worked values and measured samples.
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { kpaFromMmhg } from '../units/pressure.ts'
import {
  bloodCo2ContentMlPerDl,
  o2ContentMlPerDl,
  plasmaCo2ContentMlPerDl,
  THEORETICAL_PAIR,
} from './contents.ts'
import { standardSaturation } from './dissociation.ts'

const oxygen = referenceRows('oxygen-content/data.csv', [
  'hb_g_dl',
  'po2_mmhg',
  'content_134_ml_dl',
  'content_139_ml_dl',
])
const samples = referenceRows('douglas-1988/data.csv', [
  'subject',
  'type',
  'ph',
  'hb_g_dl',
  'so2_percent',
  'blood_cco2_ml_dl',
  'pco2_mmhg',
  'plasma_cco2_ml_dl',
])

function oxygenOf(row: (typeof oxygen)[number]) {
  const po2Kpa = kpaFromMmhg(numberIn(row, 'po2_mmhg'))
  return {
    haemoglobinGPerDl: numberIn(row, 'hb_g_dl'),
    po2Kpa,
    saturation: standardSaturation(po2Kpa),
  }
}

function sampleOf(row: (typeof samples)[number]) {
  return {
    pco2Kpa: kpaFromMmhg(numberIn(row, 'pco2_mmhg')),
    ph: numberIn(row, 'ph'),
    haemoglobinGPerDl: numberIn(row, 'hb_g_dl'),
    saturation: numberIn(row, 'so2_percent') / 100,
  }
}

describe('oxygen content', () => {
  it('gives the worked contents of both pairs to their last digit', () => {
    expect(oxygen).toHaveLength(7)
    expectWithin(
      oxygen.map((row) => ({
        label: JSON.stringify(row),
        ours: o2ContentMlPerDl(oxygenOf(row)),
        theirs: numberIn(row, 'content_134_ml_dl'),
      })),
      0.00501,
    )
    expectWithin(
      oxygen.map((row) => ({
        label: JSON.stringify(row),
        ours: o2ContentMlPerDl({ ...oxygenOf(row), pair: THEORETICAL_PAIR }),
        theirs: numberIn(row, 'content_139_ml_dl'),
      })),
      0.00501,
    )
  })

  it('gives the published worked example', () => {
    // S 1.0, Hb 15, 13.3 kPa: 20.1 + 0.3 = 20.4; venous S 0.75, 6 kPa: 15.2 mL/dL.
    expect(o2ContentMlPerDl({ haemoglobinGPerDl: 15, saturation: 1, po2Kpa: 13.3 })).toBeCloseTo(
      20.4,
      1,
    )
    expect(o2ContentMlPerDl({ haemoglobinGPerDl: 15, saturation: 0.75, po2Kpa: 6 })).toBeCloseTo(
      15.2,
      1,
    )
  })

  it('carries less with dyshaemoglobin and refuses impossible blood', () => {
    const blood = { haemoglobinGPerDl: 15, saturation: 0.98, po2Kpa: 13 }
    const bound = 1.34 * 15 * 0.98
    const poisoned = o2ContentMlPerDl({
      ...blood,
      carboxyhaemoglobinFraction: 0.25,
      methaemoglobinFraction: 0.05,
    })
    expect(o2ContentMlPerDl(blood) - poisoned).toBeCloseTo(0.3 * bound, 10)
    expect(() => o2ContentMlPerDl({ ...blood, haemoglobinGPerDl: 150 })).toThrow(
      'HAEMOGLOBIN_OUT_OF_RANGE',
    )
    expect(() => o2ContentMlPerDl({ ...blood, saturation: 98 })).toThrow('SATURATION_OUT_OF_RANGE')
    expect(() =>
      o2ContentMlPerDl({ ...blood, carboxyhaemoglobinFraction: 0.6, methaemoglobinFraction: 0.6 }),
    ).toThrow('FRACTION_OUT_OF_RANGE')
    expect(() => o2ContentMlPerDl({ ...blood, po2Kpa: Number.NaN })).toThrow('NOT_A_NUMBER')
  })
})

describe('carbon dioxide content', () => {
  it('gives the plasma column of the measured samples within 0.01 mL/dL [Douglas1988]', () => {
    expect(samples).toHaveLength(38)
    expectWithin(
      samples.map((row) => ({
        label: JSON.stringify(row),
        ours: plasmaCo2ContentMlPerDl(sampleOf(row)),
        theirs: numberIn(row, 'plasma_cco2_ml_dl'),
      })),
      0.01,
    )
  })

  it('gives measured blood content with mean bias under 0.1 and SD under 1.2 mL/dL [Douglas1988]', () => {
    const misses = samples.map(
      (row) => bloodCo2ContentMlPerDl(sampleOf(row)) - numberIn(row, 'blood_cco2_ml_dl'),
    )
    const bias = misses.reduce((sum, miss) => sum + miss, 0) / misses.length
    const sd = Math.sqrt(
      misses.reduce((sum, miss) => sum + (miss - bias) ** 2, 0) / (misses.length - 1),
    )
    expect(Math.abs(bias)).toBeLessThan(0.1)
    expect(sd).toBeLessThan(1.2)
  })

  it('gives the worked blood contents', () => {
    // (40, 7.40, 15, .975) 46.71; (46, 7.37, 15, .75) 51.06; (60, 7.32, 15, .90) 59.97 mL/dL.
    for (const [pco2Mmhg, ph, saturation, content] of [
      [40, 7.4, 0.975, 46.71],
      [46, 7.37, 0.75, 51.06],
      [60, 7.32, 0.9, 59.97],
    ] as const) {
      expect(
        bloodCo2ContentMlPerDl({
          pco2Kpa: kpaFromMmhg(pco2Mmhg),
          ph,
          haemoglobinGPerDl: 15,
          saturation,
        }),
      ).toBeCloseTo(content, 2)
    }
  })

  it('refuses what it does not cover', () => {
    const blood = { pco2Kpa: 5, ph: 7.4, haemoglobinGPerDl: 15, saturation: 0.9 }
    expect(() => bloodCo2ContentMlPerDl({ ...blood, pco2Kpa: 40 })).toThrow(
      'PARTIAL_PRESSURE_OUT_OF_RANGE',
    )
    expect(() => bloodCo2ContentMlPerDl({ ...blood, ph: 9 })).toThrow('PH_OUT_OF_RANGE')
    expect(() => bloodCo2ContentMlPerDl({ ...blood, temperatureC: 98 })).toThrow(
      'TEMPERATURE_OUT_OF_RANGE',
    )
  })
})
