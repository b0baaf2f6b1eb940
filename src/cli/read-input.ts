// Reads a case or a shelf from a JSON or YAML text, with every problem at once. Leaves out where files come from.
import { parseDocument } from 'yaml'
import type { Problem } from '../errors.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { readShelf } from '../kit/read-shelf.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import { readCase } from '../patient/read-case.ts'
import type { CaseWarning } from '../patient/warnings.ts'
import { readTransfer, type TransferFile } from '../supply/read-transfer.ts'
import { readWard } from '../supply/read-ward.ts'
import type { WardFile } from '../supply/ward.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { InputError } from './failure.ts'
import { readText } from './terminal.ts'

export interface GivenCase {
  readonly case: Case
  readonly warnings: readonly CaseWarning[]
}

export function caseFrom(path: string): GivenCase {
  const read = readCase(parsed(CLI_WORDS.theCase, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theCase, read.problems)
  return { case: read.case, warnings: read.warnings }
}

/** The shelf of a file, or the demo shelf where none is named. */
export function shelfFrom(path: string | undefined): Shelf {
  if (path === undefined) return DEMO_SHELF
  const read = readShelf(parsed(CLI_WORDS.theShelf, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theShelf, read.problems)
  return read.shelf
}

export function transferFrom(path: string): TransferFile {
  const read = readTransfer(parsed(CLI_WORDS.theTransfer, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theTransfer, read.problems)
  return read.transfer
}

export function wardFrom(path: string): WardFile {
  const read = readWard(parsed(CLI_WORDS.theWard, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theWard, read.problems)
  return read.ward
}

/** YAML 1.2 holds JSON; what looks like JSON is read by the stricter reader, for its better messages. */
function parsed(what: string, text: string): unknown {
  return /^\s*[[{]/.test(text) ? parsedJson(what, text) : parsedYaml(what, text)
}

function parsedJson(what: string, text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (thrown) {
    if (!(thrown instanceof SyntaxError)) throw thrown
    throw new InputError(what, [unreadable(thrown.message)])
  }
}

function parsedYaml(what: string, text: string): unknown {
  const document = parseDocument(text, { uniqueKeys: true, merge: false })
  const problems = document.errors.map((error) => unreadable(firstLine(error.message)))
  if (problems.length > 0) throw new InputError(what, problems)
  return document.toJS()
}

function unreadable(reason: string): Problem {
  return { code: 'UNREADABLE_TEXT', path: '', value: reason }
}

function firstLine(message: string): string {
  return message.split('\n')[0] ?? message
}
