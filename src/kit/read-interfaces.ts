// Reads the interfaces of a shelf file: family, sizes with counts and labels, settings of a valve. Leaves out the sources that feed them.
import { FAMILY_IDS } from './family-id.ts'
import type { FamilyId, SizeId } from './family-id.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import {
  at,
  given,
  has,
  openFields,
  readChoice,
  readCount,
  readList,
  readNumber,
  readRequiredNumber,
  readSwitch,
  report,
  requireField,
} from './read-fields.ts'
import type { Opened } from './read-fields.ts'
import { readEnds, reportSwapped } from './read-ends.ts'
import { readRow } from './read-row.ts'
import type { FixedTubing, InterfaceRow, PrintedSetting, SizeStock } from './shelf.ts'
import { KEYS, RULES } from './shelf-rules.ts'

export function readInterface(options: {
  readonly problems: Opened['problems']
  readonly path: string
  readonly value: unknown
  readonly places: readonly string[]
}): InterfaceRow | undefined {
  const node = openFields({ ...options, keys: KEYS.interface })
  if (node === undefined) return undefined
  const family = readChoice(node, 'family', FAMILY_IDS)
  const row = readRow(node, options.places)
  const hasCollar = readSwitch(node, 'hasCollar')
  const inletEnds = readEnds(node, 'inletEnds')
  const tubing = readTubing(node)
  if (family === undefined) return undefined
  const sizes = readSizes(node, family)
  const settings = readSettings(node, family)
  if (row === undefined || sizes === undefined) return undefined
  return { ...row, family, sizes, ...given({ settings, hasCollar, inletEnds, tubing }) }
}

/** Tubing fixed to the interface. */
function readTubing(parent: Opened): FixedTubing | undefined {
  if (!has(parent, 'tubing')) return undefined
  const node = openFields({
    problems: parent.problems,
    path: at(parent, 'tubing'),
    value: parent.fields.get('tubing'),
    keys: KEYS.tubing,
  })
  if (node === undefined) return undefined
  const lengthM = readRequiredNumber(node, 'lengthM', RULES.lengthM)
  const boreMm = readRequiredNumber(node, 'boreMm', RULES.boreMm)
  return lengthM === undefined || boreMm === undefined ? undefined : { lengthM, boreMm }
}

function readSizes(node: Opened, family: FamilyId): readonly SizeStock[] | undefined {
  if (!requireField(node, 'sizes')) return undefined
  const choices = INTERFACE_FAMILIES[family].sizes.map(({ id }) => id)
  const read = readList(node, 'sizes')?.map((value, i) =>
    readSize({ node, path: `${at(node, 'sizes')}[${i}]`, value, choices, family }),
  )
  const sizes = read?.filter((size) => size !== undefined)
  sizes?.forEach(({ size }, i) => {
    if (sizes.findIndex((other) => other.size === size) < i)
      report(node, { code: 'DUPLICATE_ID', path: `${at(node, 'sizes')}[${i}].size`, value: size })
  })
  return sizes
}

function readSize(options: {
  readonly node: Opened
  readonly path: string
  readonly value: unknown
  readonly choices: readonly SizeId[]
  readonly family: FamilyId
}): SizeStock | undefined {
  const { node: parent, path, value, choices, family } = options
  const node = openFields({ problems: parent.problems, path, value, keys: KEYS.size })
  if (node === undefined) return undefined
  const size = readChoice(node, 'size', choices)
  const count = readCount(node, 'count', RULES.count)
  const ratedMinLpm = readNumber(node, 'ratedMinLpm', RULES.ratedLpm)
  const ratedMaxLpm = readNumber(node, 'ratedMaxLpm', RULES.ratedLpm)
  const fitsMinKg = readNumber(node, 'fitsMinKg', RULES.fitsKg)
  const fitsMaxKg = readNumber(node, 'fitsMaxKg', RULES.fitsKg)
  reportSwapped(node, { lower: 'fitsMinKg', higher: 'fitsMaxKg', unit: 'kg' })
  if (size === undefined || count === undefined) return undefined
  const stock = { size, count, ...given({ ratedMinLpm, ratedMaxLpm, fitsMinKg, fitsMaxKg }) }
  reportReversed(node, stock, family)
  return stock
}

/** One end typed from the label must still fit the usual other end. */
function reportReversed(node: Opened, stock: SizeStock, family: FamilyId): void {
  const usual = INTERFACE_FAMILIES[family].sizes.find(({ id }) => id === stock.size)?.rated
  const minLpm = stock.ratedMinLpm ?? usual?.minLpm ?? 0
  const maxLpm = stock.ratedMaxLpm ?? usual?.maxLpm ?? Number.POSITIVE_INFINITY
  if (minLpm <= maxLpm) return
  const key = stock.ratedMaxLpm === undefined ? 'ratedMinLpm' : 'ratedMaxLpm'
  report(node, {
    code: 'RANGE_REVERSED',
    path: at(node, key),
    value: stock[key] ?? null,
    limit: key === 'ratedMaxLpm' ? { min: minLpm } : { max: maxLpm },
    unit: 'L/min',
  })
}

function readSettings(node: Opened, family: FamilyId): readonly PrintedSetting[] | undefined {
  if (!has(node, 'settings')) return undefined
  if (INTERFACE_FAMILIES[family].entrainsAir === 'no') {
    const path = at(node, 'settings')
    return report(node, { code: 'SETTING_NOT_FOR_SET_UP', path, value: 'list' })
  }
  return readList(node, 'settings')
    ?.map((value, i) => readSetting(node, `${at(node, 'settings')}[${i}]`, value))
    .filter((setting) => setting !== undefined)
}

function readSetting(parent: Opened, path: string, value: unknown): PrintedSetting | undefined {
  const node = openFields({ problems: parent.problems, path, value, keys: KEYS.setting })
  if (node === undefined) return undefined
  const o2Fraction = readRequiredNumber(node, 'o2Fraction', RULES.valveFraction)
  const minimumLpm = readRequiredNumber(node, 'minimumLpm', RULES.ratedLpm)
  const fastBreathingLpm = readNumber(node, 'fastBreathingLpm', RULES.ratedLpm)
  if (o2Fraction === undefined || minimumLpm === undefined) return undefined
  if (fastBreathingLpm !== undefined && fastBreathingLpm < minimumLpm) {
    report(node, {
      code: 'RANGE_REVERSED',
      path: at(node, 'fastBreathingLpm'),
      value: fastBreathingLpm,
      limit: { min: minimumLpm },
      unit: 'L/min',
    })
  }
  return { o2Fraction, minimumLpm, ...given({ fastBreathingLpm }) }
}
