// The ways on from the set-up in sight: to its bedside sheet and to its chain of parts. Leaves out both.
import { useMemo } from 'react'
import type { SetUp } from '../../kit/set-up.ts'
import { ChainDoor } from '../chain/chain-door.tsx'
import { candidateOf } from '../sheet/sheet-address.ts'
import { SheetButton } from '../sheet/sheet-button.tsx'
import type { PlanRequest } from '../worker/core-api.ts'

export interface DoorsProps {
  readonly request: PlanRequest
  readonly setUp: SetUp
}

/** None where the shelf does not build exactly this set-up. */
export function Doors({ request, setUp }: DoorsProps) {
  const candidate = useMemo(() => candidateOf(setUp, request), [setUp, request])
  return (
    <div className="buttons">
      {candidate === undefined ? null : <SheetButton request={request} id={candidate.id} />}
      <ChainDoor setUp={candidate?.setUp ?? null} wardId={request.wardId} />
    </div>
  )
}
