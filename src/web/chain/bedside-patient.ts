// The patient on Bedside as Chain needs one: who, where, on which ward. Leaves out the goal and what is on now.
import type { Shelf } from '../../kit/shelf.ts'
import type { Case } from '../../patient/case.ts'
import { readDraft } from '../case/case-input.ts'
import { wardIdOf } from '../case/draft.ts'
import { keptDraft } from '../case/draft-store.ts'
import { keptInSight } from './in-sight.ts'

export type BedsidePatient =
  | { readonly kind: 'none' }
  /** What is typed there is not yet a case. */
  | { readonly kind: 'unreadable' }
  | {
      readonly kind: 'patient'
      readonly about: Case
      /** Empty for the whole hospital. */
      readonly wardId: string
      /** The set-up in sight, as an address names it; empty where none was. */
      readonly inSight: string
    }

export function bedsidePatient(asked: {
  readonly storage: Pick<Storage, 'getItem'>
  readonly shelf: Shelf
  readonly siteAltitudeM: number | undefined
}): BedsidePatient {
  const { storage, shelf, siteAltitudeM } = asked
  const draft = keptDraft(storage)
  if (draft === undefined) return { kind: 'none' }
  const read = readDraft(draft, { altitudeM: siteAltitudeM })
  if (!read.ok) return { kind: 'unreadable' }
  return {
    kind: 'patient',
    about: read.case,
    wardId: wardIdOf(draft, shelf) ?? '',
    inSight: keptInSight(storage),
  }
}
