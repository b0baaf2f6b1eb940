// Reads the gas sources of a shelf file. Leaves out whether a device of that scale exists.
import { FLOWMETER_KINDS } from '../physics/flowmeter.ts'
import { SOURCE_PURITY } from '../physics/source-purity.ts'
import type { PurityClass } from '../physics/source-purity.ts'
import { FAMILY_IDS } from './family-id.ts'
import type { FamilyId } from './family-id.ts'
import {
  at,
  given,
  has,
  openFields,
  readChoice,
  readCount,
  readList,
  readRequiredNumber,
  readRising,
  readText,
  report,
  requireField,
} from './read-fields.ts'
import type { NumberRule, Opened } from './read-fields.ts'
import { readOwnEnds } from './read-ends.ts'
import { readMixerFacts } from './read-mixer-facts.ts'
import { readRow } from './read-row.ts'
import type { ShelfSource } from './shelf.ts'
import { KEYS, METER_CLASSES, RULES, SOURCE_KINDS, UNITS_ON_SCALE } from './shelf-rules.ts'
import type { FlushFlow, MeterScale, SourceKind } from './source-row.ts'

export function readSource(options: {
  readonly problems: Opened['problems']
  readonly path: string
  readonly value: unknown
  readonly places: readonly string[]
}): ShelfSource | undefined {
  const kind = kindOf(options.value)
  const node = openFields({ ...options, keys: KEYS[kind ?? 'anySource'] })
  if (node === undefined) return undefined
  const read = readChoice(node, 'kind', SOURCE_KINDS)
  const row = readRow(node, options.places)
  const count = readCount(node, 'count', RULES.count)
  const usage = { ...readUsage(node), ...readOwnEnds(node), ...readMixerFacts(node) }
  const settings = read === undefined ? undefined : readSettings(node, read)
  if (row === undefined || count === undefined || settings === undefined) return undefined
  const source: ShelfSource = { ...row, count, ...settings, ...usage }
  reportUnusable(node, source)
  return source
}

function kindOf(value: unknown): SourceKind | undefined {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return undefined
  return SOURCE_KINDS.find((kind) => kind === value.kind)
}

type Settings<S> = S extends ShelfSource ? Omit<S, keyof ReadElsewhere> : never
type ReadElsewhere = Omit<ShelfSource, keyof SourceSettings>
/** What a kind of source has of its own. */
type SourceSettings = Pick<ShelfSource, 'kind'> & {
  readonly [
    K in
      | 'meter'
      | 'purity'
      | 'settings'
      | 'driveLpmMax'
      | 'jets'
      | 'stepsLpm'
      | 'fractionSteps'
      | 'errorRelative'
  ]: unknown
}

function readSettings(node: Opened, kind: SourceKind): Settings<ShelfSource> | undefined {
  if (kind === 'blender' || kind === 'ventilator') return readBlend(node, kind)
  const meter = readMeter(node)
  const purity = readChoice(node, 'purity', PURITIES)
  if (kind === 'jet-nebuliser') return readNebuliser(node, meter, purity)
  return meter === undefined || purity === undefined ? undefined : { kind, meter, purity }
}

// Safe: the table is declared with exactly the purity classes as its keys.
const PURITIES = Object.keys(SOURCE_PURITY) as readonly PurityClass[]

function readBlend(node: Opened, kind: 'blender' | 'ventilator') {
  const stepsLpm = readRequiredRising(node, 'stepsLpm', RULES.stepLpm)
  const fractionSteps = readRequiredRising(node, 'fractionSteps', RULES.o2Fraction)
  const errorRelative = readRequiredNumber(node, 'errorRelative', RULES.errorRelative)
  if (stepsLpm === undefined || fractionSteps === undefined || errorRelative === undefined)
    return undefined
  return { kind, stepsLpm, fractionSteps, errorRelative }
}

function readNebuliser(
  node: Opened,
  meter: MeterScale | undefined,
  purity: PurityClass | undefined,
) {
  const settings = readRequiredRising(node, 'settings', RULES.valveFraction)
  const driveLpmMax = readRequiredNumber(node, 'driveLpmMax', RULES.stepLpm)
  const jets = readCount(node, 'jets', RULES.jets)
  if (meter === undefined || purity === undefined) return undefined
  if (settings === undefined || driveLpmMax === undefined || jets === undefined) return undefined
  return {
    kind: 'jet-nebuliser' as const,
    meter,
    purity,
    settings,
    driveLpmMax,
    jets: jets === 1 ? (1 as const) : (2 as const),
  }
}

