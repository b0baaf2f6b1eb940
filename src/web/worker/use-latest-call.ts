// One worker for the life of a component. Leaves out what is asked of it.
import { useEffect, useRef } from 'react'
import { createLatestCall } from './latest-call.ts'
import type { LatestCall } from './latest-call.ts'

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
