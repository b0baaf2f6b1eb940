// One breath of the middle patient on a set-up. Leaves out drawing.
import { useEffect, useState } from 'react'
import type { DeliveredBreath } from '../../delivery/delivered-breath.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Case } from '../../patient/case.ts'
import { useLatestCall } from './use-latest-call.ts'

interface Got {
  readonly about: Case
  readonly setUp: SetUp
  readonly breath: DeliveredBreath | 'failed'
}

/** The breath for this very case and set-up, or null while it is not there. */
export function useBreath(about: Case, setUp: SetUp | null): Got['breath'] | null {
  const [got, setGot] = useState<Got | null>(null)
  const call = useLatestCall()
  useEffect(() => {
    if (setUp === null) return undefined
    let isCurrent = true
    const ask = async (): Promise<void> => {
      const answer = await call.current?.ask(async (core) => await core.breath({ about, setUp }))
      if (isCurrent && answer !== undefined)
        setGot({ about, setUp, breath: answer.ok ? answer.value : 'failed' })
    }
    ask().catch(() => {
      if (isCurrent) setGot({ about, setUp, breath: 'failed' })
    })
    return () => {
      isCurrent = false
    }
  }, [about, setUp, call])
  return got !== null && got.about === about && got.setUp === setUp ? got.breath : null
}
