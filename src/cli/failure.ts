// The two ways a run ends early without being a bug: wrong use, and an input that cannot be used. Leaves out their texts.
import type { Problem } from '../errors.ts'
import type { UsageFault } from '../words/cli-text.ts'
import { LANGUAGES } from '../words/languages.ts'

export class UsageError extends Error {
  readonly fault: UsageFault

  constructor(fault: UsageFault) {
    super(fault.kind)
    this.name = 'UsageError'
    this.fault = fault
  }
}

/** What was being read, and everything wrong with it. */
export class InputError extends Error {
  readonly what: string
  readonly problems: readonly Problem[]

  constructor(what: string, problems: readonly Problem[]) {
    super(what)
    this.name = 'InputError'
    this.what = what
    this.problems = problems
  }
}

/** A file that cannot be read or written; `line` is the whole text. */
export class FileError extends Error {
  constructor(line: string) {
    super(line)
    this.name = 'FileError'
  }
}

export function unknownLanguage(option: string, got: string): UsageError {
  return new UsageError({
    kind: 'unknown-value',
    option,
    got,
    allowed: LANGUAGES,
    meant: undefined,
  })
}
