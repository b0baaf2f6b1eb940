// Types of tally.mjs for the tests.
export interface Result {
  readonly passed: number
  readonly failed: number
  readonly remarks?: readonly string[]
}
export class Tally {
  readonly passed: number
  readonly failed: number
  readonly lines: readonly string[]
  readonly total: string
  add(result: Result & { readonly name: string }): void
}
export function readVitestReport(options: {
  readonly reportFile: string
  readonly exitCode: number
}): Required<Result>
