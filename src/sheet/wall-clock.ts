// Date and time of day as a clock on the wall shows them, `2026-11-25T13:05`, and minutes added to them. Leaves out time zones and the change to summer time.
import { DomainError, assert } from '../errors.ts'

export interface WallTime {
  readonly year: number
  readonly month: number
  readonly day: number
  readonly hour: number
  readonly minute: number
}

const WALL = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/
const MINUTES_PER_DAY = 1440
const MINUTES_PER_HOUR = 60

/** Reads `YYYY-MM-DDTHH:MM` strictly, years 1970–9999; anything else, an impossible day too, is UNREADABLE_DATE. */
export function wallTime(text: string, path = 'time'): WallTime {
  const [, ...parts] = WALL.exec(text) ?? []
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = parts.map(Number)
  const time = { year, month, day, hour, minute }
  const isReal =
    year >= FIRST_YEAR &&
    hour < HOURS &&
    minute < MINUTES_PER_HOUR &&
    wallText(wallAt(minutesOf(time))) === text
  if (isReal) return time
  throw new DomainError({ code: 'UNREADABLE_DATE', path, value: text })
}

const FIRST_YEAR = 1970
const HOURS = 24

export function wallText({ year, month, day, hour, minute }: WallTime): string {
  const date = [digits(year, 4), digits(month, 2), digits(day, 2)].join('-')
  return `${date}T${digits(hour, 2)}:${digits(minute, 2)}`
}

/** Minutes from one wall time to another; negative when the second is earlier. */
export function minutesBetween(from: WallTime, to: WallTime): number {
  return minutesOf(to) - minutesOf(from)
}

/** Whole minutes later; fractions are cut off. Valid from 0 minutes on. */
export function laterBy(time: WallTime, minutes: number): WallTime {
  assert(minutes >= 0, 'sheet/minutes not negative')
  return wallAt(minutesOf(time) + Math.floor(minutes))
}

function digits(value: number, count: number): string {
  return String(value).padStart(count, '0')
}

function minutesOf({ year, month, day, hour, minute }: WallTime): number {
  return daysOf(year, month, day) * MINUTES_PER_DAY + hour * MINUTES_PER_HOUR + minute
}

function wallAt(minutes: number): WallTime {
  const days = Math.floor(minutes / MINUTES_PER_DAY)
  const rest = minutes - days * MINUTES_PER_DAY
  return {
    ...dateOf(days),
    hour: Math.floor(rest / MINUTES_PER_HOUR),
    minute: rest % MINUTES_PER_HOUR,
  }
}

const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334]

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
}

/** Days since the first of January of the year 0 of the Gregorian calendar. */
function daysOf(year: number, month: number, day: number): number {
  const years = year - 1
  const leaps = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400)
  const before = DAYS_BEFORE_MONTH[month - 1] ?? 0
  return years * 365 + leaps + before + (month > 2 && isLeap(year) ? 1 : 0) + day - 1
}

function dateOf(days: number): Pick<WallTime, 'year' | 'month' | 'day'> {
  let year = Math.floor(days / 366) + 1
  while (daysOf(year + 1, 1, 1) <= days) year++
  let month = 12
  while (daysOf(year, month, 1) > days) month--
  return { year, month, day: days - daysOf(year, month, 1) + 1 }
}
