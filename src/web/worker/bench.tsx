// One lasting worker for what follows a finger: trials, pinned set-ups, measurements. Leaves out the plan, whose worker may be ended.
import { createContext, use, useEffect, useState } from 'react'
import type { ReactNode } from 'react'
import { assert } from '../../errors.ts'
import type { CoreApi } from './core-api.ts'
import { startWorker } from './latest-call.ts'
import { createSteadyCall } from './steady-call.ts'
import type { SteadyCall } from './steady-call.ts'

const Bench = createContext<SteadyCall<CoreApi> | null>(null)

export function BenchProvider({ children }: { readonly children: ReactNode }) {
  // Its worker starts with the first question.
  const [bench] = useState(() => createSteadyCall<CoreApi>(startWorker))
  useEffect(() => () => bench.end(), [bench])
  return <Bench value={bench}>{children}</Bench>
}

export function useBench(): SteadyCall<CoreApi> {
  const bench = use(Bench)
  assert(bench !== null, 'web/bench provided')
  return bench
}
