// Weights and resampling by their defining properties. Leaves out likelihoods.
import { describe, expect, it } from 'vitest'
import { normaliseLogWeights, resample } from './weigh.ts'

describe('weighing', () => {
  it('gives all samples when weights are equal, and one when one rules', () => {
    expect(normaliseLogWeights(new Float64Array(100).fill(-700))).toBeCloseTo(100, 9)
    const one = new Float64Array(100).fill(-1000)
    one[7] = 0
    expect(normaliseLogWeights(one)).toBeCloseTo(1, 9)
  })

  it('says that nothing is left when every sample is impossible', () => {
    expect(normaliseLogWeights(new Float64Array(10).fill(-Infinity))).toBe(0)
  })

  it('chooses each sample as often as its weight says, to within one', () => {
    const weights = Float64Array.from([0.5, 0.25, 0.125, 0.125])
    const counts = [0, 0, 0, 0]
    for (const i of resample(weights, 512, 0.37)) counts[i] = (counts[i] ?? 0) + 1
    weights.forEach((weight, i) =>
      expect(Math.abs((counts[i] ?? 0) - 512 * weight)).toBeLessThanOrEqual(1),
    )
  })
})
