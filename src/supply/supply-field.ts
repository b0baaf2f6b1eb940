// Fields that ward and transfer files share: pressures in a unit of choice, gas beside a set-up, lists, required numbers. Leaves out what the files mean.
import type { Problem } from '../errors.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import { FIELD_ALIASES } from '../patient/aliases.ts'
import { KEYS } from '../patient/case-fields.ts'
import {
  given,
  isGiven,
  newReading,
  openObject,
  pathOf,
  problemValue,
  readNumber,
  readSwitch,
  report,
  reportMissing,
  type Node,
  type NumberRule,
} from '../patient/field.ts'
import { readSetUp } from '../patient/read-set-up.ts'
import { kpaFromBar, kpaFromPsi } from '../units/pressure.ts'
import type { BesideFlows } from './gas-drawn.ts'
import {
  GAUGE_UNITS,
  gaugeKeys,
  SUPPLY_ALIASES,
  SUPPLY_KEYS,
  SUPPLY_NUMBERS,
  type GaugeUnit,
} from './supply-fields.ts'

/** A whole file from its root: what it says, or every problem at once. */
export function readWhole<T>(
  input: unknown,
  keys: readonly string[],
  read: (root: Node) => T | undefined,
):
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const reading = newReading()
  const root = openObject({ reading, path: '', value: input, keys, aliases: SUPPLY_ALIASES })
  const value = root === undefined ? undefined : read(root)
  const { problems } = reading
  if (value === undefined || problems.length > 0) return { ok: false, problems }
  return { ok: true, value }
}

/** An object inside the file; undefined and reported where it is none. */
export function openAt(node: Node, key: string, keys: readonly string[]): Node | undefined {
  if (!isGiven(node, key)) return undefined
  const { reading } = node
  const value = node.fields.get(key)
  return openObject({ reading, path: pathOf(node, key), value, keys, aliases: SUPPLY_ALIASES })
}

/** Each entry opened; the field is required where `isRequired`. */
export function openEach(
  node: Node,
  key: string,
  keys: readonly string[],
  rule: { readonly isRequired: boolean },
): readonly Node[] {
  const { reading } = node
  const value = node.fields.get(key)
  if (value === undefined) {
    if (rule.isRequired) reportMissing(node, key)
    return []
  }
  const path = pathOf(node, key)
  if (!Array.isArray(value)) {
    report(reading, { code: 'NOT_A_LIST', path, value: problemValue(value) })
    return []
  }
  return value.flatMap((entry: unknown, i) => {
    const options = { reading, path: `${path}[${i}]`, value: entry, keys, aliases: SUPPLY_ALIASES }
    return openObject(options) ?? []
  })
}

/** As readNumber; an absent one is reported with its bounds. */
export function requiredNumber(node: Node, key: string, rule: NumberRule): number | undefined {
  if (isGiven(node, key)) return readNumber(node, key, rule)
  return reportMissing(node, key, { min: rule.min, max: rule.max })
}

/** A whole number. */
export function wholeNumber(node: Node, key: string, rule: NumberRule): number | undefined {
  const value = readNumber(node, key, rule)
  if (value === undefined || Number.isInteger(value)) return value
  const limit = { min: rule.min, max: rule.max }
  return report(node.reading, { code: rule.code, path: pathOf(node, key), value, limit })
}

/** A switch that may be left unsaid. */
export function optionalSwitch(node: Node, key: string): boolean | undefined {
  return isGiven(node, key) ? readSwitch(node, key) : undefined
}

/** Text with more than blanks in it, as typed; anything else is reported. */
export function requiredText(node: Node, key: string): string | undefined {
  const value = node.fields.get(key)
  if (value === undefined) return reportMissing(node, key)
  if (typeof value === 'string' && value.trim() !== '') return value
  return report(node.reading, {
    code: 'NOT_TEXT',
    path: pathOf(node, key),
    value: problemValue(value),
  })
}

/** As requiredText, but may be left out. */
export function optionalText(node: Node, key: string): string | undefined {
  return isGiven(node, key) ? requiredText(node, key) : undefined
}

const INTO_KPA: Readonly<Record<GaugeUnit, (value: number) => number>> = {
  Bar: kpaFromBar,
  Psi: kpaFromPsi,
  Kpa: (value) => value,
}

/** A pressure typed in exactly one unit, in kPa; two of them contradict each other even where they agree. */
export function readGauge(
  node: Node,
  stem: string,
  rule: { readonly isRequired: boolean },
): number | undefined {
  const typed = GAUGE_UNITS.filter((unit) => isGiven(node, stem + unit))
  const [unit, second] = typed
  if (unit === undefined) {
    const { min, max } = SUPPLY_NUMBERS.gaugeBar
    return rule.isRequired ? reportMissing(node, `${stem}Bar`, { min, max }) : undefined
  }
  if (second !== undefined) {
    const path = pathOf(node, stem + second)
    const value = problemValue(node.fields.get(stem + second))
    const limit = { oneOf: gaugeKeys(stem) }
    return report(node.reading, { code: 'CONTRADICTION', path, value, limit })
  }
  const value = readNumber(node, stem + unit, SUPPLY_NUMBERS[`gauge${unit}`])
  return value === undefined ? undefined : INTO_KPA[unit](value)
}

/** A set-up as in a case; null is room air, undefined not given or reported. */
export function readSetUpField(node: Node, key = 'setUp'): SetUpOnNow | null | undefined {
  const value = node.fields.get(key)
  if (value === undefined || value === null) return value
  const { reading } = node
  const path = pathOf(node, key)
  const inner = openObject({ reading, path, value, keys: KEYS.setUp, aliases: FIELD_ALIASES })
  return inner === undefined ? undefined : readSetUp(inner)
}

/** Flows beside a set-up as typed; undefined where none are given. */
export function readBeside(node: Node): BesideFlows | undefined {
  const inner = openAt(node, 'beside', SUPPLY_KEYS.beside)
  if (inner === undefined) return undefined
  const flow = (key: string): number | undefined => readNumber(inner, key, SUPPLY_NUMBERS.besideLpm)
  return given({
    biasFlowLpm: flow('biasFlowLpm'),
    drivingGasLpm: flow('drivingGasLpm'),
    jetLpm: flow('jetLpm'),
    leakLpm: flow('leakLpm'),
  })
}

/** Reports any version but this one, and a missing one. */
export function readVersion(root: Node, version: number): void {
  const limit = { oneOf: [String(version)] }
  const value = root.fields.get('version')
  if (value === version) return
  const path = pathOf(root, 'version')
  if (value === undefined) {
    reportMissing(root, 'version', limit)
    return
  }
  report(root.reading, { code: 'UNKNOWN_CHOICE', path, value: problemValue(value), limit })
}

/** Each id may stand once; the second is reported where it stands, whatever else is wrong with either. */
export function reportTwins(nodes: readonly Node[], key = 'id'): void {
  const ids = nodes.map((node) => node.fields.get(key))
  nodes.forEach((node, i) => {
    const id = ids[i]
    if (typeof id !== 'string' || ids.indexOf(id) === i) return
    report(node.reading, { code: 'DUPLICATE_ID', path: pathOf(node, key), value: id })
  })
}
