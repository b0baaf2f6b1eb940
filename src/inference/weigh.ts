// Weighs samples by what the oximeter shows on a known set-up and draws an equally weighted sample from them.

/** Normalises log-weights in place to weights that sum to one and returns the effective number of samples, 1 / Σ w². */
export function normaliseLogWeights(logWeights: Float64Array): number {
  let most = -Infinity
  for (const value of logWeights) most = Math.max(most, value)
  if (!Number.isFinite(most)) {
    logWeights.fill(1 / logWeights.length)
    return 0
  }
  let sum = 0
  for (let i = 0; i < logWeights.length; i++) {
    const weight = Math.exp((logWeights[i] ?? 0) - most)
    logWeights[i] = weight
    sum += weight
  }
  let squares = 0
  for (let i = 0; i < logWeights.length; i++) {
    const weight = (logWeights[i] ?? 0) / sum
    logWeights[i] = weight
    squares += weight * weight
  }
  return 1 / squares
}

/** Systematic resampling: `count` indexes, each sample as often as its weight says, to within one. `u` in (0, 1). */
export function resample(weights: Float64Array, count: number, u: number): Int32Array {
  const chosen = new Int32Array(count)
  let cumulative = weights[0] ?? 0
  let i = 0
  for (let k = 0; k < count; k++) {
    const position = (k + u) / count
    while (cumulative < position && i < weights.length - 1) cumulative += weights[++i] ?? 0
    chosen[k] = i
  }
  return chosen
}
