// A file of shelf rows as given on the command line: a spreadsheet, JSON or YAML. Leaves out what is done with the rows.
import { readShelfCsv } from '../files/shelf-csv/read-shelf-csv.ts'
import { readShelfJson } from '../files/shelf-csv/read-shelf-json.ts'
import type { ShelfReading } from '../files/shelf-csv/shelf-reading.ts'
import { isShelfCsv } from '../files/shelf-csv/whole-shelf.ts'
import type { Shelf } from '../kit/shelf.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { parsedText } from './parsed-text.ts'
import { readText } from './terminal.ts'

export interface GivenShelfFile {
  readonly reading: ShelfReading
  readonly isCsv: boolean
}

export function givenShelfFile(path: string, base: Shelf): GivenShelfFile {
  const text = readText(path)
  const isCsv = isShelfCsv(path, text)
  const reading = isCsv
    ? readShelfCsv(text, base)
    : readShelfJson(parsedText(CLI_WORDS.theShelf, text), base)
  return { reading, isCsv }
}
