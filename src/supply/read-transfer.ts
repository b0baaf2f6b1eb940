// Reads a transfer file from parsed JSON or YAML: everything wrong at once, or the transfer as typed. Leaves out parsing of text.
import type { Problem } from '../errors.ts'
import {
  given,
  isGiven,
  readChoice,
  readNumber,
  report,
  reportMissing,
  type Node,
} from '../patient/field.ts'
import { barometricPressureKpa, requireBarometricKpa } from '../physics/atmosphere.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { ScannerKit } from './scanner-rule.ts'
import { MR_SAFETIES, type StoreRow } from './store.ts'
import {
  openAt,
  openEach,
  optionalSwitch,
  optionalText,
  readBeside,
  readWhole,
  readGauge,
  readSetUpField,
  readVersion,
  reportTwins,
  requiredNumber,
  requiredText,
  wholeNumber,
} from './supply-field.ts'
import { SUPPLY_KEYS, SUPPLY_NUMBERS } from './supply-fields.ts'
import type { PlannedLeg } from './transfer-leg.ts'
import type { TransferQuestion } from './transfer.ts'
import { DEFAULT_RESERVE, LEG_KINDS, type ReserveRule } from './transport.ts'

export const TRANSFER_VERSION = 1

export interface TransferFile {
  readonly version: typeof TRANSFER_VERSION
  readonly note?: string
  readonly isInvented?: boolean
  readonly bed?: string
  readonly code?: string
  /** All of the question but the shelf. */
  readonly question: Omit<TransferQuestion, 'shelf'>
}

export type ReadTransfer =
  | { readonly ok: true; readonly transfer: TransferFile }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Every problem at once. Pressures in bar or psi become kPa, an altitude a pressure; nothing else changes. */
export function readTransfer(input: unknown): ReadTransfer {
  const read = readWhole(input, SUPPLY_KEYS.transfer, transferOf)
  return read.ok ? { ok: true, transfer: read.value } : read
}

/** The question of a transfer file with the shelf whose sources it uses; nothing else is added. */
export function questionOf(transfer: TransferFile, shelf: Shelf): TransferQuestion {
  return { ...transfer.question, shelf }
}

function transferOf(root: Node): TransferFile | undefined {
  readVersion(root, TRANSFER_VERSION)
  const names = given({
    note: optionalText(root, 'note'),
    isInvented: optionalSwitch(root, 'isInvented'),
    bed: optionalText(root, 'bed'),
    code: optionalText(root, 'code'),
  })
  const setUp = readSetUpField(root)
  if (!isGiven(root, 'setUp')) reportMissing(root, 'setUp')
  const ageYears = requiredNumber(root, 'ageYears', SUPPLY_NUMBERS.ageYears)
  const weightKg = readNumber(root, 'weightKg', SUPPLY_NUMBERS.weightKg)
  const barometricKpa = readPressure(root)
  const leftGaugeKpa = readGauge(root, 'left', { isRequired: true })
  const readAtC = requiredNumber(root, 'readAtC', SUPPLY_NUMBERS.gasC)
  const rest = given({
    beside: readBeside(root),
    reserve: readReserve(root),
    gaugeErrorKpa: readGauge(root, 'gaugeError', { isRequired: false }),
    usedAtC: readNumber(root, 'usedAtC', SUPPLY_NUMBERS.gasC),
    scanner: readScanner(root),
  })
  const legs = openEach(root, 'legs', SUPPLY_KEYS.leg, { isRequired: true }).flatMap(
    (one) => readLeg(one) ?? [],
  )
  if (
    Array.isArray(root.fields.get('legs')) &&
    legs.length === 0 &&
    root.reading.problems.length === 0
  )
    report(root.reading, { code: 'COUNT_OUT_OF_RANGE', path: 'legs', value: 0, limit: { min: 1 } })
  const rows = openEach(root, 'store', SUPPLY_KEYS.storeRow, { isRequired: true })
  const store = rows.flatMap((one) => readStoreRow(one) ?? [])
  reportTwins(rows)
  if (setUp === undefined || ageYears === undefined || leftGaugeKpa === undefined) return undefined
  if (readAtC === undefined || barometricKpa === undefined) return undefined
  const body = { ageYears, ...given({ weightKg }) }
  const question = { setUp, body, barometricKpa, leftGaugeKpa, readAtC, ...rest, legs, store }
  return { version: TRANSFER_VERSION, ...names, question }
}

