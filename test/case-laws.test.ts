// Laws of the case reader on random cases: what is written reads back equal; what is corrupted never throws and is never changed.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ERROR_CODES } from '../src/errors.ts'
import { readCase } from '../src/patient/read-case.ts'
import { WARNING_CODES } from '../src/patient/warnings.ts'
import { writeCase } from '../src/patient/write-case.ts'
import { EXAMPLE_FILES, parsedFile } from './support/examples.ts'
import { randomCase } from './support/random-case.ts'
import { seeded } from './support/seed.ts'

const ERROR_NAMES = Object.keys(ERROR_CODES)

const anything = fc.oneof(
  fc.anything(),
  fc.constantFrom(null, Number.NaN, '', '1,5', -1, 0, 1e9, [], {}, true, 'flush', undefined),
)

/** Every place of a value, as paths of keys. */
function places(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path]
  return [path, ...Object.entries(value).flatMap(([key, inner]) => places(inner, [...path, key]))]
}

function withChange(root: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path
  if (key === undefined) return value
  const copy: Record<string, unknown> = { ...(root as Record<string, unknown>) }
  copy[key] = withChange(copy[key], rest, value)
  return copy
}

describe('the case reader, on random cases', () => {
  it('reads back equal what it wrote', () => {
    fc.assert(
      fc.property(randomCase, (drawn) => {
        const text = JSON.stringify(writeCase(drawn))
        const parsed: unknown = JSON.parse(text)
        const read = readCase(parsed)
        expect(read.ok ? [] : read.problems).toEqual([])
        const back = read.ok ? read.case : undefined
        expect(back).toEqual(drawn)
      }),
      seeded(400),
    )
  })

  it('never throws on a corrupted case, never changes it, and either reads it as it stands or names the place', () => {
    const corrupted = fc
      .constantFrom(...EXAMPLE_FILES)
      .chain((file) => {
        const parsed = parsedFile(file)
        return fc.tuple(fc.constant(parsed), fc.constantFrom(...places(parsed)), anything)
      })
      .map(([root, path, value]) => ({ input: withChange(root, path, value), path }))
    fc.assert(
      fc.property(corrupted, ({ input }) => {
        const before = structuredCloneOrSame(input)
        const read = readCase(input)
        expect(input).toEqual(before)
        const again = read.ok ? readCase(writeCase(read.case)) : read
        expect(again.ok ? again.case : again.problems).toEqual(read.ok ? read.case : read.problems)
        expect(read.ok || read.problems.length > 0).toBe(true)
        for (const problem of read.ok ? [] : read.problems)
          expect(ERROR_NAMES).toContain(problem.code)
        for (const warning of read.warnings) expect(WARNING_CODES).toContain(warning.code)
      }),
      seeded(1500),
    )
  })

  it('never throws on any value at all', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        expect(readCase(input).ok).toBe(false)
      }),
      seeded(500),
    )
  })

  it('keeps every typed number of a case it accepts', () => {
    fc.assert(
      fc.property(randomCase, (drawn) => {
        const written = writeCase(drawn)
        const read = readCase(written)
        expect(numbersIn(read.ok ? read.case : null)).toEqual(numbersIn(written))
      }),
      seeded(200),
    )
  })
})

/** Functions and symbols of fc.anything cannot be cloned; the input is then compared with itself. */
function structuredCloneOrSame(input: unknown): unknown {
  try {
    return structuredClone(input)
  } catch {
    return input
  }
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value)
    .flatMap(numbersIn)
    .toSorted((a, b) => a - b)
}
