// The patient as the last part of a chain: which opening a kind of end goes to, and whether gas can reach the lungs by it. Leaves out what the gas does there.
import type { EndId } from '../kit/ends.ts'
import { neckInUse, upperAirwayInUse } from '../physiology/airway-state.ts'
import type { AirwayState } from '../physiology/airway-state.ts'
import type { Part } from './part.ts'

export interface ChainPatient {
  readonly ageYears: number
  readonly weightKg?: number
  readonly airway: AirwayState
}

/** The patient's own end for each end that is worn or pushed on. */
const OPENING: Readonly<Partial<Record<EndId, EndId>>> = {
  prongs: 'nose',
  'mask-rim': 'face',
  box: 'head',
  'neck-rim': 'neck',
  'conical-15-female': 'conical-15-male',
}

/** Ends of the patient that lead to the lungs in this state of the airway. */
export function openingsOf(airway: AirwayState): readonly EndId[] {
  const hasTube = airway.route === 'tracheostomy'
  const noseLeads = airway.route !== 'laryngectomy' && airway.nose !== 'blocked'
  return [
    ...(upperAirwayInUse(airway) ? (['face', 'head'] as const) : []),
    ...(upperAirwayInUse(airway) && noseLeads ? (['nose'] as const) : []),
    ...(neckInUse(airway) ? (['neck'] as const) : []),
    ...(hasTube && neckInUse(airway) ? (['conical-15-male'] as const) : []),
  ]
}

/** The patient as what an interface's own end goes to; undefined where that end goes to nobody. */
export function patientPartFor(end: EndId | null): Part | undefined {
  const opening = end === null ? undefined : OPENING[end]
  return opening === undefined ? undefined : patientPart(opening)
}

export function patientPart(opening: EndId): Part {
  return {
    id: `patient/${opening}`,
    kind: 'patient',
    label: opening,
    inlets: [opening],
    outlet: null,
    openEnds: [],
    isOpen: false,
    tube: null,
    flow: { isFromLabel: false },
  }
}
