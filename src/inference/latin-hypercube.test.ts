// Points are even, seeded and never at the ends. Leaves out what they are used for.
import { describe, expect, it } from 'vitest'
import { latinHypercube } from './latin-hypercube.ts'

describe('latin hypercube', () => {
  it('puts exactly one point in every stratum of every dimension', () => {
    const cube = latinHypercube({ points: 64, dimensions: 5, seed: 7 })
    for (let d = 0; d < 5; d++) {
      const strata = new Set<number>()
      for (let i = 0; i < 64; i++) strata.add(Math.floor((cube[i * 5 + d] ?? -1) * 64))
      expect(strata.size).toBe(64)
    }
  })

  it('gives the same points for the same seed and others for another', () => {
    const once = latinHypercube({ points: 16, dimensions: 3, seed: 1 })
    expect(latinHypercube({ points: 16, dimensions: 3, seed: 1 })).toEqual(once)
    expect(latinHypercube({ points: 16, dimensions: 3, seed: 2 })).not.toEqual(once)
  })

  it('never gives 0 or 1', () => {
    const cube = latinHypercube({ points: 512, dimensions: 8, seed: 3 })
    expect(cube.every((u) => u > 0 && u < 1)).toBe(true)
  })
})
