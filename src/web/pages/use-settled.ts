// A value once it has stood still for a moment, so that half-typed numbers are neither judged nor computed. Leaves out the value.
import { useEffect, useState } from 'react'

/** Long enough to finish typing a number, short enough to feel at once. */
const PAUSE_MS = 350

export function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS)
    return () => clearTimeout(timer)
  }, [value])
  return settled
}
