// Reads single fields of an unknown object: numbers, choices, switches, texts, lists. Collects every problem; never converts, clamps or drops a value.
import {
  requireWithin,
  isDomainError,
  type ErrorCode,
  type Limit,
  type Problem,
  type ProblemValue,
} from '../errors.ts'
import { closest, type Aliases } from './did-you-mean.ts'
import { refusalOf } from './refusals.ts'
import { suggestedBySlip, type UnitSlip } from './unit-slip.ts'
import type { CaseWarning } from './warnings.ts'

/** What one reading collects. */
export interface Reading {
  readonly problems: Problem[]
  readonly warnings: CaseWarning[]
}

/** An opened object: its own fields and where it stands. */
export interface Node {
  readonly reading: Reading
  readonly path: string
  readonly fields: ReadonlyMap<string, unknown>
}

export interface NumberRule {
  readonly code: ErrorCode
  readonly unit: string
  readonly min: number
  readonly max: number
  readonly slips?: readonly UnitSlip[]
}

export function newReading(): Reading {
  return { problems: [], warnings: [] }
}

export function pathOf(node: Node, key: string): string {
  return node.path === '' ? key : `${node.path}.${key}`
}

export function report(reading: Reading, problem: Problem): undefined {
  reading.problems.push(problem)
  return undefined
}

/** Opens a value as an object and reports each field it should not have. */
export function openObject(options: {
  readonly reading: Reading
  readonly path: string
  readonly value: unknown
  readonly keys: readonly string[]
  readonly aliases?: Aliases
}): Node | undefined {
  const { reading, path, value, keys } = options
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return report(reading, { code: 'NOT_AN_OBJECT', path, value: problemValue(value) })
  }
  const node = { reading, path, fields: new Map<string, unknown>(Object.entries(value)) }
  for (const key of node.fields.keys()) {
    if (!keys.includes(key)) reportUnknown({ node, key, keys, aliases: options.aliases ?? {} })
  }
  return node
}

function reportUnknown(options: {
  readonly node: Node
  readonly key: string
  readonly keys: readonly string[]
  readonly aliases: Aliases
}): void {
  const { node, key, keys, aliases } = options
  const value = node.fields.get(key)
  const refusal = value === false ? undefined : refusalOf(key)
  if (refusal !== undefined) {
    report(node.reading, { code: refusal, path: pathOf(node, key), value: problemValue(value) })
    return
  }
  const suggestion = closest({ typed: key, choices: keys, aliases })
  report(node.reading, {
    code: 'UNKNOWN_FIELD',
    path: pathOf(node, key),
    value: problemValue(value),
    limit: { oneOf: keys },
    ...(suggestion === undefined ? {} : { suggestion }),
  })
}

/** Longer things are named by their type only. */
export function problemValue(value: unknown): ProblemValue {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value
  if (typeof value === 'number') return value
  return Array.isArray(value) ? 'list' : typeof value
}

/** Whether the field is there; JSON's null counts as not given only where the caller says so. */
export function isGiven(node: Node, key: string): boolean {
  return node.fields.get(key) !== undefined
}

export function reportMissing(node: Node, key: string, limit?: Limit): undefined {
  return report(node.reading, {
    code: 'MISSING_FIELD',
    path: pathOf(node, key),
    value: null,
    ...(limit === undefined ? {} : { limit }),
  })
}

/** The number as typed when it stands within the rule; otherwise reported, with the unit it may have been typed in. */
export function readNumber(node: Node, key: string, rule: NumberRule): number | undefined {
  const value = node.fields.get(key)
  if (value === undefined) return undefined
  const path = pathOf(node, key)
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return reportNotANumber({ node, path, value, rule })
  }
  return checkNumber({ reading: node.reading, path, value, rule })
}

export function checkNumber(options: {
  readonly reading: Reading
  readonly path: string
  readonly value: number
  readonly rule: NumberRule
}): number | undefined {
  const { reading, path, value, rule } = options
  const { code, unit, min, max } = rule
  try {
    return requireWithin({ code, path, value, min, max, unit })
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    const suggestion = suggestedBySlip(value, rule)
    const slip =
      suggestion === undefined ? {} : { suggestion, code: 'UNIT_SLIP_SUSPECTED' as const }
    return report(reading, { code, path, value, limit: { min, max }, unit, ...slip })
  }
}

