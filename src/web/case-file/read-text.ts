// Reads the text of a case or shelf file, JSON or YAML, by the core's readers; loaded when a file is opened. Leaves out where the file came from.
import { parse, YAMLParseError } from 'yaml'
import type { Problem } from '../../errors.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { readShelf } from '../../kit/read-shelf.ts'
import { readCase } from '../../patient/read-case.ts'
import { draftOfFile } from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'

export type ReadText =
  | { readonly kind: 'case'; readonly draft: Draft }
  | { readonly kind: 'shelf'; readonly shelf: Shelf }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'unreadable'; readonly why: string }

/** JSON is YAML; the one parser reports doubled keys, which JSON's own drops unsaid. */
export function readText(text: string): ReadText {
  let parsed: unknown
  try {
    parsed = parse(text, { maxAliasCount: 0 })
  } catch (thrown) {
    if (!(thrown instanceof YAMLParseError) && !(thrown instanceof ReferenceError)) throw thrown
    return { kind: 'unreadable', why: thrown.message.split('\n')[0] ?? '' }
  }
  return isShelf(parsed) ? shelfOf(parsed) : caseOf(parsed)
}

const SHELF_KEYS = ['interfaces', 'sources', 'wards'] as const

function isShelf(parsed: unknown): boolean {
  return (
    typeof parsed === 'object' &&
    parsed !== null &&
    SHELF_KEYS.some((key) => Object.hasOwn(parsed, key))
  )
}

function shelfOf(parsed: unknown): ReadText {
  const read = readShelf(parsed)
  return read.ok
    ? { kind: 'shelf', shelf: read.shelf }
    : { kind: 'refused', problems: read.problems }
}

function caseOf(parsed: unknown): ReadText {
  const read = readCase(parsed)
  return read.ok
    ? {
        kind: 'case',
        draft: { ...draftOfFile(parsed, { id: '', about: read.case }), exampleId: null },
      }
    : { kind: 'refused', problems: read.problems }
}
