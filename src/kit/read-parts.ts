// Reads outlets, air flowmeters, tubes and fittings of a shelf file. Leaves out whether they join.
import { GAS_IDS } from './ends.ts'
import {
  given,
  openFields,
  readChoice,
  readCount,
  readRequiredNumber,
  readRising,
  readSwitch,
  requireField,
} from './read-fields.ts'
import type { Opened } from './read-fields.ts'
import { FITTING_KINDS, OUTLET_KINDS, TUBE_KINDS } from './part-rows.ts'
import type { AirMeterRow, FittingRow, OutletRow, TubeRow } from './part-rows.ts'
import { readEnd, readEnds, readLabelFlow, readOwnEnds } from './read-ends.ts'
import { readRow } from './read-row.ts'
import { KEYS, RULES } from './shelf-rules.ts'

interface Unread {
  readonly problems: Opened['problems']
  readonly path: string
  readonly value: unknown
  readonly places: readonly string[]
}

export function readOutlet(options: Unread): OutletRow | undefined {
  const node = openFields({ ...options, keys: KEYS.outlet })
  if (node === undefined) return undefined
  const kind = readChoice(node, 'kind', OUTLET_KINDS)
  const row = readCounted(node, options.places)
  const gas = readChoice(node, 'gas', GAS_IDS)
  const outletEnd = readEnd(node, 'outletEnd')
  if (kind === undefined || row === undefined || gas === undefined) return undefined
  return { ...row, kind, gas, ...given({ outletEnd }) }
}

export function readAirMeter(options: Unread): AirMeterRow | undefined {
  const node = openFields({ ...options, keys: KEYS.airMeter })
  if (node === undefined) return undefined
  const row = readCounted(node, options.places)
  const stepsLpm = requireField(node, 'stepsLpm')
    ? readRising(node, 'stepsLpm', RULES.stepLpm)
    : undefined
  const ends = readOwnEnds(node)
  return row === undefined || stepsLpm === undefined ? undefined : { ...row, stepsLpm, ...ends }
}

export function readTube(options: Unread): TubeRow | undefined {
  const node = openFields({ ...options, keys: KEYS.tube })
  if (node === undefined) return undefined
  const kind = readChoice(node, 'kind', TUBE_KINDS)
  const row = readCounted(node, options.places)
  const lengthM = readRequiredNumber(node, 'lengthM', RULES.lengthM)
  const boreMm = readRequiredNumber(node, 'boreMm', RULES.boreMm)
  const facts = given({
    isHeated: readSwitch(node, 'isHeated'),
    hasWaterTrap: readSwitch(node, 'hasWaterTrap'),
    inletEnd: readEnd(node, 'inletEnd'),
    outletEnd: readEnd(node, 'outletEnd'),
  })
  const label = readLabelFlow(node)
  if (kind === undefined || row === undefined) return undefined
  if (lengthM === undefined || boreMm === undefined) return undefined
  return { ...row, kind, lengthM, boreMm, ...facts, ...label }
}

export function readFitting(options: Unread): FittingRow | undefined {
  const node = openFields({ ...options, keys: KEYS.fitting })
  if (node === undefined) return undefined
  const kind = readChoice(node, 'kind', FITTING_KINDS)
  const row = readCounted(node, options.places)
  const inletEnds = requireField(node, 'inletEnds') ? readEnds(node, 'inletEnds') : undefined
  const facts = given({
    outletEnd: readEnd(node, 'outletEnd'),
    openEnds: readEnds(node, 'openEnds'),
    hasPorts: readSwitch(node, 'hasPorts'),
  })
  const label = readLabelFlow(node)
  if (kind === undefined || row === undefined || inletEnds === undefined) return undefined
  return { ...row, kind, inletEnds, ...facts, ...label }
}

function readCounted(node: Opened, places: readonly string[]) {
  const row = readRow(node, places)
  const count = readCount(node, 'count', RULES.count)
  return row === undefined || count === undefined ? undefined : { ...row, count }
}
