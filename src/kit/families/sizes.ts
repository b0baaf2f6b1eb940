// Who each size fits and the gas space of masks by size. Leaves out makers' own size tables: a device's own label wins.
import { scaled } from '../../units/spread.ts'
import type { InterfaceSize, RatedFlow, SourcedSpread } from '../interface-family.ts'
import type { SizeId } from '../family-id.ts'

export const NO_POCKET: SourcedSpread = { spread: { kind: 'fixed', value: 0 }, known: 'derived' }

/** Ages each size serves, years; common practice, overlapping on purpose. */
const AGES: Readonly<Record<SizeId, readonly [number, number]>> = {
  preterm: [0, 0.5],
  newborn: [0, 0.5],
  infant: [0.05, 2.5],
  child: [1, 13],
  adult: [10, 120],
}

/** Weight up to which a size is used where weight decides, kg; common practice. */
const WEIGHT_KG_MAX: Readonly<Partial<Record<SizeId, number>>> = { preterm: 2, newborn: 5 }
/** Weight below which a size is too large where weight decides, kg; common practice. */
const WEIGHT_KG_MIN: Readonly<Partial<Record<SizeId, number>>> = { infant: 2.5 }

/** Gas space of a face or neck mask on the skin, L. Adult 0.1–0.2 L from memory; smaller ones in proportion to face size, from memory. */
const MASK_L: Readonly<Record<SizeId, readonly [number, number, number]>> = {
  preterm: [0.008, 0.012, 0.02],
  newborn: [0.015, 0.025, 0.035],
  infant: [0.03, 0.045, 0.06],
  child: [0.06, 0.085, 0.11],
  adult: [0.1, 0.15, 0.2],
}

/** Triangular spread of mask gas space. */
export function maskSpace(size: SizeId): SourcedSpread {
  const [min, mode, max] = MASK_L[size]
  return { spread: { kind: 'triangular', min, mode, max }, known: 'memory' }
}

export function sizeOf(id: SizeId, rated: RatedFlow, pocketL: SourcedSpread): InterfaceSize {
  const [ageYearsMin, ageYearsMax] = AGES[id]
  const weightKgMin = WEIGHT_KG_MIN[id]
  const weightKgMax = WEIGHT_KG_MAX[id]
  return {
    id,
    ageYearsMin,
    ageYearsMax,
    rated,
    pocketL,
    ...(weightKgMin === undefined ? {} : { weightKgMin }),
    ...(weightKgMax === undefined ? {} : { weightKgMax }),
  }
}

/** The same spread for a smaller or larger body of the same form. */
export function scaledSpace(size: SizeId, factor: number): SourcedSpread {
  const space = maskSpace(size)
  return { ...space, spread: scaled(space.spread, factor) }
}
