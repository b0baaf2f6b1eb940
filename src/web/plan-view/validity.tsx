// Until when a plan stands, by the clock, and what is said when it has run out. Leaves out the plan.
import { Button } from 'react-aria-components'
import type { Plan } from '../../planning/plan-types.ts'
import {
  printedOnText,
  ranOutText,
  VALID_WORDS,
  validUntilText,
} from '../../words/web-bedside-text.ts'
import { dateAndTime, hourAndMinute } from '../parts/clock.tsx'

export interface ValidityProps {
  readonly plan: Plan
  readonly typedAtMs: number
  readonly nowMs: number
  readonly onAnew: () => void
}

const MS_PER_MIN = 60_000

/** Counted from when the case was typed or confirmed: an old reading does not become a new one by reloading. */
export function validUntilMs(plan: Plan, typedAtMs: number): number {
  return typedAtMs + plan.reassess.withinMin * MS_PER_MIN
}

export function Validity({ plan, typedAtMs, nowMs, onAnew }: ValidityProps) {
  const untilMs = validUntilMs(plan, typedAtMs)
  const until = hourAndMinute(untilMs)
  const isOld = nowMs >= untilMs
  return (
    <div className="validity" data-old={isOld}>
      {isOld ? (
        <div role="alert">
          <h3>{VALID_WORDS.old}</h3>
          <p>{ranOutText(hourAndMinute(typedAtMs), until)}</p>
          <p>{VALID_WORDS.oldHelp}</p>
          <Button className="button" onPress={onAnew}>
            {VALID_WORDS.anew}
          </Button>
        </div>
      ) : (
        <p>{validUntilText(until, plan.reassess)}</p>
      )}
      <p className="paper-only">
        {printedOnText({ date: dateAndTime(nowMs), modelVersion: plan.modelVersion })}
      </p>
    </div>
  )
}
