// From a case and a shelf to a ranked plan: sample, exclusions, evaluation, order, reasons. The clinician decides.
import { createPeriodicSolver } from '../delivery/periodic.ts'
import { planSample } from '../inference/plan-sample.ts'
import { patientSampler } from '../inference/patient-sampler.ts'
import { candidateSetUps } from '../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { printedFraction } from '../kit/printed-fraction.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import { sizesFor } from '../kit/sizes-for.ts'
import { assumePatient } from '../patient/assume.ts'
import type { Case } from '../patient/case.ts'
import { assumedValues } from '../patient/patient-spread.ts'
import { neckInUse } from '../physiology/airway-state.ts'
import { medianOf } from '../units/spread.ts'
import { emergencyLines, planCautions } from './cautions.ts'
import { evaluate } from './evaluate.ts'
import type { Evaluation, Setting } from './evaluate.ts'
import { exclusionsOf } from './exclusions.ts'
import type { PlanSubject } from './exclusion-rule.ts'
import { guidelineStarts } from './guideline.ts'
import { missingRemarks } from './missing.ts'
import { setUpOfOnNow } from './on-now.ts'
import { readingUse, unlikelyReading, usableReading } from './reading.ts'
import type { ExcludedSetUp, Plan, RankedSetUp, ReadingUse } from './plan-types.ts'
import { rankedSetUp } from './ranked-set-up.ts'
import { BY_FRACTION, BY_WORTH, placeByWorth } from './ranking.ts'
import { bagCollapse } from './bag-collapse.ts'
import { burdenOf } from './burden.ts'
import { aboveRisk, bandOf } from './score.ts'
import { subjectOf } from './subject.ts'
import { gatherTwins } from './twins.ts'

export const MODEL_VERSION = '0.1.0'

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

interface Weighed {
  readonly candidate: CandidateSetUp
  readonly evaluation: Evaluation
}

/** Plans a case on a shelf. Pure: the same question gives the same plan. An unknown ward throws UNKNOWN_ID. */
export function makePlan(question: PlanQuestion): Plan {
  const prepared = preparePlan(question)
  const { setting, subject, candidates } = prepared
  const excluded: ExcludedSetUp[] = []
  const weighed: Weighed[] = []
  candidates.forEach((candidate, i) => {
    question.onProgress?.(i, candidates.length)
    const reasons = exclusionsOf(subject, candidate)
    if (reasons.length > 0) {
      excluded.push({ id: candidate.id, setUp: candidate.setUp, reasons })
      return
    }
    const evaluation = evaluate(setting, candidate.setUp)
    const collapse = bagCollapse(setting, candidate, evaluation)
    if (collapse === null) weighed.push({ candidate, evaluation })
    else excluded.push(collapse)
  })
  const ranked = rank(question, setting, subject, weighed)
  return {
    modelVersion: MODEL_VERSION,
    goal: question.case.goal,
    ranked,
    excluded,
    emergency: emergencyLines(question.case),
    cautions: planCautions(question.case),
    guideline: guidelineStarts(
      prepared.guidelineSubject,
      weighed.map(({ candidate }) => candidate),
    ),
    assumed: prepared.assumed,
    reading: prepared.reading,
    onNow: prepared.onNow,
    missing: missingRemarks({ goal: question.case.goal, ranked, excluded }),
    draws: setting.sample.gas.length,
    barometricPressureKpa: setting.barometricKpa,
  }
}

function rank(
  question: PlanQuestion,
  setting: Setting,
  subject: PlanSubject,
  weighed: readonly Weighed[],
): readonly RankedSetUp[] {
  const byId = new Map(weighed.map((one) => [one.candidate.id, one]))
  const placed = placeByWorth(
    weighed.map(({ candidate, evaluation }) => ({
      id: candidate.id,
      worth: evaluation.worth,
      breathOf: setting.sample.pointOf,
      burden: burdenOf(candidate.setUp, {
        changes: question.case.patient.changes,
        oxygenUsedLpm: candidate.oxygenUsedLpm,
        harm: harmOf(setting, evaluation),
        sizeIsPreferred:
          sizesFor(candidate.setUp.family, subject)[0]?.size === candidate.setUp.size,
        onNow: question.case.onNow?.setUp ?? null,
      }),
    })),
    question.case.goal.kind === 'as-much-as-possible' ? BY_FRACTION : BY_WORTH,
  ).flatMap((place) => {
    const one = byId.get(place.id)
    return one === undefined ? [] : [{ place, ...one }]
  })
  const first = placed[0]?.evaluation ?? null
  return gatherTwins(placed).map((row) =>
    rankedSetUp({ setting, about: question.case, first, ...row }),
  )
}

/** Share of draws on the harmful side, for ordering equals: below the goal always, above it where too much harms. */
function harmOf(setting: Setting, evaluation: Evaluation): number {
  if (setting.goal.kind !== 'saturation' && setting.goal.kind !== 'fraction') return 0
  let harm = 0
  for (const worth of evaluation.worth) if (worth < 0) harm -= worth
  return harm / evaluation.worth.length
}

interface Prepared {
  readonly setting: Setting
  readonly subject: PlanSubject
  readonly candidates: readonly CandidateSetUp[]
  readonly assumed: Plan['assumed']
  readonly reading: ReadingUse
  readonly onNow: RankedSetUp | null
  readonly guidelineSubject: Parameters<typeof guidelineStarts>[0]
}

function preparePlan(question: PlanQuestion): Prepared {
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
    candidates: candidateSetUps(question.shelf, question.wardId),
    assumed: assumedValues(spreads),
    reading: {
      ...readingUse(reading, sample),
      remarks: [...reading.remarks, ...unlikelyReading(reading, sample)],
    },
    onNow: onNowSetUp === null ? null : onNowRow(setting, about, onNowSetUp),
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

/** What is on now by the same draws, printed fraction beside. */
function onNowRow(setting: Setting, about: Case, setUp: SetUp): RankedSetUp {
  const evaluation = evaluate(setting, setUp)
  const family = INTERFACE_FAMILIES[setUp.family]
  const printed = printedFraction({
    printed: family.printed,
    size: setUp.size,
    flow: setUp.flow,
    setO2Fraction: setUp.setO2Fraction,
  })
  return rankedSetUp({
    setting,
    about,
    candidate: {
      id: 'on-now',
      setUp,
      printed,
      oxygenUsedLpm: bandOf(evaluation.delivered.oxygenUsedLpm).median,
    },
    evaluation,
    place: { id: 'on-now', rank: 0, equalGroup: 0, score: 0 },
    first: null,
    twins: [],
  })
}
