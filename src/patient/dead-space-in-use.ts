// Which part of the anatomical dead space a breath passes in this airway, and the least it can be for this body. Leaves out the interface's own space.
import { airwayKind, type AirwayState } from '../physiology/airway-state.ts'
import { heightSpreadCm, predictedBodyWeightKg, weightSpreadKg } from '../physiology/body.ts'
import { anatomicalDeadSpace, DEAD_SPACE_FACTOR, type DeadSpace } from '../physiology/dead-space.ts'
import { limitsOf } from '../units/spread.ts'
import type { Patient } from './case.ts'

/** A breath shorter than this many times the dead space leaves the alveoli as good as unaired (common practice). */
export const LEAST_BREATH_PER_DEAD_SPACE = 1.3

const ADULT_AGE_YEARS = 18
const PREDICTED_HEIGHT_CM_MIN = 130

/** Whether every breath passes nose or mouth and throat. With a tube or stoma in use, nothing or only part of it does. */
export function upperAirwayIsDeadSpace(airway: AirwayState): boolean {
  const kind = airwayKind(airway)
  return kind === 'natural' || kind === 'nose-blocked' || kind === 'tracheostomy-capped'
}

export function deadSpaceInUseMl(airway: AirwayState, deadSpace: DeadSpace): number {
  return upperAirwayIsDeadSpace(airway) ? deadSpace.totalMl : deadSpace.intrathoracicMl
}

/** Dead space goes by predicted weight in adults and by actual weight in children. */
export function deadSpaceWeightKg(body: {
  readonly ageYears: number
  readonly sex: 'female' | 'male'
  readonly heightCm: number
  readonly weightKg: number
}): number {
  const isPredictable = body.ageYears >= ADULT_AGE_YEARS && body.heightCm >= PREDICTED_HEIGHT_CM_MIN
  return isPredictable ? predictedBodyWeightKg(body) : body.weightKg
}

/** The smallest dead space in use that a draw for this patient can have, mL. */
export function leastDeadSpaceMl(patient: Patient): number {
  const { ageYears } = patient
  const weightKg = patient.weightKg ?? limitsOf(weightSpreadKg(patient)).min
  // Below 18 years height plays no part.
  const heightCm =
    patient.heightCm ?? (ageYears < ADULT_AGE_YEARS ? 0 : limitsOf(heightSpreadCm(patient)).min)
  const sex = patient.sex ?? 'female'
  const byWeightKg = deadSpaceWeightKg({ ageYears, sex, heightCm, weightKg })
  const deadSpace = anatomicalDeadSpace({ ageYears, weightKg: byWeightKg })
  return deadSpaceInUseMl(patient.airway, deadSpace) * limitsOf(DEAD_SPACE_FACTOR).min
}
