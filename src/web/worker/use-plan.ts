// The plan of the case in the form: the newest question wins. Leaves out how it is shown.
import { proxy } from 'comlink'
import { useEffect, useRef, useState } from 'react'
import type { Problem } from '../../errors.ts'
import type { Case } from '../../patient/case.ts'
import type { Plan } from '../../planning/plan-types.ts'
import { createLatestCall } from './latest-call.ts'
import type { LatestCall } from './latest-call.ts'
import type { PlanRequest } from './core-api.ts'

export interface Planned {
  readonly about: Case
  readonly plan: Plan
}

export interface PlanState {
  /** The newest answer; while `isWorking`, it may still be that of the case before. */
  readonly planned: Planned | null
  readonly isWorking: boolean
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly problem: Problem | null
  readonly failure: string | null
}

const START: PlanState = {
  planned: null,
  isWorking: false,
  progress: null,
  problem: null,
  failure: null,
}

export function usePlan(request: PlanRequest | null, attempt: number): PlanState {
  const [state, setState] = useState<PlanState>(START)
  const call = useLatestCall()
  useEffect(() => {
    if (request === null) {
      setState(START)
      call.current?.end()
      return
    }
    let isCurrent = true
    const change = (part: Partial<PlanState>): void => {
      if (isCurrent) setState((before) => ({ ...before, ...part }))
    }
    change({ isWorking: true, progress: null, problem: null, failure: null })
    const onProgress = proxy((done: number, total: number) => change({ progress: { done, total } }))
    call.current
      ?.ask(async (core) => await core.plan(request, onProgress))
      .then((answer) => {
        if (answer === undefined) return
        const { about } = request
        if (answer.ok) change({ planned: { about, plan: answer.value }, isWorking: false })
        else change({ planned: null, problem: answer.problem, isWorking: false })
      })
      .catch((thrown: unknown) =>
        change({ planned: null, failure: String(thrown), isWorking: false }),
      )
    return () => {
      isCurrent = false
    }
  }, [request, attempt, call])
  return state
}

/** One worker for the life of the component. */
export function useLatestCall(): { readonly current: LatestCall | null } {
  const call = useRef<LatestCall | null>(null)
  useEffect(() => {
    const created = createLatestCall()
    call.current = created
    return () => {
      created.end()
      call.current = null
    }
  }, [])
  return call
}
