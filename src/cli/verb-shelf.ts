// `oxwright shelf FILE`: checks a file of shelf rows, JSON, YAML or CSV, row by row, and writes the shelf as the other kind. Leaves out what may stand in a row.
import { writeShelfCsv } from '../files/shelf-csv/write-shelf-csv.ts'
import { refusedCsv } from '../files/shelf-csv/refused-rows.ts'
import { refusedJson } from '../files/shelf-csv/read-shelf-json.ts'
import { EMPTY_SHELF, rowsWith } from '../files/shelf-csv/shelf-reading.ts'
import type { ShelfReading } from '../files/shelf-csv/shelf-reading.ts'
import { takeShelfCsv } from '../files/shelf-csv/take-shelf-csv.ts'
import type { Shelf } from '../kit/shelf.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { SHELF_FILE_WORDS } from '../words/shelf-file-text.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { InputError } from './failure.ts'
import { shelfFrom } from './read-input.ts'
import { givenShelfFile } from './shelf-file.ts'
import { reportJson, reportLines } from './shelf-report.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS } from './verb.ts'
import type { Verb, VerbRun } from './verb.ts'

export const shelfVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    into: 'text',
    'to-csv': 'text',
    'to-json': 'text',
    refused: 'text',
    all: 'switch',
  },
  takesCase: true,
  takes: 'shelf',
  run: (run) => {
    const { words, terminal, version } = run
    const into = words.texts.get('into')
    const base = into === undefined ? EMPTY_SHELF : shelfFrom(into)
    const { reading, isCsv } = givenShelfFile(words.positionals[0] ?? '', base)
    const isJson = words.switches.has('json')
    const lines = reportLines(reading, words.switches.has('all'))
    terminal.out(isJson ? reportJson(reading, version) : lines.join('\n'))
    return written({ run, base, reading, isCsv })
  },
}

/** Rows that were refused keep the shelf from being written, unless they are written too. */
function written(options: {
  readonly run: VerbRun
  readonly base: Shelf
  readonly reading: ShelfReading
  readonly isCsv: boolean
}): ExitCode {
  const { run, base, reading, isCsv } = options
  const { texts } = run.words
  const isWhole = rowsWith(reading, 'refused').length === 0 && reading.headProblems.length === 0
  const refusedPath = texts.get('refused')
  const csvPath = texts.get('to-csv')
  const jsonPath = texts.get('to-json')
  const isWanted = csvPath !== undefined || jsonPath !== undefined
  if (refusedPath !== undefined)
    writeText(refusedPath, isCsv ? refusedCsv(reading) : refusedJson(reading))
  if (isWanted && !isWhole && refusedPath === undefined)
    run.terminal.err(`${SHELF_FILE_WORDS.notWritten}\n`)
  else if (isWanted) {
    const shelf = takenShelf(base, reading)
    if (csvPath !== undefined) writeText(csvPath, writeShelfCsv(shelf))
    if (jsonPath !== undefined) writeText(jsonPath, `${JSON.stringify(shelf, null, 2)}\n`)
  }
  return isWhole ? EXIT.ok : EXIT.badInput
}

function takenShelf(base: Shelf, reading: ShelfReading): Shelf {
  const read = takeShelfCsv(base, reading)
  if (!read.ok) throw new InputError(CLI_WORDS.theShelf, read.problems)
  return read.shelf
}
