// One candidate against the goal over the whole sample: fractions, shown saturations, worth of each draw.
import { deliverySample } from '../inference/delivery-points.ts'
import type { DeliverySample } from '../inference/delivery-points.ts'
import { bloodAt, shownOf } from '../inference/gas-points.ts'
import type { PlanSample } from '../inference/plan-sample.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { PeriodicSolver } from '../delivery/periodic.ts'
import type { Goal } from '../patient/case.ts'
import { fractionWorth, saturationWorth } from './score.ts'
import type { AboveRisk } from './score.ts'

export interface Setting {
  readonly goal: Goal
  readonly risk: AboveRisk
  readonly barometricKpa: number
  readonly sample: PlanSample
  readonly solver: PeriodicSolver
}

export interface Evaluation {
  readonly delivered: DeliverySample
  /** One value for each draw. */
  readonly effectiveO2Fraction: Float64Array
  readonly shownPercent: Float64Array
  readonly alveolarPo2Kpa: Float64Array
  readonly arterialPo2Kpa: Float64Array
  readonly worth: Float64Array
}

/** Evaluates a set-up (null: room air) with the draws common to all. */
export function evaluate(setting: Setting, setUp: SetUp | null): Evaluation {
  const { sample, barometricKpa, solver } = setting
  const delivered = deliverySample(solver, sample.points, setUp, barometricKpa)
  return evaluateDelivered(setting, delivered)
}

export function evaluateDelivered(setting: Setting, delivered: DeliverySample): Evaluation {
  const { sample, barometricKpa } = setting
  const draws = sample.gas.length
  const effectiveO2Fraction = new Float64Array(draws)
  const shownPercent = new Float64Array(draws)
  const alveolarPo2Kpa = new Float64Array(draws)
  const arterialPo2Kpa = new Float64Array(draws)
  const worth = new Float64Array(draws)
  sample.gas.forEach((gas, i) => {
    const o2Fraction = delivered.effectiveO2Fraction[sample.pointOf[i] ?? 0] ?? 0
    effectiveO2Fraction[i] = o2Fraction
    const blood = bloodAt(gas, o2Fraction, barometricKpa)
    alveolarPo2Kpa[i] = blood.alveolarPo2Kpa
    arterialPo2Kpa[i] = blood.arterialPo2Kpa
    shownPercent[i] = Math.round(shownOf(gas, blood.arterialSaturation))
    worth[i] = worthOf(setting, o2Fraction, shownPercent[i] ?? 0)
  })
  return { delivered, effectiveO2Fraction, shownPercent, alveolarPo2Kpa, arterialPo2Kpa, worth }
}

function worthOf(setting: Setting, o2Fraction: number, shownPercent: number): number {
  const { goal } = setting
  switch (goal.kind) {
    case 'saturation':
      return saturationWorth(shownPercent, goal, setting.risk)
    case 'fraction':
      return fractionWorth(o2Fraction, goal)
    case 'as-much-as-possible':
      return o2Fraction
    case 'comfort':
      return 0
  }
}
