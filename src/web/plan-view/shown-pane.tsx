// The middle of Bedside: the set-up in sight and what is tried on it; the list beside it stays that of the case. Leaves out the list.
import { useMemo, useState } from 'react'
import type { Shelf } from '../../kit/shelf.ts'
import type { Plan } from '../../planning/plan-types.ts'
import type { PlanRequest, TrialRequest } from '../worker/core-api.ts'
import { useTrial } from '../worker/use-trial.ts'
import { AirCard } from './air-card.tsx'
import { NO_TWEAK, tweakedSetUp } from './shown.ts'
import type { Shown, Tweak } from './shown.ts'
import { SheetButton } from '../sheet/sheet-button.tsx'
import { ShownCard } from './shown-card.tsx'

export interface ShownPaneProps {
  readonly request: PlanRequest
  readonly plan: Plan
  readonly shelf: Shelf
  readonly shown: Shown
  readonly onTakeRate: (ratePerMin: number) => void
}

/** Keyed by plan and set-up, so that a trial ends where another set-up comes in sight. */
export function ShownPane({ request, plan, shelf, shown, onTakeRate }: ShownPaneProps) {
  const [tweak, setTweak] = useState<Tweak>(NO_TWEAK)
  const question = useMemo(() => questionOf(shown, tweak), [shown, tweak])
  const trial = useTrial('shown', request, question)
  if (shown.kind === 'air') return <AirCard plan={plan} trial={trial} />
  return (
    <>
      <ShownCard
        plan={plan}
        shelf={shelf}
        shown={shown}
        tweak={tweak}
        onTweak={setTweak}
        onTakeRate={onTakeRate}
        trial={trial}
      />
      <SheetButton request={request} setUp={tweakedSetUp(shown.row.setUp, tweak)} />
    </>
  )
}

function questionOf(shown: Shown, tweak: Tweak): TrialRequest['question'] {
  const setUp = shown.kind === 'air' ? null : tweakedSetUp(shown.row.setUp, tweak)
  return tweak.ratePerMin === null ? { setUp } : { setUp, ratePerMin: tweak.ratePerMin }
}
