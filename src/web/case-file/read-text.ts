// Reads the text of a case or shelf file, JSON, YAML or a spreadsheet's CSV, by the core's readers; loaded when a file is opened. Leaves out where the file came from.
import { parse, YAMLParseError } from 'yaml'
import type { Problem } from '../../errors.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { readShelf } from '../../kit/read-shelf.ts'
import type { ReadShelf } from '../../kit/read-shelf.ts'
import { readCase } from '../../patient/read-case.ts'
import { draftOfFile } from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'

export type ReadText =
  | { readonly kind: 'case'; readonly draft: Draft }
  | { readonly kind: 'shelf'; readonly shelf: Shelf }
  | {
      readonly kind: 'refused'
      readonly problems: readonly Problem[]
      readonly isCsv: boolean
    }
  | { readonly kind: 'unreadable'; readonly why: string }

export async function readText(name: string, text: string): Promise<ReadText> {
  if (isTree(name, text)) return treeOf(text)
  const { isShelfCsv, wholeShelf } = await import('../../files/shelf-csv/whole-shelf.ts')
  return isShelfCsv(name, text) ? shelfOf(wholeShelf(text), { isCsv: true }) : treeOf(text)
}

/** Surely no spreadsheet, so that its reader need not be loaded. */
function isTree(name: string, text: string): boolean {
  return /\.(?:json|ya?ml)$/i.test(name) || /^\s*[[{]/.test(text)
}

/** JSON is YAML; the one parser reports doubled keys, which JSON's own drops unsaid. */
function treeOf(text: string): ReadText {
  let parsed: unknown
  try {
    parsed = parse(text, { maxAliasCount: 0 })
  } catch (thrown) {
    if (!(thrown instanceof YAMLParseError) && !(thrown instanceof ReferenceError)) throw thrown
    return { kind: 'unreadable', why: thrown.message.split('\n')[0] ?? '' }
  }
  return isShelf(parsed) ? shelfOf(readShelf(parsed), { isCsv: false }) : caseOf(parsed)
}

const SHELF_KEYS = ['interfaces', 'sources', 'wards'] as const

function isShelf(parsed: unknown): boolean {
  return (
    typeof parsed === 'object' &&
    parsed !== null &&
    SHELF_KEYS.some((key) => Object.hasOwn(parsed, key))
  )
}

function shelfOf(read: ReadShelf, { isCsv }: { readonly isCsv: boolean }): ReadText {
  return read.ok
    ? { kind: 'shelf', shelf: read.shelf }
    : { kind: 'refused', problems: read.problems, isCsv }
}

function caseOf(parsed: unknown): ReadText {
  const read = readCase(parsed)
  return read.ok
    ? {
        kind: 'case',
        draft: { ...draftOfFile(parsed, { id: '', about: read.case }), exampleId: null },
      }
    : { kind: 'refused', problems: read.problems, isCsv: false }
}
