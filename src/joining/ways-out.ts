// Where surplus and expired gas can leave a chain: ports, loose interfaces, open arms that nothing closes. Leaves out how much leaves.
import { placed } from './chain.ts'
import type { Chain } from './chain.ts'

export interface WayOut {
  readonly part: number
  readonly by: 'ports' | 'open-end'
}

export interface Openings {
  /** At the patient: nothing but short fittings lies between. */
  readonly waysOut: readonly WayOut[]
  /** With a tube or hose between it and the patient: gas is lost there, and breath does not leave by it. */
  readonly tooEarly: readonly WayOut[]
  /** Open arms that a cap or another closed part closes. */
  readonly capped: readonly number[]
}

export function openingsOfChain(chain: Chain): Openings {
  const all = chain.parts.map((_, at) => at).flatMap((at) => openingsAt(chain, at))
  return {
    waysOut: all.filter(({ part }) => !hasTubeAfter(chain, part)),
    tooEarly: all.filter(({ part }) => hasTubeAfter(chain, part)),
    capped: chain.parts.map((_, at) => at).filter((at) => cappedEnds(chain, at) > 0),
  }
}

function openingsAt(chain: Chain, at: number): readonly WayOut[] {
  const { part } = placed(chain, at)
  if (part.isOpen) return [{ part: at, by: 'ports' }]
  return part.openEnds.length > cappedEnds(chain, at) ? [{ part: at, by: 'open-end' }] : []
}

/** A hose or bag on an open arm leaves it open; a cap, a closed circuit or a supply closes it. */
function cappedEnds(chain: Chain, at: number): number {
  return chain.joins.filter(
    (join) =>
      join.to === at &&
      join.at === 'open-end' &&
      !LEAVES_OPEN.includes(placed(chain, join.from).part.kind),
  ).length
}

const LEAVES_OPEN: readonly string[] = ['breathing-hose', 'reservoir', 'exhalation-port']

function hasTubeAfter(chain: Chain, at: number): boolean {
  const next = chain.joins.find((join) => join.from === at && join.at === 'inlet')
  if (next === undefined) return false
  const { part } = placed(chain, next.to)
  return (part.tube !== null && part.kind !== 'interface') || hasTubeAfter(chain, next.to)
}
