// Whether a body's weight suits one size of an interface, by the device's own label or else as usual for the size. Leaves out age, which sizes-for.ts judges.
import type { InterfaceSize } from './interface-family.ts'
import type { LabelWeight } from './shelf-row.ts'

export interface BrokenWeight {
  /** The end of the range that the body lies beyond, kg. */
  readonly limitKg: number
  readonly isTooHeavy: boolean
}

/** What is typed of a label and nothing else. */
export function labelWeight({ fitsMinKg, fitsMaxKg }: LabelWeight): LabelWeight {
  return {
    ...(fitsMinKg === undefined ? {} : { fitsMinKg }),
    ...(fitsMaxKg === undefined ? {} : { fitsMaxKg }),
  }
}

export function hasLabelWeight({ fitsMinKg, fitsMaxKg }: LabelWeight): boolean {
  return fitsMinKg !== undefined || fitsMaxKg !== undefined
}

/** Null where the weight suits. A label with one end typed is open at the other; without a label the usual weights of the size count (common practice). */
export function brokenWeight(options: {
  readonly size: InterfaceSize
  readonly label: LabelWeight
  readonly weightKg: number
}): BrokenWeight | null {
  const { size, label, weightKg } = options
  const isFromLabel = hasLabelWeight(label)
  const leastKg = isFromLabel ? label.fitsMinKg : size.weightKgMin
  const mostKg = isFromLabel ? label.fitsMaxKg : size.weightKgMax
  if (leastKg !== undefined && weightKg < leastKg) return { limitKg: leastKg, isTooHeavy: false }
  if (mostKg !== undefined && weightKg > mostKg) return { limitKg: mostKg, isTooHeavy: true }
  return null
}
