// Which chains are minimal, and in what order they are offered. Leaves out whether they are right.
import type { Chain } from './chain.ts'
import { placed } from './chain.ts'
import { lengthOf } from './check-limits.ts'
import { linesToPatients } from './lines.ts'
import { partKey } from './part.ts'

/** Chains none of whose parts can be left out: no other accepted chain gets by with some of the same parts. */
export function minimalOf(chains: readonly Chain[]): readonly Chain[] {
  const counted = chains.map((chain) => ({ chain, counts: partCounts(chain) }))
  return counted
    .filter(({ counts }) => !counted.some((other) => isFewer(other.counts, counts)))
    .map(({ chain }) => chain)
}

function partCounts(chain: Chain): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { part } of chain.parts) {
    const key = partKey(part)
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  return counts
}

/** Whether all parts of one are among the other's, and not the other way round. */
function isFewer(one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): boolean {
  const total = (counts: ReadonlyMap<string, number>) =>
    [...counts.values()].reduce((sum, count) => sum + count, 0)
  if (total(one) >= total(other)) return false
  return [...one].every(([id, count]) => count <= (other.get(id) ?? 0))
}

/** Fewest parts first; then least hose on which warm gas cools or a heated hose is wasted; then least narrow hose; then least tube; then by the parts' ids. */
export function inOrder(chains: readonly Chain[]): readonly Chain[] {
  return chains
    .map((chain) => ({ chain, rank: rankOf(chain) }))
    .toSorted((a, b) => compareRanks(a.rank, b.rank))
    .map(({ chain }) => chain)
}

interface Rank {
  readonly numbers: readonly number[]
  readonly ids: string
}

function rankOf(chain: Chain): Rank {
  const lengthM = linesToPatients(chain).reduce((sum, line) => sum + lengthOf(chain, line), 0)
  return {
    numbers: [
      chain.parts.length,
      misplacedHoseMm(chain),
      narrowHoseMm(chain),
      Math.round(lengthM * MM_PER_M),
    ],
    ids: chain.parts.map(({ part }) => part.id).join(' '),
  }
}

const MM_PER_M = 1000

function compareRanks(one: Rank, other: Rank): number {
  for (const [i, number] of one.numbers.entries()) {
    const difference = number - (other.numbers[i] ?? 0)
    if (difference !== 0) return difference
  }
  if (one.ids === other.ids) return 0
  return one.ids < other.ids ? -1 : 1
}

/** Millimetres of unheated hose after a heated humidifier and of heated hose without one before it. */
function misplacedHoseMm(chain: Chain): number {
  return chain.parts.reduce((sum, { part }, at) => {
    if (part.kind !== 'breathing-hose' || part.tube === null) return sum
    const isMisplaced = part.tube.isHeated !== isWarmBefore(chain, at)
    return isMisplaced ? sum + Math.round(part.tube.lengthM * MM_PER_M) : sum
  }, 0)
}

/** Millimetres of breathing hose narrower than the usual ones of 15 mm and more (common practice): they are made for small flows. */
function narrowHoseMm(chain: Chain): number {
  return chain.parts.reduce((sum, { part: { kind, tube } }) => {
    if (kind !== 'breathing-hose' || tube === null || tube.boreMm >= NARROW_BELOW_MM) return sum
    return sum + Math.round(tube.lengthM * MM_PER_M)
  }, 0)
}

const NARROW_BELOW_MM = 15

function isWarmBefore(chain: Chain, at: number): boolean {
  return chain.joins.some(({ from, to }) => {
    if (to !== at) return false
    return placed(chain, from).part.kind === 'heated' || isWarmBefore(chain, from)
  })
}
