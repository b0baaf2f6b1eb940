// The fewest parts from elsewhere that an end still costs, whatever else is taken: by it the search leaves dead ends at once. Leaves out counts and what was passed before, so that it is never too high.
import type { EndId } from '../kit/ends.ts'
import { take } from './line-need.ts'
import type { LineNeed } from './line-need.ts'
import type { Stocked } from './stock.ts'
import type { Wanted } from './wanted.ts'

/** What is still to be fed. */
export interface Unfed {
  readonly end: EndId
  readonly need: LineNeed
}

/** One part that could be taken, and what it then needs. */
interface Way {
  readonly cost: number
  readonly feeds: readonly string[]
}

/** Infinity where nothing leads to a gas outlet. */
export function missingBound(options: {
  readonly first: Unfed
  readonly givers: ReadonlyMap<EndId, readonly Stocked[]>
  readonly wanted: Wanted
}): (unfed: Unfed) => number {
  const ways = waysFrom(options)
  const bounds = new Map<string, number>([...ways.keys()].map((key) => [key, Infinity]))
  let isSettled = false
  while (!isSettled) {
    isSettled = true
    for (const [key, choices] of ways) {
      const least = Math.min(Infinity, ...choices.map((way) => costOf(way, bounds)))
      if (least >= (bounds.get(key) ?? Infinity)) continue
      bounds.set(key, least)
      isSettled = false
    }
  }
  return (unfed) => bounds.get(keyOf(unfed)) ?? Infinity
}

function costOf({ cost, feeds }: Way, bounds: ReadonlyMap<string, number>): number {
  return feeds.reduce((sum, key) => sum + (bounds.get(key) ?? Infinity), cost)
}

/** All that can come to be unfed, and the ways to feed it. */
function waysFrom(options: Parameters<typeof missingBound>[0]): ReadonlyMap<string, Way[]> {
  const { first, givers, wanted } = options
  const ways = new Map<string, Way[]>()
  const ahead: Unfed[] = [first]
  for (let unfed = ahead.pop(); unfed !== undefined; unfed = ahead.pop()) {
    const { end, need } = unfed
    const key = keyOf(unfed)
    if (ways.has(key)) continue
    const found: Way[] = []
    ways.set(key, found)
    for (const { part, isAtHand } of givers.get(end) ?? []) {
      const taken = take(part, need, wanted)
      if (taken === undefined) continue
      const feeds = part.inlets.map((inlet, i): Unfed => {
        return { end: inlet, need: taken.inletNeeds[i] ?? need }
      })
      found.push({ cost: isAtHand ? 0 : 1, feeds: feeds.map(keyOf) })
      ahead.push(...feeds)
    }
  }
  return ways
}

/** All that decides which parts may be taken (line-need.ts); what only the checker judges is left out. */
function keyOf({ end, need }: Unfed): string {
  const { stretch, interfaceLeft, humidifierLeft, collarLeft, demandLpm, hasTube } = need
  return [end, stretch, interfaceLeft, humidifierLeft, collarLeft, demandLpm, hasTube].join('|')
}
