// From what is wanted to the chains that give it: all minimal ones with the parts at hand, or the fewest parts that are missing and who has them. Leaves out words.
import { DomainError } from '../errors.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Chain } from './chain.ts'
import { checkChain } from './check-chain.ts'
import type { ChainCheck } from './check-chain.ts'
import { REACH_M } from './limits.ts'
import { wantedInterface } from './line-need.ts'
import type { LineNeed } from './line-need.ts'
import { inOrder, minimalOf } from './minimal.ts'
import { patientPart, patientPartFor } from './patient-part.ts'
import type { ChainPatient } from './patient-part.ts'
import { partKey } from './part.ts'
import type { Part } from './part.ts'
import type { Refusal, RefusalCode } from './refusal.ts'
import { searchChains } from './search.ts'
import { lendersOf, stockOf } from './stock.ts'
import type { Stocked } from './stock.ts'
import { USUAL_PARTS } from './usual-parts.ts'
import { wantedOf } from './wanted.ts'
import type { Wanted } from './wanted.ts'

export interface SolveQuestion {
  readonly shelf: Shelf
  readonly wardId?: string
  readonly wanted: SetUp | Wanted
  readonly patient: ChainPatient
  readonly barometricKpa?: number
  /** Parts to name where no ward has what is missing; the usual ones where absent. */
  readonly otherParts?: readonly Stocked[]
}

export interface CheckedChain {
  readonly chain: Chain
  readonly check: ChainCheck
}

export interface MissingPart {
  readonly part: Part
  readonly count: number
  /** Wards that have it: borrow it. Empty: it must be got from elsewhere. */
  readonly wardIds: readonly string[]
}

export type ChainAnswer =
  | {
      readonly kind: 'chains'
      readonly best: CheckedChain
      /** The other minimal chains, best first. */
      readonly alternatives: readonly CheckedChain[]
    }
  | {
      readonly kind: 'missing'
      readonly missing: readonly MissingPart[]
      /** The chain once they are there. */
      readonly withThem: CheckedChain
      /** Other sets of as many parts. */
      readonly orElse: readonly (readonly MissingPart[])[]
    }
  | {
      readonly kind: 'refused'
      /** Of the chain with the fewest faults; empty list of chains where the ends meet nowhere. */
      readonly refusals: readonly Refusal[]
      readonly nearest: Chain | null
    }

/** Most parts that may be missing before the answer is no. */
const MISSING_MAX = 4

/** An unknown ward, interface, size or source gives UNKNOWN_ID. */
export function solveChains(question: SolveQuestion): ChainAnswer {
  const wanted = isSetUp(question.wanted) ? wantedOf(question.wanted) : question.wanted
  const stock = stockOf({ ...question, hasCollarOn: wanted.humidification === 'collar' })
  requireKnown(question, stock, wanted)
  if (!takesCollar(stock, wanted)) return withoutPorts(stock, wanted)
  const all = [...stock, ...(question.otherParts ?? USUAL_PARTS)]
  const patient = patientFor(stock, wanted)
  let refused: readonly CheckedChain[] = []
  let isAllSettled = true
  for (let missing = 0; missing <= MISSING_MAX; missing += 1) {
    const found = searchChains({
      patient,
      need: firstNeed(wanted),
      wanted,
      stock: missing === 0 ? stock.filter(({ isAtHand }) => isAtHand) : all,
      missing,
      isHopeless: (chain) => isWishAtFault({ chain, check: checkChain({ ...question, chain }) }),
    }).map((chain) => ({ chain, check: checkChain({ ...question, chain }) }))
    const accepted = found.filter(({ check }) => check.isAccepted)
    if (accepted.length > 0) return answerOf(accepted, all, missing)
    if (refused.length === 0) refused = found
    isAllSettled &&= found.every(isSettled)
    if (refused.length > 0 && isAllSettled) break
  }
  return refusal(refused)
}

/** Faults of what is wanted itself: no further part mends them. */
const SETTLED: readonly RefusalCode[] = [
  'WRONG_SIZE',
  'OPENING_NOT_IN_USE',
  'MODE_CYCLES_PRESSURE',
  'NO_EVEN_MODE',
  'FRACTION_NOT_ON_SCALE',
  'BUBBLE_BEFORE_JET',
  'BUBBLE_BEFORE_RESERVOIR',
  'EXCHANGER_WITH_HUMIDIFIER',
  'EXCHANGER_WORN_WITH_HUMIDIFIER',
  'TWO_HUMIDIFIERS',
  'HIGH_FLOW_WITHOUT_HEATED',
  'DRY_GAS_TO_NECK',
]
const RATED: readonly RefusalCode[] = ['FLOW_BELOW_RATED', 'FLOW_ABOVE_RATED']

function isSettled({ chain, check }: CheckedChain): boolean {
  return check.refusals.some((one) => SETTLED.includes(one.code) || isRatedFault(chain, one))
}

/** Faults that every chain of this wish has: of its interface, its size and flow, of what is set on its source. */
const OF_THE_WISH: readonly RefusalCode[] = [
  'WRONG_SIZE',
  'MODE_CYCLES_PRESSURE',
  'NO_EVEN_MODE',
  'FRACTION_NOT_ON_SCALE',
]

function isWishAtFault({ chain, check }: CheckedChain): boolean {
  return check.refusals.some((one) => OF_THE_WISH.includes(one.code) || isRatedFault(chain, one))
}

