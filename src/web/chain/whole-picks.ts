// Picks for an address that names a gas source or an interface alone: whatever the shelf joins to it, as near as can be to what was picked before. Leaves out humidifiers.
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { sizesFor } from '../../kit/sizes-for.ts'
import { namedBy } from './chain-address.ts'
import type { Named } from './chain-address.ts'
import type { ChainChoice, ChainSubject } from './chain-choice.ts'

/** What is named, and where that is one half of a set-up the other half too. */
export function wholePicks(asked: {
  readonly shelf: Shelf
  readonly named: Named
  readonly before: ChainChoice
  readonly about: ChainSubject | null
}): Named {
  const { shelf, named, before, about } = asked
  const { interfaceKey, sourceId } = named
  if ((interfaceKey === undefined) === (sourceId === undefined)) return named
  const fitting = candidateSetUps(shelf)
    .map(({ setUp }) => setUp)
    .filter(
      (setUp) =>
        (interfaceKey === undefined || isNamed(setUp, interfaceKey)) &&
        (sourceId === undefined || setUp.source.id === sourceId) &&
        (about === null || fits(setUp, about)),
    )
  const nearest = fitting.toSorted((a, b) => nearness(b, before) - nearness(a, before))[0]
  const others = nearest === undefined ? null : namedBy(nearest, before.wardId)
  return { ...others, ...named }
}

function isNamed({ interfaceId, size }: SetUp, key: string): boolean {
  return key === interfaceId || key === `${interfaceId}/${size}`
}

function fits({ family, size }: SetUp, { patient }: ChainSubject): boolean {
  return sizesFor(family, patient)[0]?.size === size
}

/** How many of the picks before it shares. */
function nearness(setUp: SetUp, before: ChainChoice): number {
  const named = Object.entries(namedBy(setUp, before.wardId) ?? {})
  // Safe: the keys are those of a choice.
  return named.filter(([key, value]) => before[key as keyof ChainChoice] === value).length
}