/** Typed, or of the altitude typed; one of the two is needed. */
function readPressure(root: Node): number | undefined {
  const typed = readNumber(root, 'barometricPressureKpa', SUPPLY_NUMBERS.barometricPressureKpa)
  const altitudeM = readNumber(root, 'altitudeM', SUPPLY_NUMBERS.altitudeM)
  if (typed !== undefined) return requireBarometricKpa(typed)
  if (altitudeM !== undefined) return barometricPressureKpa(altitudeM)
  const isTyped = isGiven(root, 'altitudeM') || isGiven(root, 'barometricPressureKpa')
  return isTyped ? undefined : reportMissing(root, 'altitudeM')
}

function readReserve(root: Node): ReserveRule | undefined {
  const node = openAt(root, 'reserve', SUPPLY_KEYS.reserve)
  if (node === undefined) return undefined
  const { factor, extraMinutes } = DEFAULT_RESERVE
  return {
    factor: readNumber(node, 'factor', SUPPLY_NUMBERS.reserveFactor) ?? factor,
    extraMinutes: readNumber(node, 'extraMinutes', SUPPLY_NUMBERS.minutes) ?? extraMinutes,
  }
}

function readLeg(node: Node): PlannedLeg | undefined {
  const kind = readChoice(node, 'kind', { choices: LEG_KINDS, isRequired: true })
  const minutes = requiredNumber(node, 'minutes', SUPPLY_NUMBERS.minutes)
  const setUp = readSetUpField(node)
  const rest = given({
    delayMinutes: readNumber(node, 'delayMinutes', SUPPLY_NUMBERS.delayMinutes),
    beside: readBeside(node),
    feed: readChoice(node, 'feed', { choices: ['carried', 'place'] }),
    altitudeM: readNumber(node, 'altitudeM', SUPPLY_NUMBERS.altitudeM),
    barometricPressureKpa: readNumber(
      node,
      'barometricPressureKpa',
      SUPPLY_NUMBERS.barometricPressureKpa,
    ),
  })
  if (kind === undefined || minutes === undefined) return undefined
  return { kind, minutes, ...rest, ...(setUp === undefined ? {} : { setUp }) }
}

function readStoreRow(node: Node): StoreRow | undefined {
  const id = requiredText(node, 'id')
  const label = requiredText(node, 'label')
  const place = requiredText(node, 'place')
  const waterVolumeL = requiredNumber(node, 'waterVolumeL', SUPPLY_NUMBERS.waterVolumeL)
  const gaugeKpa = readGauge(node, 'gauge', { isRequired: true })
  const mrSafety = readChoice(node, 'mrSafety', { choices: MR_SAFETIES, isRequired: true })
  const count = isGiven(node, 'count')
    ? wholeNumber(node, 'count', SUPPLY_NUMBERS.count)
    : reportMissing(node, 'count')
  const rest = given({
    regulatorMinimumGaugeKpa: readGauge(node, 'regulatorMinimum', { isRequired: false }),
    flowLpmMax: readNumber(node, 'flowLpmMax', SUPPLY_NUMBERS.regulatorLpm),
    marking: optionalText(node, 'marking'),
  })
  if (id === undefined || label === undefined || place === undefined) return undefined
  if (waterVolumeL === undefined || gaugeKpa === undefined) return undefined
  if (mrSafety === undefined || count === undefined) return undefined
  return { id, label, waterVolumeL, gaugeKpa, count, mrSafety, place, ...rest }
}

function readScanner(root: Node): ScannerKit | undefined {
  const node = openAt(root, 'scanner', SUPPLY_KEYS.scanner)
  if (node === undefined) return undefined
  const regulator = readChoice(node, 'regulator', { choices: MR_SAFETIES, isRequired: true })
  const flowmeter = readChoice(node, 'flowmeter', { choices: MR_SAFETIES, isRequired: true })
  const rest = given({
    tubeLengthM: readNumber(node, 'tubeLengthM', SUPPLY_NUMBERS.tubeLengthM),
    tubeBoreMm: readNumber(node, 'tubeBoreMm', SUPPLY_NUMBERS.tubeBoreMm),
  })
  if (regulator === undefined || flowmeter === undefined) return undefined
  return { regulator, flowmeter, ...rest }
}
