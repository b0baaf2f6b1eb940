// Reads single fields of an unknown object for the shelf: numbers, counts, choices, texts, switches, lists. Collects every problem; converts, clamps and drops nothing.
import { isDomainError, problemOf, requireWithin } from '../errors.ts'
import type { ErrorCode, Limit, Problem, ProblemValue } from '../errors.ts'

/** An opened object: its fields, where it stands, and what is wrong so far in the whole file. */
export interface Opened {
  readonly problems: Problem[]
  readonly path: string
  readonly fields: ReadonlyMap<string, unknown>
}

export interface NumberRule {
  readonly code: ErrorCode
  readonly min: number
  readonly max: number
  readonly unit?: string
  /** The unit it may have been typed in, as the factor to ours. */
  readonly slipFactor?: number
}

export function at(node: Opened, key: string): string {
  return node.path === '' ? key : `${node.path}.${key}`
}

export function report(node: Pick<Opened, 'problems'>, problem: Problem): undefined {
  node.problems.push(problem)
  return undefined
}

/** Opens a value as an object and reports every field it should not have. */
export function openFields(options: {
  readonly problems: Problem[]
  readonly path: string
  readonly value: unknown
  readonly keys: readonly string[]
}): Opened | undefined {
  const { problems, path, value, keys } = options
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return report(options, { code: 'NOT_AN_OBJECT', path, value: shown(value) })
  const node = { problems, path, fields: new Map<string, unknown>(Object.entries(value)) }
  for (const [key, got] of node.fields) {
    if (keys.includes(key)) continue
    report(node, { code: 'UNKNOWN_FIELD', ...wrong(node, key, got), ...choice(key, keys) })
  }
  return node
}

export function has(node: Opened, key: string): boolean {
  return node.fields.get(key) !== undefined
}

/** Reports a required field that is not there. */
export function requireField(node: Opened, key: string, limit?: Limit): boolean {
  if (has(node, key)) return true
  const problem = { code: 'MISSING_FIELD', path: at(node, key), value: null } as const
  report(node, limit === undefined ? problem : { ...problem, limit })
  return false
}

export function readNumber(node: Opened, key: string, rule: NumberRule): number | undefined {
  if (!has(node, key)) return undefined
  return checkedNumber(node, at(node, key), node.fields.get(key), rule)
}

export function readRequiredNumber(
  node: Opened,
  key: string,
  rule: NumberRule,
): number | undefined {
  const { min, max } = rule
  return requireField(node, key, { min, max }) ? readNumber(node, key, rule) : undefined
}

/** A whole number. */
export function readCount(node: Opened, key: string, rule: NumberRule): number | undefined {
  const count = readRequiredNumber(node, key, rule)
  if (count === undefined || Number.isInteger(count)) return count
  return report(node, { code: rule.code, ...wrong(node, key, count), ...limits(rule) })
}

/** A list of numbers, each within the rule, rising. */
export function readRising(
  node: Opened,
  key: string,
  rule: NumberRule,
): readonly number[] | undefined {
  const values = readList(node, key)
  if (values === undefined) return undefined
  const numbers = values.map((value, i) =>
    checkedNumber(node, `${at(node, key)}[${i}]`, value, rule),
  )
  const read = numbers.filter((value) => value !== undefined)
  if (read.length < numbers.length) return undefined
  const fall = read.findIndex((value, i) => i > 0 && value <= (read[i - 1] ?? 0))
  if (fall < 0) return read
  const path = `${at(node, key)}[${fall}]`
  return report(node, { code: 'RANGE_REVERSED', path, value: read[fall] ?? null })
}

export function readChoice<C extends string>(
  node: Opened,
  key: string,
  choices: readonly C[],
): C | undefined {
  if (!requireField(node, key, { oneOf: choices })) return undefined
  const value = node.fields.get(key)
  const found = choices.find((known) => known === value)
  if (found !== undefined) return found
  const suggestion =
    typeof value === 'string' ? choice(value, choices) : { limit: { oneOf: choices } }
  return report(node, { code: 'UNKNOWN_CHOICE', ...wrong(node, key, value), ...suggestion })
}