/** The flow at the interface is the one wished, whatever leads to it. */
function isRatedFault(chain: Chain, { code, part }: Refusal): boolean {
  const isOfInterface = part !== undefined && chain.parts[part]?.part.kind === 'interface'
  return isOfInterface && RATED.includes(code)
}

function isSetUp(wanted: SetUp | Wanted): wanted is SetUp {
  return 'family' in wanted
}

function requireKnown(question: SolveQuestion, stock: readonly Stocked[], wanted: Wanted): void {
  const { wardId, shelf } = question
  if (wardId !== undefined)
    requireOneOf(
      'wardId',
      wardId,
      shelf.wards.map(({ id }) => id),
    )
  const ids = stock.map(({ part }) => part.id)
  const interfaceId = wantedInterface(wanted)
  if (interfaceId !== null) requireOneOf('interfaceId', interfaceId, ids)
  requireOneOf('sourceId', wanted.sourceId, ids)
}

function requireOneOf(path: string, value: string, oneOf: readonly string[]): void {
  if (oneOf.includes(value)) return
  throw new DomainError({ code: 'UNKNOWN_ID', path, value, limit: { oneOf } })
}

/** A collar sits on air ports and nowhere else: without them the search would leave it out and nobody would see. */
function takesCollar(stock: readonly Stocked[], wanted: Wanted): boolean {
  if (wanted.humidification !== 'collar') return true
  return interfaceOf(stock, wanted)?.inlets.includes('air-ports') === true
}

function withoutPorts(stock: readonly Stocked[], wanted: Wanted): ChainAnswer {
  const part = interfaceOf(stock, wanted) ?? patientFor(stock, wanted)
  const refusals = [{ code: 'NO_AIR_PORTS', values: { part: part.label } }] as const
  return { kind: 'refused', refusals, nearest: null }
}

function interfaceOf(stock: readonly Stocked[], wanted: Wanted): Part | undefined {
  const id = wantedInterface(wanted)
  return stock.find(({ part }) => part.id === id)?.part
}

/** Where the interface goes; without one, the tracheostomy tube. */
function patientFor(stock: readonly Stocked[], wanted: Wanted): Part {
  const worn = interfaceOf(stock, wanted)?.outlet ?? null
  return patientPartFor(worn) ?? patientPart('conical-15-male')
}

function firstNeed(wanted: Wanted): LineNeed {
  const { humidification } = wanted
  return {
    stretch: 'main',
    interfaceLeft: wanted.interfaceId !== null,
    humidifierLeft: humidification !== 'none' && humidification !== 'collar',
    collarLeft: false,
    demandLpm: wanted.flowLpm,
    hasFilter: false,
    hasOpening: false,
    hasTube: false,
    reachLeftMm: Math.round(REACH_M.value * MM_PER_M),
  }
}

const MM_PER_M = 1000

function answerOf(
  accepted: readonly CheckedChain[],
  all: readonly Stocked[],
  missingMax: number,
): ChainAnswer {
  const checks = new Map(accepted.map((one) => [one.chain, one]))
  const ordered = inOrder(minimalOf(accepted.map(({ chain }) => chain)))
    .map((chain) => checks.get(chain))
    .filter((one) => one !== undefined)
  const [best, ...alternatives] = ordered
  if (best === undefined) return refusal([])
  if (missingMax === 0) return { kind: 'chains', best, alternatives }
  return missingAnswer(ordered, all)
}

/** Parts that a ward can lend before parts that none has. */
function missingAnswer(ordered: readonly CheckedChain[], all: readonly Stocked[]): ChainAnswer {
  const sets = ordered.map((one) => ({ one, missing: missingIn(one.chain, all) }))
  const nowhere = (missing: readonly MissingPart[]) =>
    missing.filter(({ wardIds }) => wardIds.length === 0).length
  const [first, ...others] = sets.toSorted((a, b) => nowhere(a.missing) - nowhere(b.missing))
  if (first === undefined) return refusal([])
  const keys = new Set([missingKey(first.missing)])
  const orElse = others.flatMap(({ missing }) => {
    const key = missingKey(missing)
    if (keys.has(key)) return []
    keys.add(key)
    return [missing]
  })
  return { kind: 'missing', missing: first.missing, withThem: first.one, orElse }
}

function missingKey(missing: readonly MissingPart[]): string {
  return missing.map(({ part, count }) => `${partKey(part)}×${count}`).join(' ')
}

function missingIn(chain: Chain, all: readonly Stocked[]): readonly MissingPart[] {
  const away = all.filter(({ isAtHand }) => !isAtHand)
  return away.flatMap((stocked) => {
    const count = chain.parts.filter(({ part }) => part === stocked.part).length
    return count === 0 ? [] : [{ part: stocked.part, count, wardIds: lendersOf(stocked) }]
  })
}

/** The chain that comes nearest says why not. */
function refusal(refused: readonly CheckedChain[]): ChainAnswer {
  const fewest = Math.min(...refused.map(({ check }) => check.refusals.length))
  const near = refused.filter(({ check }) => check.refusals.length === fewest)
  const [nearest] = inOrder(near.map(({ chain }) => chain))
  const check = near.find(({ chain }) => chain === nearest)?.check
  if (nearest === undefined || check === undefined)
    return { kind: 'refused', refusals: [{ code: 'ENDS_MEET_NOWHERE', values: {} }], nearest: null }
  return { kind: 'refused', refusals: check.refusals, nearest }
}
