// Orders set-ups by worth, and calls equal what the draws cannot tell apart.

export interface Scored {
  readonly id: string
  /** Worth of each draw; draws are common to all set-ups. */
  readonly worth: Float64Array
  /** Lower is better, compared in order: what breaks a tie. */
  readonly burden: readonly number[]
}

export interface Placed {
  readonly id: string
  readonly rank: number
  readonly isEqualToFirst: boolean
  readonly score: number
}

/** Differences of mean worth below this count as none: half a display step of 5 %. */
export const WORTH_STEP = 0.025

/**
 * Best mean worth leads; every set-up whose paired difference from the leader lies within two standard errors (or within
 * WORTH_STEP) counts as equal and the group is ordered by burden; then the next leader, until none is left.
 */
export function placeByWorth(scored: readonly Scored[]): readonly Placed[] {
  const means = new Map(scored.map((one) => [one.id, meanOf(one.worth)]))
  const score = (one: Scored): number => means.get(one.id) ?? 0
  let left = [...scored].sort((a, b) => score(b) - score(a) || compareBurden(a, b))
  const placed: Placed[] = []
  while (left.length > 0) {
    const leader = left[0]
    if (leader === undefined) break
    const equals = left.filter((one) => countsAsEqual(leader, one))
    const rank = placed.length + 1
    for (const one of equals.sort(compareBurden)) {
      placed.push({ id: one.id, rank, isEqualToFirst: rank === 1, score: score(one) })
    }
    const taken = new Set(equals.map((one) => one.id))
    left = left.filter((one) => !taken.has(one.id))
  }
  return placed
}

/** Whether the paired difference is within two standard errors or within half a display step. */
export function countsAsEqual(leader: Scored, other: Scored): boolean {
  const n = leader.worth.length
  let sum = 0
  let squares = 0
  for (let i = 0; i < n; i++) {
    const difference = (leader.worth[i] ?? 0) - (other.worth[i] ?? 0)
    sum += difference
    squares += difference * difference
  }
  const mean = sum / n
  const standardError = Math.sqrt(Math.max(0, squares / n - mean * mean) / n)
  return mean <= Math.max(2 * standardError, WORTH_STEP)
}

function compareBurden(a: Scored, b: Scored): number {
  for (let i = 0; i < Math.max(a.burden.length, b.burden.length); i++) {
    const difference = (a.burden[i] ?? 0) - (b.burden[i] ?? 0)
    if (difference !== 0) return difference
  }
  return a.id < b.id ? -1 : 1
}

function meanOf(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value
  return sum / values.length
}
