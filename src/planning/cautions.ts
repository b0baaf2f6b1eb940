// Which cautions a plan must carry: on top, for the patient, and for each set-up. Codes only; their wording stands in words/.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Case } from '../patient/case.ts'
import { airwayKind, neckInUse } from '../physiology/airway-state.ts'
import { wearsExchanger } from './airway-facts.ts'
import { goalReason } from './goal-reasons.ts'
import type { Band, Remark } from './plan-types.ts'

function remark(code: string, values: Remark['values'] = {}): Remark {
  return { code, values }
}

/** Lines on top of every plan. */
export function emergencyLines(about: Case): readonly Remark[] {
  const lines = [remark('EMERGENCY_OXYGEN_FIRST'), remark('EMERGENCY_NOT_BREATHING')]
  const kind = airwayKind(about.patient.airway)
  if (neckInUse(about.patient.airway) || kind === 'tracheostomy-capped')
    lines.push(remark('EMERGENCY_NECK_BREATHER'))
  return lines
}

/** Below this age somebody may think of holding the hose in front of the face; what that delivers nobody can say. */
const BLOW_BY_YEARS = 6

/** Cautions of the patient and the goal. */
export function planCautions(about: Case): readonly Remark[] {
  const { patient, goal } = about
  const lines = [remark('DECISION_SUPPORT'), remark('NOT_A_MONITOR'), remark('FIRE')]
  const reason = goal.reason === undefined ? null : goalReason(goal.reason)
  if (reason !== null) {
    const { known, source } = reason
    lines.push({
      code: reason.caution,
      values: {},
      known,
      ...(source === undefined ? {} : { source }),
    })
  }
  if (patient.retentionRisk !== 'none')
    lines.push(remark('PACO2_NOT_PREDICTABLE'), remark('WATCH_DROWSINESS'))
  if (about.breathing.state === 'slow-under-opioids')
    lines.push(remark('OPIOID_SATURATION_HIDES_CO2'))
  if (patient.gestationWeeks !== undefined && patient.gestationWeeks < 37)
    lines.push(remark('PRETERM_TOO_MUCH_HARMS'))
  if (patient.ageYears < BLOW_BY_YEARS) lines.push(remark('BLOW_BY_NO_NUMBER'))
  if (goal.kind === 'saturation') lines.push(remark('OXIMETER_LIMITS'))
  if (patient.changes.includes('facial-burn-or-injury')) lines.push(remark('BURN_AIRWAY_MAY_SWELL'))
  if (patient.changes.includes('vomiting-risk')) lines.push(remark('VOMITING_UNDER_MASK'))
  if (wearsExchanger(patient.airway) && patient.changes.includes('nebulised-drug'))
    lines.push(remark('EXCHANGER_OFF_WHILE_NEBULISED'))
  return lines
}

export interface SetUpFacts {
  readonly demandMarginLpm: Band
  readonly effectiveO2Fraction: Band
  readonly bagEmptyShare: number
  readonly isChecked: boolean
}

/** Effective fraction from which absorption and toxicity are a concern. Source: Aarc2002. */
const HIGH_FRACTION = 0.5

/** Cautions of one set-up. */
export function setUpRemarks(setUp: SetUp, facts: SetUpFacts): readonly Remark[] {
  const family = INTERFACE_FAMILIES[setUp.family]
  const lines: Remark[] = []
  if (!facts.isChecked) lines.push(remark('NOT_CHECKED_AGAINST_MEASUREMENTS'))
  if (facts.demandMarginLpm.median < 0)
    lines.push(remark('DEMAND_EXCEEDS_STREAM', { marginLpm: facts.demandMarginLpm.median }))
  if (family.isCloseFitting) lines.push(remark('REMOVE_IF_GAS_FAILS'))
  if (family.behaviour.kind === 'reservoir')
    lines.push(remark('FILL_BAG_FIRST', { bagEmptyShare: facts.bagEmptyShare }))
  if (family.behaviour.kind === 'mask' && family.id === 'simple-mask')
    lines.push(remark('LOW_FLOW_REBREATHING', { flowLpm: 5 }))
  if (facts.effectiveO2Fraction.median >= HIGH_FRACTION) {
    lines.push({
      code: 'HIGH_FRACTION',
      values: { o2Fraction: HIGH_FRACTION },
      known: 'seen',
      source: 'Aarc2002',
    })
  }
  if (setUp.source.kind === 'ventilator') lines.push(remark('VENTILATOR_GIVES_NO_BREATHS'))
  if (setUp.source.kind === 'blender' || setUp.source.kind === 'ventilator')
    lines.push(remark('NEEDS_BOTH_GASES'))
  if (setUp.source.kind === 'concentrator') lines.push(remark('CONCENTRATOR_PURITY'))
  if (setUp.source.kind === 'cylinder-regulator') lines.push(remark('CYLINDER_RUNS_OUT'))
  if (setUp.flow.kind === 'flush') lines.push(remark('FLUSH_WIDE_SPREAD'))
  if (setUp.humidification === 'heated') lines.push(remark('HEATER_OFF_WHEN_FLOW_STOPS'))
  return lines
}

/** What to watch with this set-up. */
export function watchLines(setUp: SetUp, about: Case): readonly Remark[] {
  const lines = [remark('WATCH_FIVE_MINUTES')]
  const family = INTERFACE_FAMILIES[setUp.family]
  if (about.patient.retentionRisk !== 'none') lines.push(remark('BLOOD_GAS_30_60'))
  if (family.behaviour.kind === 'reservoir') lines.push(remark('WATCH_BAG'))
  if (family.opening === 'nose' || setUp.family === 'cannula-under-mask')
    lines.push(remark('WATCH_NOSE_AND_EARS'))
  if (family.opening === 'face') lines.push(remark('WATCH_SKIN_UNDER_MASK'))
  if (family.opening === 'neck') lines.push(remark('WATCH_SECRETIONS'))
  if (family.opening === 'head') lines.push(remark('WATCH_BOX_CO2'))
  if (family.feeds.includes('wide-bore')) lines.push(remark('DRAIN_CONDENSATE'))
  return lines
}
