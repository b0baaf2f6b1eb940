// The time of day, handed in where it is needed, so that a test may set it. Leaves out what follows from it.
import { createContext, use, useEffect, useState } from 'react'

export interface Clock {
  readonly nowMs: () => number
  /** Calls back about every so often; returns how to stop it. */
  readonly every: (periodMs: number, tick: () => void) => () => void
}

const BROWSER_CLOCK: Clock = {
  nowMs: () => Date.now(),
  every: (periodMs, tick) => {
    const timer = setInterval(tick, periodMs)
    // A tablet that slept ticks when it wakes.
    document.addEventListener('visibilitychange', tick)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', tick)
    }
  },
}

const ClockContext = createContext<Clock>(BROWSER_CLOCK)

export function useClock(): Clock {
  return use(ClockContext)
}

const PERIOD_MS = 10_000

/** The time now, drawn anew every ten seconds. */
export function useNowMs(): number {
  const clock = useClock()
  const [nowMs, setNowMs] = useState(clock.nowMs)
  useEffect(() => clock.every(PERIOD_MS, () => setNowMs(clock.nowMs())), [clock])
  return nowMs
}

export function hourAndMinute(timeMs: number): { readonly hour: number; readonly minute: number } {
  const date = new Date(timeMs)
  return { hour: date.getHours(), minute: date.getMinutes() }
}

/** 2026-11-25 14:20, the same in every language. */
export function dateAndTime(timeMs: number): string {
  const date = new Date(timeMs)
  const two = (value: number): string => String(value).padStart(2, '0')
  const day = [date.getFullYear(), date.getMonth() + 1, date.getDate()].map(two).join('-')
  return `${day} ${two(date.getHours())}:${two(date.getMinutes())}`
}
