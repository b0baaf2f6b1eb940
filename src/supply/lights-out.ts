// The lights-out drill: every bed under every failure, most endangered first. Leaves out how long a patient stands it, which is not computed yet.
import type { Shelf } from '../kit/shelf.ts'
import {
  bedOutage,
  FAILURES,
  type BedOutage,
  type Failure,
  type OutageState,
} from './bed-outage.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'
import { bedAnswer, wardPressureKpa, type BedAnswer } from './ward-bed.ts'
import type { WardFile } from './ward.ts'

export interface BedDrill {
  readonly answer: BedAnswer
  readonly outages: Readonly<Record<Failure, BedOutage>>
}

export interface LightsOut {
  /** Every bed, the one that any failure endangers most first. */
  readonly beds: readonly BedDrill[]
  /** For each failure its own order. */
  readonly byFailure: Readonly<Record<Failure, readonly BedDrill[]>>
  readonly remarks: readonly SupplyRemark[]
}

/** Temperature of a ward where the file gives none, °C (common practice). */
export const ROOM_C = 20

/** Every bed under every failure, in the order of danger of all failures together and of each alone: fails at once, not known, shortest
 *  time first, another gas, works on; of equals the highest draw first. Valid as bedAnswer and bedOutage, else DomainError; a ward without
 *  beds gives none. Order by rule, minutes exact; lights-out.test.ts. */
export function lightsOut(ward: WardFile, shelf: Shelf): LightsOut {
  const barometricKpa = wardPressureKpa(ward)
  const place = { supply: ward.supply, barometricKpa, roomC: ward.roomC ?? ROOM_C }
  const beds = ward.beds.map((bed): BedDrill => {
    const answer = bedAnswer(bed, { shelf, barometricKpa })
    const outage = (failure: Failure): BedOutage => bedOutage(answer, failure, place)
    return {
      answer,
      outages: {
        mains: outage('mains'),
        'pipeline-oxygen': outage('pipeline-oxygen'),
        'medical-air': outage('medical-air'),
        blender: outage('blender'),
      },
    }
  })
  const ofFailure = (failure: Failure): readonly BedDrill[] =>
    beds.toSorted((a, b) => compare([a.outages[failure]], [b.outages[failure]]) || byDraw(a, b))
  return {
    beds: beds.toSorted((a, b) => compare(all(a), all(b)) || byDraw(a, b)),
    byFailure: {
      mains: ofFailure('mains'),
      'pipeline-oxygen': ofFailure('pipeline-oxygen'),
      'medical-air': ofFailure('medical-air'),
      blender: ofFailure('blender'),
    },
    remarks: [
      ...(ward.isInvented === true ? [supplyRemark('SUPPLY_WARD_INVENTED')] : []),
      supplyRemark('NOT_COMPUTED_YET'),
    ],
  }
}

/** What fails at once before what nobody knows, then the shortest time, another gas, and what works on. */
const ORDER: Readonly<Record<OutageState, number>> = {
  fails: 0,
  unknown: 1,
  minutes: 2,
  'other-gas': 3,
  works: 4,
}

function all({ outages }: BedDrill): readonly BedOutage[] {
  return FAILURES.map((failure) => outages[failure]).sort(byDanger)
}

/** The worst outcome decides, then the next worst. */
function compare(a: readonly BedOutage[], b: readonly BedOutage[]): number {
  return a.map((one, i) => byDanger(one, b[i] ?? one)).find((order) => order !== 0) ?? 0
}

function byDanger(a: BedOutage, b: BedOutage): number {
  const order = ORDER[a.state] - ORDER[b.state]
  if (order !== 0 || a.state !== 'minutes') return order
  return (a.minutes ?? 0) - (b.minutes ?? 0)
}

/** Who gets most oxygen misses it most. */
function byDraw(a: BedDrill, b: BedDrill): number {
  return (b.answer.drawn?.oxygenLpm ?? 0) - (a.answer.drawn?.oxygenLpm ?? 0)
}
