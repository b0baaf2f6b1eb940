// A trial of one set-up, the newest that is there while a newer one is worked out. Leaves out drawing.
import { useEffect, useState } from 'react'
import type { PlanRequest, TrialRequest, Tried } from './core-api.ts'
import { useBench } from './bench.tsx'

export interface TrialState {
  /** The newest answer for this case and slot, perhaps of the question before. */
  readonly tried: Tried | null
  /** What `tried` answers. */
  readonly answered: TrialRequest['question'] | null
  readonly isCurrent: boolean
  readonly isFailed: boolean
}

interface Got {
  readonly request: PlanRequest
  readonly question: TrialRequest['question']
  readonly tried: Tried | null
}

/** `question` null asks nothing. The same question object is asked once. */
export function useTrial(
  slot: string,
  request: PlanRequest,
  question: TrialRequest['question'] | null,
): TrialState {
  const bench = useBench()
  const [got, setGot] = useState<Got | null>(null)
  useEffect(() => {
    if (question === null) return
    const ask = async (): Promise<void> => {
      const answer = await bench.ask(slot, async (core) => await core.trial({ request, question }))
      // Answers of a slot come in order. While a finger moves, the one before is better than none.
      if (answer !== undefined)
        setGot({ request, question, tried: answer.ok ? answer.value : null })
    }
    ask().catch(() => setGot({ request, question, tried: null }))
  }, [bench, slot, request, question])
  const isOfCase = got !== null && got.request === request && question !== null
  const isCurrent = isOfCase && got.question === question
  return {
    tried: isOfCase ? got.tried : null,
    answered: isOfCase && got.tried !== null ? got.question : null,
    isCurrent,
    isFailed: isCurrent && got.tried === null,
  }
}
