// What if: one set-up at another flow or another breathing rate, by the very draws of the plan. Leaves out ranking and how long it holds.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import { deliverySample } from '../inference/delivery-points.ts'
import { candidateSetUps, flowsOf } from '../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../kit/build-set-ups.ts'
import { stepCode } from '../kit/flow-steps.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { printedFraction } from '../kit/printed-fraction.ts'
import type { SetUp } from '../kit/set-up.ts'
import { middleBreath } from './bedside-breath.ts'
import { evaluateDelivered } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import { exclusionsOf } from './exclusions.ts'
import { atRate, ratesFollowed } from './holds-until.ts'
import { preparePlan } from './plan-setting.ts'
import type { PlanQuestion, Prepared } from './plan-setting.ts'
import type { Band, Chance, Reason } from './plan-types.ts'
import { chanceFor, printedRange, showsSaturation } from './ranked-set-up.ts'
import { bandOf } from './score.ts'

export interface TrialQuestion {
  /** Null is room air. */
  readonly setUp: SetUp | null
  /** Rate of the middle patient; every draw is scaled with it. Absent: as in the case. */
  readonly ratePerMin?: number
}

export interface Trial {
  readonly ratePerMin: number
  readonly effectiveO2Fraction: Band
  /** Null where the goal forbids trusting the oximeter. */
  readonly saturationPercent: Band | null
  readonly chance: Chance | null
  readonly oxygenUsedLpm: number
  readonly printedO2Fraction: { readonly low: number; readonly high: number } | null
  readonly isChecked: boolean
  /** Whether the shelf holds this set-up at this flow, as rated for its interface. */
  readonly isOnShelf: boolean
  /** Why the plan would rule it out. */
  readonly against: readonly Reason[]
  /** The middle patient's breath; null on room air, where nothing is delivered. */
  readonly breath: DeliveredBreath | null
}

export interface TrialRates {
  /** The middle of what is typed or assumed. */
  readonly middlePerMin: number
  readonly minPerMin: number
  readonly maxPerMin: number
  readonly isTyped: boolean
}

export interface Trials {
  readonly rates: TrialRates
  /** The set-up in force, made whole; null on room air and where nothing is known. */
  readonly onNow: SetUp | null
  readonly at: (question: TrialQuestion) => Trial
}

/** Draws the case once; each trial then costs one set-up. With flow and rate of the case a trial says what the plan says. */
export function openTrials(question: PlanQuestion): Trials {
  const prepared = preparePlan(question)
  const candidates = candidateSetUps(question.shelf, question.wardId)
  return {
    rates: ratesOf(prepared, question),
    onNow: prepared.onNow,
    at: (trial) => trialOf(question, prepared, candidates, trial),
  }
}

function ratesOf(prepared: Prepared, question: PlanQuestion): TrialRates {
  const middlePerMin = prepared.subject.ratePerMin
  const { breathing, onNow } = question.case
  return {
    middlePerMin,
    ...ratesFollowed(middlePerMin),
    isTyped: breathing.ratePerMin !== undefined || onNow?.ratePerMin !== undefined,
  }
}

function trialOf(
  question: PlanQuestion,
  prepared: Prepared,
  candidates: readonly CandidateSetUp[],
  trial: TrialQuestion,
): Trial {
  const { setting, subject } = prepared
  const { setUp } = trial
  const evaluation = evaluated(prepared, trial)
  const ratePerMin = trial.ratePerMin ?? subject.ratePerMin
  const candidate =
    setUp === null ? undefined : candidates.find((one) => isSameSetUp(one.setUp, setUp))
  return {
    ratePerMin,
    effectiveO2Fraction: bandOf(evaluation.effectiveO2Fraction),
    saturationPercent: showsSaturation(setting) ? bandOf(evaluation.shownPercent) : null,
    chance: chanceFor(setting, evaluation),
    oxygenUsedLpm: setUp === null ? 0 : flowsOf(setUp).oxygenUsedLpm,
    printedO2Fraction: setUp === null ? null : printedOf(setUp, candidate),
    isChecked: setUp === null || INTERFACE_FAMILIES[setUp.family].isChecked,
    isOnShelf: setUp === null || candidate !== undefined,
    against: candidate === undefined ? [] : exclusionsOf({ ...subject, ratePerMin }, candidate),
    breath:
      setUp === null
        ? null
        : middleBreath({
            case: question.case,
            setUp,
            ...(trial.ratePerMin === undefined ? {} : { ratePerMin: trial.ratePerMin }),
          }),
  }
}

function evaluated(prepared: Prepared, trial: TrialQuestion): Evaluation {
  const { setting, subject } = prepared
  const { sample, solver, barometricKpa } = setting
  const scale = (trial.ratePerMin ?? subject.ratePerMin) / subject.ratePerMin
  const points =
    scale === 1
      ? sample.points
      : sample.points.map((point) => atRate(point, scale * point.body.breath.ratePerMin))
  return evaluateDelivered(setting, deliverySample(solver, points, trial.setUp, barometricKpa))
}

function printedOf(setUp: SetUp, candidate: CandidateSetUp | undefined) {
  return printedRange(
    candidate?.printed ??
      printedFraction({
        printed: INTERFACE_FAMILIES[setUp.family].printed,
        size: setUp.size,
        flow: setUp.flow,
        setO2Fraction: setUp.setO2Fraction,
      }),
  )
}

/** The same parts set alike; the fit is the patient's, not the shelf's. */
function isSameSetUp(a: SetUp, b: SetUp): boolean {
  return (
    a.family === b.family &&
    a.size === b.size &&
    (b.interfaceId === undefined || a.interfaceId === b.interfaceId) &&
    a.source.id === b.source.id &&
    stepCode(a.flow) === stepCode(b.flow) &&
    a.setO2Fraction === b.setO2Fraction &&
    overCode(a) === overCode(b)
  )
}

function overCode(setUp: SetUp): string {
  return setUp.over === null ? '' : stepCode(setUp.over.flow)
}
