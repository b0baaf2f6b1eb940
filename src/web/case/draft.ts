// The case as it stands in the form: texts as typed, by field. Leaves out judging, which the case reader does.
import type { FamilyId } from '../../kit/family-id.ts'
import { FAMILY_IDS } from '../../kit/family-id.ts'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { SourceKind } from '../../kit/source-row.ts'
import type { Case, InterfaceChange } from '../../patient/case.ts'
import { SOURCE_KINDS } from '../../patient/read-set-up.ts'
import { textOfNumber } from './typed-number.ts'
import { airwayKind } from '../../physiology/airway-state.ts'
import type { AirwayKind, AirwayState } from '../../physiology/airway-state.ts'
import type { ChoosableUnit } from '../../units/choosable.ts'

/** Fields of the form that stand for more than one field of a case file. */
export const FORM_FIELDS = {
  ward: 'ward',
  age: 'age',
  ageUnit: 'ageUnit',
  airway: 'airway',
  nose: 'nose',
  cuff: 'cuff',
  exchanger: 'exchanger',
  onNow: 'onNowKind',
  flush: 'flush',
  overFlush: 'overFlush',
} as const

export interface Draft {
  /** What stands in each field, by its path in a case file or its FORM_FIELDS name. Absent is empty. */
  readonly texts: Readonly<Record<string, string>>
  readonly changes: readonly InterfaceChange[]
  /** The unit a text was typed in, where it is not the one inside (field-units.ts). */
  readonly units?: Readonly<Record<string, ChoosableUnit>>
  readonly exampleId: string | null
}

export const AGE_UNITS = ['ageYears', 'ageMonths', 'ageDays'] as const
export type AgeUnit = (typeof AGE_UNITS)[number]

export const ON_NOW_KINDS = ['set-up', 'air', 'unknown'] as const
export type OnNowKind = (typeof ON_NOW_KINDS)[number]

export const AIRWAY_KINDS = [
  'natural',
  'nose-blocked',
  'tracheostomy-cuff-up',
  'tracheostomy-cuff-down',
  'tracheostomy-uncuffed',
  'tracheostomy-speaking-valve',
  'tracheostomy-capped',
  'laryngectomy',
] as const satisfies readonly AirwayKind[]

export const EMPTY_DRAFT: Draft = {
  texts: { [FORM_FIELDS.airway]: 'natural', 'goal.kind': 'saturation' },
  changes: [],
  exampleId: null,
}

export function textOf(draft: Draft, field: string): string {
  return draft.texts[field] ?? ''
}

export function withText(draft: Draft, field: string, text: string): Draft {
  return { ...draft, texts: { ...draft.texts, [field]: text } }
}

export function ageUnitOf(draft: Draft): AgeUnit {
  return AGE_UNITS.find((unit) => unit === textOf(draft, FORM_FIELDS.ageUnit)) ?? 'ageYears'
}

export function onNowKindOf(draft: Draft): OnNowKind {
  return ON_NOW_KINDS.find((kind) => kind === textOf(draft, FORM_FIELDS.onNow)) ?? 'unknown'
}

export function airwayKindOf(draft: Draft): AirwayKind {
  return AIRWAY_KINDS.find((kind) => kind === textOf(draft, FORM_FIELDS.airway)) ?? 'natural'
}

export function familyOf(draft: Draft): FamilyId | undefined {
  return FAMILY_IDS.find((id) => id === textOf(draft, 'onNow.setUp.family'))
}

export function sourceKindOf(draft: Draft): SourceKind | undefined {
  return SOURCE_KINDS.find((kind) => kind === textOf(draft, 'onNow.setUp.sourceKind'))
}

export function isOn(draft: Draft, field: string): boolean {
  return textOf(draft, field) === 'yes'
}

/** The ward chosen, undefined for the whole hospital. */
export function wardIdOf(draft: Draft, shelf: Pick<Shelf, 'wards'>): string | undefined {
  return shelf.wards.find(({ id }) => id === textOf(draft, FORM_FIELDS.ward))?.id
}

/** The draft that shows a parsed case file field by field, nothing converted; `about` is the same file as read. */
export function draftOfFile(
  parsed: unknown,
  file: { readonly id: string; readonly about: Case },
): Draft {
  const { id, about } = file
  const texts = flattened(parsed, '')
  const unit = AGE_UNITS.find((key) => texts[`patient.${key}`] !== undefined) ?? 'ageYears'
  const kept = Object.entries(texts).filter(([path]) => !path.startsWith('patient.a'))
  return {
    texts: {
      ...Object.fromEntries(kept),
      ...airwayTexts(about.patient.airway),
      ...onNowTexts(about, texts),
      [FORM_FIELDS.age]: texts[`patient.${unit}`] ?? '',
      [FORM_FIELDS.ageUnit]: unit,
      [FORM_FIELDS.ward]: wardOfBed(about.bed ?? ''),
    },
    changes: about.patient.changes,
    exampleId: id,
  }
}

function airwayTexts(airway: AirwayState): Record<string, string> {
  const hasExchanger =
    airway.route === 'laryngectomy'
      ? airway.heatMoistureExchanger
      : airway.route === 'tracheostomy' && airway.tube.heatMoistureExchanger
  return {
    [FORM_FIELDS.airway]: airwayKind(airway),
    [FORM_FIELDS.nose]: airway.route === 'laryngectomy' ? '' : airway.nose,
    [FORM_FIELDS.cuff]: airway.route === 'tracheostomy' ? airway.tube.cuff : '',
    [FORM_FIELDS.exchanger]: hasExchanger ? 'yes' : '',
  }
}

function onNowTexts(about: Case, texts: Readonly<Record<string, string>>): Record<string, string> {
  const isFlush = texts['onNow.setUp.flowLpm'] === 'flush'
  const isOverFlush = texts['onNow.setUp.over.flowLpm'] === 'flush'
  return {
    [FORM_FIELDS.onNow]: onNowKindOfCase(about.onNow),
    ...(isFlush ? { [FORM_FIELDS.flush]: 'yes', 'onNow.setUp.flowLpm': '' } : {}),
    ...(isOverFlush ? { [FORM_FIELDS.overFlush]: 'yes', 'onNow.setUp.over.flowLpm': '' } : {}),
  }
}

function onNowKindOfCase(onNow: Case['onNow']): OnNowKind {
  if (onNow === undefined) return 'unknown'
  return onNow.setUp === null ? 'air' : 'set-up'
}

function wardOfBed(bed: string): string {
  return DEMO_SHELF.wards.find(({ name }) => bed.startsWith(`${name} `))?.id ?? ''
}

function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** Every single value by its path; yes for true. Lists are left to the caller. */
function flattened(value: unknown, path: string): Record<string, string> {
  if (isPlain(value)) {
    const parts = Object.entries(value).map(([key, inner]) =>
      flattened(inner, path === '' ? key : `${path}.${key}`),
    )
    return Object.assign({}, ...parts) as Record<string, string>
  }
  if (value === true) return { [path]: 'yes' }
  if (typeof value === 'number') return { [path]: textOfNumber(value) }
  if (typeof value === 'string') return { [path]: value }
  return {}
}
