// The goal in one phrase, and reasons for a goal by name. Leaves out the caution that goes with a reason.
import type { Goal } from '../patient/case.ts'
import { rangeText } from './number-text.ts'
import { nameIn } from './remark-value.ts'

/** Names of the reasons in planning/goal-reasons.ts; a reason typed freely stands for itself. */
export const GOAL_REASON_NAMES: Readonly<Record<string, string>> = {
  'acutely-ill': 'acutely ill',
  'acutely-ill-lower-ceiling': 'acutely ill, lower upper end',
  'stop-at-96': 'on oxygen, stop at 96 %',
  'critical-illness': 'critical illness',
  'risk-of-hypercapnia': 'risk of carbon-dioxide retention',
  'heart-attack-or-stroke': 'heart attack or stroke',
  'paraquat-or-bleomycin': 'paraquat or bleomycin lung',
  'sickle-cell-crisis': 'sickle-cell crisis',
  pregnancy: 'pregnancy',
  'cyanotic-heart-disease': 'cyanotic heart disease',
  'carbon-monoxide': 'carbon monoxide',
  'smoke-inhalation': 'smoke inhalation',
  'cluster-headache': 'cluster headache',
  'pneumothorax-observed': 'pneumothorax under observation',
  'preterm-below-32-weeks': 'preterm below 32 weeks',
  'preterm-after-stabilisation': 'preterm after stabilisation',
  'chronic-neonatal-lung-disease': 'chronic lung disease of the newborn',
  'child-asthma': 'child with acute asthma',
  bronchiolitis: 'bronchiolitis',
  'bronchiolitis-young-or-ill': 'bronchiolitis, younger than 6 weeks or with other disease',
  'child-few-resources': 'child where means are few',
  'comfort-last-days': 'comfort in the last days',
}

export function goalReasonText(reason: string): string {
  return nameIn(GOAL_REASON_NAMES, reason)
}

/** "saturation 88–92 % (risk of carbon-dioxide retention)" */
export function goalText(goal: Goal): string {
  const reason = goal.reason === undefined ? '' : ` (${goalReasonText(goal.reason)})`
  return goalAloneText(goal) + reason
}

function goalAloneText(goal: Goal): string {
  switch (goal.kind) {
    case 'saturation':
      return `saturation ${rangeText({ low: goal.lowPercent, high: goal.highPercent, step: 1, unit: '%' })}`
    case 'fraction':
      return `inspired fraction ${rangeText({ low: goal.low, high: goal.high, step: 0.01 })}`
    case 'as-much-as-possible':
      return 'as much oxygen as possible'
    case 'comfort':
      return 'comfort, no saturation goal'
  }
}
