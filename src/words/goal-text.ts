// The goal in one phrase, and reasons for a goal by name. Leaves out the caution that goes with a reason.
import type { Goal } from '../patient/case.ts'
import { rangeText } from './number-text.ts'
import { nameIn } from './remark-value.ts'
import { say } from './say.ts'

/** Names of the reasons in planning/goal-reasons.ts; a reason typed freely stands for itself. */
export const GOAL_REASON_NAMES: Readonly<Record<string, string>> = {
  'acutely-ill': say('acutely ill'),
  'acutely-ill-lower-ceiling': say('acutely ill, lower upper end'),
  'stop-at-96': say('on oxygen, stop at 96 %'),
  'critical-illness': say('critical illness'),
  'risk-of-hypercapnia': say('risk of carbon-dioxide retention'),
  'heart-attack-or-stroke': say('heart attack or stroke'),
  'paraquat-or-bleomycin': say('paraquat or bleomycin lung'),
  'sickle-cell-crisis': say('sickle-cell crisis'),
  pregnancy: say('pregnancy'),
  'cyanotic-heart-disease': say('cyanotic heart disease'),
  'carbon-monoxide': say('carbon monoxide'),
  'smoke-inhalation': say('smoke inhalation'),
  'cluster-headache': say('cluster headache'),
  'pneumothorax-observed': say('pneumothorax under observation'),
  'preterm-below-32-weeks': say('preterm below 32 weeks'),
  'preterm-after-stabilisation': say('preterm after stabilisation'),
  'chronic-neonatal-lung-disease': say('chronic lung disease of the newborn'),
  'child-asthma': say('child with acute asthma'),
  bronchiolitis: say('bronchiolitis'),
  'bronchiolitis-young-or-ill': say('bronchiolitis, younger than 6 weeks or with other disease'),
  'child-few-resources': say('child where means are few'),
  'comfort-last-days': say('comfort in the last days'),
}

export function goalReasonText(reason: string): string {
  return nameIn(GOAL_REASON_NAMES, reason)
}

/** "saturation 88–92 % (risk of carbon-dioxide retention)" */
export function goalText(goal: Goal): string {
  const alone = goalAloneText(goal)
  return goal.reason === undefined ? alone : `${alone} (${goalReasonText(goal.reason)})`
}

function goalAloneText(goal: Goal): string {
  switch (goal.kind) {
    case 'saturation':
      return say('saturation {range}', {
        range: rangeText({ low: goal.lowPercent, high: goal.highPercent, step: 1, unit: '%' }),
      })
    case 'fraction':
      return say('inspired fraction {range}', {
        range: rangeText({ low: goal.low, high: goal.high, step: 0.01 }),
      })
    case 'as-much-as-possible':
      return say('as much oxygen as possible')
    case 'comfort':
      return say('comfort, no saturation goal')
  }
}
