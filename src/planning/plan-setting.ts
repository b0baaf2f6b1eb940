// What every answer about a case rests on: its draws weighed by the reading, the facts that exclusions look at. Leaves out candidates and their order.
import { createPeriodicSolver } from '../delivery/periodic.ts'
import { planSample } from '../inference/plan-sample.ts'
import { patientSampler } from '../inference/patient-sampler.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import { assumePatient } from '../patient/assume.ts'
import type { Case } from '../patient/case.ts'
import { assumedValues } from '../patient/patient-spread.ts'
import { neckInUse } from '../physiology/airway-state.ts'
import { medianOf } from '../units/spread.ts'
import type { Setting } from './evaluate.ts'
import type { PlanSubject } from './exclusion-rule.ts'
import type { guidelineStarts } from './guideline.ts'
import { setUpOfOnNow } from './on-now.ts'
import type { Plan, ReadingUse } from './plan-types.ts'
import { readingUse, unlikelyReading, usableReading } from './reading.ts'
import { aboveRisk } from './score.ts'
import { subjectOf } from './subject.ts'

export interface PlanQuestion {
  readonly case: Case
  readonly shelf: Shelf
  readonly wardId?: string
  readonly draws?: number
  readonly seed?: number
  readonly onProgress?: (done: number, total: number) => void
}

const DEFAULT_DRAWS = 512
/** One computed breath serves this many lungs. */
const LUNGS_PER_BREATH = 4

export interface Prepared {
  readonly setting: Setting
  readonly subject: PlanSubject
  readonly assumed: Plan['assumed']
  readonly reading: ReadingUse
  /** The set-up in force, made whole; null on room air and where nothing is known. */
  readonly onNow: SetUp | null
  readonly guidelineSubject: Parameters<typeof guidelineStarts>[0]
}

/** Draws the sample of a case, weighed by its reading. An unknown ward throws UNKNOWN_ID. */
export function preparePlan(question: PlanQuestion): Prepared {
  const about = question.case
  const { goal, patient } = about
  const spreads = assumePatient(about)
  const barometricKpa = medianOf(spreads.values.barometricPressureKpa.spread)
  const subject = subjectOf(about, spreads)
  const solver = createPeriodicSolver()
  const draws = question.draws ?? DEFAULT_DRAWS
  const onNowSetUp = onNowSetUpOf(question, subject)
  const reading = usableReading(about, onNowSetUp)
  const sample = planSample({
    sampler: patientSampler(about),
    reading: reading.usable,
    draws,
    deliveryPoints: Math.ceil(draws / LUNGS_PER_BREATH),
    seed: question.seed ?? 1,
    barometricKpa,
    solver,
  })
  const risk = aboveRisk({
    retentionRisk: patient.retentionRisk,
    ageYears: patient.ageYears,
    gestationWeeks: patient.gestationWeeks ?? TERM_WEEKS,
  })
  const setting: Setting = { goal, risk, barometricKpa, sample, solver }
  return {
    setting,
    subject,
    assumed: assumedValues(spreads),
    reading: {
      ...readingUse(reading, sample),
      remarks: [...reading.remarks, ...unlikelyReading(reading, sample)],
    },
    onNow: onNowSetUp,
    guidelineSubject: {
      ageYears: patient.ageYears,
      retentionRisk: patient.retentionRisk,
      goal,
      onNow: about.onNow ?? null,
      hasNeckOpening: neckInUse(patient.airway),
    },
  }
}

/** Weeks that count as term where gestation was not given. */
const TERM_WEEKS = 40

function onNowSetUpOf(question: PlanQuestion, subject: PlanSubject): SetUp | null {
  const setUp = question.case.onNow?.setUp
  if (setUp === undefined || setUp === null) return null
  return setUpOfOnNow(setUp, question.shelf, {
    ageYears: subject.ageYears,
    weightKg: subject.weightKg,
  })
}
