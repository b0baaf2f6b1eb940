// A chosen file as rows of the shelf, and the shelf as a file to keep; loaded when either is asked for. Leaves out showing the report.
import { parse, YAMLParseError } from 'yaml'
import type { ReadShelf } from '../../kit/read-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { readShelfCsv } from '../../files/shelf-csv/read-shelf-csv.ts'
import { readShelfJson, refusedJson } from '../../files/shelf-csv/read-shelf-json.ts'
import { refusedCsv } from '../../files/shelf-csv/refused-rows.ts'
import { EMPTY_SHELF } from '../../files/shelf-csv/shelf-reading.ts'
import type { ShelfReading } from '../../files/shelf-csv/shelf-reading.ts'
import { takeShelfCsv } from '../../files/shelf-csv/take-shelf-csv.ts'
import { writeShelfCsv } from '../../files/shelf-csv/write-shelf-csv.ts'
import type { SavedFile } from '../parts/save-file.ts'

/** A file that could be taken apart; its rows are judged against the shelf they are to go into. */
export interface ImportedFile {
  readonly name: string
  /** What the file goes into where it stands for itself. */
  readonly nothing: Shelf
  readonly read: (base: Shelf) => ShelfReading
  readonly take: (base: Shelf, reading: ShelfReading) => ReadShelf
  readonly refused: (reading: ShelfReading) => SavedFile
}

export type OpenedFile =
  | { readonly ok: true; readonly file: ImportedFile }
  | { readonly ok: false; readonly why: string }

/** JSON and YAML by how they begin or are called, all else as a spreadsheet. */
export function openedFile(name: string, text: string): OpenedFile {
  const isTree = /\.(?:json|ya?ml)$/i.test(name) || /^\s*[[{]/.test(text)
  return isTree ? treeFile(name, text) : { ok: true, file: csvFile(name, text) }
}

function csvFile(name: string, text: string): ImportedFile {
  return {
    name,
    nothing: EMPTY_SHELF,
    read: (base) => readShelfCsv(text, base),
    take: takeShelfCsv,
    refused: (reading) => ({ name: 'refused.csv', type: CSV_TYPE, text: refusedCsv(reading) }),
  }
}

/** JSON is YAML; the one parser reports doubled keys, which JSON's own drops unsaid. */
function treeFile(name: string, text: string): OpenedFile {
  try {
    const parsed: unknown = parse(text, { maxAliasCount: 0 })
    const file: ImportedFile = {
      name,
      nothing: EMPTY_SHELF,
      read: (base) => readShelfJson(parsed, base),
      take: takeShelfCsv,
      refused: (reading) => ({ name: 'refused.json', type: JSON_TYPE, text: refusedJson(reading) }),
    }
    return { ok: true, file }
  } catch (thrown) {
    if (!(thrown instanceof YAMLParseError) && !(thrown instanceof ReferenceError)) throw thrown
    return { ok: false, why: thrown.message.split('\n')[0] ?? '' }
  }
}

const CSV_TYPE = 'text/csv'
const JSON_TYPE = 'application/json'

export function shelfAsCsv(shelf: Shelf): SavedFile {
  return { name: 'shelf.csv', type: CSV_TYPE, text: writeShelfCsv(shelf) }
}

export function shelfAsJson(shelf: Shelf): SavedFile {
  return { name: 'shelf.json', type: JSON_TYPE, text: `${JSON.stringify(shelf, null, 2)}\n` }
}
