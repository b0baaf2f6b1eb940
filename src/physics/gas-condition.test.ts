// Gas conditions against published factors, and there and back again.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import {
  atpd,
  atps,
  btps,
  conditionFactor,
  FLOWMETER_SCALE,
  flowmeterToBtpsFactor,
  STPD,
} from './gas-condition.ts'
import { saturatedVapourPressureKpa } from './water-vapour.ts'

const SEA_LEVEL_KPA = 101.325

describe('gas condition', () => {
  it('gives the published factors to BTPS at sea level', () => {
    // ATPD 20 °C 1.1279, 23 °C 1.1165, STPD 1.2105.
    const toBody = btps({ barometricKpa: SEA_LEVEL_KPA })
    expect(
      conditionFactor({
        from: atpd({ temperatureC: 20, barometricKpa: SEA_LEVEL_KPA }),
        to: toBody,
      }),
    ).toBeCloseTo(1.1279, 4)
    expect(
      conditionFactor({
        from: atpd({ temperatureC: 23, barometricKpa: SEA_LEVEL_KPA }),
        to: toBody,
      }),
    ).toBeCloseTo(1.1165, 4)
    expect(conditionFactor({ from: STPD, to: toBody })).toBeCloseTo(1.2105, 4)
    expect(flowmeterToBtpsFactor({ barometricKpa: SEA_LEVEL_KPA })).toBeCloseTo(1.1279, 4)
  })

  it('gives the spirometer factors of the textbooks from ATPS', () => {
    // Textbook ATPS to BTPS at 101.3 kPa: 20 °C 1.102, 23 °C 1.085, 25 °C 1.075, 37 °C 1.000 (common practice).
    for (const [temperatureC, factor] of [
      [20, 1.102],
      [23, 1.085],
      [25, 1.075],
      [37, 1],
    ] as const) {
      const from = atps({ temperatureC, barometricKpa: SEA_LEVEL_KPA })
      expect(conditionFactor({ from, to: btps({ barometricKpa: SEA_LEVEL_KPA }) })).toBeCloseTo(
        factor,
        2,
      )
    }
  })

  it('returns to one by any round trip', () => {
    const anyCondition = fc.record({
      pressureKpa: fc.double({ min: 50, max: 107, noNaN: true }),
      temperatureC: fc.double({ min: 0, max: 45, noNaN: true }),
      waterVapourKpa: fc.double({ min: 0, max: 9, noNaN: true }),
    })
    fc.assert(
      fc.property(anyCondition, anyCondition, (from, to) => {
        expect(conditionFactor({ from, to }) * conditionFactor({ from: to, to: from })).toBeCloseTo(
          1,
          12,
        )
        expect(conditionFactor({ from, to: from })).toBe(1)
      }),
      seeded(300),
    )
  })

  it('expands more at altitude, and with fever', () => {
    const low = flowmeterToBtpsFactor({ barometricKpa: 101.325 })
    const high = flowmeterToBtpsFactor({ barometricKpa: 70 })
    expect(high).toBeGreaterThan(low * (101.325 / 70))
    const hot = btps({ barometricKpa: SEA_LEVEL_KPA, temperatureC: 40 })
    expect(hot.waterVapourKpa).toBe(saturatedVapourPressureKpa(40))
    expect(conditionFactor({ from: FLOWMETER_SCALE, to: hot })).toBeGreaterThan(low)
  })

  it('refuses gas that is all vapour, and NaN', () => {
    expect(() =>
      conditionFactor({ from: STPD, to: { pressureKpa: 5, temperatureC: 37, waterVapourKpa: 6 } }),
    ).toThrow('PRESSURE_OUT_OF_RANGE')
    expect(() => conditionFactor({ from: { ...STPD, temperatureC: -300 }, to: STPD })).toThrow(
      'TEMPERATURE_OUT_OF_RANGE',
    )
    expect(() => flowmeterToBtpsFactor({ barometricKpa: Number.NaN })).toThrow('NOT_A_NUMBER')
  })
})
