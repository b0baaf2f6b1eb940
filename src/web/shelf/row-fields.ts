// Which fields a row of each list has and how each is typed, as data. Leaves out their names (words) and their bounds (the shelf reader).
import { FLOWMETER_KINDS } from '../../physics/flowmeter.ts'
import { SOURCE_PURITY } from '../../physics/source-purity.ts'
import type { RowList } from '../../kit/edit-shelf.ts'
import { END_IDS, GAS_IDS } from '../../kit/ends.ts'
import { FAMILY_IDS } from '../../kit/family-id.ts'
import type { FamilyId } from '../../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import { FITTING_KINDS, OUTLET_KINDS, TUBE_KINDS } from '../../kit/part-rows.ts'
import { AFTER_FAILURE, HUMIDIFIER_KINDS, MODE_KINDS, YES_NO_UNKNOWN } from '../../kit/shelf.ts'
import { KEYS, METER_CLASSES, SOURCE_KINDS, UNITS_ON_SCALE } from '../../kit/shelf-rules.ts'
import type { RowDraft } from './row-draft.ts'

export type FieldKind = 'text' | 'number' | 'numbers' | 'choice' | 'choices' | 'switch'

export interface RowField {
  /** Where it stands in the row; `[]` for any entry of a list. */
  readonly path: string
  readonly kind: FieldKind
  readonly unit?: string
  readonly choices?: readonly string[]
}

/** Fields under one heading. */
export interface FieldGroup {
  readonly id: GroupId
  readonly fields: readonly RowField[]
}
export type GroupId = 'what' | 'stock' | 'sizes' | 'label' | 'scale' | 'use' | 'ends' | 'failure'

const text = (path: string): RowField => ({ path, kind: 'text' })
const number = (path: string, unit?: string): RowField => ({
  path,
  kind: 'number',
  ...(unit === undefined ? {} : { unit }),
})
const numbers = (path: string, unit?: string): RowField => ({
  ...number(path, unit),
  kind: 'numbers',
})
const choice = (path: string, choices: readonly string[]): RowField => ({
  path,
  kind: 'choice',
  choices,
})
const yesNo = (path: string): RowField => ({ path, kind: 'switch' })

const LPM = 'L/min'
const KG = 'kg'
/** In every row, with the kind before it. */
const NAMED = [text('label'), text('wardMarking')]
const COUNTED = [choice('place', []), number('count')]
const LABEL: FieldGroup = {
  id: 'label',
  fields: [number('ratedMinLpm', LPM), number('ratedMaxLpm', LPM)],
}
const IN_AND_OUT = [choice('inletEnds[]', END_IDS), choice('outletEnd', END_IDS)]

