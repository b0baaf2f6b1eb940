// Design flows of an oxygen pipeline by area, and the hours that a manifold or a tank lasts. Formulas from memory and marked so; leaves out pressure loss in pipes.
import { requireWithin } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { usableContents } from './cylinder.ts'
import { gasFromLiquidL } from './liquid-oxygen.ts'
import type { BulkTank, Manifold } from './ward.ts'

export const PIPELINE_AREAS = [
  'ward',
  'resuscitation',
  'major-treatment',
  'theatre',
  'recovery',
  'critical-care',
  'neonatal',
  'mask-pressure',
] as const
export type PipelineArea = (typeof PIPELINE_AREAS)[number]

/** Design flow = first + (places − 1) × each of the rest. */
interface AreaRule extends Provenance {
  readonly firstLpm: number
  readonly eachMoreLpm: number
}

const MEMORY = { source: 'Htm2006', known: 'memory' } as const

/** Wards: 10 L/min, then 6 L/min for a quarter of the rest; others alike. From memory; the standard's oxygen rows were not seen. */
export const AREA_RULES: Readonly<Record<PipelineArea, AreaRule>> = {
  ward: { firstLpm: 10, eachMoreLpm: 6 / 4, ...MEMORY },
  resuscitation: { firstLpm: 100, eachMoreLpm: 6 / 4, ...MEMORY },
  'major-treatment': { firstLpm: 10, eachMoreLpm: 6 / 4, ...MEMORY },
  theatre: { firstLpm: 100, eachMoreLpm: 10, ...MEMORY },
  recovery: { firstLpm: 10, eachMoreLpm: 6, ...MEMORY },
  'critical-care': { firstLpm: 10, eachMoreLpm: (6 * 3) / 4, ...MEMORY },
  neonatal: { firstLpm: 10, eachMoreLpm: 6, ...MEMORY },
  'mask-pressure': { firstLpm: 75 * 0.75, eachMoreLpm: 75 * 0.75, ...MEMORY },
}

const PLACES_MAX = 1000

/** Design flow of an area, L/min. Valid 1–1000 places, else COUNT_OUT_OF_RANGE. Source: [Htm2006], from memory; 1, 4 and 6 ward beds
 *  give 10, 14.5 and 17.5 L/min (pipeline.test.ts). */
export function designFlowLpm(question: {
  readonly area: PipelineArea
  readonly places: number
}): number {
  places('places', question.places)
  const { firstLpm, eachMoreLpm } = AREA_RULES[question.area]
  return firstLpm + (question.places - 1) * eachMoreLpm
}

/** Several wards alike on one pipe: the first whole, half of each other, L/min. Valid 1–1000 wards, else COUNT_OUT_OF_RANGE.
 *  Source: [Htm2006], from memory; pipeline.test.ts. */
export function departmentFlowLpm(question: {
  readonly wardFlowLpm: number
  readonly wards: number
}): number {
  places('wards', question.wards)
  return question.wardFlowLpm * (1 + (question.wards - 1) / 2)
}

function places(path: string, value: number): void {
  requireWithin({ code: 'COUNT_OUT_OF_RANGE', path, value, min: 1, max: PLACES_MAX })
}

/** Hours that a manifold lasts: usable litres of all its cylinders over the draw; null where nothing is drawn. Valid as usableContents.
 *  Exact arithmetic [Stewart1991]; pipeline.test.ts. */
export function manifoldHours(question: {
  readonly manifold: Manifold
  readonly drawLpm: number
  readonly barometricKpa: number
  readonly temperatureC: number
}): number | null {
  const { manifold, drawLpm, barometricKpa, temperatureC } = question
  places('count', Math.max(1, manifold.count))
  const { waterVolumeL, gaugeKpa, leftGaugeKpa, count } = manifold
  const { usableL } = usableContents(
    { waterVolumeL, gaugeKpa, readAtC: temperatureC, isValveOpen: true },
    { barometricKpa, leftGaugeKpa },
  )
  return hours(usableL * count, drawLpm)
}

/** Hours that a tank lasts when what evaporates is drawn too, and when it is lost beside it. Valid as gasFromLiquidL. Exact; pipeline.test.ts. */
export function tankHours(question: { readonly tank: BulkTank; readonly drawLpm: number }): {
  readonly longestHours: number | null
  readonly shortestHours: number | null
} {
  const { tank, drawLpm } = question
  const gasL = gasFromLiquidL(tank.liquidL)
  const evaporationLpm = gasFromLiquidL(tank.evaporationLPerDay ?? 0) / MINUTES_PER_DAY
  return {
    longestHours: hours(gasL, Math.max(drawLpm, evaporationLpm)),
    shortestHours: hours(gasL, drawLpm + evaporationLpm),
  }
}

const MINUTES_PER_DAY = 1440
const MINUTES_PER_HOUR = 60

function hours(litres: number, lpm: number): number | null {
  return lpm === 0 ? null : litres / lpm / MINUTES_PER_HOUR
}
