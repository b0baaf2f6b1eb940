// Kinds of cells: how a value of the shelf is written into one and taken out again, still unread. What has no form of ours stays text, so that the reader of shelves refuses it. Leaves out which column holds which.
import type { PrintedSetting, SizeStock, VentilatorMode } from '../../kit/shelf.ts'
import { RULES } from '../../kit/shelf-rules.ts'
import type { CellForm } from './headings.ts'
import { joinItems, numberIn, numberText, splitItems } from './cell-text.ts'
import type { CellBounds } from './cell-text.ts'

export interface CellKind {
  readonly form: CellForm
  /** Bounds of the numbers in it, where it holds any. */
  readonly bounds?: CellBounds
  /** Only whole numbers are allowed. */
  readonly isWhole?: true
  /** The text of a value that is there. */
  readonly write: (value: unknown) => string
  readonly read: (text: string) => unknown
}

export const TEXT: CellKind = { form: 'text', write: String, read: (text) => text }

/** A name out of a closed list. */
export const CHOICE: CellKind = { form: 'text', write: String, read: (text) => text.trim() }

export const NAMES: CellKind = {
  form: 'names',
  write: (value) => joinItems(listOf(value).map(String)),
  read: splitItems,
}

export const YES_NO: CellKind = {
  form: 'yesNo',
  write: (value) => (value === true ? 'yes' : 'no'),
  read: (text) => {
    const typed = text.trim().toLowerCase()
    if (typed === 'yes' || typed === 'true') return true
    return typed === 'no' || typed === 'false' ? false : text
  },
}

export function numberCell(bounds: CellBounds): CellKind {
  return {
    form: 'number',
    bounds,
    write: (value) => numberText(Number(value), bounds),
    read: (text) => numberIn(text, bounds),
  }
}

export function countCell(bounds: CellBounds): CellKind {
  return { ...numberCell(bounds), isWhole: true }
}

/** Numbers with the bar between them. One item with a comma in it could be one number or two and stays text. */
export function numbersCell(bounds: CellBounds): CellKind {
  return {
    form: 'numbers',
    bounds,
    write: (value) => joinItems(listOf(value).map((one) => numberText(Number(one), bounds))),
    read: (text) => {
      const items = splitItems(text)
      const [only] = items
      const isOneUnclear = items.length === 1 && typeof numberOnly(only, bounds) === 'string'
      return isOneUnclear ? text.trim() : items.map((item) => numberIn(item, bounds))
    },
  }
}

function numberOnly(item: string | undefined, bounds: CellBounds): number | string {
  return item === undefined || item.includes(',') ? '' : numberIn(item, bounds)
}

const SIZE =
  /^(\S+)\s+([^\s()]+)(?:\s*\(\s*(?:from\s+(\S+?)|to\s+(\S+?)|(\S+)\s+to\s+(\S+?))\s*\))?(?:\s*\(\s*(?:from\s+(\S+?)|to\s+(\S+?)|(\S+)\s+to\s+(\S+?))\s*kg\s*\))?$/

/** `adult 4 (15 to 30) (from 40 kg)`: size, how many, and the flows and weights on its label. */
export const SIZES: CellKind = {
  form: 'sizes',
  bounds: RULES.count,
  isWhole: true,
  // Safe: the column holds the sizes of an interface and nothing else.
  write: (value) => joinItems((listOf(value) as readonly SizeStock[]).map(sizeText)),
  read: (text) => splitItems(text).map(sizeIn),
}

function sizeText({
  size,
  count,
  ratedMinLpm,
  ratedMaxLpm,
  fitsMinKg,
  fitsMaxKg,
}: SizeStock): string {
  const head = `${size} ${numberText(count, RULES.count)}`
  const flows = rangeText({ min: ratedMinLpm, max: ratedMaxLpm, bounds: RULES.ratedLpm, unit: '' })
  const weights = rangeText({ min: fitsMinKg, max: fitsMaxKg, bounds: RULES.fitsKg, unit: ' kg' })
  return `${head}${flows}${weights}`
}

/** ` (15 to 30)`, ` (from 15)`, ` (to 30)`, or nothing. */
function rangeText(of: {
  readonly min: number | undefined
  readonly max: number | undefined
  readonly bounds: CellBounds
  readonly unit: string
}): string {
  const { bounds, unit } = of
  const min = of.min === undefined ? undefined : numberText(of.min, bounds)
  const max = of.max === undefined ? undefined : numberText(of.max, bounds)
  if (min === undefined) return max === undefined ? '' : ` (to ${max}${unit})`
  return max === undefined ? ` (from ${min}${unit})` : ` (${min} to ${max}${unit})`
}

function sizeIn(item: string): unknown {
  const found = SIZE.exec(item)
  if (found === null) return item
  const [, size, count = '', from, to, low, high, fromKg, toKg, lowKg, highKg] = found
  return {
    size,
    count: numberIn(count, RULES.count),
    ...typed('ratedMinLpm', from ?? low, RULES.ratedLpm),
    ...typed('ratedMaxLpm', to ?? high, RULES.ratedLpm),
    ...typed('fitsMinKg', fromKg ?? lowKg, RULES.fitsKg),
    ...typed('fitsMaxKg', toKg ?? highKg, RULES.fitsKg),
  }
}

function typed(key: string, text: string | undefined, bounds: CellBounds): object {
  return text === undefined ? {} : { [key]: numberIn(text, bounds) }
}

const SETTING = /^(\S+)\s+at\s+([^\s()]+)(?:\s*\(\s*fast\s+(\S+?)\s*\))?$/

/** `0.28 at 4 (fast 6)`: fraction, least flow, and the flow for fast breathing. */
export const SETTINGS: CellKind = {
  form: 'settings',
  bounds: RULES.ratedLpm,
  // Safe: the column holds the settings of a valve and nothing else.
  write: (value) => joinItems((listOf(value) as readonly PrintedSetting[]).map(settingText)),
  read: (text) => splitItems(text).map(settingIn),
}

function settingText({ o2Fraction, minimumLpm, fastBreathingLpm }: PrintedSetting): string {
  const flow = numberText(minimumLpm, RULES.ratedLpm)
  const head = `${numberText(o2Fraction, RULES.valveFraction)} at ${flow}`
  if (fastBreathingLpm === undefined) return head
  return `${head} (fast ${numberText(fastBreathingLpm, RULES.ratedLpm)})`
}

function settingIn(item: string): unknown {
  const found = SETTING.exec(item)
  if (found === null) return item
  const [, fraction = '', flow = '', fast] = found
  return {
    o2Fraction: numberIn(fraction, RULES.valveFraction),
    minimumLpm: numberIn(flow, RULES.ratedLpm),
    ...(fast === undefined ? {} : { fastBreathingLpm: numberIn(fast, RULES.ratedLpm) }),
  }
}

/** `constant-flow: Constant flow`: kind, then the name on the device. */
export const MODES: CellKind = {
  form: 'modes',
  // Safe: the column holds the modes of a ventilator and nothing else.
  write: (value) =>
    joinItems(
      (listOf(value) as readonly VentilatorMode[]).map(({ label, kind }) => `${kind}: ${label}`),
    ),
  read: (text) =>
    splitItems(text).map((item) => {
      const found = /^([^:\s]+)\s*: ?([\s\S]+)$/.exec(item)
      return found === null ? item : { kind: found[1], label: found[2] }
    }),
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : []
}
