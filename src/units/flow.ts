// Conversions of volume flow between L/min, L/s and mL/min. The gas condition is not converted here: see physics/gas-condition.ts.

const SECONDS_PER_MINUTE = 60
const ML_PER_L = 1000

export function lpsFromLpm(flowLpm: number): number {
  return flowLpm / SECONDS_PER_MINUTE
}

export function lpmFromLps(flowLps: number): number {
  return flowLps * SECONDS_PER_MINUTE
}

export function lpmFromMlPerMin(flowMlPerMin: number): number {
  return flowMlPerMin / ML_PER_L
}

export function mlPerMinFromLpm(flowLpm: number): number {
  return flowLpm * ML_PER_L
}

export function lpsFromMlPerS(flowMlPerS: number): number {
  return flowMlPerS / ML_PER_L
}

export function mlPerSFromLps(flowLps: number): number {
  return flowLps * ML_PER_L
}
