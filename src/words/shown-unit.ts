// In which units people read: chosen once, like the language. Leaves out what is typed, which keeps the unit it was typed in.
import { fromInside, INSIDE_UNITS, USUAL_UNITS } from '../units/choosable.ts'
import type { ChoosableQuantity, ChoosableUnit, ChosenUnits, UnitOf } from '../units/choosable.ts'

let chosen: ChosenUnits = USUAL_UNITS

/** Chooses the units of all that is said from now on. */
export function showUnits(units: ChosenUnits): void {
  chosen = units
}

/** Quantities by the last part of a path or the key of a value. */
const QUANTITIES: Readonly<Record<string, ChoosableQuantity>> = {
  weightKg: 'weight',
  heightCm: 'height',
  barometricPressureKpa: 'pressure',
  arterialPco2Kpa: 'pressure',
  arterialPo2Kpa: 'pressure',
  p50Kpa: 'pressure',
  extraShiftKpa: 'pressure',
}

/** The quantity a field or value holds, undefined where it has one unit everywhere. */
export function quantityAt(path: string): ChoosableQuantity | undefined {
  return QUANTITIES[path.split('.').at(-1) ?? path]
}

export function shownUnit<Q extends ChoosableQuantity>(quantity: Q): UnitOf<Q> {
  return chosen[quantity]
}

/** A value inside as people read it, with the unit it is then in. */
export function inShownUnit(
  quantity: ChoosableQuantity,
  value: number,
): { readonly value: number; readonly unit: ChoosableUnit } {
  const unit = chosen[quantity]
  return { value: fromInside(value, unit), unit }
}

interface WithUnit {
  readonly low: number
  readonly high: number
  readonly median: number
  readonly unit: string
}

/** A band of a value inside as people read it; one of another unit than the one inside stays as it is. */
export function shownBand(path: string, band: WithUnit): WithUnit {
  const quantity = quantityAt(path)
  if (quantity === undefined || band.unit !== INSIDE_UNITS[quantity]) return band
  const { value: median, unit } = inShownUnit(quantity, band.median)
  const low = inShownUnit(quantity, band.low).value
  const high = inShownUnit(quantity, band.high).value
  return { low, high, median, unit }
}
