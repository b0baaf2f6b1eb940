// What the worker of chains answers to a question: the newest wins, and the answer before stays until the next is there. Leaves out what is asked.
import type { Remote } from 'comlink'
import { useCallback, useEffect, useState } from 'react'
import type { Problem } from '../../errors.ts'
import type { ChainApi } from './chain-api.ts'
import type { Answer } from './core-api.ts'
import { createSteadyCall } from './steady-call.ts'

export type ChainWait<Q, A> =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly failure: string; readonly retry: () => void }
  | { readonly kind: 'refused'; readonly problem: Problem }
  /** `isStale` while the next is on its way. */
  | {
      readonly kind: 'answered'
      readonly question: Q
      readonly value: A
      readonly isStale: boolean
    }

/** One worker for the life of the page; it starts with the first question. */
const CALL = createSteadyCall<ChainApi>(
  () => new Worker(new URL('./chain-worker.ts', import.meta.url), { type: 'module' }),
)

interface Outcome<Q, A> {
  readonly question: Q
  readonly attempt: number
  readonly answer: Answer<A> | { readonly failure: string }
}

/** Null asks nothing and waits. The same question object is asked once; `ask` must stay the same function from draw to draw. A slot is one component's. */
export function useChainAnswer<Q extends object, A>(asked: {
  readonly slot: string
  readonly question: Q | null
  readonly ask: (core: Remote<ChainApi>, question: Q) => Promise<Answer<A>>
}): ChainWait<Q, A> {
  const { slot, question, ask } = asked
  const [attempt, setAttempt] = useState(0)
  const [outcome, setOutcome] = useState<Outcome<Q, A> | null>(null)
  const retry = useCallback(() => setAttempt((before) => before + 1), [])
  useEffect(() => {
    if (question === null) return undefined
    let isCurrent = true
    const keep = (answer: Outcome<Q, A>['answer'] | undefined): void => {
      if (isCurrent && answer !== undefined) setOutcome({ question, attempt, answer })
    }
    CALL.ask(slot, async (core) => await ask(core, question)).then(keep, (thrown: unknown) =>
      keep({ failure: String(thrown) }),
    )
    return () => {
      isCurrent = false
    }
  }, [slot, question, ask, attempt])
  if (outcome === null) return { kind: 'waiting' }
  const { answer } = outcome
  const isStale = outcome.question !== question || outcome.attempt !== attempt
  if (isStale && !('ok' in answer && answer.ok)) return { kind: 'waiting' }
  if ('failure' in answer) return { kind: 'failed', failure: answer.failure, retry }
  if (!answer.ok) return { kind: 'refused', problem: answer.problem }
  return { kind: 'answered', question: outcome.question, value: answer.value, isStale }
}
