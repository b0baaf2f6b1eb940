// A long small-bore tube between flowmeter and patient: how late gas arrives, and how much pressure it costs. Leaves out kinks and joints.
import { requireWithin } from '../errors.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { lpsFromLpm } from '../units/flow.ts'

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
const PA_PER_KPA = 1000
/** Oxygen at 20 °C and 101.325 kPa: density kg/m³, viscosity Pa·s (common practice: tables of physical constants). */
const DENSITY_KG_PER_M3 = 1.33
const VISCOSITY_PA_S = 2.04e-5
/** Pipe flow: laminar 64/Re below, Blasius 0.316/Re^0.25 above (memory: textbook). */
const LAMINAR_RE_MAX = 2300

/** Minutes until gas set at the far end arrives: volume over flow. Valid 0–100 m, 2–10 mm, 0–100 L/min, else DomainError; infinite
 *  flow time is null where nothing flows. Exact. */
export function tubeFillMinutes(tube: LongTube): number | null {
  const { boreM } = checked(tube)
  const volumeL = (Math.PI / 4) * boreM * boreM * tube.lengthM * L_PER_M3
  return tube.flowLpm === 0 ? null : volumeL / tube.flowLpm
}

/** Pressure lost along a smooth straight tube, kPa: f·(L/D)·ρv²/2. Valid as tubeFillMinutes. Textbook law from memory; within 10 % for
 *  straight tubes, more in coils (long-tube.test.ts: its laminar limit is Poiseuille's law). */
export function tubePressureDropKpa(tube: LongTube): number {
  const { boreM } = checked(tube)
  if (tube.flowLpm === 0 || tube.lengthM === 0) return 0
  const speed = lpsFromLpm(tube.flowLpm) / L_PER_M3 / ((Math.PI / 4) * boreM * boreM)
  const reynolds = (DENSITY_KG_PER_M3 * speed * boreM) / VISCOSITY_PA_S
  const friction = reynolds < LAMINAR_RE_MAX ? 64 / reynolds : 0.316 / reynolds ** 0.25
  const dynamicPa = (DENSITY_KG_PER_M3 * speed * speed) / 2
  return (friction * (tube.lengthM / boreM) * dynamicPa) / PA_PER_KPA
}

/** True over shown flow of a meter whose tube stands at ambient plus this pressure: √(1 + p/101.325). Valid 0 kPa and more,
 *  as tubePressureDropKpa gives. Exact law of such meters; long-tube.test.ts. */
export function uncompensatedReadsLowFactor(backPressureKpa: number): number {
  return Math.sqrt(1 + backPressureKpa / STANDARD_PRESSURE_KPA)
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
