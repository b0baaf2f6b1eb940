// That the core is at work, and how far. Leaves out the answer.
import { Label, ProgressBar } from 'react-aria-components'
import { PAGE_WORDS, progressText } from '../../words/web-page-text.ts'

export interface WorkingProps {
  readonly isWorking: boolean
  readonly progress: { readonly done: number; readonly total: number } | null
  /** Whether an older answer is still in sight. */
  readonly isStale: boolean
}

export function Working({ isWorking, progress, isStale }: WorkingProps) {
  if (!isWorking) return <div className="working" data-working="false" />
  const share = progress === null ? 0 : progress.done / progress.total
  return (
    <div className="working" data-working="true">
      <ProgressBar value={share} maxValue={1}>
        <Label>{isStale ? PAGE_WORDS.workingStale : PAGE_WORDS.working}</Label>
        <span className="progress-count">
          {progress === null ? '' : progressText(progress.done, progress.total)}
        </span>
        <span className="progress-track" aria-hidden="true">
          <span className="progress-fill" style={{ width: `${share * 100}%` }} />
        </span>
      </ProgressBar>
    </div>
  )
}
