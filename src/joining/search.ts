// Every way to feed an opening of the patient from the gas outlets with the parts given: a search from the patient back. Leaves out judging what it finds (check-chain.ts).
import type { EndId } from '../kit/ends.ts'
import type { Chain, Join, PartSetting, PlacedPart } from './chain.ts'
import { needKey, take } from './line-need.ts'
import type { LineNeed } from './line-need.ts'
import { matingRule } from './mating-rules.ts'
import { missingBound } from './missing-bound.ts'
import type { Unfed } from './missing-bound.ts'
import { partKey } from './part.ts'
import type { Part } from './part.ts'
import type { Stocked } from './stock.ts'
import type { Wanted } from './wanted.ts'

export interface SearchQuestion {
  readonly patient: Part
  readonly need: LineNeed
  readonly wanted: Wanted
  readonly stock: readonly Stocked[]
  /** How many parts that are not at hand a chain has. */
  readonly missing: number
  /** Asked of the first chain found: whether no other can be better, so that some are enough to show one. */
  readonly isHopeless: (first: Chain) => boolean
}

/** Chains looked at where none can be right: two lines of two jets each can be put together in a hundred thousand ways. */
export const HOPELESS_LOOKED_AT = 1000

/** A part with what feeds it. */
interface Fed {
  readonly stocked: Stocked
  readonly setting: PartSetting
  readonly feeds: readonly Fed[]
}

interface Walk {
  readonly question: SearchQuestion
  readonly givers: ReadonlyMap<EndId, readonly Stocked[]>
  readonly used: Map<string, number>
  /** As missing-bound.ts. */
  readonly boundOf: (unfed: Unfed) => number
  missingLeft: number
  /** Of those left, what other openings still cost at least. */
  reserved: number
  /** Chains still wanted. */
  chainsLeft: number
}

/** Each found chain once, in no order that matters. */
export function searchChains(question: SearchQuestion): readonly Chain[] {
  const { need, wanted } = question
  const [end] = question.patient.inlets
  if (end === undefined) return []
  const givers = giversByEnd(question.stock)
  const walk: Walk = {
    question,
    givers,
    used: new Map(),
    boundOf: missingBound({ first: { end, need }, givers, wanted }),
    missingLeft: question.missing,
    reserved: 0,
    chainsLeft: Infinity,
  }
  const found = new Map<string, Chain>()
  feed(walk, { end, need, seen: [] }, (fed) => {
    if (walk.missingLeft > 0) return
    const key = chainKey(fed)
    if (found.has(key)) return
    const chain = chainOf(question.patient, fed)
    if (found.size === 0 && question.isHopeless(chain)) walk.chainsLeft = HOPELESS_LOOKED_AT
    found.set(key, chain)
    walk.chainsLeft -= 1
  })
  return [...found.values()]
}

/** Which parts give into which end. */
function giversByEnd(stock: readonly Stocked[]): ReadonlyMap<EndId, readonly Stocked[]> {
  const ends = new Set(stock.flatMap(({ part }) => part.inlets))
  for (const { part } of stock) if (part.outlet !== null) ends.add(part.outlet)
  const givers = new Map<EndId, readonly Stocked[]>()
  for (const end of [...ends, ...PATIENT_ENDS])
    givers.set(
      end,
      stock.filter(
        ({ part }) => part.outlet !== null && matingRule(part.outlet, end) !== undefined,
      ),
    )
  return givers
}

const PATIENT_ENDS: readonly EndId[] = ['nose', 'face', 'neck', 'head', 'conical-15-male']

interface Opening extends Unfed {
  /** Needs met on this line before, each with its end. */
  readonly seen: readonly string[]
}

function feed(walk: Walk, opening: Opening, onFed: (fed: Fed) => void): void {
  if (walk.boundOf(opening) + walk.reserved > walk.missingLeft) return
  const key = `${opening.end}|${needKey(opening.need)}`
  if (opening.seen.includes(key)) return
  const seen = [...opening.seen, key]
  for (const stocked of walk.givers.get(opening.end) ?? []) {
    if (walk.chainsLeft <= 0) return
    const { part } = stocked
    const taken = take(part, opening.need, walk.question.wanted)
    if (taken === undefined || !takeOne(walk, stocked)) continue
    const openings = part.inlets.map((end, i): Opening => {
      const need = taken.inletNeeds[i] ?? opening.need
      return { end, need, seen }
    })
    feedAll(walk, openings, (feeds) => onFed({ stocked, setting: taken.setting, feeds }))
    giveBack(walk, stocked)
  }
}

function feedAll(
  walk: Walk,
  openings: readonly Opening[],
  onFed: (feeds: readonly Fed[]) => void,
): void {
  const [first, ...rest] = openings
  if (first === undefined) return onFed([])
  const restCosts = rest.reduce((sum, one) => sum + walk.boundOf(one), 0)
  if (restCosts === Infinity) return
  walk.reserved += restCosts
  feed(walk, first, (fed) => {
    walk.reserved -= restCosts
    feedAll(walk, rest, (others) => onFed([fed, ...others]))
    walk.reserved += restCosts
  })
  walk.reserved -= restCosts
}

function takeOne(walk: Walk, { part, count, isAtHand }: Stocked): boolean {
  const used = walk.used.get(partKey(part)) ?? 0
  if (used >= count || (!isAtHand && walk.missingLeft === 0)) return false
  walk.used.set(partKey(part), used + 1)
  if (!isAtHand) walk.missingLeft -= 1
  return true
}

function giveBack(walk: Walk, { part, isAtHand }: Stocked): void {
  walk.used.set(partKey(part), (walk.used.get(partKey(part)) ?? 1) - 1)
  if (!isAtHand) walk.missingLeft += 1
}

/** The same for chains that differ only in which of two like inlets a branch feeds. */
function chainKey({ stocked, feeds }: Fed): string {
  return `${partKey(stocked.part)}(${feeds.map(chainKey).toSorted().join(',')})`
}

function chainOf(patient: Part, fed: Fed): Chain {
  const parts: PlacedPart[] = []
  const joins: Join[] = []
  const from = placeFed(fed, parts, joins)
  parts.push({ part: patient, setting: {} })
  joins.push({ from, to: parts.length - 1, at: 'inlet', index: 0 })
  return { parts, joins }
}

/** Feeders first; gives the place of the part itself. */
function placeFed(fed: Fed, parts: PlacedPart[], joins: Join[]): number {
  const feeders = fed.feeds.map((one) => placeFed(one, parts, joins))
  parts.push({ part: fed.stocked.part, setting: fed.setting })
  const to = parts.length - 1
  feeders.forEach((from, index) => joins.push({ from, to, at: 'inlet', index }))
  return to
}
