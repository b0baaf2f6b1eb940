// Judges what is said of the opening at the neck against airway, age and secretions. Leaves out what follows for humidity.
import type { AirwayState } from '../physiology/airway-state.ts'
import type { InterfaceChange, Secretions } from './case.ts'
import { pathOf, report, type Node } from './field.ts'

/** Days from which an opening is no longer called new by anybody (common practice; wards differ from 5 to 30). */
export const NEW_TRACHEOSTOMY_DAYS_MAX = 30

export interface Neck {
  readonly airway: AirwayState | undefined
  readonly changes: readonly InterfaceChange[]
  readonly secretions?: Secretions
  readonly tracheostomyAgeDays?: number
}

export function checkNeck(patient: Node, neck: Neck): void {
  if (neck.airway?.route === 'natural') reportNoOpening(patient, neck)
  reportAge(patient, neck)
  reportSecretions(patient, neck)
}

/** A new tracheostomy, or the age of one, needs an opening at the neck. */
function reportNoOpening(patient: Node, { changes, tracheostomyAgeDays }: Neck): void {
  const code = 'CHANGE_NOT_FOR_AIRWAY'
  const limit = { oneOf: ['tracheostomy', 'laryngectomy'] }
  if (changes.includes('new-tracheostomy')) {
    const path = changePath(patient, changes, 'new-tracheostomy')
    report(patient.reading, { code, path, value: 'new-tracheostomy', limit })
  }
  if (tracheostomyAgeDays === undefined) return
  const path = pathOf(patient, 'tracheostomyAgeDays')
  report(patient.reading, { code, path, value: tracheostomyAgeDays, limit, unit: 'd' })
}

function reportAge(patient: Node, { changes, tracheostomyAgeDays }: Neck): void {
  if (tracheostomyAgeDays === undefined || !changes.includes('new-tracheostomy')) return
  if (tracheostomyAgeDays <= NEW_TRACHEOSTOMY_DAYS_MAX) return
  report(patient.reading, {
    code: 'CONTRADICTION',
    path: pathOf(patient, 'tracheostomyAgeDays'),
    value: tracheostomyAgeDays,
    limit: { max: NEW_TRACHEOSTOMY_DAYS_MAX },
    unit: 'd',
  })
}

function reportSecretions(patient: Node, { changes, secretions }: Neck): void {
  if (secretions !== 'thin' || !changes.includes('thick-or-bloody-secretions')) return
  report(patient.reading, {
    code: 'CONTRADICTION',
    path: pathOf(patient, 'secretions'),
    value: secretions,
    limit: { oneOf: ['thick', 'bloody', 'crusting'] },
  })
}

function changePath(
  patient: Node,
  changes: readonly InterfaceChange[],
  change: InterfaceChange,
): string {
  return `${pathOf(patient, 'changes')}[${changes.indexOf(change)}]`
}
