// The rule of the scanner room: a cylinder goes in only if it, its regulator and its flowmeter are all MR conditional; else gas stays outside. Leaves out every other item on the patient.
import type { MeterScale } from '../kit/source-row.ts'
import type { TakenChain } from './chain-taken.ts'
import {
  longTubeDropKpa,
  TUBE_BORE_MM,
  tubeFillMinutes,
  uncompensatedReadsLowFactor,
  type TubeLength,
} from './long-tube.ts'
import type { MrSafety } from './store.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

/** What stands ready at the scanner. */
export interface ScannerKit {
  readonly regulator: MrSafety
  readonly flowmeter: MrSafety
  /** Of the tube that leads gas in from outside. */
  readonly tubeLengthM?: number
  readonly tubeBoreMm?: number
}

/** The tube that leads gas in, and where each of its numbers is from. */
export interface ScannerTube {
  readonly lengths: readonly TubeLength[]
  readonly lengthFrom: 'typed' | 'chain'
  readonly boreFrom: 'typed' | 'chain' | 'assumed'
}

export interface ScannerAnswer {
  readonly gas: 'inside' | 'outside'
  /** Null where gas goes in, or where nobody says how long it is. */
  readonly tube: ScannerTube | null
  readonly remarks: readonly SupplyRemark[]
}

/** Delay and pressure below which a tube is not worth a word: half a minute, and 2 % of a meter that reads low. */
const DELAY_SAID_MIN = 0.5
const READS_LOW_SAID_MIN = 0.02

/** Whether regulator and flowmeter may go in; the cylinder is judged by its own row. Unknown counts as not. */
export function mayEnter(kit: ScannerKit | undefined): boolean {
  return kit?.regulator === 'conditional' && kit.flowmeter === 'conditional'
}

/** Where the gas stands, and what a long tube does: the one typed, else the tubes of the chain, which is said. Flow and tube valid as
 *  tubeFillMinutes, else DomainError. long-tube.test.ts, transfer.test.ts. */
export function scannerAnswer(question: {
  readonly kit: ScannerKit | undefined
  readonly chain: TakenChain | null
  readonly isCylinderConditional: boolean
  readonly flowLpm: number
  readonly barometricKpa: number
  readonly meter: MeterScale | null
}): ScannerAnswer {
  const { kit, isCylinderConditional, chain } = question
  if (isCylinderConditional && mayEnter(kit))
    return { gas: 'inside', tube: null, remarks: [supplyRemark('CYLINDER_MAY_ENTER')] }
  const outside = supplyRemark('GAS_STAYS_OUTSIDE')
  const tube = scannerTube(kit, chain)
  if (tube === null)
    return { gas: 'outside', tube, remarks: [outside, supplyRemark('TUBE_LENGTH_UNKNOWN')] }
  const fromChain =
    tube.lengthFrom === 'chain' ? [supplyRemark('TUBE_FROM_CHAIN', { ...totalOf(tube) })] : []
  return { gas: 'outside', tube, remarks: [outside, ...fromChain, ...tubeRemarks(question, tube)] }
}

/** Typed wins. A typed length without a bore takes the narrowest bore of the chain's tubing, else the usual one, assumed. */
function scannerTube(kit: ScannerKit | undefined, chain: TakenChain | null): ScannerTube | null {
  const own = chain?.tubes ?? []
  const typedMm = kit?.tubeBoreMm
  const ownMm = own.length === 0 ? undefined : Math.min(...own.map(({ boreMm }) => boreMm))
  if (kit?.tubeLengthM === undefined) {
    if (own.length === 0) return null
    const { lengthM } = totalOf({ lengths: own })
    const lengths = typedMm === undefined ? own : [{ lengthM, boreMm: typedMm }]
    return { lengths, lengthFrom: 'chain', boreFrom: typedMm === undefined ? 'chain' : 'typed' }
  }
  const boreMm = typedMm ?? ownMm ?? TUBE_BORE_MM
  const boreFrom = typedMm !== undefined ? 'typed' : ownMm === undefined ? 'assumed' : 'chain'
  const lengths = [{ lengthM: kit.tubeLengthM, boreMm }]
  return { lengths, lengthFrom: 'typed', boreFrom }
}

/** Length of all, and the narrowest bore. */
export function totalOf({ lengths }: Pick<ScannerTube, 'lengths'>): TubeLength {
  return {
    lengthM: lengths.reduce((sum, { lengthM }) => sum + lengthM, 0),
    boreMm: Math.min(...lengths.map(({ boreMm }) => boreMm)),
  }
}

function tubeRemarks(
  question: {
    readonly flowLpm: number
    readonly barometricKpa: number
    readonly meter: MeterScale | null
  },
  { lengths }: ScannerTube,
): readonly SupplyRemark[] {
  const { flowLpm, barometricKpa, meter } = question
  const { lengthM } = totalOf({ lengths })
  const fills = lengths.map((one) => tubeFillMinutes({ ...one, flowLpm }))
  const delayMinutes = fills.reduce<number>((sum, minutes) => sum + (minutes ?? 0), 0)
  const dropKpa = longTubeDropKpa(lengths, { flowLpm, barometricKpa })
  const readsLowShare = uncompensatedReadsLowFactor({ backPressureKpa: dropKpa, barometricKpa }) - 1
  return [
    ...(delayMinutes >= DELAY_SAID_MIN
      ? [supplyRemark('TUBE_DELAYS_GAS', { lengthM, delayMinutes })]
      : []),
    ...(meter?.kind === 'tube-uncompensated' && readsLowShare >= READS_LOW_SAID_MIN
      ? [supplyRemark('TUBE_MAKES_METER_READ_LOW', { lengthM, dropKpa, readsLowShare })]
      : []),
  ]
}
