// Pressure lost by gas along a smooth straight tube. Leaves out bends, joints, corrugation, star-shaped bores, water vapour and warming.
import { requireWithin } from '../errors.ts'
import { AIR_O2_FRACTION, STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { requireBarometricKpa } from './atmosphere.ts'

export interface TubeFlow {
  readonly lengthM: number
  readonly boreMm: number
  /** Dry litres at 20 °C and 101.325 kPa per minute, as meters show it. */
  readonly flowLpm: number
  readonly o2Fraction: number
  readonly barometricKpa: number
  /** Pressure above ambient at the far end. */
  readonly outletGaugeKpa?: number
}

/** Viscosity of dry gas at 20 °C, Pa·s (memory: handbook values 18.2 and 20.4 µPa·s). */
const AIR_VISCOSITY_PA_S = 18.2e-6
const O2_VISCOSITY_PA_S = 20.4e-6
/** Density of dry gas at 20 °C and 101.325 kPa, kg/m³ (derived: molar masses 28.96 and 32.00 g/mol, ideal gas). */
const AIR_DENSITY_KG_M3 = 1.204
const O2_DENSITY_KG_M3 = 1.33

/** Reynolds numbers where smooth tubes stop being laminar and are turbulent (common practice). */
export const LAMINAR_RE_MAX = 2300
export const TURBULENT_RE_MIN = 4000

const FLOW_LPM_MAX = 200
const LENGTH_M_MAX = 100
const BORE_MM_MIN = 0.5
const BORE_MM_MAX = 50

/**
 * Pressure at the near end minus pressure at the far end, kPa. Darcy–Weisbach; friction factor 64/Re while laminar (exact), 0.3164/Re^0.25
 * when turbulent [Blasius1913], in between a straight line from one to the other. The gas expands at constant temperature on its way:
 * p₁² = p₂² + 2·p₂·Δp, Δp as for gas of the far end's density. Valid 0–200 L/min, 0–100 m, 0.5–50 mm, else a DomainError.
 * Within 3 % of the smooth-tube law of Prandtl between Re 4 000 and 100 000 (src/physics/tube-flow.test.ts).
 */
export function tubePressureDropKpa(tube: TubeFlow): number {
  requireTube(tube)
  if (tube.flowLpm === 0 || tube.lengthM === 0) return 0
  const farKpa = tube.barometricKpa + (tube.outletGaugeKpa ?? 0)
  const boreM = tube.boreMm / MM_PER_M
  const areaM2 = (Math.PI / QUARTERS) * boreM ** 2
  const density = densityKgPerM3(tube.o2Fraction) * (farKpa / STANDARD_PRESSURE_KPA)
  const volumeM3PerS = (tube.flowLpm / LPM_PER_M3_S) * (STANDARD_PRESSURE_KPA / farKpa)
  const speed = volumeM3PerS / areaM2
  const re = reynolds(tube)
  const dynamicKpa = (density * speed ** 2) / 2 / PA_PER_KPA
  const dropKpa = frictionFactor(re) * (tube.lengthM / boreM) * dynamicKpa
  return Math.sqrt(farKpa ** 2 + 2 * farKpa * dropKpa) - farKpa
}

/** Reynolds number; the same along the tube, as mass flow and viscosity are. */
export function reynolds(tube: Pick<TubeFlow, 'boreMm' | 'flowLpm' | 'o2Fraction'>): number {
  const boreM = tube.boreMm / MM_PER_M
  const massKgPerS = densityKgPerM3(tube.o2Fraction) * (tube.flowLpm / LPM_PER_M3_S)
  return (QUARTERS * massKgPerS) / (Math.PI * boreM * viscosityPaS(tube.o2Fraction))
}

/** Darcy friction factor of a smooth tube. See tubePressureDropKpa. */
export function frictionFactor(re: number): number {
  if (re <= LAMINAR_RE_MAX) return LAMINAR_FACTOR / re
  if (re >= TURBULENT_RE_MIN) return turbulent(re)
  const share = (re - LAMINAR_RE_MAX) / (TURBULENT_RE_MIN - LAMINAR_RE_MAX)
  return (1 - share) * (LAMINAR_FACTOR / LAMINAR_RE_MAX) + share * turbulent(TURBULENT_RE_MIN)
}

/** Laminar: 64/Re, exact. Turbulent: coefficient and power of [Blasius1913]. */
const LAMINAR_FACTOR = 64
const BLASIUS_FACTOR = 0.3164
const BLASIUS_POWER = 0.25

const MM_PER_M = 1000
const LPM_PER_M3_S = 60_000
const PA_PER_KPA = 1000
const QUARTERS = 4

function turbulent(re: number): number {
  return BLASIUS_FACTOR / re ** BLASIUS_POWER
}

/** Linear between air and oxygen; the two differ by a tenth. */
function viscosityPaS(o2Fraction: number): number {
  return between(AIR_VISCOSITY_PA_S, O2_VISCOSITY_PA_S, o2Fraction)
}

function densityKgPerM3(o2Fraction: number): number {
  return between(AIR_DENSITY_KG_M3, O2_DENSITY_KG_M3, o2Fraction)
}

function between(air: number, oxygen: number, o2Fraction: number): number {
  const share = (o2Fraction - AIR_O2_FRACTION) / (1 - AIR_O2_FRACTION)
  return air + (oxygen - air) * share
}

function requireTube(tube: TubeFlow): void {
  requireBarometricKpa(tube.barometricKpa)
  const within = (
    path: keyof TubeFlow,
    code: 'SIZE_OUT_OF_RANGE' | 'FLOW_OUT_OF_RANGE',
    min: number,
    max: number,
    unit: string,
  ) => requireWithin({ code, path, value: tube[path] ?? 0, min, max, unit })
  within('lengthM', 'SIZE_OUT_OF_RANGE', 0, LENGTH_M_MAX, 'm')
  within('boreMm', 'SIZE_OUT_OF_RANGE', BORE_MM_MIN, BORE_MM_MAX, 'mm')
  within('flowLpm', 'FLOW_OUT_OF_RANGE', 0, FLOW_LPM_MAX, 'L/min')
  requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'o2Fraction',
    value: tube.o2Fraction,
    min: AIR_O2_FRACTION,
    max: 1,
  })
  requireWithin({
    code: 'PRESSURE_OUT_OF_RANGE',
    path: 'outletGaugeKpa',
    value: tube.outletGaugeKpa ?? 0,
    min: 0,
    max: 400,
    unit: 'kPa',
  })
}
