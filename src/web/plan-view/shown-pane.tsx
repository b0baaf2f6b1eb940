// The middle of Bedside: the set-up in sight and what is tried on it; the list beside it stays that of the case. Leaves out the list.
import { lazy, Suspense, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import type { Shelf } from '../../kit/shelf.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { SHOWN_WORDS } from '../../words/web-trial-text.ts'
import { useSettled } from '../pages/use-settled.ts'
import type { PlanRequest, TrialRequest } from '../worker/core-api.ts'
import { useTrial } from '../worker/use-trial.ts'
import { AirCard } from './air-card.tsx'
import type { Pin } from './pins.ts'
import { isTweaked, NO_TWEAK, ON_NOW, tweakedSetUp } from './shown.ts'
import type { Shown, Tweak } from './shown.ts'
import { ShownCard } from './shown-card.tsx'

/** Comes beside the answer and holds nothing up. */
const HumidityLine = lazy(async () => ({
  default: (await import('./humidity-line.tsx')).HumidityLine,
}))

const Doors = lazy(async () => ({ default: (await import('./doors.tsx')).Doors }))

export interface ShownPaneProps {
  readonly request: PlanRequest
  readonly plan: Plan
  readonly shelf: Shelf
  readonly shown: Shown
  readonly onTakeRate: (ratePerMin: number) => void
  readonly pins: PinActions
}

export interface PinActions {
  /** Null where it is not known or is room air. */
  readonly onNow: RankedSetUp | null
  readonly onPin: (pin: Pin) => void
  readonly onBeside: (before: Pin, after: Pin) => void
}

/** Keyed by plan and set-up, so that a trial ends where another set-up comes in sight. */
export function ShownPane(props: ShownPaneProps) {
  const { request, plan, shelf, shown, onTakeRate, pins } = props
  const [tweak, setTweak] = useState<Tweak>(NO_TWEAK)
  const question = useMemo(() => questionOf(shown, tweak), [shown, tweak])
  const trial = useTrial('shown', request, question)
  if (shown.kind === 'air') return <AirCard plan={plan} trial={trial} />
  return (
    <ShownCard
      plan={plan}
      shelf={shelf}
      shown={shown}
      tweak={tweak}
      onTweak={setTweak}
      onTakeRate={onTakeRate}
      trial={trial}
    >
      <Water request={request} shown={shown} tweak={tweak} />
      <PinButtons shown={shown} tweak={tweak} pins={pins} />
      <WaysOn request={request} shown={shown} tweak={tweak} />
    </ShownCard>
  )
}

interface TriedProps {
  readonly request: PlanRequest
  readonly shown: Extract<Shown, { kind: 'row' }>
  readonly tweak: Tweak
}

function Water({ request, shown, tweak }: TriedProps) {
  const setUp = useMemo(() => tweakedSetUp(shown.row.setUp, tweak), [shown, tweak])
  return (
    <Suspense fallback={<p className="humidity-line" />}>
      <HumidityLine request={request} setUp={setUp} />
    </Suspense>
  )
}

/** Looked up when the dials stand still, so that a drag never waits for it. */
function WaysOn({ request, shown, tweak }: TriedProps) {
  const setUp = useMemo(() => tweakedSetUp(shown.row.setUp, tweak), [shown, tweak])
  const settled = useSettled(setUp)
  if (settled !== setUp) return null
  return (
    <Suspense fallback={null}>
      <Doors request={request} setUp={settled} />
    </Suspense>
  )
}

function PinButtons(props: {
  readonly shown: Extract<Shown, { kind: 'row' }>
  readonly tweak: Tweak
  readonly pins: PinActions
}) {
  const { shown, tweak, pins } = props
  const { onNow } = pins
  const own: Pin = {
    row: { ...shown.row, setUp: tweakedSetUp(shown.row.setUp, tweak) },
    ratePerMin: tweak.ratePerMin,
  }
  const isOnNow = shown.key === ON_NOW && !isTweaked(tweak)
  return (
    <div className="buttons">
      <Button className="button" onPress={() => pins.onPin(own)}>
        {SHOWN_WORDS.pin}
      </Button>
      {onNow === null || isOnNow ? null : (
        <Button
          className="button"
          onPress={() => pins.onBeside({ row: onNow, ratePerMin: null }, own)}
        >
          {SHOWN_WORDS.beside}
        </Button>
      )}
    </div>
  )
}

function questionOf(shown: Shown, tweak: Tweak): TrialRequest['question'] {
  const setUp = shown.kind === 'air' ? null : tweakedSetUp(shown.row.setUp, tweak)
  return tweak.ratePerMin === null ? { setUp } : { setUp, ratePerMin: tweak.ratePerMin }
}
