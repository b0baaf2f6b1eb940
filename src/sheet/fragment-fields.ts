// How a case, its set-up and its times are written into the address of a sheet: one short key for each field, one letter for each choice. Leaves out writing and reading.
import { FAMILY_IDS, FIT_IDS, SIZE_IDS } from '../kit/family-id.ts'
import { HUMIDIFICATIONS } from '../kit/shelf.ts'
import { BREATHING_STATES, CHANGES, SECRETIONS } from '../patient/case.ts'
import { CUFFS, NOSE_STATES, ROUTES } from '../patient/read-airway.ts'
import { RETENTION_RISKS, SEXES } from '../patient/read-patient.ts'
import { GOAL_KINDS } from '../patient/read-goal.ts'
import { OVER_FAMILIES, SOURCE_KINDS } from '../patient/read-set-up.ts'

/** `moment`: a wall time; `flow`: a number or flush; `choice`: its place in the list, which therefore only ever grows at its end. */
export type FieldKind =
  | { readonly kind: 'number' | 'text' | 'flag' | 'flow' | 'moment' }
  | { readonly kind: 'choice' | 'choices'; readonly of: readonly string[] }

export type FragmentField = FieldKind & { readonly key: string; readonly path: string }

const NUMBER = { kind: 'number' } as const
const FLAG = { kind: 'flag' } as const
const TEXT = { kind: 'text' } as const

function choice(of: readonly string[]): FieldKind {
  return { kind: 'choice', of }
}

const CASE_FIELDS: Readonly<Record<string, readonly [path: string, kind: FieldKind]>> = {
  b: ['bed', TEXT],
  a: ['patient.ageYears', NUMBER],
  g: ['patient.gestationWeeks', NUMBER],
  k: ['patient.weightKg', NUMBER],
  h: ['patient.heightCm', NUMBER],
  x: ['patient.sex', choice(SEXES)],
  A: ['patient.airway.route', choice(ROUTES)],
  N: ['patient.airway.nose', choice(NOSE_STATES)],
  E: ['patient.airway.heatMoistureExchanger', FLAG],
  U: ['patient.airway.tube.cuff', choice(CUFFS)],
  V: ['patient.airway.tube.speakingValve', FLAG],
  K: ['patient.airway.tube.capped', FLAG],
  M: ['patient.airway.tube.heatMoistureExchanger', FLAG],
  R: ['patient.retentionRisk', choice(RETENTION_RISKS)],
  H: ['patient.haemoglobinGpl', NUMBER],
  T: ['patient.temperatureC', NUMBER],
  Bc: ['patient.bloodGas.arterialPco2Kpa', NUMBER],
  Bp: ['patient.bloodGas.ph', NUMBER],
  Bo: ['patient.bloodGas.arterialPo2Kpa', NUMBER],
  Bm: ['patient.bloodGas.carboxyhaemoglobinFraction', NUMBER],
  Ba: ['patient.bloodGas.minutesAgo', NUMBER],
  O: ['patient.oxygenUptakeMlPerMin', NUMBER],
  Q: ['patient.secretions', choice(SECRETIONS)],
  D: ['patient.tracheostomyAgeDays', NUMBER],
  C: ['patient.changes', { kind: 'choices', of: CHANGES }],
  S: ['breathing.state', choice(BREATHING_STATES)],
  f: ['breathing.ratePerMin', NUMBER],
  t: ['breathing.tidalVolumeMl', NUMBER],
  d: ['breathing.dutyFraction', NUMBER],
  o: ['breathing.mouthShare', NUMBER],
  i: ['breathing.fit', choice(FIT_IDS)],
  l: ['site.altitudeM', NUMBER],
  p: ['site.barometricPressureKpa', NUMBER],
  G: ['goal.kind', choice(GOAL_KINDS)],
  Gl: ['goal.lowPercent', NUMBER],
  Gh: ['goal.highPercent', NUMBER],
  Gf: ['goal.low', NUMBER],
  Gt: ['goal.high', NUMBER],
  Gr: ['goal.reason', TEXT],
  n: ['onNow.sinceMinutes', NUMBER],
  ns: ['onNow.saturationPercent', NUMBER],
  nr: ['onNow.ratePerMin', NUMBER],
  nf: ['onNow.setUp.family', choice(FAMILY_IDS)],
  nz: ['onNow.setUp.size', choice(SIZE_IDS)],
  ni: ['onNow.setUp.fit', choice(FIT_IDS)],
  nk: ['onNow.setUp.sourceKind', choice(SOURCE_KINDS)],
  nl: ['onNow.setUp.flowLpm', { kind: 'flow' }],
  no: ['onNow.setUp.setO2Fraction', NUMBER],
  nu: ['onNow.setUp.over.flowLpm', { kind: 'flow' }],
  nv: ['onNow.setUp.over.family', choice(OVER_FAMILIES)],
}

/** Key of what is on now being room air: the one field that is nothing on purpose. */
export const ON_AIR_KEY = 'na'

const SHEET_FIELDS: typeof CASE_FIELDS = {
  s: ['setUpId', TEXT],
  w: ['wardId', TEXT],
  m: ['madeAt', { kind: 'moment' }],
  r: ['readAt', { kind: 'moment' }],
  v: ['modelVersion', TEXT],
  cv: ['cylinder.waterVolumeL', NUMBER],
  cg: ['cylinder.gaugeKpa', NUMBER],
  cl: ['cylinder.leftGaugeKpa', NUMBER],
  u: ['humidification', choice(HUMIDIFICATIONS)],
}

function fieldsOf(table: typeof CASE_FIELDS, under: string): readonly FragmentField[] {
  return Object.entries(table).map(([key, [path, kind]]) => ({
    key,
    path: `${under}${path}`,
    ...kind,
  }))
}

/** Case fields stand under `case.`; `version` is always 1, `code` and `note` are never written. */
export const FRAGMENT_FIELDS: readonly FragmentField[] = [
  ...fieldsOf(SHEET_FIELDS, ''),
  ...fieldsOf(CASE_FIELDS, 'case.'),
]
