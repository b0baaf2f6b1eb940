// Runs what a worker is asked and gives what the core refuses as data. Leaves out bugs, which fail the call.
import { isDomainError, problemOf } from '../../errors.ts'
import type { Answer } from './core-api.ts'

export function answered<T>(ask: () => T): Answer<T> {
  try {
    return { ok: true, value: ask() }
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return { ok: false, problem: problemOf(thrown) }
  }
}
