// Reads a stock file from parsed JSON or YAML: everything wrong at once, or the items as typed. Leaves out parsing of text.
import type { Problem } from '../errors.ts'
import {
  given,
  isGiven,
  pathOf,
  problemValue,
  readNumber,
  report,
  reportMissing,
  type Node,
} from '../patient/field.ts'
import type { StockItem } from './stock.ts'
import {
  openEach,
  optionalSwitch,
  optionalText,
  readWhole,
  readVersion,
  reportTwins,
  requiredNumber,
  requiredText,
  wholeNumber,
} from './supply-field.ts'
import { SUPPLY_KEYS, SUPPLY_NUMBERS } from './supply-fields.ts'

export const STOCK_VERSION = 1

export interface StockFile {
  readonly version: typeof STOCK_VERSION
  readonly note?: string
  readonly isInvented?: boolean
  readonly items: readonly StockItem[]
}

export type ReadStock =
  | { readonly ok: true; readonly stock: StockFile }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Every problem at once; nothing is converted. Bounds are those of stockAnswer. */
export function readStock(input: unknown): ReadStock {
  const read = readWhole(input, SUPPLY_KEYS.stock, stockOf)
  return read.ok ? { ok: true, stock: read.value } : read
}

function stockOf(root: Node): StockFile {
  readVersion(root, STOCK_VERSION)
  const names = given({
    note: optionalText(root, 'note'),
    isInvented: optionalSwitch(root, 'isInvented'),
  })
  const nodes = openEach(root, 'items', SUPPLY_KEYS.stockItem, { isRequired: true })
  const items = nodes.flatMap((one) => readItem(one) ?? [])
  reportTwins(nodes)
  return { version: STOCK_VERSION, ...names, items }
}

function readItem(node: Node): StockItem | undefined {
  const id = requiredText(node, 'id')
  const label = requiredText(node, 'label')
  const onHand = isGiven(node, 'onHand')
    ? wholeNumber(node, 'onHand', SUPPLY_NUMBERS.stockCount)
    : reportMissing(node, 'onHand')
  const usedEachDay = readUse(node)
  const leadTimeDays = requiredNumber(node, 'leadTimeDays', SUPPLY_NUMBERS.leadTimeDays)
  const serviceLevel = readNumber(node, 'serviceLevel', SUPPLY_NUMBERS.serviceLevel)
  if (id === undefined || label === undefined || onHand === undefined) return undefined
  if (usedEachDay === undefined || leadTimeDays === undefined) return undefined
  return { id, label, onHand, usedEachDay, leadTimeDays, ...given({ serviceLevel }) }
}

/** A whole number for each day, one day at least. */
function readUse(node: Node): readonly number[] | undefined {
  const { reading } = node
  const path = pathOf(node, 'usedEachDay')
  const value = node.fields.get('usedEachDay')
  if (value === undefined) return reportMissing(node, 'usedEachDay')
  if (!Array.isArray(value))
    return report(reading, { code: 'NOT_A_LIST', path, value: problemValue(value) })
  const { min, max } = SUPPLY_NUMBERS.daysSeen
  if (value.length < min || value.length > max)
    return report(reading, {
      code: 'COUNT_OUT_OF_RANGE',
      path,
      value: value.length,
      limit: { min, max },
    })
  const days = new Map(value.map((one: unknown, i) => [String(i), one ?? '']))
  const list: Node = { ...node, path, fields: days }
  const read = [...days.keys()].flatMap(
    (day) => wholeNumber(list, day, SUPPLY_NUMBERS.stockCount) ?? [],
  )
  return read.length === value.length ? read : undefined
}
