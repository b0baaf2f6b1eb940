// Reasons for a goal and the goal that a source gives for each, with its caution. Offered, never preset silently.
import type { Goal } from '../patient/case.ts'
import type { Provenance } from '../units/provenance.ts'

export interface GoalReason extends Provenance {
  readonly id: string
  readonly suggested: Goal
  /** Text code of the caution that goes with it. */
  readonly caution: string
  /** Below this saturation oxygen is started; absent where the range itself decides. */
  readonly startBelowPercent?: number
}

function range(lowPercent: number, highPercent: number): Goal {
  return { kind: 'saturation', lowPercent, highPercent }
}

export const GOAL_REASONS: readonly GoalReason[] = [
  {
    id: 'acutely-ill',
    suggested: range(94, 98),
    caution: 'GOAL_USUAL',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'acutely-ill-lower-ceiling',
    suggested: range(92, 96),
    caution: 'GOAL_REGIONAL_92_96',
    known: 'seen',
    source: 'Beasley2015',
  },
  {
    id: 'stop-at-96',
    suggested: range(92, 96),
    caution: 'GOAL_AT_MOST_96',
    known: 'memory',
    source: 'Siemieniuk2018',
  },
  {
    id: 'critical-illness',
    suggested: range(94, 98),
    caution: 'GOAL_CRITICAL_FIRST_RESERVOIR',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'risk-of-hypercapnia',
    suggested: range(88, 92),
    caution: 'GOAL_BLOOD_GAS',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'heart-attack-or-stroke',
    suggested: range(90, 94),
    caution: 'GOAL_NOT_STARTED_ABOVE_93',
    known: 'memory',
    source: 'Siemieniuk2018',
    startBelowPercent: 93,
  },
  {
    id: 'paraquat-or-bleomycin',
    suggested: range(85, 88),
    caution: 'GOAL_OXYGEN_HARMS_LUNG',
    known: 'seen',
    source: 'ODriscoll2017',
    startBelowPercent: 85,
  },
  {
    id: 'sickle-cell-crisis',
    suggested: range(94, 98),
    caution: 'GOAL_OR_USUAL_VALUE',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'pregnancy',
    suggested: range(94, 98),
    caution: 'GOAL_LEFT_LATERAL',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'cyanotic-heart-disease',
    suggested: range(75, 85),
    caution: 'GOAL_CARDIOLOGIST_DECIDES',
    known: 'memory',
  },
  {
    id: 'carbon-monoxide',
    suggested: { kind: 'as-much-as-possible', reason: 'carbon-monoxide' },
    caution: 'GOAL_IGNORE_OXIMETER',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'smoke-inhalation',
    suggested: { kind: 'as-much-as-possible', reason: 'smoke-inhalation' },
    caution: 'GOAL_IGNORE_OXIMETER',
    known: 'common-practice',
  },
  {
    id: 'cluster-headache',
    suggested: { kind: 'as-much-as-possible', reason: 'cluster-headache' },
    caution: 'GOAL_CLUSTER_12_LPM',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'pneumothorax-observed',
    suggested: { kind: 'as-much-as-possible', reason: 'pneumothorax-observed' },
    caution: 'GOAL_PNEUMOTHORAX_LOCAL_POLICY',
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'preterm-below-32-weeks',
    suggested: range(90, 94),
    caution: 'GOAL_PRETERM',
    known: 'memory',
    source: 'Sweet2022',
  },
  {
    id: 'preterm-after-stabilisation',
    suggested: range(91, 95),
    caution: 'GOAL_PRETERM',
    known: 'seen',
    source: 'Nice2020',
  },
  {
    id: 'chronic-neonatal-lung-disease',
    suggested: range(93, 95),
    caution: 'GOAL_CHRONIC_NEONATAL',
    known: 'seen',
    source: 'Kapur2020',
  },
  { id: 'child-asthma', suggested: range(94, 98), caution: 'GOAL_USUAL', known: 'memory' },
  {
    id: 'bronchiolitis',
    suggested: range(90, 95),
    caution: 'GOAL_BRONCHIOLITIS',
    known: 'secondary',
    source: 'Nice2021',
    startBelowPercent: 90,
  },
  {
    id: 'bronchiolitis-young-or-ill',
    suggested: range(92, 96),
    caution: 'GOAL_BRONCHIOLITIS',
    known: 'secondary',
    source: 'Nice2021',
    startBelowPercent: 92,
  },
  {
    id: 'child-few-resources',
    suggested: range(90, 94),
    caution: 'GOAL_CHILD_WHO',
    known: 'memory',
    source: 'Who2016',
    startBelowPercent: 90,
  },
  {
    id: 'comfort-last-days',
    suggested: { kind: 'comfort', reason: 'comfort-last-days' },
    caution: 'GOAL_COMFORT',
    known: 'seen',
    source: 'ODriscoll2017',
  },
]

export function goalReason(id: string): GoalReason | null {
  return GOAL_REASONS.find((reason) => reason.id === id) ?? null
}
