// The wall clock of the page, looked at now and then. Leaves out time zones: a ward lives by the clock on its wall.
import { useEffect, useState } from 'react'

const TICK_MS = 5000

/** Now, as the device has it; moves on while the page is open. */
export function useNow(): Date {
  const [now, setNow] = useState(() => new Date())
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date()), TICK_MS)
    return () => clearInterval(timer)
  }, [])
  return now
}
