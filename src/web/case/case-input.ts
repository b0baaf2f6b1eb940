// Turns the form into what a case file would hold, and reads it: only fields in sight count. Leaves out the judging itself.
import type { Problem } from '../../errors.ts'
import { NUMBERS } from '../../patient/case-fields.ts'
import { readCase } from '../../patient/read-case.ts'
import type { ReadCase } from '../../patient/read-case.ts'
import { FLUSHABLE_SOURCES, hasSetting } from '../../patient/read-set-up.ts'
import type { AirwayKind } from '../../physiology/airway-state.ts'
import {
  ageUnitOf,
  airwayKindOf,
  familyOf,
  FORM_FIELDS,
  isOn,
  onNowKindOf,
  sourceKindOf,
  textOf,
} from './draft.ts'
import type { Draft } from './draft.ts'
import { inTypedUnit, typedInside, typedUnit } from './field-units.ts'
import { typedNumber } from './typed-number.ts'
import type { TypedNumber } from './typed-number.ts'

export type NumberName = keyof typeof NUMBERS

type Plain = { [key: string]: unknown }

/** A number that reads as one, else the text as typed, for the reader to refuse. */
export function typedIn(draft: Draft, field: string, name: NumberName): TypedNumber {
  const unit = typedUnit(draft, field)
  const text = textOf(draft, field)
  return unit === undefined
    ? typedNumber(text, NUMBERS[name])
    : typedInside(text, { unit, bounds: NUMBERS[name] })
}

function numberAt(draft: Draft, field: string, name: NumberName): unknown {
  const typed = typedIn(draft, field, name)
  switch (typed.kind) {
    case 'empty':
      return undefined
    case 'number':
      return typed.value
    case 'refused':
      return typed.text
  }
}

function choiceAt(draft: Draft, field: string): string | undefined {
  const text = textOf(draft, field)
  return text === '' ? undefined : text
}

/** Only what was given; an object of which nothing was given is absent too. */
function filled(fields: Plain): Plain {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))
}

function filledOrAbsent(fields: Plain): Plain | undefined {
  const kept = filled(fields)
  return Object.keys(kept).length === 0 ? undefined : kept
}

/** What stands in for what a case does not give. */
export interface StandIns {
  /** Altitude of the site as set for this device. */
  readonly altitudeM?: number | undefined
}

/** What a case file with these values would hold. */
export function inputOf(draft: Draft, standIns: StandIns = {}): unknown {
  return filled({
    version: 1,
    note: choiceAt(draft, 'note'),
    bed: choiceAt(draft, 'bed'),
    code: choiceAt(draft, 'code'),
    patient: patientInput(draft),
    breathing: breathingInput(draft),
    site: filledOrAbsent({
      altitudeM: isSiteGiven(draft)
        ? numberAt(draft, 'site.altitudeM', 'altitudeM')
        : standIns.altitudeM,
      barometricPressureKpa: numberAt(draft, 'site.barometricPressureKpa', 'barometricPressureKpa'),
    }),
    goal: goalInput(draft),
    onNow: onNowInput(draft),
  })
}

/** Whether the case says itself where the patient is. */
export function isSiteGiven(draft: Draft): boolean {
  return ['site.altitudeM', 'site.barometricPressureKpa'].some(
    (field) => textOf(draft, field).trim() !== '',
  )
}

