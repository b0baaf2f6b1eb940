// Conversions of length between cm, m, inch and foot.

/** cm in one inch, by definition. */
const CM_PER_INCH = 2.54
const CM_PER_M = 100
/** m in one foot, by definition. */
const M_PER_FOOT = 0.3048

export function cmFromInches(lengthInches: number): number {
  return lengthInches * CM_PER_INCH
}

export function inchesFromCm(lengthCm: number): number {
  return lengthCm / CM_PER_INCH
}

export function metresFromCm(lengthCm: number): number {
  return lengthCm / CM_PER_M
}

export function cmFromMetres(lengthM: number): number {
  return lengthM * CM_PER_M
}

export function metresFromFeet(lengthFeet: number): number {
  return lengthFeet * M_PER_FOOT
}

export function feetFromMetres(lengthM: number): number {
  return lengthM / M_PER_FOOT
}
