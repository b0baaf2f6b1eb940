// Times of day as typed at the bed, and what they are from now. Leaves out dates: the nearest time past is meant.
import { clockText } from '../../words/number-text.ts'

export interface TimeOfDay {
  readonly hour: number
  readonly minute: number
}

const TYPED_TIME = /^(\d{1,2})[:.](\d{2})$/
const MINUTES_PER_HOUR = 60
const MS_PER_MINUTE = 60_000
const HOURS = 24
const MINUTES_PER_DAY = HOURS * MINUTES_PER_HOUR
/** A reading noted a little ahead of the device's clock is still one of now. */
const AHEAD_MINUTES = 10

/** "13:50" or "7.05", else undefined. */
export function typedTime(typed: string): TimeOfDay | undefined {
  const found = TYPED_TIME.exec(typed.trim())
  if (found === null) return undefined
  const time = { hour: Number(found[1]), minute: Number(found[2]) }
  return time.hour < HOURS && time.minute < MINUTES_PER_HOUR ? time : undefined
}

export function timeOf(date: Date): TimeOfDay {
  return { hour: date.getHours(), minute: date.getMinutes() }
}

export function timeText(date: Date): string {
  return clockText(timeOf(date))
}

/** Minutes since that time of day, as of a moment: the last time it was so. */
export function minutesSince(time: TimeOfDay, at: Date): number {
  const sinceMidnight = at.getHours() * MINUTES_PER_HOUR + at.getMinutes() + at.getSeconds() / 60
  const since = sinceMidnight - (time.hour * MINUTES_PER_HOUR + time.minute)
  return since < -AHEAD_MINUTES ? since + MINUTES_PER_DAY : Math.max(0, since)
}

/** Whole days between the date of one moment and of another. */
export function daysBetween(from: Date, to: Date): number {
  const midnight = (date: Date): number =>
    Date.UTC(date.getFullYear(), date.getMonth(), date.getDate())
  return Math.round((midnight(to) - midnight(from)) / (MINUTES_PER_DAY * MS_PER_MINUTE))
}

export function minutesBetween(from: Date, to: Date): number {
  return (to.getTime() - from.getTime()) / MS_PER_MINUTE
}

export function minutesBefore(at: Date, minutes: number): Date {
  return new Date(at.getTime() - minutes * MS_PER_MINUTE)
}
