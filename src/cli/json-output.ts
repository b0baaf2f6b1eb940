// Answers as JSON: the core's own result, with the text of every code beside it. A number that is none is a bug and never becomes null.
import { assert } from '../errors.ts'

export function jsonText(value: unknown): string {
  return JSON.stringify(
    value,
    (_, inner: unknown) => {
      assert(typeof inner !== 'number' || Number.isFinite(inner), 'cli/json finite')
      return inner
    },
    2,
  )
}