const GROUPS: Readonly<Record<RowList, readonly FieldGroup[]>> = {
  interfaces: [
    { id: 'what', fields: [choice('family', FAMILY_IDS), ...NAMED] },
    { id: 'stock', fields: [choice('place', [])] },
    {
      id: 'sizes',
      fields: [
        choice('sizes[].size', []),
        number('sizes[].count'),
        number('sizes[].ratedMinLpm', LPM),
        number('sizes[].ratedMaxLpm', LPM),
        number('sizes[].fitsMinKg', KG),
        number('sizes[].fitsMaxKg', KG),
      ],
    },
    {
      id: 'scale',
      fields: [
        number('settings[].o2Fraction'),
        number('settings[].minimumLpm', LPM),
        number('settings[].fastBreathingLpm', LPM),
        yesNo('hasCollar'),
      ],
    },
    {
      id: 'ends',
      fields: [
        choice('inletEnds[]', END_IDS),
        number('tubing.lengthM', 'm'),
        number('tubing.boreMm', 'mm'),
      ],
    },
  ],
  sources: [
    { id: 'what', fields: [choice('kind', SOURCE_KINDS), ...NAMED] },
    { id: 'stock', fields: COUNTED },
    {
      id: 'scale',
      fields: [
        choice('meter.kind', FLOWMETER_KINDS),
        choice('meter.meterClass', METER_CLASSES),
        numbers('meter.stepsLpm', LPM),
        number('meter.flush.lowLpm', LPM),
        number('meter.flush.medianLpm', LPM),
        number('meter.flush.highLpm', LPM),
        text('meter.flush.source'),
        choice('purity', Object.keys(SOURCE_PURITY)),
        choice('markedIn', UNITS_ON_SCALE),
        numbers('settings'),
        number('driveLpmMax', LPM),
        number('jets'),
        yesNo('isHeated'),
        numbers('stepsLpm', LPM),
        numbers('fractionSteps'),
        number('errorRelative'),
        number('pushesKpaMax', 'kPa'),
        text('modes[].label'),
        choice('modes[].kind', MODE_KINDS),
      ],
    },
    {
      id: 'use',
      fields: [
        numbers('usedStepsLpm', LPM),
        numbers('usedFractions'),
        { path: 'usedFor', kind: 'choices', choices: FAMILY_IDS },
      ],
    },
    {
      id: 'failure',
      fields: [
        choice('failure.air', AFTER_FAILURE),
        choice('failure.oxygen', AFTER_FAILURE),
        choice('failure.mains', AFTER_FAILURE),
        choice('biasFlowAddsToUse', YES_NO_UNKNOWN),
        choice('leakCompensationAddsToUse', YES_NO_UNKNOWN),
        choice('hasOwnFilter', YES_NO_UNKNOWN),
      ],
    },
    { id: 'ends', fields: IN_AND_OUT },
  ],
  humidifiers: [
    { id: 'what', fields: [choice('kind', HUMIDIFIER_KINDS), ...NAMED] },
    { id: 'stock', fields: COUNTED },
    {
      ...LABEL,
      fields: [
        ...LABEL.fields,
        number('reliefKpa', 'kPa'),
        number('waterMl', 'mL'),
        number('outputMgPerL', 'mg/L'),
        number('tidalMinMl', 'mL'),
        number('tidalMaxMl', 'mL'),
      ],
    },
    { id: 'ends', fields: IN_AND_OUT },
  ],
  tubes: [
    { id: 'what', fields: [choice('kind', TUBE_KINDS), ...NAMED] },
    { id: 'stock', fields: COUNTED },
    {
      id: 'scale',
      fields: [
        number('lengthM', 'm'),
        number('boreMm', 'mm'),
        yesNo('isHeated'),
        yesNo('hasWaterTrap'),
      ],
    },
    LABEL,
    { id: 'ends', fields: [choice('inletEnd', END_IDS), choice('outletEnd', END_IDS)] },
  ],
  fittings: [
    { id: 'what', fields: [choice('kind', FITTING_KINDS), ...NAMED] },
    { id: 'stock', fields: COUNTED },
    { id: 'ends', fields: [...IN_AND_OUT, choice('openEnds[]', END_IDS), yesNo('hasPorts')] },
    LABEL,
  ],
  outlets: [
    { id: 'what', fields: [choice('kind', OUTLET_KINDS), choice('gas', GAS_IDS), ...NAMED] },
    { id: 'stock', fields: COUNTED },
    { id: 'ends', fields: [choice('outletEnd', END_IDS)] },
  ],
  airMeters: [
    { id: 'what', fields: NAMED },
    { id: 'stock', fields: COUNTED },
    { id: 'scale', fields: [numbers('stepsLpm', LPM)] },
    { id: 'ends', fields: IN_AND_OUT },
  ],
}

/** The groups of fields that a row of this list, of the kind typed so far, can have. */
export function groupsOf(list: RowList, draft: RowDraft): readonly FieldGroup[] {
  return GROUPS[list].flatMap(({ id, fields }) => {
    const own = fields.filter((field) => belongs(list, draft, field))
    return own.length === 0 ? [] : [{ id, fields: own }]
  })
}

export function fieldsOf(list: RowList, draft: RowDraft): readonly RowField[] {
  return groupsOf(list, draft).flatMap(({ fields }) => fields)
}

function belongs(list: RowList, draft: RowDraft, { path }: RowField): boolean {
  const key = /^[^.[]+/.exec(path)?.[0] ?? path
  if (list === 'interfaces' && key === 'settings') return entrainsAir(draft['family'])
  if (list !== 'sources' || key === 'kind') return true
  const kind = SOURCE_KINDS.find((one) => one === draft['kind'])
  const keys: readonly string[] = kind === undefined ? KEYS.ward : KEYS[kind]
  return keys.includes(key) || ['label', 'wardMarking', 'place', 'count'].includes(key)
}

function entrainsAir(family: string | undefined): boolean {
  const known = familyNamed(family)
  return known !== undefined && INTERFACE_FAMILIES[known].entrainsAir !== 'no'
}

export function familyNamed(family: string | undefined): FamilyId | undefined {
  return FAMILY_IDS.find((one) => one === family)
}

/** The list whose entries have this field; null for a field of the row itself. */
export function listOf({ path }: RowField): string | null {
  return path.includes('[]') ? path.slice(0, path.indexOf('[]')) : null
}
