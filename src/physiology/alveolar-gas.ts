// The alveolar gas equation, full form, and its inversion to the inspired fraction that would give an alveolar oxygen. Leaves out inspired carbon dioxide and uneven lungs.
import { requireWithin } from '../errors.ts'
import { BODY_WATER_VAPOUR_KPA } from '../units/constants.ts'

/** Respiratory exchange ratio assumed unless known (normal 0.7–1.0; common practice). */
export const RESPIRATORY_QUOTIENT = 0.8

export interface AlveolarSetting {
  readonly barometricKpa: number
  readonly arterialPco2Kpa: number
  readonly respiratoryQuotient?: number
  /** Water vapour at body temperature; bedside texts use 47 mmHg, 6.266 kPa. */
  readonly waterVapourKpa?: number
}

/** Inspired oxygen pressure in the trachea: FIO2·(PB − PH2O). Valid F 0–1. Exact. */
export function inspiredPo2Kpa(gas: {
  readonly inspiredO2Fraction: number
  readonly barometricKpa: number
  readonly waterVapourKpa?: number
}): number {
  requireFraction(gas.inspiredO2Fraction)
  return gas.inspiredO2Fraction * dryKpa(gas)
}

/** Alveolar oxygen pressure, full form: PIO2 − PaCO2·(F + (1 − F)/R). A negative result means that the state is
 *  impossible and is refused as PARTIAL_PRESSURE_OUT_OF_RANGE. Valid F 0–1, PaCO2 0–30 kPa, R 0.5–1.5.
 *  Source: [Fenn1946] (mass balance). Within 0.05 mmHg of the published table test/reference/alveolar-gas. */
export function alveolarPo2Kpa(
  gas: AlveolarSetting & { readonly inspiredO2Fraction: number },
): number {
  requireFraction(gas.inspiredO2Fraction)
  const f = gas.inspiredO2Fraction
  const po2Kpa = f * dryKpa(gas) - requireCo2(gas) * (f + (1 - f) / requireQuotient(gas))
  return requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'alveolarPo2Kpa',
    value: po2Kpa,
    min: 0,
    max: Number.MAX_VALUE,
    unit: 'kPa',
  })
}

/** Short bedside form PIO2 − PaCO2/R, for comparison only: 10 mmHg low at F 1.0. Same ranges as alveolarPo2Kpa. */
export function alveolarPo2SimpleKpa(
  gas: AlveolarSetting & { readonly inspiredO2Fraction: number },
): number {
  requireFraction(gas.inspiredO2Fraction)
  return gas.inspiredO2Fraction * dryKpa(gas) - requireCo2(gas) / requireQuotient(gas)
}

/** The constant inspired fraction that gives an alveolar oxygen pressure: F = (PAO2 + PaCO2/R)/(PB − PH2O − PaCO2·(1 − 1/R)).
 *  Inverse of alveolarPo2Kpa. A result outside 0–1 is returned as it is: it is a finding about the inputs, to be
 *  judged by the caller. Valid PAO2 ≥ 0, PaCO2 0–30 kPa, R 0.5–1.5. */
export function effectiveInspiredO2Fraction(
  gas: AlveolarSetting & { readonly alveolarPo2Kpa: number },
): number {
  const arterialPco2Kpa = requireCo2(gas)
  const quotient = requireQuotient(gas)
  requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'alveolarPo2Kpa',
    value: gas.alveolarPo2Kpa,
    min: 0,
    max: gas.barometricKpa,
    unit: 'kPa',
  })
  return (
    (gas.alveolarPo2Kpa + arterialPco2Kpa / quotient) /
    (dryKpa(gas) - arterialPco2Kpa * (1 - 1 / quotient))
  )
}

function dryKpa(gas: { readonly barometricKpa: number; readonly waterVapourKpa?: number }): number {
  return requireWithin({
    code: 'PRESSURE_OUT_OF_RANGE',
    path: 'dryPressureKpa',
    value: gas.barometricKpa - (gas.waterVapourKpa ?? BODY_WATER_VAPOUR_KPA),
    min: Number.MIN_VALUE,
    max: Number.MAX_VALUE,
    unit: 'kPa',
  })
}

function requireFraction(inspiredO2Fraction: number): void {
  requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'inspiredO2Fraction',
    value: inspiredO2Fraction,
    min: 0,
    max: 1,
  })
}

function requireCo2(gas: AlveolarSetting): number {
  return requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'arterialPco2Kpa',
    value: gas.arterialPco2Kpa,
    min: 0,
    max: 30,
    unit: 'kPa',
  })
}

function requireQuotient(gas: AlveolarSetting): number {
  return requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'respiratoryQuotient',
    value: gas.respiratoryQuotient ?? RESPIRATORY_QUOTIENT,
    min: 0.5,
    max: 1.5,
  })
}