function patientInput(draft: Draft): Plain {
  const at = (key: NumberName): unknown => numberAt(draft, `patient.${key}`, key)
  const unit = ageUnitOf(draft)
  const isNeckOpen = hasNeckOpening(airwayKindOf(draft))
  const gas = (key: NumberName): unknown => numberAt(draft, `patient.bloodGas.${key}`, key)
  return filled({
    [unit]: numberAt(draft, FORM_FIELDS.age, unit),
    gestationWeeks: at('gestationWeeks'),
    weightKg: at('weightKg'),
    heightCm: at('heightCm'),
    sex: choiceAt(draft, 'patient.sex'),
    airway: airwayInput(draft),
    retentionRisk: choiceAt(draft, 'patient.retentionRisk'),
    haemoglobinGpl: at('haemoglobinGpl'),
    temperatureC: at('temperatureC'),
    bloodGas: filledOrAbsent({
      arterialPco2Kpa: gas('arterialPco2Kpa'),
      ph: gas('ph'),
      arterialPo2Kpa: gas('arterialPo2Kpa'),
      carboxyhaemoglobinFraction: gas('carboxyhaemoglobinFraction'),
      minutesAgo: gas('minutesAgo'),
    }),
    oxygenUptakeMlPerMin: at('oxygenUptakeMlPerMin'),
    secretions: choiceAt(draft, 'patient.secretions'),
    tracheostomyAgeDays: isNeckOpen ? at('tracheostomyAgeDays') : undefined,
    changes: [...draft.changes],
  })
}

/** Which extra questions an airway of this kind asks. */
export function airwayAsks(kind: AirwayKind): {
  readonly nose: boolean
  readonly cuff: boolean
  readonly exchanger: boolean
} {
  const isTube = kind.startsWith('tracheostomy')
  return {
    nose: isTube || kind === 'natural',
    cuff: kind === 'tracheostomy-speaking-valve' || kind === 'tracheostomy-capped',
    exchanger: isTube || kind === 'laryngectomy',
  }
}

export function hasNeckOpening(kind: AirwayKind): boolean {
  return kind !== 'natural' && kind !== 'nose-blocked'
}

const CUFF_OF_KIND: Readonly<Partial<Record<AirwayKind, string>>> = {
  'tracheostomy-cuff-up': 'up',
  'tracheostomy-cuff-down': 'down',
  'tracheostomy-uncuffed': 'none',
}

function airwayInput(draft: Draft): Plain {
  const kind = airwayKindOf(draft)
  const heatMoistureExchanger = isOn(draft, FORM_FIELDS.exchanger)
  if (kind === 'laryngectomy') return { route: 'laryngectomy', heatMoistureExchanger }
  if (kind === 'nose-blocked') return { route: 'natural', nose: 'blocked' }
  const nose = choiceAt(draft, FORM_FIELDS.nose) ?? 'open'
  if (kind === 'natural') return { route: 'natural', nose }
  const tube = filled({
    cuff: CUFF_OF_KIND[kind] ?? choiceAt(draft, FORM_FIELDS.cuff),
    speakingValve: kind === 'tracheostomy-speaking-valve',
    capped: kind === 'tracheostomy-capped',
    heatMoistureExchanger,
  })
  return { route: 'tracheostomy', tube, nose }
}

function breathingInput(draft: Draft): Plain {
  const at = (key: NumberName): unknown => numberAt(draft, `breathing.${key}`, key)
  return filled({
    state: choiceAt(draft, 'breathing.state'),
    ratePerMin: at('ratePerMin'),
    tidalVolumeMl: at('tidalVolumeMl'),
    dutyFraction: at('dutyFraction'),
    mouthShare: at('mouthShare'),
    fit: choiceAt(draft, 'breathing.fit'),
  })
}

function goalInput(draft: Draft): Plain {
  const kind = choiceAt(draft, 'goal.kind')
  const reason = choiceAt(draft, 'goal.reason')
  const range =
    kind === 'saturation'
      ? {
          lowPercent: numberAt(draft, 'goal.lowPercent', 'goalPercent'),
          highPercent: numberAt(draft, 'goal.highPercent', 'goalPercent'),
        }
      : kind === 'fraction'
        ? {
            low: numberAt(draft, 'goal.low', 'inspiredFraction'),
            high: numberAt(draft, 'goal.high', 'inspiredFraction'),
          }
        : {}
  return filled({ kind, ...range, reason })
}

