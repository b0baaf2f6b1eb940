// What is drawn by the set-up typed at Bedside as on now. Leaves out what the plan there would choose instead.
import type { Shelf } from '../../kit/shelf.ts'
import type { Case, SetUpOnNow } from '../../patient/case.ts'
import { setUpOfOnNow } from '../../planning/on-now.ts'
import { gasDrawn } from '../../supply/gas-drawn.ts'
import type { GasDrawn } from '../../supply/gas-drawn.ts'
import { barometricPressureKpa } from '../../physics/atmosphere.ts'
import { STANDARD_PRESSURE_KPA } from '../../units/constants.ts'
import { readDraft } from '../case/case-input.ts'
import { keptDraft } from '../case/draft-store.ts'
import { FIRST_EXAMPLE } from '../case/first-example.ts'

export interface DrawnAtBedside {
  readonly kind: 'drawn'
  readonly about: Case
  readonly setUp: SetUpOnNow
  readonly drawn: GasDrawn
  /** Of the case, or by the settings where it gives none; undefined where neither does. */
  readonly barometricKpa: number | undefined
  /** Nothing is typed there yet: the invented example stands. */
  readonly isExample: boolean
}

export type BedsideDraw = DrawnAtBedside | { readonly kind: 'nothing' | 'refused' }

export function bedsideDraw(
  storage: Pick<Storage, 'getItem'>,
  given: { readonly shelf: Shelf; readonly siteAltitudeM: number | undefined },
): BedsideDraw {
  const kept = keptDraft(storage)
  const { siteAltitudeM: altitudeM } = given
  const draft = kept ?? FIRST_EXAMPLE.draft
  const read = readDraft(draft, { altitudeM })
  if (!read.ok) return { kind: 'refused' }
  const setUp = read.case.onNow?.setUp ?? null
  if (setUp === null) return { kind: 'nothing' }
  const { site, patient } = read.case
  const whole = setUpOfOnNow(setUp, given.shelf, patient)
  const barometricKpa =
    site.barometricPressureKpa ??
    (site.altitudeM === undefined ? undefined : barometricPressureKpa(site.altitudeM))
  return {
    kind: 'drawn',
    about: read.case,
    setUp,
    drawn: gasDrawn({ setUp: whole, barometricKpa: barometricKpa ?? STANDARD_PRESSURE_KPA }),
    barometricKpa,
    isExample: draft.exampleId !== null,
  }
}
