// One bed of a ward file worked out: its set-up in full, what it draws and from where. Leaves out failures and sums.
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import { barometricPressureKpa, requireBarometricKpa } from '../physics/atmosphere.ts'
import { setUpOfOnNow } from '../planning/on-now.ts'
import { gasDrawn, type GasDrawn } from './gas-drawn.ts'
import type { Bed, WardFile } from './ward.ts'

/** Where a bed's oxygen comes from; `unknown`: the file does not say what is on. */
export type BedFeed = 'pipeline' | 'cylinder' | 'own-source' | 'room-air' | 'empty' | 'unknown'

export interface BedAnswer {
  readonly bed: Bed
  readonly feed: BedFeed
  readonly setUp: SetUp | null
  readonly drawn: GasDrawn | null
  /** Taken from the pipeline. */
  readonly pipelineLpm: number
  readonly airLpm: number
}

/** Sizes only tell which interface fits; the draw does not depend on it. */
const USUAL_AGE_YEARS = 50
const CHILD_AGE_YEARS = 5

/** Air pressure of a ward: as measured, else of its altitude, else of sea level. Valid as requireBarometricKpa and −450–5800 m, else DomainError. Law and
 *  source as barometricPressureKpa; ward-demand.test.ts. */
export function wardPressureKpa(ward: WardFile): number {
  return ward.barometricPressureKpa === undefined
    ? barometricPressureKpa(ward.altitudeM ?? 0)
    : requireBarometricKpa(ward.barometricPressureKpa, 'barometricPressureKpa')
}

/** What is on at a bed with the shelf's source for it, what it draws and from where; an age that is not given is assumed only to choose a
 *  size, which draws no other flow. Valid as gasDrawn, else DomainError. ward-demand.test.ts. */
export function bedAnswer(
  bed: Bed,
  place: { readonly shelf: Shelf; readonly barometricKpa: number },
): BedAnswer {
  const nothing = { bed, setUp: null, drawn: null, pipelineLpm: 0, airLpm: 0 }
  if (bed.isEmpty === true) return { ...nothing, feed: 'empty' }
  if (bed.setUp === undefined) return { ...nothing, feed: 'unknown' }
  if (bed.setUp === null) return { ...nothing, feed: 'room-air' }
  const isSmall = bed.setUp.size !== undefined && bed.setUp.size !== 'adult'
  const setUp = setUpOfOnNow(bed.setUp, place.shelf, {
    ageYears: bed.ageYears ?? (isSmall ? CHILD_AGE_YEARS : USUAL_AGE_YEARS),
    ...(bed.weightKg === undefined ? {} : { weightKg: bed.weightKg }),
  })
  const { barometricKpa } = place
  const beside = bed.beside ?? {}
  const drawn = gasDrawn({ setUp, barometricKpa, beside })
  const feed = feedOf(setUp)
  return {
    bed,
    feed,
    setUp,
    drawn,
    pipelineLpm: feed === 'pipeline' ? drawn.oxygenLpm : 0,
    airLpm: drawn.airLpm,
  }
}

function feedOf({ source }: SetUp): BedFeed {
  if (source.kind === 'concentrator') return 'own-source'
  return source.kind === 'cylinder-regulator' ? 'cylinder' : 'pipeline'
}
