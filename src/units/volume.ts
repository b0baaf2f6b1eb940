// Conversions of volume between litre, millilitre and cubic foot. The gas condition is the caller's matter.

const ML_PER_L = 1000
/** L in one cubic foot, by definition: the foot is 0.3048 m. */
const L_PER_CUBIC_FOOT = 28.316846592

export function litresFromMl(volumeMl: number): number {
  return volumeMl / ML_PER_L
}

export function mlFromLitres(volumeL: number): number {
  return volumeL * ML_PER_L
}

export function litresFromCubicFeet(volumeCubicFeet: number): number {
  return volumeCubicFeet * L_PER_CUBIC_FOOT
}

export function cubicFeetFromLitres(volumeL: number): number {
  return volumeL / L_PER_CUBIC_FOOT
}
