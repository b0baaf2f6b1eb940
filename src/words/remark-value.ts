// Reads the values of a remark for its text. A remark without the value its text needs is a bug.
import { assert } from '../errors.ts'
import type { Remark } from '../planning/plan-types.ts'

export type RemarkValues = Remark['values']
export type RemarkText = (values: RemarkValues) => string
export type RemarkTexts = Readonly<Record<string, RemarkText>>

export function numberOf(values: RemarkValues, key: string): number {
  const value = values[key]
  assert(typeof value === 'number', `words/remark value ${key} number`)
  return value
}

export function textOf(values: RemarkValues, key: string): string {
  const value = values[key]
  assert(typeof value === 'string', `words/remark value ${key} text`)
  return value
}

/** The name of an id, or the id itself where the list does not hold it, so that nothing is hidden. */
export function nameIn(names: Readonly<Record<string, string>>, id: string): string {
  return names[id] ?? id
}
