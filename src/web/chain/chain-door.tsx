// One tap from the set-up in sight to its chain of parts, which Chain begins with from then on. Leaves out the chain.
import { useEffect, useMemo } from 'react'
import { Link } from 'wouter'
import { CHAIN_PAGE } from '../../words/chain-page-text.ts'
import type { SetUp } from '../../kit/set-up.ts'
import { chainHref, namedBy, searchOf } from './chain-address.ts'
import { keepInSight } from './in-sight.ts'

/** `setUp` as the shelf builds it; null where it does not, and then nothing is in sight for Chain. */
export function ChainDoor(props: {
  readonly setUp: SetUp | null
  readonly wardId: string | undefined
}) {
  const { setUp, wardId } = props
  const named = useMemo(() => (setUp === null ? null : namedBy(setUp, wardId)), [setUp, wardId])
  useEffect(() => {
    keepInSight(localStorage, named === null ? '' : searchOf(named))
  }, [named])
  if (named === null) return null
  return (
    <Link className="button" href={chainHref(named)}>
      {CHAIN_PAGE.toChain()}
    </Link>
  )
}
