// The core's answer to what stands in a form of Gas: the newest question wins, and the answer before stays until the next is there. Leaves out what is asked.
import { releaseProxy, wrap } from 'comlink'
import type { Remote } from 'comlink'
import { useEffect, useMemo, useRef, useState } from 'react'
import type { Answer } from '../worker/core-api.ts'
import type { GasApi } from './gas-api.ts'
import type { FieldProblem, ReadForm } from './read-form.ts'

export type GasAnswer<Q, A> =
  | { readonly kind: 'refused'; readonly problems: readonly FieldProblem[] }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly failure: string }
  /** `isStale` while the next is on its way. */
  | {
      readonly kind: 'answered'
      readonly question: Q
      readonly value: A
      readonly isStale: boolean
    }

interface Outcome<Q, A> {
  readonly key: string
  readonly question: Q
  readonly answer: Answer<A> | { readonly failure: string }
}

/** `ask` must stay the same function from draw to draw. */
export function useGasAnswer<Q, A>(
  read: ReadForm<Q>,
  ask: (core: Remote<GasApi>, question: Q) => Promise<Answer<A>>,
): GasAnswer<Q, A> {
  const core = useCore()
  const key = read.ok ? JSON.stringify(read.value) : null
  const question = useMemo(() => {
    // Safe: the text was written from a question just above; questions are plain data and come back equal.
    return key === null ? null : (JSON.parse(key) as Q)
  }, [key])
  const [outcome, setOutcome] = useState<Outcome<Q, A> | null>(null)
  useEffect(() => {
    if (question === null || key === null || core.current === null) return undefined
    let isCurrent = true
    const keep = (answer: Outcome<Q, A>['answer']): void => {
      if (isCurrent) setOutcome({ key, question, answer })
    }
    ask(core.current, question).then(keep, (thrown: unknown) => keep({ failure: String(thrown) }))
    return () => {
      isCurrent = false
    }
  }, [key, question, core, ask])
  if (!read.ok) return { kind: 'refused', problems: read.problems }
  if (outcome === null) return { kind: 'waiting' }
  const { answer } = outcome
  const isStale = outcome.key !== key
  if (isStale && !('ok' in answer && answer.ok)) return { kind: 'waiting' }
  if ('failure' in answer) return { kind: 'failed', failure: answer.failure }
  if (!answer.ok) return { kind: 'refused', problems: [{ ...answer.problem, field: '' }] }
  return { kind: 'answered', question: outcome.question, value: answer.value, isStale }
}

/** One worker for the life of a part. */
function useCore(): { readonly current: Remote<GasApi> | null } {
  const held = useRef<Remote<GasApi> | null>(null)
  useEffect(() => {
    const worker = new Worker(new URL('./gas-worker.ts', import.meta.url), { type: 'module' })
    const core = wrap<GasApi>(worker)
    held.current = core
    return () => {
      held.current = null
      core[releaseProxy]()
      worker.terminate()
    }
  }, [])
  return held
}
