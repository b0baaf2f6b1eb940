// The quantities whose unit a reader may choose, and the way between the unit inside and the one chosen. Leaves out quantities that have one unit everywhere.
import { cmFromInches, inchesFromCm } from './length.ts'
import { kgFromLb, lbFromKg } from './mass.ts'
import {
  barFromKpa,
  kpaFromBar,
  kpaFromMmhg,
  kpaFromPsi,
  kpaFromTorr,
  mmhgFromKpa,
  psiFromKpa,
  torrFromKpa,
} from './pressure.ts'
import { cubicFeetFromLitres, litresFromCubicFeet } from './volume.ts'

/** The units of each quantity; the first is the usual one. Pressure is that of blood and weather, gas pressure that of supplies. */
export const CHOOSABLE_UNITS = {
  pressure: ['kPa', 'mmHg', 'Torr'],
  height: ['cm', 'in'],
  weight: ['kg', 'lb'],
  gasPressure: ['bar', 'psi', 'kPa'],
  gasVolume: ['L', 'ft³'],
} as const

export type ChoosableQuantity = keyof typeof CHOOSABLE_UNITS
export type UnitOf<Q extends ChoosableQuantity> = (typeof CHOOSABLE_UNITS)[Q][number]
export type ChoosableUnit = UnitOf<ChoosableQuantity>
export type ChosenUnits = { readonly [Q in ChoosableQuantity]: UnitOf<Q> }

export const CHOOSABLE_QUANTITIES = [
  'pressure',
  'height',
  'weight',
  'gasPressure',
  'gasVolume',
] as const satisfies readonly ChoosableQuantity[]

export const USUAL_UNITS: ChosenUnits = {
  pressure: 'kPa',
  height: 'cm',
  weight: 'kg',
  gasPressure: 'bar',
  gasVolume: 'L',
}

/** The one unit of each quantity inside. */
export const INSIDE_UNITS = {
  pressure: 'kPa',
  height: 'cm',
  weight: 'kg',
  gasPressure: 'kPa',
  gasVolume: 'L',
} as const satisfies { readonly [Q in ChoosableQuantity]: ChoosableUnit }

type Convert = (value: number) => number
const same: Convert = (value) => value

const WAYS: Readonly<
  Record<ChoosableUnit, { readonly inward: Convert; readonly outward: Convert }>
> = {
  kPa: { inward: same, outward: same },
  mmHg: { inward: kpaFromMmhg, outward: mmhgFromKpa },
  Torr: { inward: kpaFromTorr, outward: torrFromKpa },
  bar: { inward: kpaFromBar, outward: barFromKpa },
  psi: { inward: kpaFromPsi, outward: psiFromKpa },
  cm: { inward: same, outward: same },
  in: { inward: cmFromInches, outward: inchesFromCm },
  kg: { inward: same, outward: same },
  lb: { inward: kgFromLb, outward: lbFromKg },
  L: { inward: same, outward: same },
  'ft³': { inward: litresFromCubicFeet, outward: cubicFeetFromLitres },
}

/** A value in the chosen unit as the value inside (kPa, cm, kg, L), exact by the units' definitions [UCUM2024]. */
export function toInside(value: number, unit: ChoosableUnit): number {
  return WAYS[unit].inward(value)
}

/** A value inside (kPa, cm, kg, L) in the chosen unit, exact by the units' definitions [UCUM2024]. */
export function fromInside(value: number, unit: ChoosableUnit): number {
  return WAYS[unit].outward(value)
}
