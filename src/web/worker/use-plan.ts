// The plan of the case in the form: the newest question wins. Leaves out how it is shown.
import { proxy } from 'comlink'
import { useEffect, useMemo, useState } from 'react'
import type { Problem } from '../../errors.ts'
import type { Plan } from '../../planning/plan-types.ts'
import type { Answer, PlanRequest } from './core-api.ts'
import { useLatestCall } from './use-latest-call.ts'

export interface Planned {
  readonly request: PlanRequest
  readonly plan: Plan
}

export interface PlanState {
  /** The newest answer; while `isWorking`, still that of the case before. */
  readonly planned: Planned | null
  readonly isWorking: boolean
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly problem: Problem | null
  readonly failure: string | null
}

/** One question; asking again makes a new one. */
interface Question {
  readonly request: PlanRequest
  readonly attempt: number
}

interface Outcome {
  readonly question: Question
  readonly planned: Planned | null
  readonly problem: Problem | null
  readonly failure: string | null
}

interface Progress {
  readonly question: Question
  readonly done: number
  readonly total: number
}

export function usePlan(request: PlanRequest | null, attempt: number): PlanState {
  const question = useMemo(
    () => (request === null ? null : { request, attempt }),
    [request, attempt],
  )
  const [outcome, setOutcome] = useState<Outcome | null>(null)
  const [progress, setProgress] = useState<Progress | null>(null)
  const call = useLatestCall()
  useEffect(() => {
    if (question === null) {
      call.current?.end()
      return undefined
    }
    let isCurrent = true
    const onProgress = proxy((done: number, total: number) => {
      if (isCurrent) setProgress({ question, done, total })
    })
    const ask = async (): Promise<void> => {
      const answer = await call.current?.ask(
        async (core) => await core.plan(question.request, onProgress),
      )
      if (isCurrent && answer !== undefined) setOutcome(outcomeOf(question, answer))
    }
    ask().catch((thrown: unknown) => {
      const failure = String(thrown)
      if (isCurrent) setOutcome({ question, planned: null, problem: null, failure })
    })
    return () => {
      isCurrent = false
    }
  }, [question, call])
  const isAnswered = outcome !== null && outcome.question === question
  return {
    planned: outcome?.planned ?? null,
    isWorking: question !== null && !isAnswered,
    progress: progress !== null && progress.question === question ? progress : null,
    problem: isAnswered ? outcome.problem : null,
    failure: isAnswered ? outcome.failure : null,
  }
}

function outcomeOf(question: Question, answer: Answer<Plan>): Outcome {
  const { request } = question
  return answer.ok
    ? { question, planned: { request, plan: answer.value }, problem: null, failure: null }
    : { question, planned: null, problem: answer.problem, failure: null }
}
