// The alveolar gas equation against published values; its inverse as a law.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectWithin, numberIn, referenceRows } from '../../test/support/reference.ts'
import { seeded } from '../../test/support/seed.ts'
import { kpaFromMmhg, mmhgFromKpa } from '../units/pressure.ts'
import {
  alveolarPo2Kpa,
  alveolarPo2SimpleKpa,
  effectiveInspiredO2Fraction,
  inspiredPo2Kpa,
} from './alveolar-gas.ts'

const rows = referenceRows('alveolar-gas/data.csv', [
  'barometric_mmhg',
  'paco2_mmhg',
  'fio2',
  'pio2_mmhg',
  'simple_mmhg',
  'full_mmhg',
])
/** Water vapour that the published tables use. */
const TABLE_VAPOUR_KPA = kpaFromMmhg(47)

function gasOf(row: (typeof rows)[number]) {
  return {
    inspiredO2Fraction: numberIn(row, 'fio2'),
    barometricKpa: kpaFromMmhg(numberIn(row, 'barometric_mmhg')),
    arterialPco2Kpa: kpaFromMmhg(numberIn(row, 'paco2_mmhg')),
    waterVapourKpa: TABLE_VAPOUR_KPA,
  }
}

describe('alveolar gas equation', () => {
  it('gives the full, short and inspired columns within 0.05 mmHg', () => {
    expect(rows).toHaveLength(16)
    const against = (column: string, ours: (gas: ReturnType<typeof gasOf>) => number) =>
      rows
        .filter((row) => row[column] !== '')
        .map((row) => ({
          label: `${JSON.stringify(row)} ${column}`,
          ours: mmhgFromKpa(ours(gasOf(row))),
          theirs: numberIn(row, column),
        }))
    expectWithin(against('full_mmhg', alveolarPo2Kpa), 0.05)
    expectWithin(against('simple_mmhg', alveolarPo2SimpleKpa), 0.05)
    expectWithin(against('pio2_mmhg', inspiredPo2Kpa), 0.0501)
  })

  it('gives the published sample: PaCO2 36 mmHg on air, 107 mmHg', () => {
    const po2Kpa = alveolarPo2Kpa({
      inspiredO2Fraction: 0.21,
      barometricKpa: kpaFromMmhg(760),
      arterialPco2Kpa: kpaFromMmhg(36),
      waterVapourKpa: TABLE_VAPOUR_KPA,
    })
    expect(Math.round(mmhgFromKpa(po2Kpa))).toBe(107)
    expect(po2Kpa).toBeCloseTo(14.2, 1)
  })

  it('is undone by the effective fraction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.15, max: 1, noNaN: true }),
        fc.double({ min: 60, max: 107, noNaN: true }),
        fc.double({ min: 1, max: 9, noNaN: true }),
        fc.double({ min: 0.7, max: 1.2, noNaN: true }),
        (inspiredO2Fraction, barometricKpa, arterialPco2Kpa, respiratoryQuotient) => {
          const gas = { barometricKpa, arterialPco2Kpa, respiratoryQuotient }
          const dry = inspiredO2Fraction * (barometricKpa - 6.282)
          fc.pre(dry > arterialPco2Kpa / 0.7)
          const po2 = alveolarPo2Kpa({ ...gas, inspiredO2Fraction })
          expect(effectiveInspiredO2Fraction({ ...gas, alveolarPo2Kpa: po2 })).toBeCloseTo(
            inspiredO2Fraction,
            12,
          )
        },
      ),
      seeded(500),
    )
  })

  it('equals the short form only without carbon dioxide or with R 1 at any fraction', () => {
    const gas = {
      barometricKpa: 101.325,
      arterialPco2Kpa: 5.3,
      inspiredO2Fraction: 0.4,
      respiratoryQuotient: 1,
    }
    expect(alveolarPo2Kpa(gas)).toBeCloseTo(alveolarPo2SimpleKpa(gas), 12)
  })

  it('refuses impossible states', () => {
    const gas = { barometricKpa: 101.325, arterialPco2Kpa: 5.3, inspiredO2Fraction: 0.4 }
    expect(() => alveolarPo2Kpa({ ...gas, inspiredO2Fraction: 40 })).toThrow(
      'FRACTION_OUT_OF_RANGE',
    )
    expect(() => alveolarPo2Kpa({ ...gas, arterialPco2Kpa: 40 })).toThrow(
      'PARTIAL_PRESSURE_OUT_OF_RANGE',
    )
    expect(() => alveolarPo2Kpa({ ...gas, inspiredO2Fraction: 0.05 })).toThrow(
      'PARTIAL_PRESSURE_OUT_OF_RANGE alveolarPo2Kpa',
    )
    expect(() => alveolarPo2Kpa({ ...gas, respiratoryQuotient: 0 })).toThrow('VALUE_OUT_OF_RANGE')
    expect(() => alveolarPo2Kpa({ ...gas, barometricKpa: 5 })).toThrow('PRESSURE_OUT_OF_RANGE')
    expect(() => effectiveInspiredO2Fraction({ ...gas, alveolarPo2Kpa: Number.NaN })).toThrow(
      'NOT_A_NUMBER',
    )
  })
})
