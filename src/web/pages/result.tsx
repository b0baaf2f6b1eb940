// What stands where the answer is: the plan, work going on, what is refused, or a failure. Leaves out the form.
import { Button } from 'react-aria-components'
import type { ReadCase } from '../../patient/read-case.ts'
import { announcedText } from '../../words/web-answer-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { PAGE_WORDS, refusedCountText } from '../../words/web-page-text.ts'
import { useNowMs } from '../parts/clock.tsx'
import { PlanView } from '../plan-view/plan-view.tsx'
import { Validity, validUntilMs } from '../plan-view/validity.tsx'
import type { PlanState } from '../worker/use-plan.ts'
import { Refused } from './refused.tsx'
import { Working } from './working.tsx'

export interface ResultProps {
  readonly read: ReadCase
  readonly state: PlanState
  readonly typedAtMs: number
  readonly isDemoShelf: boolean
  readonly onGoToForm: () => void
  /** Says that what is typed holds now, and asks again. */
  readonly onAnew: () => void
  readonly onTakeRate: (ratePerMin: number) => void
}

export function Result(props: ResultProps) {
  return (
    <>
      <output className="unseen">{saidText(props)}</output>
      <Shown {...props} />
    </>
  )
}

/** What a screen reader is told as it changes. */
function saidText({ read, state }: ResultProps): string {
  if (!read.ok) return refusedCountText(read.problems.length)
  return state.isWorking || state.planned === null ? '' : announcedText(state.planned.plan)
}

function Shown(props: ResultProps) {
  const { read, state, isDemoShelf, onGoToForm, onAnew, onTakeRate } = props
  const nowMs = useNowMs()
  if (!read.ok) return <Refused problems={read.problems} onGo={onGoToForm} />
  const { planned, isWorking, problem, failure } = state
  if (problem !== null || failure !== null) {
    return (
      <div className="refused" role="alert">
        <h3>{PAGE_WORDS.failedHeading}</h3>
        <p>{PAGE_WORDS.failedWhy}</p>
        <p>{problem === null ? failure : problemLineText(problem)}</p>
        <Button className="button" onPress={onAnew}>
          {PAGE_WORDS.tryAgain}
        </Button>
      </div>
    )
  }
  return (
    <>
      <Working isWorking={isWorking} progress={state.progress} isStale={planned !== null} />
      {planned === null ? null : (
        <>
          <Validity plan={planned.plan} typedAtMs={props.typedAtMs} nowMs={nowMs} onAnew={onAnew} />
          <div
            className="plan"
            data-stale={isWorking}
            data-old={nowMs >= validUntilMs(planned.plan, props.typedAtMs)}
          >
            <PlanView
              planned={planned}
              warnings={read.warnings}
              isDemoShelf={isDemoShelf}
              onTakeRate={onTakeRate}
            />
          </div>
        </>
      )}
    </>
  )
}
