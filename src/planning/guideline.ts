// The starting point that a guideline gives, beside ours: a table of conditions and set-ups. Leaves out local policy, which comes first.
import type { FamilyId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { OnNow, RetentionRisk, Goal } from '../patient/case.ts'
import type { Provenance } from '../units/provenance.ts'
import type { GuidelineStart } from './plan-types.ts'

interface StartRow extends Provenance {
  readonly code: string
  readonly applies: (about: GuidelineSubject) => boolean
  readonly family: FamilyId
  readonly flowLpmMin: number
  readonly flowLpmMax: number
  readonly setO2Fraction?: number
}

export interface GuidelineSubject {
  readonly ageYears: number
  readonly retentionRisk: RetentionRisk
  readonly goal: Goal
  readonly onNow: OnNow | null
  readonly hasNeckOpening: boolean
}

const ADULT_YEARS = 16

function isAdult(about: GuidelineSubject): boolean {
  return about.ageYears >= ADULT_YEARS && !about.hasNeckOpening
}

function atRisk(about: GuidelineSubject): boolean {
  return isAdult(about) && about.retentionRisk !== 'none' && about.goal.kind === 'saturation'
}

/** Adults without risk, by the saturation on air or on what is on; critical illness starts with the reservoir mask. */
function notAtRisk(about: GuidelineSubject): boolean {
  return isAdult(about) && about.retentionRisk === 'none' && about.goal.kind === 'saturation'
}

function isVeryLow(about: GuidelineSubject): boolean {
  const reading = about.onNow?.saturationPercent
  return (reading !== undefined && reading < 85) || (about.goal.reason ?? '') === 'critical-illness'
}

const BTS = { known: 'seen', source: 'ODriscoll2017' } as const

const ROWS: readonly StartRow[] = [
  {
    code: 'START_RISK_24',
    ...BTS,
    applies: atRisk,
    family: 'entrainment-mask',
    setO2Fraction: 0.24,
    flowLpmMin: 2,
    flowLpmMax: 3,
  },
  {
    code: 'START_RISK_28',
    ...BTS,
    applies: atRisk,
    family: 'entrainment-mask',
    setO2Fraction: 0.28,
    flowLpmMin: 4,
    flowLpmMax: 4,
  },
  {
    code: 'START_RISK_CANNULA',
    ...BTS,
    applies: atRisk,
    family: 'nasal-cannula',
    flowLpmMin: 1,
    flowLpmMax: 2,
  },
  {
    code: 'START_RESERVOIR_15',
    ...BTS,
    applies: (about) => notAtRisk(about) && isVeryLow(about),
    family: 'non-rebreather-mask',
    flowLpmMin: 15,
    flowLpmMax: 15,
  },
  {
    code: 'START_CANNULA_2_6',
    ...BTS,
    applies: (about) => notAtRisk(about) && !isVeryLow(about),
    family: 'nasal-cannula',
    flowLpmMin: 2,
    flowLpmMax: 6,
  },
  {
    code: 'START_SIMPLE_5_10',
    ...BTS,
    applies: (about) => notAtRisk(about) && !isVeryLow(about),
    family: 'simple-mask',
    flowLpmMin: 5,
    flowLpmMax: 10,
  },
  {
    code: 'START_ALL_RESERVOIR_15',
    ...BTS,
    applies: (about) => isAdult(about) && about.goal.kind === 'as-much-as-possible',
    family: 'non-rebreather-mask',
    flowLpmMin: 15,
    flowLpmMax: 15,
  },
  {
    code: 'START_TRACHEOSTOMY_MASK',
    ...BTS,
    applies: (about) => about.hasNeckOpening,
    family: 'tracheostomy-mask',
    flowLpmMin: 0,
    flowLpmMax: 100,
  },
  {
    code: 'START_PRONGS_NEWBORN',
    known: 'memory',
    source: 'Who2016',
    applies: (about) => about.ageYears < 1 / 12,
    family: 'nasal-cannula',
    flowLpmMin: 0.5,
    flowLpmMax: 1,
  },
  {
    code: 'START_PRONGS_INFANT',
    known: 'memory',
    source: 'Who2016',
    applies: (about) => about.ageYears >= 1 / 12 && about.ageYears < 1,
    family: 'nasal-cannula',
    flowLpmMin: 1,
    flowLpmMax: 2,
  },
  {
    code: 'START_PRONGS_CHILD',
    known: 'memory',
    source: 'Who2016',
    applies: (about) =>
      about.ageYears >= 1 && about.ageYears < ADULT_YEARS && !about.hasNeckOpening,
    family: 'nasal-cannula',
    flowLpmMin: 1,
    flowLpmMax: 4,
  },
]

/** Rows that apply, each with the set-ups of this shelf that are that starting point. */
export function guidelineStarts(
  about: GuidelineSubject,
  candidates: readonly { readonly id: string; readonly setUp: SetUp }[],
): readonly GuidelineStart[] {
  return ROWS.filter((row) => row.applies(about)).map((row) => ({
    code: row.code,
    values: {
      family: row.family,
      flowLpmMin: row.flowLpmMin,
      flowLpmMax: row.flowLpmMax,
      ...(row.setO2Fraction === undefined ? {} : { setO2Fraction: row.setO2Fraction }),
    },
    known: row.known,
    ...(row.source === undefined ? {} : { source: row.source }),
    setUpIds: candidates.filter((one) => isThatStart(row, one.setUp)).map((one) => one.id),
  }))
}

function isThatStart(row: StartRow, setUp: SetUp): boolean {
  if (setUp.family !== row.family || setUp.flow.kind === 'flush') return false
  const { flowLpm } = setUp.flow
  const settingFits = row.setO2Fraction === undefined || setUp.setO2Fraction === row.setO2Fraction
  return settingFits && flowLpm >= row.flowLpmMin && flowLpm <= row.flowLpmMax
}
