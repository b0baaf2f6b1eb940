// What stands where the answer is: the plan, work going on, what is refused, or a failure. Leaves out the form.
import { Button } from 'react-aria-components'
import type { ReadCase } from '../../patient/read-case.ts'
import { announcedText } from '../../words/web-answer-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { PAGE_WORDS, refusedCountText } from '../../words/web-page-text.ts'
import { PlanView } from '../plan-view/plan-view.tsx'
import type { PlanState } from '../worker/use-plan.ts'
import { Refused } from './refused.tsx'
import { Working } from './working.tsx'

export interface ResultProps {
  readonly read: ReadCase
  readonly state: PlanState
  readonly isDemoShelf: boolean
  readonly onGoToForm: () => void
  readonly onRetry: () => void
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

function Shown({ read, state, isDemoShelf, onGoToForm, onRetry, onTakeRate }: ResultProps) {
  if (!read.ok) return <Refused problems={read.problems} onGo={onGoToForm} />
  const { planned, isWorking, problem, failure } = state
  if (problem !== null || failure !== null) {
    return (
      <div className="refused" role="alert">
        <h3>{PAGE_WORDS.failedHeading}</h3>
        <p>{PAGE_WORDS.failedWhy}</p>
        <p>{problem === null ? failure : problemLineText(problem)}</p>
        <Button className="button" onPress={onRetry}>
          {PAGE_WORDS.tryAgain}
        </Button>
      </div>
    )
  }
  return (
    <>
      <Working isWorking={isWorking} progress={state.progress} isStale={planned !== null} />
      {planned === null ? null : (
        <div className="plan" data-stale={isWorking}>
          <PlanView
            planned={planned}
            warnings={read.warnings}
            isDemoShelf={isDemoShelf}
            onTakeRate={onTakeRate}
          />
        </div>
      )}
    </>
  )
}
