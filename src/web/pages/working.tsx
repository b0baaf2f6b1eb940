// That the core is at work, and how far. Leaves out the answer.
import { useId } from 'react'
import { PAGE_WORDS, progressText } from '../../words/web-page-text.ts'

export interface WorkingProps {
  readonly isWorking: boolean
  readonly progress: { readonly done: number; readonly total: number } | null
  /** Whether an older answer is still in sight. */
  readonly isStale: boolean
}

export function Working({ isWorking, progress, isStale }: WorkingProps) {
  const id = useId()
  if (!isWorking) return <div className="working" data-working="false" />
  const share = progress === null ? 0 : progress.done / progress.total
  return (
    <div className="working" data-working="true">
      <div className="working-line">
        <label htmlFor={id}>{isStale ? PAGE_WORDS.workingStale : PAGE_WORDS.working}</label>
        <span className="progress-count">
          {progress === null ? '' : progressText(progress.done, progress.total)}
        </span>
        <progress id={id} className="progress-track" value={share} max={1} />
      </div>
    </div>
  )
}
