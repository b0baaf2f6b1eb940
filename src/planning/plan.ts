// From a case and a shelf to a ranked plan: sample, exclusions, evaluation, order, reasons. The clinician decides.
import { candidateSetUps, flowsOf } from '../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { printedFraction } from '../kit/printed-fraction.ts'
import type { SetUp } from '../kit/set-up.ts'
import { sizesFor } from '../kit/sizes-for.ts'
import type { Case } from '../patient/case.ts'
import { emergencyLines, planCautions } from './cautions.ts'
import { evaluate } from './evaluate.ts'
import type { Evaluation, Setting } from './evaluate.ts'
import { exclusionsOf } from './exclusions.ts'
import type { PlanSubject } from './exclusion-rule.ts'
import { guidelineStarts } from './guideline.ts'
import { missingRemarks } from './missing.ts'
import { preparePlan } from './plan-setting.ts'
import type { PlanQuestion } from './plan-setting.ts'
import type { ExcludedSetUp, Plan, RankedSetUp } from './plan-types.ts'
import { rankedSetUp } from './ranked-set-up.ts'
import { BY_FRACTION, BY_WORTH, placeByWorth } from './ranking.ts'
import { bagCollapse } from './bag-collapse.ts'
import { burdenOf } from './burden.ts'
import { reassessment } from './reassess.ts'
import { gatherTwins } from './twins.ts'

export const MODEL_VERSION = '0.1.0'

interface Weighed {
  readonly candidate: CandidateSetUp
  readonly evaluation: Evaluation
}

/** Plans a case on a shelf. Pure: the same question gives the same plan. An unknown ward throws UNKNOWN_ID. */
export function makePlan(question: PlanQuestion): Plan {
  const prepared = preparePlan(question)
  const { setting, subject } = prepared
  const candidates = candidateSetUps(question.shelf, question.wardId)
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
    onNow: prepared.onNow === null ? null : onNowRow(setting, question.case, prepared.onNow),
    missing: missingRemarks({ goal: question.case.goal, ranked, excluded }),
    reassess: reassessment(question.case),
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
  const first = placed[0] ?? null
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
      oxygenUsedLpm: flowsOf(setUp).oxygenUsedLpm,
    },
    evaluation,
    place: { id: 'on-now', rank: 0, equalGroup: 0, score: 0, burden: [] },
    first: null,
    twins: [],
  })
}
