// The few facts of a case that exclusions and guidelines look at.
import type { Case } from '../patient/case.ts'
import type { PatientSpreads } from '../patient/patient-spread.ts'
import { medianOf } from '../units/spread.ts'
import type { PlanSubject } from './exclusion-rule.ts'

/** Typed values, and for what was not typed the middle of what is assumed. */
export function subjectOf(about: Case, spreads: PatientSpreads): PlanSubject {
  const { patient, goal } = about
  return {
    ageYears: patient.ageYears,
    weightKg: medianOf(spreads.values.weightKg.spread),
    airway: patient.airway,
    changes: patient.changes,
    retentionRisk: patient.retentionRisk,
    goal,
    ratePerMin: medianOf(spreads.values.ratePerMin.spread),
  }
}