function readMeter(node: Opened): MeterScale | undefined {
  if (!requireField(node, 'meter')) return undefined
  const meter = openFields({
    problems: node.problems,
    path: at(node, 'meter'),
    value: node.fields.get('meter'),
    keys: KEYS.meter,
  })
  if (meter === undefined) return undefined
  const kind = readChoice(meter, 'kind', FLOWMETER_KINDS)
  const stepsLpm = readRequiredRising(meter, 'stepsLpm', RULES.stepLpm)
  const meterClass = readChoice(meter, 'meterClass', METER_CLASSES)
  const flush = readFlush(meter)
  if (kind === undefined || stepsLpm === undefined || meterClass === undefined) return undefined
  return flush === undefined ? undefined : { kind, stepsLpm, flush, meterClass }
}

/** null or absent: the meter does not open beyond its scale. */
function readFlush(meter: Opened): FlushFlow | null | undefined {
  const value = meter.fields.get('flush')
  if (value === undefined || value === null) return null
  const node = openFields({
    problems: meter.problems,
    path: at(meter, 'flush'),
    value,
    keys: KEYS.flush,
  })
  if (node === undefined) return undefined
  const lowLpm = readRequiredNumber(node, 'lowLpm', RULES.flushLpm)
  const medianLpm = readRequiredNumber(node, 'medianLpm', RULES.flushLpm)
  const highLpm = readRequiredNumber(node, 'highLpm', RULES.flushLpm)
  const source = readText(node, 'source')
  if (lowLpm === undefined || medianLpm === undefined || highLpm === undefined) return undefined
  if (!(lowLpm <= medianLpm && medianLpm <= highLpm && lowLpm < highLpm)) {
    const limit = { min: lowLpm, max: highLpm }
    const path = at(node, 'medianLpm')
    return report(node, { code: 'RANGE_REVERSED', path, value: medianLpm, limit, unit: 'L/min' })
  }
  return source === undefined ? undefined : { lowLpm, medianLpm, highLpm, source }
}

function readRequiredRising(
  node: Opened,
  key: string,
  rule: NumberRule,
): readonly number[] | undefined {
  return requireField(node, key) ? readMarks(node, key, rule) : undefined
}

/** A list with something in it: a scale without marks sets nothing. */
function readMarks(node: Opened, key: string, rule: NumberRule): readonly number[] | undefined {
  const read = readRising(node, key, rule)
  if (read === undefined || read.length > 0) return read
  return report(node, { code: 'MISSING_FIELD', path: `${at(node, key)}[0]`, value: null })
}

function readUsage(node: Opened) {
  const usedStepsLpm = readMarks(node, 'usedStepsLpm', RULES.stepLpm)
  const usedFractions = readMarks(node, 'usedFractions', RULES.o2Fraction)
  const markedIn = has(node, 'markedIn') ? readChoice(node, 'markedIn', UNITS_ON_SCALE) : undefined
  return given({ usedStepsLpm, usedFractions, usedFor: readUsedFor(node), markedIn })
}

function readUsedFor(node: Opened): readonly FamilyId[] | undefined {
  return readList(node, 'usedFor')?.flatMap((value, i) => {
    const path = `${at(node, 'usedFor')}[${i}]`
    const entry = { ...node, path: '', fields: new Map([[path, value]]) }
    return readChoice(entry, path, FAMILY_IDS) ?? []
  })
}

/** Steps and fractions in use must be marks of the scale. */
function reportUnusable(node: Opened, source: ShelfSource): void {
  const marks = 'meter' in source ? source.meter.stepsLpm : source.stepsLpm
  reportOffScale(node, 'usedStepsLpm', source.usedStepsLpm, marks)
  const fractions = fractionsOf(source)
  if (fractions !== undefined)
    reportOffScale(node, 'usedFractions', source.usedFractions, fractions)
  if (source.kind === 'jet-nebuliser' && !marks.some((lpm) => lpm <= source.driveLpmMax)) {
    const path = at(node, 'driveLpmMax')
    report(node, { code: 'STEP_NOT_ON_METER', path, value: source.driveLpmMax, unit: 'L/min' })
  }
}

function fractionsOf(source: ShelfSource): readonly number[] | undefined {
  if (source.kind === 'jet-nebuliser') return source.settings
  return 'fractionSteps' in source ? source.fractionSteps : undefined
}

function reportOffScale(
  node: Opened,
  key: string,
  used: readonly number[] | undefined,
  marks: readonly number[],
): void {
  used?.forEach((value, i) => {
    if (marks.includes(value)) return
    const limit = { oneOf: marks.map(String) }
    report(node, { code: 'STEP_NOT_ON_METER', path: `${at(node, key)}[${i}]`, value, limit })
  })
}
