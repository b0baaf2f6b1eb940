// Reads a whole shelf from parsed JSON: everything wrong at once, or the shelf as written. Leaves out parsing of text.
import type { Problem } from '../errors.ts'
import {
  at,
  given,
  has,
  openFields,
  readCount,
  readList,
  readNumber,
  readSwitch,
  readText,
  report,
  requireField,
} from './read-fields.ts'
import type { Opened } from './read-fields.ts'
import { readHumidifier } from './read-humidifiers.ts'
import { readInterface } from './read-interfaces.ts'
import { readAirMeter, readFitting, readOutlet, readTube } from './read-parts.ts'
import { readSource } from './read-sources.ts'
import { EVERYWHERE, SHELF_VERSION } from './shelf.ts'
import type { Shelf, Ward } from './shelf.ts'
import { KEYS, RULES } from './shelf-rules.ts'

export type ReadShelf =
  | { readonly ok: true; readonly shelf: Shelf }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Every problem at once. What is read is kept as written; nothing is converted, moved into range or dropped. */
export function readShelf(input: unknown): ReadShelf {
  const problems: Problem[] = []
  const root = openFields({ problems, path: '', value: input, keys: KEYS.shelf })
  const shelf = root === undefined ? undefined : shelfOf(root)
  if (shelf === undefined || problems.length > 0) return { ok: false, problems }
  return { ok: true, shelf }
}

function shelfOf(root: Opened): Shelf | undefined {
  readVersion(root)
  const hospital = readText(root, 'hospital')
  const isInvented = readSwitch(root, 'isInvented')
  const altitudeM = readNumber(root, 'altitudeM', RULES.altitudeM)
  const wards = readRows(root, 'wards', readWard)
  const places = [EVERYWHERE, ...wards.map(({ id }) => id)]
  const interfaces = readRows(root, 'interfaces', (row) => readInterface({ ...row, places }))
  const sources = readRows(root, 'sources', (row) => readSource({ ...row, places }))
  const humidifiers = readRows(root, 'humidifiers', (row) => readHumidifier({ ...row, places }))
  const parts = readParts(root, places)
  if (hospital === undefined) return undefined
  return {
    version: SHELF_VERSION,
    hospital,
    ...given({ isInvented, altitudeM }),
    wards,
    interfaces,
    sources,
    humidifiers,
    ...parts,
  }
}

/** Lists that a shelf may leave out. */
function readParts(root: Opened, places: readonly string[]) {
  const optional = <R extends { readonly id: string }>(
    key: string,
    readOne: (row: Unread & { readonly places: readonly string[] }) => R | undefined,
  ) => (has(root, key) ? readRows(root, key, (row) => readOne({ ...row, places })) : undefined)
  return given({
    outlets: optional('outlets', readOutlet),
    airMeters: optional('airMeters', readAirMeter),
    tubes: optional('tubes', readTube),
    fittings: optional('fittings', readFitting),
  })
}

function readVersion(root: Opened): void {
  const limit = { oneOf: [String(SHELF_VERSION)] }
  const value = root.fields.get('version')
  if (!requireField(root, 'version', limit) || value === SHELF_VERSION) return
  const got = typeof value === 'number' || typeof value === 'string' ? value : typeof value
  report(root, { code: 'UNKNOWN_CHOICE', path: at(root, 'version'), value: got, limit })
}

interface Unread {
  readonly problems: Problem[]
  readonly path: string
  readonly value: unknown
}

function readRows<R extends { readonly id: string }>(
  root: Opened,
  key: string,
  readOne: (row: Unread) => R | undefined,
): readonly R[] {
  if (!requireField(root, key)) return []
  const rows: R[] = []
  readList(root, key)?.forEach((value, i) => {
    const path = `${at(root, key)}[${i}]`
    const row = readOne({ problems: root.problems, path, value })
    if (row === undefined) return
    if (rows.some(({ id }) => id === row.id))
      report(root, { code: 'DUPLICATE_ID', path: `${path}.id`, value: row.id })
    rows.push(row)
  })
  return rows
}

function readWard(row: Unread): Ward | undefined {
  const node = openFields({ ...row, keys: KEYS.ward })
  if (node === undefined) return undefined
  const id = readText(node, 'id')
  const name = readText(node, 'name')
  const beds = readCount(node, 'beds', RULES.beds)
  if (id === EVERYWHERE) report(node, { code: 'DUPLICATE_ID', path: at(node, 'id'), value: id })
  if (id === undefined || name === undefined || beds === undefined) return undefined
  return { id, name, beds }
}
