// Reads a case from a JSON or YAML text, a shelf from a spreadsheet too, with every problem at once. Leaves out where files come from.
import { isShelfCsv, wholeShelf } from '../files/shelf-csv/whole-shelf.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { readShelf } from '../kit/read-shelf.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import { readCase } from '../patient/read-case.ts'
import type { CaseWarning } from '../patient/warnings.ts'
import { readTransfer, type TransferFile } from '../supply/read-transfer.ts'
import { readStock, type StockFile } from '../supply/read-stock.ts'
import { readWard } from '../supply/read-ward.ts'
import type { WardFile } from '../supply/ward.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { InputError } from './failure.ts'
import { parsedText } from './parsed-text.ts'
import { readText } from './terminal.ts'

export interface GivenCase {
  readonly case: Case
  readonly warnings: readonly CaseWarning[]
}

export function caseFrom(path: string): GivenCase {
  const read = readCase(parsedText(CLI_WORDS.theCase, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theCase, read.problems)
  return { case: read.case, warnings: read.warnings }
}

/** The shelf of a file, or the demo shelf where none is named. */
export function shelfFrom(path: string | undefined): Shelf {
  if (path === undefined) return DEMO_SHELF
  const text = readText(path)
  const read = isShelfCsv(path, text)
    ? wholeShelf(text)
    : readShelf(parsedText(CLI_WORDS.theShelf, text))
  if (!read.ok) throw new InputError(CLI_WORDS.theShelf, read.problems)
  return read.shelf
}

export function transferFrom(path: string): TransferFile {
  const read = readTransfer(parsedText(CLI_WORDS.theTransfer, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theTransfer, read.problems)
  return read.transfer
}

export function wardFrom(path: string): WardFile {
  const read = readWard(parsedText(CLI_WORDS.theWard, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theWard, read.problems)
  return read.ward
}

export function stockFrom(path: string): StockFile {
  const read = readStock(parsedText(CLI_WORDS.theStock, readText(path)))
  if (!read.ok) throw new InputError(CLI_WORDS.theStock, read.problems)
  return read.stock
}
