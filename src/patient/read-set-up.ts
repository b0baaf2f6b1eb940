// Reads the set-up on now as seen at the bedside and refuses what cannot be built. Leaves out what is unwise but possible, which planning judges.
import type { FamilyId, SizeId } from '../kit/family-id.ts'
import { FAMILY_IDS, FIT_IDS } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SourceKind } from '../kit/source-row.ts'
import {
  FAMILY_ALIASES,
  FIELD_ALIASES,
  FIT_ALIASES,
  SIZE_ALIASES,
  SOURCE_ALIASES,
} from './aliases.ts'
import { KEYS, NUMBERS } from './case-fields.ts'
import type { SetUpOnNow } from './case.ts'
import {
  checkNumber,
  given,
  isGiven,
  openObject,
  pathOf,
  problemValue,
  readChoice,
  readNumber,
  report,
  reportMissing,
  type Node,
} from './field.ts'

export const SOURCE_KINDS = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
  'concentrator',
  'jet-nebuliser',
  'blender',
  'ventilator',
] as const satisfies readonly SourceKind[]

export const OVER_FAMILIES = ['simple-mask'] as const

/** Sources whose mixture is set on them. */
export const MIXING_SOURCES: readonly SourceKind[] = ['jet-nebuliser', 'blender', 'ventilator']
/** Sources with a meter that opens beyond its scale. */
export const FLUSHABLE_SOURCES: readonly SourceKind[] = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
]

/** Sources that cannot drive a family: an entraining jet needs pressurised oxygen, and a nebuliser's stream does not
 *  pass small-bore tubing (common practice). */
export function sourcesFor(family: FamilyId): readonly SourceKind[] {
  const { entrainsAir, feeds } = INTERFACE_FAMILIES[family]
  if (entrainsAir !== 'no') return SOURCE_KINDS.filter((kind) => !MIXING_SOURCES.includes(kind))
  if (family === 'nasal-high-flow' || !feeds.includes('wide-bore'))
    return SOURCE_KINDS.filter((kind) => kind !== 'jet-nebuliser')
  return SOURCE_KINDS
}

/** Whether a fraction is set on this pair: on the entrainment valve or on the mixing source. */
export function hasSetting(setUp: {
  readonly family: FamilyId
  readonly sourceKind: SourceKind
}): boolean {
  return (
    INTERFACE_FAMILIES[setUp.family].entrainsAir !== 'no' ||
    MIXING_SOURCES.includes(setUp.sourceKind)
  )
}

export function readSetUp(node: Node): SetUpOnNow | undefined {
  const family = readChoice(node, 'family', {
    choices: FAMILY_IDS,
    aliases: FAMILY_ALIASES,
    isRequired: true,
  })
  const sourceKind = readChoice(node, 'sourceKind', {
    choices: SOURCE_KINDS,
    aliases: SOURCE_ALIASES,
    isRequired: true,
  })
  const size = family === undefined ? undefined : readSize(node, family)
  const fit = readChoice(node, 'fit', { choices: FIT_IDS, aliases: FIT_ALIASES })
  const flowLpm = readFlow(node)
  const setO2Fraction = readNumber(node, 'setO2Fraction', NUMBERS.inspiredFraction)
  const over = readOver(node, family)
  if (family === undefined || sourceKind === undefined || flowLpm === undefined) return undefined
  const setUp = { family, sourceKind, flowLpm, ...given({ size, fit, setO2Fraction, over }) }
  reportMismatch(node, setUp)
  return setUp
}

function readSize(node: Node, family: FamilyId): SizeId | undefined {
  const choices = INTERFACE_FAMILIES[family].sizes.map((size) => size.id)
  return readChoice(node, 'size', { choices, aliases: SIZE_ALIASES })
}

function readFlow(node: Node): number | 'flush' | undefined {
  const value = node.fields.get('flowLpm')
  if (value === 'flush') return value
  if (value === undefined) {
    const { min, max } = NUMBERS.flowLpm
    return reportMissing(node, 'flowLpm', { min, max })
  }
  return readNumber(node, 'flowLpm', NUMBERS.flowLpm)
}

