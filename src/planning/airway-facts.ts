// What a case and a set-up say of airway and secretions, as the humidity layer asks for it. What the case does not say stays null.
import { NEW_OPENING_DAYS_MAX } from '../humidity/facts.ts'
import type { AirwayFacts, SecretionsFact } from '../humidity/facts.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { FamilyId } from '../kit/family-id.ts'
import type { Case, Patient } from '../patient/case.ts'
import { airwayKind, neckInUse } from '../physiology/airway-state.ts'
import type { AirwayState } from '../physiology/airway-state.ts'

/** Gas is inhaled past mouth and nose: it is given at the neck, or the patient breathes in by the neck alone. */
export function isBypassed(family: FamilyId, airway: AirwayState): boolean {
  const kind = airwayKind(airway)
  const drawsByNeckAlone = kind === 'laryngectomy' || kind === 'tracheostomy-cuff-up'
  return drawsByNeckAlone || (INTERFACE_FAMILIES[family].opening === 'neck' && neckInUse(airway))
}

export function airwayFactsOf(
  about: Pick<Case, 'patient' | 'breathing'>,
  family: FamilyId,
): AirwayFacts {
  const { patient, breathing } = about
  const kind = airwayKind(patient.airway)
  return {
    isBypassed: isBypassed(family, patient.airway),
    hasNeckOpening: patient.airway.route !== 'natural',
    ageYears: patient.ageYears,
    secretions: secretionsOf(patient),
    isNewOpening: isNewOpening(patient),
    tracheostomyAgeDays: patient.tracheostomyAgeDays ?? null,
    wearsExchanger: wearsExchanger(patient.airway),
    returnsThroughNeck: kind === 'laryngectomy' || kind === 'tracheostomy-cuff-up',
    // Not ticked is not known: nobody says that no drug is given.
    nebulisesDrug: patient.changes.includes('nebulised-drug') ? true : null,
    tidalVolumeMl: breathing.tidalVolumeMl ?? null,
  }
}

function secretionsOf({ secretions, changes }: Patient): SecretionsFact | null {
  if (secretions !== undefined) return secretions
  return changes.includes('thick-or-bloody-secretions') ? 'thick-or-bloody' : null
}

function isNewOpening({ airway, changes, tracheostomyAgeDays }: Patient): boolean | null {
  if (airway.route === 'natural') return false
  if (changes.includes('new-tracheostomy')) return true
  return tracheostomyAgeDays === undefined ? null : tracheostomyAgeDays <= NEW_OPENING_DAYS_MAX
}

/** A heat and moisture exchanger sits on tube or stoma. */
export function wearsExchanger(airway: AirwayState): boolean {
  if (airway.route === 'natural') return false
  return airway.route === 'laryngectomy'
    ? airway.heatMoistureExchanger
    : airway.tube.heatMoistureExchanger
}