/** A text with something in it. */
export function readText(node: Opened, key: string): string | undefined {
  if (!requireField(node, key)) return undefined
  const value = node.fields.get(key)
  if (typeof value === 'string' && value.trim() !== '') return value
  return report(node, { code: 'NOT_TEXT', ...wrong(node, key, value) })
}

export function readOptionalText(node: Opened, key: string): string | undefined {
  return has(node, key) ? readText(node, key) : undefined
}

export function readSwitch(node: Opened, key: string): boolean | undefined {
  const value = node.fields.get(key)
  if (value === undefined || typeof value === 'boolean') return value
  return report(node, {
    code: 'NOT_A_BOOLEAN',
    ...wrong(node, key, value),
    limit: { oneOf: ['true', 'false'] },
  })
}

/** A list, absent or present; each entry still unread. */
export function readList(node: Opened, key: string): readonly unknown[] | undefined {
  const value = node.fields.get(key)
  if (value === undefined || Array.isArray(value)) return value
  return report(node, { code: 'NOT_A_LIST', ...wrong(node, key, value) })
}

/** Leaves out what was not given, as exact optional properties ask. */
export function given<T extends object>(fields: T): Given<T> {
  // Safe: every key whose value is undefined is gone, which is what Given<T> says.
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Given<T>
}

export type Given<T> = {
  [K in keyof T as undefined extends T[K] ? never : K]: T[K]
} & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>
}

function checkedNumber(
  node: Opened,
  path: string,
  value: unknown,
  rule: NumberRule,
): number | undefined {
  if (typeof value !== 'number')
    return report(node, { code: 'NOT_A_NUMBER', path, value: shown(value), ...limits(rule) })
  const { slipFactor: _, ...bounds } = rule
  try {
    return requireWithin({ ...bounds, path, value })
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return report(node, { ...problemOf(thrown), ...slip(value, rule) })
  }
}

/** A value that would be allowed in another unit is asked about, never converted. */
function slip(value: number, rule: NumberRule): Partial<Problem> {
  const meant = rule.slipFactor === undefined ? Number.NaN : value * rule.slipFactor
  if (!(meant >= rule.min && meant <= rule.max)) return {}
  return { code: 'UNIT_SLIP_SUSPECTED', suggestion: Number(meant.toPrecision(SUGGESTED_DIGITS)) }
}

const SUGGESTED_DIGITS = 3

function limits(rule: NumberRule): Pick<Problem, 'limit' | 'unit'> {
  const limit = { min: rule.min, max: rule.max }
  return rule.unit === undefined ? { limit } : { limit, unit: rule.unit }
}

function wrong(node: Opened, key: string, value: unknown): Pick<Problem, 'path' | 'value'> {
  return { path: at(node, key), value: shown(value) }
}

function choice(typed: string, choices: readonly string[]): Pick<Problem, 'limit' | 'suggestion'> {
  const limit = { oneOf: choices }
  const suggestion = likeChoice(typed, choices)
  return suggestion === undefined ? { limit } : { limit, suggestion }
}

/** The one choice that agrees in letters and digits, or starts alike. */
function likeChoice(typed: string, choices: readonly string[]): string | undefined {
  const letters = plain(typed)
  if (letters === '') return undefined
  const exact = choices.find((known) => plain(known) === letters)
  if (exact !== undefined) return exact
  const alike = choices.filter(
    (known) => plain(known).startsWith(letters) || letters.startsWith(plain(known)),
  )
  return alike.length === 1 ? alike[0] : undefined
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '')
}

function shown(value: unknown): ProblemValue {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value
  if (typeof value === 'number') return value
  return Array.isArray(value) ? 'list' : typeof value
}
