// Seeded, evenly spread points in the unit cube. Pure: the seed is all its randomness.

/** Uniform numbers in (0, 1) from a 32-bit seed (mulberry32); good enough for strata, never for secrets. */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296
  }
}

/** `points` × `dimensions` numbers in (0, 1), row by row; in each dimension every stratum of 1/points holds exactly one point. */
export function latinHypercube(size: {
  readonly points: number
  readonly dimensions: number
  readonly seed: number
}): Float64Array {
  const { points, dimensions } = size
  const uniform = seededUniform(size.seed)
  const cube = new Float64Array(points * dimensions)
  const order = Int32Array.from({ length: points }, (_, i) => i)
  for (let d = 0; d < dimensions; d++) {
    shuffle(order, uniform)
    for (let i = 0; i < points; i++)
      cube[i * dimensions + d] = ((order[i] ?? 0) + uniform()) / points
  }
  return cube
}

function shuffle(order: Int32Array, uniform: () => number): void {
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(uniform() * (i + 1))
    const held = order[i] ?? 0
    order[i] = order[j] ?? 0
    order[j] = held
  }
}
