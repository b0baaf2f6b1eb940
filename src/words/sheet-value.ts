// Values of a sheet's rows as text: flows with flush, settings. Leaves out the rows.
import { assert } from '../errors.ts'
import { flowText, fractionText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkValues } from './remark-value.ts'
import { say } from './say.ts'

/** "6 L/min"; flush in words. */
export function flowOf(values: RemarkValues, key: string): string {
  const value = values[key]
  assert(value !== undefined, `words/sheet value ${key}`)
  return typeof value === 'number' ? flowText(value) : say('flush, meter fully open')
}

/** As each meter is set. */
export function meteredText(values: RemarkValues): string {
  return flowOf(values, 'meterLpm')
}

export function settingText(values: RemarkValues): string {
  return fractionText(numberOf(values, 'setO2Fraction'))
}

/** A wall time as it is read at a bed: the clock first, then the day. */
export function momentText(moment: string): string {
  const [day = '', clock = ''] = moment.split('T')
  return say('{clock} on {day}', { clock, day })
}

/** As it stands alone: names and remarks begin small, because they also stand inside a line. */
export function started(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`
}
