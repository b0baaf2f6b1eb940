// Puts chains together by hand: parts in a line, and further lines joined on. Leaves out judging them.
import { assert } from '../errors.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import type { Chain, Join, PartSetting, PlacedPart } from './chain.ts'
import type { Part } from './part.ts'
import { stockOf } from './stock.ts'

/** A part alone, or with what is set on it. */
export type HandPart = Part | readonly [Part, PartSetting]

/** Parts in order, each giving into the first inlet of the next. */
export function inLine(parts: readonly HandPart[]): Chain {
  return {
    parts: parts.map(placedBy),
    joins: parts.slice(1).map((_, i): Join => ({ from: i, to: i + 1, at: 'inlet', index: 0 })),
  }
}

function placedBy(one: HandPart): PlacedPart {
  return 'kind' in one ? { part: one, setting: {} } : { part: one[0], setting: one[1] }
}

/** Another line put before a chain, its last part giving into the place named. */
export function joinedOn(
  chain: Chain,
  line: readonly HandPart[],
  place: Pick<Join, 'to' | 'at' | 'index'>,
): Chain {
  const before = inLine(line)
  const shift = before.parts.length
  const moved = chain.joins.map((join) => ({
    ...join,
    from: join.from + shift,
    to: join.to + shift,
  }))
  const last: Join = { ...place, to: place.to + shift, from: shift - 1 }
  return { parts: [...before.parts, ...chain.parts], joins: [...before.joins, ...moved, last] }
}

/** A second branch fed by a part that already gives elsewhere. */
export function branched(chain: Chain, from: number, line: readonly HandPart[]): Chain {
  const branch = inLine(line)
  const shift = chain.parts.length
  const moved = branch.joins.map((join) => ({
    ...join,
    from: join.from + shift,
    to: join.to + shift,
  }))
  const first: Join = { from, to: shift, at: 'inlet', index: 0 }
  return { parts: [...chain.parts, ...branch.parts], joins: [...chain.joins, first, ...moved] }
}

const DEMO_STOCK = stockOf({ shelf: DEMO_SHELF, hasCollarOn: false })
const DEMO_COLLAR_STOCK = stockOf({ shelf: DEMO_SHELF, hasCollarOn: true })

/** A part of the demo shelf by its id: `tubing-2`, `simple-mask/adult`. */
export function demoPart(id: string, options: { readonly hasCollarOn?: boolean } = {}): Part {
  const stock = options.hasCollarOn === true ? DEMO_COLLAR_STOCK : DEMO_STOCK
  const found = stock.find(({ part }) => part.id === id)
  assert(found !== undefined, id)
  return found.part
}
