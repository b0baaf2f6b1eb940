// The wall clock of the page, looked at now and then. Leaves out time zones: a ward lives by the clock on its wall.
import { useEffect, useState } from 'react'

const TICK_MS = 5000

/** Now, as the device has it; moves on while the page is open. */
export function useNow(): Date {
  const [now, setNow] = useState(() => new Date())
  useEffect(() => {
    const look = (): void => setNow(new Date())
    const timer = setInterval(look, TICK_MS)
    // A device that slept let no timer run: whoever takes it up sees the time of now at once.
    document.addEventListener('visibilitychange', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
    }
  }, [])
  return now
}
