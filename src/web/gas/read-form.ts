// Reads numbers and choices of a form as typed: each is within its bounds, empty, or a problem at its field. Leaves out what they mean.
import type { Problem } from '../../errors.ts'
import { isDomainError, problemOf } from '../../errors.ts'
import { typedNumber } from '../case/typed-number.ts'
import type { Texts } from './kept-form.ts'

/** Bounds in the unit in which the field is typed. */
export interface NumberRule {
  readonly min: number
  readonly max: number
  readonly unit?: string
}

export interface FieldProblem extends Problem {
  /** Id of the field in the page. */
  readonly field: string
}

export type ReadForm<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] }

export interface FormReader {
  /** A number that must be there. */
  readonly number: (name: string, rule: NumberRule) => number
  /** A number, or undefined where the field is empty. */
  readonly optional: (name: string, rule: NumberRule) => number | undefined
  readonly text: (name: string) => string
  readonly report: (problem: Problem, name: string) => void
  readonly problems: FieldProblem[]
}

/** `prefix` makes the ids of the fields: two forms on one page need two. */
export function formReader(texts: Texts, prefix: string): FormReader {
  const problems: FieldProblem[] = []
  const report = (problem: Problem, name: string): void => {
    problems.push({ ...problem, field: `${prefix}.${name}` })
  }
  const optional = (name: string, rule: NumberRule): number | undefined => {
    const typed = typedNumber(texts[name] ?? '', rule)
    if (typed.kind === 'empty') return undefined
    const path = `gas.${name}`
    const limit = { min: rule.min, max: rule.max }
    const unit = rule.unit === undefined ? {} : { unit: rule.unit }
    if (typed.kind === 'refused') {
      const meant = typed.suggestion === undefined ? {} : { suggestion: typed.suggestion }
      report({ code: 'NOT_A_NUMBER', path, value: typed.text, ...unit, ...meant }, name)
      return undefined
    }
    if (typed.value >= rule.min && typed.value <= rule.max) return typed.value
    report({ code: 'VALUE_OUT_OF_RANGE', path, value: typed.value, limit, ...unit }, name)
    return undefined
  }
  return {
    problems,
    report,
    optional,
    text: (name) => texts[name] ?? '',
    number: (name, rule) => {
      const before = problems.length
      const value = optional(name, rule)
      if (value === undefined && problems.length === before)
        report({ code: 'MISSING_FIELD', path: `gas.${name}`, value: null }, name)
      // Never used: a form with a problem has no answer (readAll).
      return value ?? rule.min
    },
  }
}

/** The answer where every field could be read and the core takes it, else every problem. */
export function readAll<T>(reader: FormReader, answer: () => T): ReadForm<T> {
  return reader.problems.length > 0 ? { ok: false, problems: reader.problems } : attempted(answer)
}

/** The answer, or what the core refuses as the one problem. */
export function attempted<T>(answer: () => T): ReadForm<T> {
  try {
    return { ok: true, value: answer() }
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return { ok: false, problems: [{ ...problemOf(thrown), field: '' }] }
  }
}

/** What follows from an answer, where there is one. */
export function followed<T, U>(read: ReadForm<T>, next: (value: T) => U): ReadForm<U> {
  return read.ok ? attempted(() => next(read.value)) : read
}
