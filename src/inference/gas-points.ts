// From delivered fractions to what the oximeter would show, over a sample of what is not known about lungs and blood.
import { BODY_WATER_VAPOUR_KPA } from '../units/constants.ts'
import { arterialFromAlveolar, emptyArterialOxygen } from '../physiology/shunt-shift.ts'
import type { GasExchange } from '../physiology/shunt-shift.ts'

/** One sample of lungs, blood and oximeter. */
export interface GasPoint {
  readonly lung: GasExchange
  readonly arterialPco2Kpa: number
  readonly respiratoryQuotient: number
  /** What this oximeter on this finger reads above or below the truth, percentage points. */
  readonly oximeterBiasPercent: number
  /** Share of haemoglobin that carries carbon monoxide and reads as saturated. */
  readonly carboxyhaemoglobinFraction: number
}

const scratch = emptyArterialOxygen()

/** Saturation that the oximeter shows at steady state, %, before rounding to whole numbers; at most 100. */
export function shownSaturationPercent(
  point: GasPoint,
  effectiveO2Fraction: number,
  barometricKpa: number,
): number {
  return shownOf(point, arterialSaturation(point, effectiveO2Fraction, barometricKpa))
}

/** True functional saturation as a fraction, at steady state. */
export function arterialSaturation(
  point: GasPoint,
  effectiveO2Fraction: number,
  barometricKpa: number,
): number {
  return bloodAt(point, effectiveO2Fraction, barometricKpa).arterialSaturation
}

/** Oxygen in alveoli and arterial blood; written over by the next call. */
export interface Blood {
  alveolarPo2Kpa: number
  arterialPo2Kpa: number
  arterialSaturation: number
}

const blood: Blood = { alveolarPo2Kpa: 0, arterialPo2Kpa: 0, arterialSaturation: 0 }

/**
 * Alveolar oxygen by the full alveolar gas equation (as physiology/alveolar-gas.ts), then shunt and shift. A draw whose carbon
 * dioxide leaves no room for oxygen reads zero: nobody lives there, so a reading weighs it away. Allocates nothing.
 */
export function bloodAt(
  point: GasPoint,
  effectiveO2Fraction: number,
  barometricKpa: number,
): Blood {
  const f = effectiveO2Fraction
  const carbonDioxideKpa = point.arterialPco2Kpa * (f + (1 - f) / point.respiratoryQuotient)
  const alveolarKpa = f * (barometricKpa - BODY_WATER_VAPOUR_KPA) - carbonDioxideKpa
  blood.alveolarPo2Kpa = Math.max(0, alveolarKpa)
  blood.arterialPo2Kpa = 0
  blood.arterialSaturation = 0
  if (alveolarKpa <= 0) return blood
  const arterial = arterialFromAlveolar(point.lung, alveolarKpa, scratch)
  blood.arterialPo2Kpa = arterial.arterialPo2Kpa
  blood.arterialSaturation = arterial.arterialSaturation
  return blood
}

/** Carboxyhaemoglobin is read as oxygenated; bias is added; the display ends at 100. */
export function shownOf(point: GasPoint, saturation: number): number {
  const seen =
    saturation * (1 - point.carboxyhaemoglobinFraction) + point.carboxyhaemoglobinFraction
  return Math.min(100, 100 * seen + point.oximeterBiasPercent)
}
