// A long small-bore tube between flowmeter and patient: how late gas arrives, and how much pressure it costs. Leaves out kinks and joints.
import { requireWithin } from '../errors.ts'
import { tubePressureDropKpa } from '../physics/tube-flow.ts'

export interface LongTube {
  readonly lengthM: number
  /** Inner diameter; oxygen tubing about 5 mm (memory). */
  readonly boreMm?: number
  readonly flowLpm: number
}

/** One length of a tube that may be joined of several. */
export interface TubeLength {
  readonly lengthM: number
  readonly boreMm: number
}

/** Inner diameter of ordinary oxygen tubing, mm (memory). */
export const TUBE_BORE_MM = 5

/** Wider than this is a breathing hose and no tube for oxygen, mm (common practice). */
export const LONG_TUBE_BORE_MM_MAX = 10

const MM_PER_M = 1000
const L_PER_M3 = 1000

/** Minutes until gas set at the far end arrives: volume over flow. Valid 0–100 m, 2–10 mm, 0–100 L/min, else DomainError; infinite
 *  flow time is null where nothing flows. Exact. */
export function tubeFillMinutes(tube: LongTube): number | null {
  const { boreM } = checked(tube)
  const volumeL = (Math.PI / 4) * boreM * boreM * tube.lengthM * L_PER_M3
  return tube.flowLpm === 0 ? null : volumeL / tube.flowLpm
}

/** Pressure lost along the tubes joined one after the other, the meter's first, by oxygen at this flow, kPa: the law of physics/tube-flow.ts from the
 *  patient back. Each valid as tubeFillMinutes, else DomainError; more in coils. Within 1 % of Poiseuille's law while laminar (long-tube.test.ts). */
export function longTubeDropKpa(
  lengths: readonly TubeLength[],
  gas: { readonly flowLpm: number; readonly barometricKpa: number },
): number {
  return lengths.reduceRight((outletGaugeKpa, tube) => {
    checked({ ...tube, flowLpm: gas.flowLpm })
    return outletGaugeKpa + tubePressureDropKpa({ ...tube, ...gas, o2Fraction: 1, outletGaugeKpa })
  }, 0)
}

/** True over shown flow of a meter whose tube stands at ambient plus this pressure, against the same meter without it: √(1 + p/ambient).
 *  Valid 0 kPa and more, as longTubeDropKpa gives. Exact law of such meters; long-tube.test.ts. */
export function uncompensatedReadsLowFactor(tube: {
  readonly backPressureKpa: number
  readonly barometricKpa: number
}): number {
  return Math.sqrt(1 + tube.backPressureKpa / tube.barometricKpa)
}

function checked(tube: LongTube): { readonly boreM: number } {
  const boreMm = tube.boreMm ?? TUBE_BORE_MM
  const length = { path: 'tubeLengthM', value: tube.lengthM, min: 0, max: 100, unit: 'm' }
  const bore = { path: 'tubeBoreMm', value: boreMm, min: 2, max: LONG_TUBE_BORE_MM_MAX, unit: 'mm' }
  const flow = { path: 'flowLpm', value: tube.flowLpm, min: 0, max: 100, unit: 'L/min' }
  requireWithin({ ...length, code: 'SIZE_OUT_OF_RANGE' })
  requireWithin({ ...bore, code: 'SIZE_OUT_OF_RANGE' })
  requireWithin({ ...flow, code: 'FLOW_OUT_OF_RANGE' })
  return { boreM: boreMm / MM_PER_M }
}