function onNowInput(draft: Draft): Plain | undefined {
  const kind = onNowKindOf(draft)
  if (kind === 'unknown') return undefined
  return filled({
    setUp: kind === 'air' ? null : setUpInput(draft),
    sinceMinutes: numberAt(draft, 'onNow.sinceMinutes', 'sinceMinutes'),
    saturationPercent: numberAt(draft, 'onNow.saturationPercent', 'saturationPercent'),
    ratePerMin: numberAt(draft, 'onNow.ratePerMin', 'ratePerMin'),
  })
}

/** Which extra questions the set-up on now asks. */
export function setUpAsks(draft: Draft): {
  readonly setting: boolean
  readonly flush: boolean
  readonly over: boolean
} {
  const family = familyOf(draft)
  const sourceKind = sourceKindOf(draft)
  return {
    setting: family !== undefined && sourceKind !== undefined && hasSetting({ family, sourceKind }),
    flush: sourceKind !== undefined && FLUSHABLE_SOURCES.includes(sourceKind),
    over: family === 'cannula-under-mask',
  }
}

function setUpInput(draft: Draft): Plain {
  const asks = setUpAsks(draft)
  const at = (key: string): string => `onNow.setUp.${key}`
  const isFlush = asks.flush && isOn(draft, FORM_FIELDS.flush)
  const isOverFlush = asks.flush && isOn(draft, FORM_FIELDS.overFlush)
  return filled({
    family: choiceAt(draft, at('family')),
    size: choiceAt(draft, at('size')),
    fit: choiceAt(draft, at('fit')),
    sourceKind: choiceAt(draft, at('sourceKind')),
    flowLpm: isFlush ? 'flush' : numberAt(draft, at('flowLpm'), 'flowLpm'),
    setO2Fraction: asks.setting
      ? numberAt(draft, at('setO2Fraction'), 'inspiredFraction')
      : undefined,
    over: asks.over
      ? filled({
          family: 'simple-mask',
          flowLpm: isOverFlush ? 'flush' : numberAt(draft, at('over.flowLpm'), 'flowLpm'),
        })
      : undefined,
  })
}

/** The case as read, or every problem, each at the field of the form it belongs to. */
export function readDraft(draft: Draft, standIns: StandIns = {}): ReadCase {
  const read = readCase(inputOf(draft, standIns))
  if (read.ok) return read
  return {
    ...read,
    problems: read.problems.map((problem) => withTypedMeaning(draft, asTyped(draft, problem))),
  }
}

function asTyped(draft: Draft, problem: Problem): Problem {
  const field = fieldOfPath(problem.path)
  const unit = typedUnit(draft, field)
  return unit === undefined ? problem : inTypedUnit(problem, { text: textOf(draft, field), unit })
}

/** Where the decimal sign may part thousands, the reading offered is the whole number. */
function withTypedMeaning(draft: Draft, problem: Problem): Problem {
  if (problem.code !== 'NOT_A_NUMBER' || problem.limit === undefined) return problem
  if ('oneOf' in problem.limit) return problem
  const { min, max } = problem.limit
  if (min === undefined || max === undefined) return problem
  const typed = typedNumber(textOf(draft, fieldOfPath(problem.path)), { min, max })
  return typed.kind === 'refused' && typed.suggestion !== undefined
    ? { ...problem, suggestion: typed.suggestion }
    : problem
}

/** Prefixes of case paths that one field of the form stands for. */
const FIELD_OF_PREFIX: readonly (readonly [prefix: string, field: string])[] = [
  ['patient.age', FORM_FIELDS.age],
  ['patient.changes', 'patient.changes'],
  ['patient.airway.nose', FORM_FIELDS.nose],
  ['patient.airway.tube.cuff', FORM_FIELDS.cuff],
  ['patient.airway.tube.heatMoistureExchanger', FORM_FIELDS.exchanger],
  ['patient.airway.heatMoistureExchanger', FORM_FIELDS.exchanger],
  ['patient.airway', FORM_FIELDS.airway],
]

/** The field of the form at which a problem of this path is shown. */
export function fieldOfPath(path: string): string {
  return FIELD_OF_PREFIX.find(([prefix]) => path.startsWith(prefix))?.[1] ?? path
}
