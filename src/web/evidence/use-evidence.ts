// The outside checks, run once a session in a worker of their own. Leaves out how they are shown.
import { proxy } from 'comlink'
import { useEffect, useState } from 'react'
import type { EvidenceAnswer } from '../worker/evidence-answer.ts'
import { createLatestCall } from '../worker/latest-call.ts'

export interface EvidenceState {
  readonly answer: EvidenceAnswer | null
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly failure: string | null
}

/** The checks ask nothing of the reader, so their answer holds until the page is left for good. */
let kept: EvidenceAnswer | null = null

export function useEvidence(): EvidenceState {
  const [state, setState] = useState<EvidenceState>({ answer: kept, progress: null, failure: null })
  useEffect(() => {
    if (kept !== null) return undefined
    const call = createLatestCall()
    let isCurrent = true
    const show = (next: EvidenceState): void => {
      if (isCurrent) setState(next)
    }
    const onProgress = proxy((done: number, total: number) =>
      show({ answer: null, progress: { done, total }, failure: null }),
    )
    const ask = async (): Promise<void> => {
      const answer = await call.ask(async (core) => await core.evidence(onProgress))
      if (answer === undefined) return
      kept = answer
      show({ answer, progress: null, failure: null })
    }
    ask().catch((thrown: unknown) =>
      show({ answer: null, progress: null, failure: String(thrown) }),
    )
    return () => {
      isCurrent = false
      call.end()
    }
  }, [])
  return state
}
