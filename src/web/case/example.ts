// One example case of the demo hospital, as the form shows it. Leaves out where it lies.
import { assert } from '../../errors.ts'
import type { Case } from '../../patient/case.ts'
import { readCase } from '../../patient/read-case.ts'
import { draftOfFile } from './draft.ts'
import type { Draft } from './draft.ts'

export interface Example {
  readonly id: string
  readonly case: Case
  readonly draft: Draft
}

export function exampleOf(id: string, parsed: unknown): Example {
  const read = readCase(parsed)
  assert(read.ok, `web/example ${id} readable`)
  return { id, case: read.case, draft: draftOfFile(parsed, { id, about: read.case }) }
}
