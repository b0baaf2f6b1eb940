// The rule of the scanner room: a cylinder goes in only if it, its regulator and its flowmeter are all MR conditional; else gas stays outside. Leaves out every other item on the patient.
import type { MeterScale } from '../kit/source-row.ts'
import {
  TUBE_BORE_MM,
  tubeFillMinutes,
  tubePressureDropKpa,
  uncompensatedReadsLowFactor,
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

export interface ScannerAnswer {
  readonly gas: 'inside' | 'outside'
  readonly remarks: readonly SupplyRemark[]
}

/** Delay and pressure below which a tube is not worth a word: half a minute, and 2 % of a meter that reads low. */
const DELAY_SAID_MIN = 0.5
const READS_LOW_SAID_MIN = 0.02

export function mayEnter(kit: ScannerKit | undefined): boolean {
  return kit?.regulator === 'conditional' && kit.flowmeter === 'conditional'
}

/** Where the gas stands, and what a long tube does. */
export function scannerAnswer(question: {
  readonly kit: ScannerKit | undefined
  readonly isCylinderConditional: boolean
  readonly flowLpm: number
  readonly meter: MeterScale | null
}): ScannerAnswer {
  const { kit, isCylinderConditional } = question
  if (isCylinderConditional && mayEnter(kit))
    return { gas: 'inside', remarks: [supplyRemark('CYLINDER_MAY_ENTER')] }
  const outside = supplyRemark('GAS_STAYS_OUTSIDE')
  if (kit?.tubeLengthM === undefined)
    return { gas: 'outside', remarks: [outside, supplyRemark('TUBE_LENGTH_UNKNOWN')] }
  return { gas: 'outside', remarks: [outside, ...tubeRemarks(question, kit.tubeLengthM)] }
}

function tubeRemarks(
  question: {
    readonly kit: ScannerKit | undefined
    readonly flowLpm: number
    readonly meter: MeterScale | null
  },
  lengthM: number,
): readonly SupplyRemark[] {
  const { flowLpm, kit, meter } = question
  const tube = { lengthM, flowLpm, boreMm: kit?.tubeBoreMm ?? TUBE_BORE_MM }
  const delayMinutes = tubeFillMinutes(tube)
  const dropKpa = tubePressureDropKpa(tube)
  const readsLowShare = uncompensatedReadsLowFactor(dropKpa) - 1
  return [
    ...(delayMinutes !== null && delayMinutes >= DELAY_SAID_MIN
      ? [supplyRemark('TUBE_DELAYS_GAS', { lengthM, delayMinutes })]
      : []),
    ...(meter?.kind === 'tube-uncompensated' && readsLowShare >= READS_LOW_SAID_MIN
      ? [supplyRemark('TUBE_MAKES_METER_READ_LOW', { lengthM, dropKpa, readsLowShare })]
      : []),
  ]
}
