// Writes a case as the plain object a case file holds, keys in a fixed order. Leaves out text formats.
import type { Case } from './case.ts'
import { KEYS } from './case-fields.ts'

export type Plain =
  | string
  | number
  | boolean
  | null
  | readonly Plain[]
  | { readonly [key: string]: Plain }

/** Reading the result gives an equal case (read-case.test.ts). Ages are written in years. */
export function writeCase(caseToWrite: Case): Plain {
  return ordered(caseToWrite)
}

/** Every object with its keys in the order of KEYS, first those the tables name, then the rest. */
const ORDER: readonly string[] = [...new Set(Object.values(KEYS).flat())]

function ordered(value: unknown): Plain {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value
  if (typeof value === 'number') return value
  if (Array.isArray(value)) return value.map(ordered)
  const entries = Object.entries(value ?? {}).toSorted(([a], [b]) => rank(a) - rank(b))
  return Object.fromEntries(entries.map(([key, inner]) => [key, ordered(inner)]))
}

function rank(key: string): number {
  const found = ORDER.indexOf(key)
  return found < 0 ? ORDER.length : found
}
