// What is drawn by the set-up typed at Bedside as on now. Leaves out what the plan there would choose instead.
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import type { Case, SetUpOnNow } from '../../patient/case.ts'
import { setUpOfOnNow } from '../../planning/on-now.ts'
import { gasDrawn } from '../../supply/gas-drawn.ts'
import type { GasDrawn } from '../../supply/gas-drawn.ts'
import { barometricPressureKpa } from '../../physics/atmosphere.ts'
import { STANDARD_PRESSURE_KPA } from '../../units/constants.ts'
import { readDraft } from '../case/case-input.ts'
import { keptDraft } from '../case/draft-store.ts'
import { FIRST_EXAMPLE } from '../case/first-example.ts'

export type BedsideDraw =
  | {
      readonly kind: 'drawn'
      readonly about: Case
      readonly setUp: SetUpOnNow
      readonly drawn: GasDrawn
    }
  | { readonly kind: 'nothing' | 'refused' }

export function bedsideDraw(storage: Pick<Storage, 'getItem'>): BedsideDraw {
  const read = readDraft(keptDraft(storage) ?? FIRST_EXAMPLE.draft)
  if (!read.ok) return { kind: 'refused' }
  const setUp = read.case.onNow?.setUp ?? null
  if (setUp === null) return { kind: 'nothing' }
  const { site, patient } = read.case
  const whole = setUpOfOnNow(setUp, DEMO_SHELF, {
    ageYears: patient.ageYears,
    ...(patient.weightKg === undefined ? {} : { weightKg: patient.weightKg }),
  })
  const barometricKpa =
    site.barometricPressureKpa ??
    (site.altitudeM === undefined ? STANDARD_PRESSURE_KPA : barometricPressureKpa(site.altitudeM))
  return {
    kind: 'drawn',
    about: read.case,
    setUp,
    drawn: gasDrawn({ setUp: whole, barometricKpa }),
  }
}
