// Numbers with their units, and times of day, as typed on the command line; strict, and nothing is guessed. Leaves out bounds, which the core keeps.
import { kpaFromBar, kpaFromPsi } from '../units/pressure.ts'
import type { ParsedWords } from './arguments.ts'
import { UsageError } from './failure.ts'

const NUMBER = /^[+-]?\d+(?:\.\d+)?$/
const PRESSURE = /^(\d+(?:\.\d+)?) ?(bar|psi|kPa)$/
const TIME = /^([01]?\d|2[0-3]):([0-5]\d)$/

const INTO_KPA = { bar: kpaFromBar, psi: kpaFromPsi, kPa: (kpa: number): number => kpa } as const

/** A plain decimal number, or undefined where the option is absent. */
export function decimal(words: ParsedWords, option: string): number | undefined {
  const got = words.texts.get(option)
  if (got === undefined) return undefined
  if (NUMBER.test(got)) return Number(got)
  throw new UsageError({ kind: 'not-a-quantity', option: `--${option}`, got, units: [] })
}

/** A pressure with its unit, in kPa. A number without unit is refused: 137 may be bar or psi. */
export function pressureKpa(words: ParsedWords, option: string): number | undefined {
  const got = words.texts.get(option)
  if (got === undefined) return undefined
  const [, digits = '', unit = ''] = PRESSURE.exec(got) ?? []
  if (unit === 'bar' || unit === 'psi' || unit === 'kPa') return INTO_KPA[unit](Number(digits))
  const units = Object.keys(INTO_KPA)
  throw new UsageError({ kind: 'not-a-quantity', option: `--${option}`, got, units })
}

export interface TimeOfDay {
  readonly hour: number
  readonly minute: number
}

/** A time of day; this machine's clock where the option is absent. */
export function timeOfDay(words: ParsedWords, option: string): TimeOfDay {
  const got = words.texts.get(option)
  if (got === undefined) {
    const now = new Date()
    return { hour: now.getHours(), minute: now.getMinutes() }
  }
  const [, hour = '', minute = ''] = TIME.exec(got) ?? []
  if (hour !== '') return { hour: Number(hour), minute: Number(minute) }
  throw new UsageError({ kind: 'not-a-time', option: `--${option}`, got })
}

/** The value of an option that must be there. */
export function needed<T>(
  value: T | undefined,
  missing: { readonly option: string; readonly verb: string },
): T {
  if (value === undefined) throw new UsageError({ kind: 'option-missing', ...missing })
  return value
}
