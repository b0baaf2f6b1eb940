// Puts together what a plan says of one ranked set-up.
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { humidityRemarks } from '../kit/humidity-remark.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { PrintedAnswer } from '../kit/printed-fraction.ts'
import type { Case } from '../patient/case.ts'
import { isBypassed } from './airway-facts.ts'
import { meanAirwayPressure } from './airway-pressure.ts'
import { setUpRemarks, watchLines } from './cautions.ts'
import type { Evaluation, Setting } from './evaluate.ts'
import { holdsUntil } from './holds-until.ts'
import type { BloodBands, Chance, RankedSetUp, Twin } from './plan-types.ts'
import type { Placed } from './ranking.ts'
import { bandOf, chanceOf } from './score.ts'
import { whyNotFirst } from './why-not.ts'

export interface RankedQuestion {
  readonly setting: Setting
  readonly about: Case
  readonly candidate: Pick<CandidateSetUp, 'id' | 'setUp' | 'printed' | 'oxygenUsedLpm'>
  readonly evaluation: Evaluation
  readonly place: Placed
  /** The first of the plan; null for what is on now. */
  readonly first: { readonly evaluation: Evaluation; readonly place: Placed } | null
  readonly twins: readonly Twin[]
}

export function rankedSetUp(question: RankedQuestion): RankedSetUp {
  const { setting, about, candidate, evaluation, place } = question
  const { setUp } = candidate
  const effectiveO2Fraction = bandOf(evaluation.effectiveO2Fraction)
  const saturationPercent = showsSaturation(setting) ? bandOf(evaluation.shownPercent) : null
  const chance = chanceFor(setting, evaluation)
  const demandMarginLpm = bandOf(evaluation.delivered.demandMarginLpm)
  const { isChecked } = INTERFACE_FAMILIES[setUp.family]
  const bagEmptyShare = meanOf(evaluation.delivered.bagRunsEmpty)
  return {
    id: candidate.id,
    setUp,
    rank: place.rank,
    isEqualToFirst: place.equalGroup === 1,
    equalGroup: place.equalGroup,
    effectiveO2Fraction,
    saturationPercent,
    chance,
    score: place.score,
    twins: question.twins,
    printedO2Fraction: printedRange(candidate.printed),
    oxygenUsedLpm: candidate.oxygenUsedLpm,
    demandMarginLpm,
    holdsUntil: holdsUntil({ setting, setUp, ...evaluation }),
    isChecked,
    remarks: setUpRemarks(setUp, {
      demandMarginLpm,
      effectiveO2Fraction,
      bagEmptyShare,
      isChecked,
    }),
    humidity: humidityRemarks(setUp, {
      isBypassed: isBypassed(setUp.family, about.patient.airway),
    }).map((one) => ({
      ...one,
      values: {},
    })),
    watch: watchLines(setUp, about),
    whyNotFirst: whyNotFirst({
      goal: setting.goal,
      isEqualToFirst: place.equalGroup === 1,
      own: evaluation,
      first: question.first?.evaluation ?? null,
      burden: place.burden,
      firstBurden: question.first?.place.burden ?? [],
    }),
    blood: showsSaturation(setting) ? bloodBands(evaluation) : null,
    meanAirwayPressureCmH2o: meanAirwayPressure(setUp),
  }
}

/** Not where the oximeter is not to be trusted, nor where comfort is the goal and a number would only mislead. */
export function showsSaturation(setting: Setting): boolean {
  return setting.goal.kind === 'saturation' || setting.goal.kind === 'fraction'
}

function bloodBands(evaluation: Evaluation): BloodBands {
  return {
    alveolarPo2Kpa: bandOf(evaluation.alveolarPo2Kpa),
    arterialPo2Kpa: bandOf(evaluation.arterialPo2Kpa),
  }
}

/** Null for a goal without a range. */
export function chanceFor(setting: Setting, evaluation: Evaluation): Chance | null {
  const { goal } = setting
  if (goal.kind === 'saturation') {
    return chanceOf(evaluation.shownPercent, { low: goal.lowPercent, high: goal.highPercent })
  }
  return goal.kind === 'fraction' ? chanceOf(evaluation.effectiveO2Fraction, goal) : null
}

export function printedRange(
  printed: PrintedAnswer,
): { readonly low: number; readonly high: number } | null {
  return printed.kind === 'range' ? { low: printed.low, high: printed.high } : null
}

function meanOf(values: Uint8Array): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length
}
