// Conversions of mass between kg, g and lb.

/** kg in one pound, by definition. */
const KG_PER_LB = 0.45359237
const G_PER_KG = 1000

export function kgFromLb(massLb: number): number {
  return massLb * KG_PER_LB
}

export function lbFromKg(massKg: number): number {
  return massKg / KG_PER_LB
}

export function kgFromG(massG: number): number {
  return massG / G_PER_KG
}

export function gramsFromKg(massKg: number): number {
  return massKg * G_PER_KG
}
