// Conversions of volume between litre and millilitre.

const ML_PER_L = 1000

export function litresFromMl(volumeMl: number): number {
  return volumeMl / ML_PER_L
}

export function mlFromLitres(volumeL: number): number {
  return volumeL * ML_PER_L
}
