// The example cases of the demo hospital, bundled when the page is built and loaded when it stands. Leaves out cases from elsewhere.
import { exampleOf } from './example.ts'
import type { Example } from './example.ts'
import { FIRST_EXAMPLE } from './first-example.ts'

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

function idOf(path: string): string {
  return /([^/]+)\.(?:json|yaml)$/.exec(path)?.[1] ?? path
}

function orderOf(example: Example): number {
  return example.id === FIRST_EXAMPLE.id ? 0 : 1
}

function bedOf(example: Example): string {
  return example.case.bed ?? ''
}
