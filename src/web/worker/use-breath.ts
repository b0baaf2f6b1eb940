// One breath of the middle patient on each of the named set-ups. Leaves out drawing.
import { useEffect, useState } from 'react'
import type { DeliveredBreath } from '../../delivery/delivered-breath.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Case } from '../../patient/case.ts'
import { useLatestCall } from './use-plan.ts'

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
    if (setUp === null) return
    let isCurrent = true
    call.current
      ?.ask(async (core) => await core.breath({ about, setUp }))
      .then((answer) => {
        if (!isCurrent || answer === undefined) return
        setGot({ about, setUp, breath: answer.ok ? answer.value : 'failed' })
      })
      .catch(() => {
        if (isCurrent) setGot({ about, setUp, breath: 'failed' })
      })
    return () => {
      isCurrent = false
    }
  }, [about, setUp, call])
  return got !== null && got.about === about && got.setUp === setUp ? got.breath : null
}
