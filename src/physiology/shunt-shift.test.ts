// Arterial oxygen from shunt and shift against the worked tables; monotone laws; never NaN.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { kpaFromMmhg, mmhgFromKpa } from '../units/pressure.ts'
import { bloodCurve, bloodPo2Kpa, bloodSaturation } from './dissociation.ts'
import {
  alveolarForSaturationKpa,
  arterialFromAlveolar,
  arterialFromInspired,
  emptyArterialOxygen,
  gasExchange,
  po2FromContentKpa,
} from './shunt-shift.ts'

const rows = referenceRows('shunt-shift/data.csv', [
  'shunt_fraction',
  'extra_shift_mmhg',
  'fio2',
  'pao2_mmhg',
  'sao2_percent',
])
const TABLE_PATIENT = { o2UptakeMlPerMin: 250, cardiacOutputLpm: 5, haemoglobinGPerDl: 14 }
const TABLE_GAS = {
  barometricKpa: kpaFromMmhg(760),
  arterialPco2Kpa: kpaFromMmhg(40),
  waterVapourKpa: kpaFromMmhg(47),
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyPatient = fc.record({
  shuntFraction: number(0, 0.8),
  extraShiftKpa: number(0, 12),
  o2UptakeMlPerMin: number(50, 500),
  cardiacOutputLpm: number(3, 15),
  haemoglobinGPerDl: number(4, 20),
  curve: fc
    .record({ ph: number(6.8, 7.8), temperatureC: number(30, 43), p50Kpa: number(2.2, 4.5) })
    .map(bloodCurve),
})

function saturationOf(patient: Parameters<typeof gasExchange>[0], alveolarO2Kpa: number): number {
  return arterialFromAlveolar(gasExchange(patient), alveolarO2Kpa, emptyArterialOxygen())
    .arterialSaturation
}

const SHUNT_ONLY = { ...TABLE_PATIENT, extraShiftKpa: 0 }

function gain(shuntFraction: number): number {
  const patient = { ...SHUNT_ONLY, shuntFraction }
  return saturationOf(patient, 60) - saturationOf(patient, 25)
}

function pressureGain(shuntFraction: number): number {
  const lung = gasExchange({ ...SHUNT_ONLY, shuntFraction })
  const at = (kpa: number) => arterialFromAlveolar(lung, kpa, emptyArterialOxygen()).arterialPo2Kpa
  return at(60) - at(25)
}

describe('shunt and shift', () => {
  it('gives the worked tables within 0.2 mmHg and 0.1 %-points', () => {
    expect(rows).toHaveLength(128)
    const worked = rows.map((row) => ({
      row,
      result: arterialFromInspired(
        gasExchange({
          ...TABLE_PATIENT,
          shuntFraction: numberIn(row, 'shunt_fraction'),
          extraShiftKpa: kpaFromMmhg(numberIn(row, 'extra_shift_mmhg')),
        }),
        { ...TABLE_GAS, inspiredO2Fraction: numberIn(row, 'fio2') },
      ),
    }))
    expectWithin(
      worked.map(({ row, result }) => ({
        label: JSON.stringify(row),
        ours: mmhgFromKpa(result.arterialPo2Kpa),
        theirs: numberIn(row, 'pao2_mmhg'),
      })),
      0.2,
    )
    expectWithin(
      worked.map(({ row, result }) => ({
        label: JSON.stringify(row),
        ours: 100 * result.arterialSaturation,
        theirs: numberIn(row, 'sao2_percent'),
      })),
      0.1,
    )
    expect(worked.every(({ result }) => result.uptakeMet)).toBe(true)
  })

  it('never lets saturation fall as alveolar oxygen rises, nor rise with shunt, shift or uptake', () => {
    fc.assert(
      fc.property(anyPatient, number(3, 95), number(0.01, 10), (patient, alveolarO2Kpa, more) => {
        const here = saturationOf(patient, alveolarO2Kpa)
        // Solver error of both runs together.
        const slack = 1e-7
        expect(saturationOf(patient, alveolarO2Kpa + more)).toBeGreaterThanOrEqual(here - slack)
        const worse = [
          { ...patient, shuntFraction: Math.min(0.8, patient.shuntFraction + more / 50) },
          { ...patient, extraShiftKpa: patient.extraShiftKpa + more },
          { ...patient, o2UptakeMlPerMin: patient.o2UptakeMlPerMin + 0.1 * more },
          { ...patient, cardiacOutputLpm: patient.cardiacOutputLpm / (1 + more / 100) },
          { ...patient, haemoglobinGPerDl: patient.haemoglobinGPerDl / (1 + more / 20) },
        ]
        for (const sicker of worse)
          expect(saturationOf(sicker, alveolarO2Kpa)).toBeLessThanOrEqual(here + slack)
      }),
      seeded(2000),
    )
  })

  it('answers finite numbers in range over the whole allowed space, and says when uptake cannot be met', () => {
    let unmet = 0
    fc.assert(
      fc.property(anyPatient, number(0, 107), (patient, alveolarO2Kpa) => {
        const result = arterialFromAlveolar(
          gasExchange(patient),
          alveolarO2Kpa,
          emptyArterialOxygen(),
        )
        if (!result.uptakeMet) unmet += 1
        expect(result.arterialSaturation).toBeGreaterThanOrEqual(0)
        expect(result.arterialSaturation).toBeLessThan(1)
        expect(result.arterialPo2Kpa).toBeGreaterThanOrEqual(0)
        expect(result.arterialPo2Kpa).toBeLessThanOrEqual(alveolarO2Kpa + 1e-4)
        expect(result.arterialSaturation).toBeLessThanOrEqual(result.endCapillarySaturation + 1e-7)
        // Saturation and pressure belong to the same point of this blood's curve.
        expect(bloodSaturation(patient.curve, Math.min(107, result.arterialPo2Kpa))).toBeCloseTo(
          result.arterialSaturation,
          6,
        )
      }),
      seeded(5000),
    )
    expect(unmet).toBeGreaterThan(0)
  })

  it('flattens the response to oxygen as shunt grows', () => {
    expect(gain(0.4)).toBeLessThan(0.05)
    expect(pressureGain(0.4)).toBeLessThan(pressureGain(0.2))
    expect(pressureGain(0.2)).toBeLessThan(pressureGain(0))
  })

  it('without shunt or shift is the curve itself', () => {
    const lung = gasExchange({ ...TABLE_PATIENT, shuntFraction: 0, extraShiftKpa: 0 })
    for (const kpa of [5, 8, 13, 30, 80]) {
      const result = arterialFromAlveolar(lung, kpa, emptyArterialOxygen())
      expect(result.arterialPo2Kpa).toBeCloseTo(kpa, 6)
    }
  })

  it('finds the alveolar oxygen that a saturation needs, and says when none is enough', () => {
    fc.assert(
      fc.property(anyPatient, number(0.7, 0.99), (patient, saturation) => {
        const lung = gasExchange(patient)
        const needed = alveolarForSaturationKpa(lung, saturation)
        const reached = arterialFromAlveolar(lung, needed ?? 107, emptyArterialOxygen())
        const short = saturation - reached.arterialSaturation
        // Out of reach: even the most oxygen falls short. Else: exactly reached.
        expect(needed === undefined ? short : -Math.abs(short)).toBeGreaterThan(
          needed === undefined ? 0 : -1e-6,
        )
      }),
      seeded(1000),
    )
    const blocked = gasExchange({ ...TABLE_PATIENT, shuntFraction: 0.6, extraShiftKpa: 0 })
    expect(alveolarForSaturationKpa(blocked, 0.95)).toBeUndefined()
  })

  it('inverts content exactly, with haemoglobin and shifts of any kind', () => {
    fc.assert(
      fc.property(anyPatient, number(0.01, 0.995), (patient, saturation) => {
        const po2Kpa = bloodPo2Kpa(patient.curve, saturation)
        const content = 1.34 * patient.haemoglobinGPerDl * saturation + 0.0031 * mmhgFromKpa(po2Kpa)
        const back = po2FromContentKpa(gasExchange(patient), content)
        expect(Math.abs(back - po2Kpa)).toBeLessThan(1e-5 * (1 + po2Kpa))
      }),
      seeded(2000),
    )
  })

  it('refuses impossible patients', () => {
    const patient = { ...TABLE_PATIENT, shuntFraction: 0.1, extraShiftKpa: 1 }
    expect(() => gasExchange({ ...patient, shuntFraction: 10 })).toThrow('SHUNT_OUT_OF_RANGE')
    expect(() => gasExchange({ ...patient, extraShiftKpa: -1 })).toThrow(
      'PARTIAL_PRESSURE_OUT_OF_RANGE',
    )
    expect(() => gasExchange({ ...patient, cardiacOutputLpm: 0 })).toThrow('NOT_A_NUMBER')
    expect(() => gasExchange({ ...patient, o2UptakeMlPerMin: 0 })).toThrow('CONTENT_OUT_OF_RANGE')
    expect(() => gasExchange({ ...patient, haemoglobinGPerDl: 140 })).toThrow(
      'HAEMOGLOBIN_OUT_OF_RANGE',
    )
    const lung = gasExchange(patient)
    expect(() => arterialFromAlveolar(lung, Number.NaN, emptyArterialOxygen())).toThrow(
      'NOT_A_NUMBER',
    )
    expect(() => arterialFromAlveolar(lung, 120, emptyArterialOxygen())).toThrow(
      'PARTIAL_PRESSURE_OUT_OF_RANGE',
    )
  })
})
