// On 1,000 random shelves the solver finds what a brute-force search finds: the same minimal chains, or the same fewest missing parts. Leaves out collars and pressure, which have tests of their own.
import { describe, expect, it } from 'vitest'
import { openingsOfChain } from '../src/joining/ways-out.ts'
import { solveChains } from '../src/joining/solve-chains.ts'
import type { ChainAnswer, CheckedChain, MissingPart } from '../src/joining/solve-chains.ts'
import { feederOf, placed } from '../src/joining/chain.ts'
import type { Chain } from '../src/joining/chain.ts'
import { stockOf } from '../src/joining/stock.ts'
import { bruteForce } from './support/brute-force-chains.ts'
import type { BruteChain, Piece } from './support/brute-force-chains.ts'
import { randomShelf } from './support/random-shelf.ts'
import type { ShelfCase } from './support/random-shelf.ts'
import { randomStream } from './support/seed.ts'

const SHELVES = 1000
const WARD = 'a'

function piecesOf(one: ShelfCase): readonly Piece[] {
  return stockOf({ shelf: one.shelf, wardId: WARD, hasCollarOn: false }).flatMap((stocked) =>
    Array.from({ length: stocked.count }, (): Piece => stocked),
  )
}

/** The chain as the brute-force search writes it. */
function keyOf(chain: Chain, at: number = chain.parts.length - 2): string {
  const { part } = placed(chain, at)
  const feeds = part.inlets.map((_, i) => keyOf(chain, feederOf(chain, at, i) ?? 0))
  return `${part.id}(${feeds.toSorted().join()})`
}

function keysOf(chains: readonly CheckedChain[]): readonly string[] {
  return chains.map(({ chain }) => keyOf(chain)).toSorted()
}

function missingKey(missing: readonly MissingPart[]): string {
  return missing
    .map(({ part, count }) => `${part.id}×${count}`)
    .toSorted()
    .join(' ')
}

function bruteMissingKey(chain: BruteChain, pieces: readonly Piece[]): string {
  const away = new Set(pieces.filter(({ isAtHand }) => !isAtHand).map(({ part }) => part.id))
  return [...chain.parts]
    .filter(([id]) => away.has(id))
    .map(([id, count]) => `${id}×${count}`)
    .toSorted()
    .join(' ')
}

interface Compared {
  readonly expected: unknown
  readonly got: unknown
}

function compared(one: ShelfCase, answer: ChainAnswer): Compared {
  const pieces = piecesOf(one)
  const brute = bruteForce({ ...one, pieces })
  const missing = brute[0]?.missing ?? Number.POSITIVE_INFINITY
  if (missing > 4) return { expected: 'refused', got: answer.kind }
  if (missing > 0) {
    const expected = [...new Set(brute.map((chain) => bruteMissingKey(chain, pieces)))].toSorted()
    const got =
      answer.kind === 'missing'
        ? [answer.missing, ...answer.orElse].map(missingKey).toSorted()
        : answer.kind
    return { expected, got }
  }
  if (answer.kind !== 'chains') return { expected: 'chains', got: answer }
  const [first] = brute.toSorted(
    (a, b) => a.count - b.count || a.misplacedMm - b.misplacedMm || a.lengthMm - b.lengthMm,
  )
  const best = brute.find(({ key }) => key === keyOf(answer.best.chain))
  return {
    expected: {
      keys: brute.map(({ key }) => key).toSorted(),
      best: [first?.count, first?.misplacedMm, first?.lengthMm],
    },
    got: {
      keys: keysOf([answer.best, ...answer.alternatives]),
      best: [best?.count, best?.misplacedMm, best?.lengthMm],
    },
  }
}

describe('the solver on random shelves', () => {
  it('agrees with a brute-force search, and closes no chain', { timeout: 600_000 }, () => {
    const random = randomStream()
    const kinds = { chains: 0, missing: 0, refused: 0 }
    for (let i = 0; i < SHELVES; i += 1) {
      const one = randomShelf(random)
      const answer = solveChains({
        shelf: one.shelf,
        wardId: WARD,
        wanted: one.wanted,
        patient: one.patient,
        otherParts: [],
      })
      kinds[answer.kind] += 1
      const { expected, got } = compared(one, answer)
      expect(got, `shelf ${i}: ${JSON.stringify(one)}`).toEqual(expected)
      const chains = answer.kind === 'chains' ? [answer.best, ...answer.alternatives] : []
      for (const { chain } of chains)
        expect(openingsOfChain(chain).waysOut.length).toBeGreaterThan(0)
    }
    expect(Math.min(kinds.chains, kinds.missing, kinds.refused)).toBeGreaterThan(SHELVES / 50)
  })
})