const DECIMAL_COMMA = /^[+-]?\d+(?:[.,]\d+)?$/

function reportNotANumber(options: {
  readonly node: Node
  readonly path: string
  readonly value: unknown
  readonly rule: NumberRule
}): undefined {
  const { node, path, value, rule } = options
  const text = typeof value === 'string' ? value.trim() : ''
  const suggestion = DECIMAL_COMMA.test(text) ? Number(text.replace(',', '.')) : undefined
  return report(node.reading, {
    code: 'NOT_A_NUMBER',
    path,
    value: typeof value === 'number' ? String(value) : problemValue(value),
    limit: { min: rule.min, max: rule.max },
    unit: rule.unit,
    ...(suggestion === undefined ? {} : { suggestion }),
  })
}

/** One of the choices as typed; otherwise reported with the nearest choice. */
export function readChoice<C extends string>(
  node: Node,
  key: string,
  rule: {
    readonly choices: readonly C[]
    readonly aliases?: Aliases
    readonly isRequired?: boolean
  },
): C | undefined {
  const value = node.fields.get(key)
  if (value === undefined) {
    return rule.isRequired === true ? reportMissing(node, key, { oneOf: rule.choices }) : undefined
  }
  return checkChoice({ reading: node.reading, path: pathOf(node, key), value, ...rule })
}

export function checkChoice<C extends string>(options: {
  readonly reading: Reading
  readonly path: string
  readonly value: unknown
  readonly choices: readonly C[]
  readonly aliases?: Aliases
}): C | undefined {
  const { reading, path, value, choices } = options
  const found = choices.find((choice) => choice === value)
  if (found !== undefined) return found
  const refusal = typeof value === 'string' ? refusalOf(value) : undefined
  if (refusal !== undefined)
    return report(reading, { code: refusal, path, value: problemValue(value) })
  const suggestion =
    typeof value === 'string'
      ? closest({ typed: value, choices, aliases: options.aliases ?? {} })
      : undefined
  return report(reading, {
    code: 'UNKNOWN_CHOICE',
    path,
    value: problemValue(value),
    limit: { oneOf: choices },
    ...(suggestion === undefined ? {} : { suggestion }),
  })
}

/** true or false; a thing that is not mentioned is not there, and reads as false. */
export function readSwitch(node: Node, key: string): boolean | undefined {
  const value = node.fields.get(key)
  if (value === undefined) return false
  if (typeof value === 'boolean') return value
  return report(node.reading, {
    code: 'NOT_A_BOOLEAN',
    path: pathOf(node, key),
    value: problemValue(value),
    limit: { oneOf: ['true', 'false'] },
  })
}

export function readText(node: Node, key: string): string | undefined {
  const value = node.fields.get(key)
  if (value === undefined || typeof value === 'string') return value
  return report(node.reading, {
    code: 'NOT_TEXT',
    path: pathOf(node, key),
    value: problemValue(value),
  })
}

/** Each choice at most once; an absent list is an empty one. */
export function readChoices<C extends string>(
  node: Node,
  key: string,
  rule: { readonly choices: readonly C[]; readonly aliases?: Aliases },
): readonly C[] {
  const value = node.fields.get(key)
  if (value === undefined) return []
  const path = pathOf(node, key)
  if (!Array.isArray(value)) {
    report(node.reading, { code: 'NOT_A_LIST', path, value: problemValue(value) })
    return []
  }
  const read: C[] = []
  value.forEach((entry: unknown, i) => {
    const entryPath = `${path}[${i}]`
    const choice = checkChoice({ reading: node.reading, path: entryPath, value: entry, ...rule })
    if (choice === undefined) return
    if (read.includes(choice)) {
      report(node.reading, { code: 'DUPLICATE_ID', path: entryPath, value: choice })
    }
    read.push(choice)
  })
  return read
}

/** Drops the keys that were not given, as exact optional properties ask. */
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
