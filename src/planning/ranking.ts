// Orders set-ups by worth, and calls equal what the draws cannot tell apart.

export interface Scored {
  readonly id: string
  /** Worth of each draw; draws are common to all set-ups. */
  readonly worth: Float64Array
  /** Which computed breath each draw rests on, numbered below the count of draws: draws of one breath err together. */
  readonly breathOf: Int32Array
  /** Lower is better, compared in order: what breaks a tie. */
  readonly burden: readonly number[]
}

export interface Placed {
  readonly id: string
  readonly rank: number
  /** Rows that share this number are said to be equal; 1 holds the first. Wider than the rank, so that another sample of the same patient tells the same. */
  readonly equalGroup: number
  readonly score: number
  readonly burden: readonly number[]
}

/** What counts as equal: a paired difference within so many standard errors, or within a step. */
export interface Equality {
  readonly standardErrors: number
  readonly step: number
}

/** Goals with a range: two standard errors, or half a display step of 5 %. */
export const BY_WORTH: Equality = { standardErrors: 2, step: 0.025 }
/** As much as possible: the fraction itself rules; half a point is no difference. */
export const BY_FRACTION: Equality = { standardErrors: 0, step: 0.005 }

/**
 * Best mean worth leads; every set-up whose paired difference from the leader counts as none is equal to it, and the group is
 * ordered by burden; then the next leader, until none is left.
 */
export function placeByWorth(
  scored: readonly Scored[],
  equality: Equality = BY_WORTH,
): readonly Placed[] {
  const means = new Map(scored.map((one) => [one.id, meanOf(one.worth)]))
  const score = (one: Scored): number => means.get(one.id) ?? 0
  let left = [...scored].sort((a, b) => score(b) - score(a) || compareBurden(a, b))
  const placed: Ordered[] = []
  const leaders: Scored[] = []
  while (left.length > 0) {
    const leader = left[0]
    if (leader === undefined) break
    leaders.push(leader)
    const equals = left.filter((one) => countsAsEqual(leader, one, equality))
    const rank = placed.length + 1
    for (const one of equals.sort(compareBurden)) {
      placed.push({ scored: one, rank, score: score(one) })
    }
    const taken = new Set(equals.map((one) => one.id))
    left = left.filter((one) => !taken.has(one.id))
  }
  return withEqualGroups(placed, leaders, equality)
}

interface Ordered {
  readonly scored: Scored
  readonly rank: number
  readonly score: number
}

/** How much wider what is said to be equal is than what is ordered as equal. */
const SAID_WIDER = 2

/** Each row joins the first leader, best first, to which it is said to be equal. */
function withEqualGroups(
  ordered: readonly Ordered[],
  leaders: readonly Scored[],
  equality: Equality,
): readonly Placed[] {
  const said = {
    standardErrors: SAID_WIDER * equality.standardErrors,
    step: SAID_WIDER * equality.step,
  }
  return ordered.map(({ scored, rank, score }) => ({
    id: scored.id,
    rank,
    equalGroup: 1 + leaders.findIndex((leader) => countsAsEqual(leader, scored, said)),
    score,
    burden: scored.burden,
  }))
}

/** Whether the paired difference from the leader counts as none. The standard error counts draws that share a breath as one. */
export function countsAsEqual(
  leader: Scored,
  other: Scored,
  equality: Equality = BY_WORTH,
): boolean {
  const n = leader.worth.length
  let sum = 0
  for (let i = 0; i < n; i++) sum += (leader.worth[i] ?? 0) - (other.worth[i] ?? 0)
  const mean = sum / n
  if (mean <= equality.step) return true
  return mean <= equality.standardErrors * standardErrorOf(leader, other, mean)
}

function standardErrorOf(leader: Scored, other: Scored, mean: number): number {
  const n = leader.worth.length
  const byBreath = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const breath = leader.breathOf[i] ?? 0
    const deviation = (leader.worth[i] ?? 0) - (other.worth[i] ?? 0) - mean
    byBreath[breath] = (byBreath[breath] ?? 0) + deviation
  }
  let squares = 0
  for (const total of byBreath) squares += total * total
  return Math.sqrt(squares) / n
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
