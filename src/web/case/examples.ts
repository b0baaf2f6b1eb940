// The example cases of the demo hospital, bundled when the page is built. Leaves out cases from elsewhere.
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

/** Shown to whoever opens the page for the first time. */
const FIRST_ID = 'nasal-cannula'

/** The examples lie beside the package, as people read them; yaml ones come parsed by vite.config.ts. */
const FILES = import.meta.glob<unknown>('../../../examples/*.{json,yaml}', {
  eager: true,
  import: 'default',
})

export const EXAMPLES: readonly Example[] = Object.entries(FILES)
  .map(([path, parsed]) => exampleOf(idOf(path), parsed))
  .toSorted(
    (a, b) =>
      orderOf(a) - orderOf(b) || bedOf(a).localeCompare(bedOf(b), 'en-GB', { numeric: true }),
  )

function exampleOf(id: string, parsed: unknown): Example {
  const read = readCase(parsed)
  assert(read.ok, `web/example ${id} readable`)
  return { id, case: read.case, draft: draftOfFile(parsed, { id, about: read.case }) }
}

function idOf(path: string): string {
  return /([^/]+)\.(?:json|yaml)$/.exec(path)?.[1] ?? path
}

function orderOf(example: Example): number {
  return example.id === FIRST_ID ? 0 : 1
}

function bedOf(example: Example): string {
  return example.case.bed ?? ''
}

export function exampleById(id: string): Example | undefined {
  return EXAMPLES.find((example) => example.id === id)
}

/** The one shown first; the list is never empty. */
export function firstExample(): Example {
  const first = EXAMPLES[0]
  assert(first !== undefined, 'web/some example bundled')
  return first
}