function readOver(node: Node, family: FamilyId | undefined): SetUpOnNow['over'] {
  const path = pathOf(node, 'over')
  const { reading } = node
  if (!isGiven(node, 'over')) {
    return family === 'cannula-under-mask' ? reportMissing(node, 'over') : undefined
  }
  const value = node.fields.get('over')
  if (family !== undefined && family !== 'cannula-under-mask') {
    const suggestion = family === 'nasal-cannula' ? { suggestion: 'cannula-under-mask' } : {}
    const got = problemValue(value)
    return report(reading, { code: 'OVER_MASK_NOT_FOR_INTERFACE', path, value: got, ...suggestion })
  }
  const over = openObject({ reading, path, value, keys: KEYS.over, aliases: FIELD_ALIASES })
  if (over === undefined) return undefined
  const mask = readChoice(over, 'family', {
    choices: OVER_FAMILIES,
    aliases: FAMILY_ALIASES,
    isRequired: true,
  })
  const flowLpm = readFlow(over)
  return mask === undefined || flowLpm === undefined ? undefined : { family: mask, flowLpm }
}

function reportMismatch(node: Node, setUp: SetUpOnNow): void {
  const { reading } = node
  const sources = sourcesFor(setUp.family)
  if (!sources.includes(setUp.sourceKind)) {
    const path = pathOf(node, 'sourceKind')
    const limit = { oneOf: sources }
    report(reading, { code: 'SOURCE_NOT_FOR_INTERFACE', path, value: setUp.sourceKind, limit })
    return
  }
  const { min, max } = NUMBERS.inspiredFraction
  if (hasSetting(setUp)) {
    if (!isGiven(node, 'setO2Fraction')) reportMissing(node, 'setO2Fraction', { min, max })
  } else if (setUp.setO2Fraction !== undefined) {
    const path = pathOf(node, 'setO2Fraction')
    report(reading, { code: 'SETTING_NOT_FOR_SET_UP', path, value: setUp.setO2Fraction })
  }
  if (setUp.flowLpm === 'flush' && !FLUSHABLE_SOURCES.includes(setUp.sourceKind)) {
    const path = pathOf(node, 'flowLpm')
    report(reading, {
      code: 'FLUSH_NOT_ON_SOURCE',
      path,
      value: 'flush',
      limit: { min: NUMBERS.flowLpm.min, max: NUMBERS.flowLpm.max },
      unit: 'L/min',
    })
  }
}

/** A flow above three times the rated flow of the sizes in question is taken for another unit (common practice). */
const ABOVE_RATED = 3

/** Judges the typed flow by the size on the patient, or by the sizes for the age: 25 L/min on a newborn's cannula means 25 mL/min. */
export function reportFlowForSize(
  node: Node,
  setUp: SetUpOnNow,
  patient: { readonly ageYears: number },
): void {
  if (setUp.flowLpm === 'flush') return
  const sizes = INTERFACE_FAMILIES[setUp.family].sizes.filter((size) =>
    setUp.size === undefined
      ? size.ageYearsMin <= patient.ageYears && patient.ageYears <= size.ageYearsMax
      : size.id === setUp.size,
  )
  if (sizes.length === 0) return
  const min = Math.min(...sizes.map((size) => size.rated.minLpm)) / ABOVE_RATED
  const max = Math.max(...sizes.map((size) => size.rated.maxLpm)) * ABOVE_RATED
  const [slip] = NUMBERS.flowLpm.slips
  const rule = {
    code: 'FLOW_IMPLAUSIBLE_FOR_SIZE',
    unit: 'L/min',
    min: NUMBERS.flowLpm.min,
    max,
    slips: [{ ...slip, min, max }],
  } as const
  checkNumber({
    reading: node.reading,
    path: pathOf(node, 'flowLpm'),
    value: setUp.flowLpm,
    rule,
  })
}
