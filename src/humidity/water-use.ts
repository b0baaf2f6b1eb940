// Water a vessel gives off and when it wants filling, and condensate with where it gathers. Leaves out the clock.
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'
import { limitsOf, medianOf } from '../units/spread.ts'
import type { HumidityBand } from './band.ts'
import { saturatedMgPerLBtps } from './body-litre.ts'
import type { Stage, VesselStage } from './water-path.ts'

/** One millilitre of water weighs a gram. */
const MG_PER_ML = 1000
const MIN_PER_HOUR = 60

export function mlPerHour(mgPerMin: number): number {
  return (mgPerMin * MIN_PER_HOUR) / MG_PER_ML
}

/** Water for dry gas saturated at a temperature, mL/h: content × flow. At 37 °C 43.9 mg per body litre: 632 mL a day for
 *  10 L/min (water-use.test.ts). `heldMgPerLBtps`: water the gas brings along. */
export function saturatingMlPerHour(options: {
  readonly flowLpmBtps: number
  readonly temperatureC: number
  readonly barometricKpa: number
  readonly heldMgPerLBtps?: number
}): number {
  const needed = saturatedMgPerLBtps(options) - (options.heldMgPerLBtps ?? 0)
  return mlPerHour(Math.max(0, needed) * options.flowLpmBtps)
}

/** Water in a full vessel where its row gives none, mL. */
const USUAL_WATER_ML: Readonly<Record<VesselStage['kind'], Spread & { readonly kind: 'uniform' }>> =
  {
    bubble: { kind: 'uniform', min: 250, max: 500 },
    'pass-over': { kind: 'uniform', min: 150, max: 400 },
    'heated-chamber': { kind: 'uniform', min: 150, max: 1000 },
    nebuliser: { kind: 'uniform', min: 350, max: 1000 },
  }

export interface Refill extends Provenance {
  readonly waterMl: HumidityBand
  /** Null where the vessel gives off nothing. */
  readonly afterHours: HumidityBand | null
  readonly isAssumedVolume: boolean
}

/** Hours until a full vessel is empty: volume over use, the ends crossed. The caller keeps a reserve. */
export function refillOf(stage: VesselStage, useMlPerHour: HumidityBand): Refill {
  const waterMl = waterIn(stage)
  const isAssumedVolume = stage.waterMl === null
  if (!(useMlPerHour.low > 0)) {
    const middle = useMlPerHour.middle
    if (!(middle > 0)) return { waterMl, afterHours: null, isAssumedVolume, known: KNOWN }
  }
  const lowUse = useMlPerHour.low > 0 ? useMlPerHour.low : useMlPerHour.middle
  const afterHours = {
    low: waterMl.low / useMlPerHour.high,
    middle: waterMl.middle / useMlPerHour.middle,
    high: waterMl.high / lowUse,
  }
  return { waterMl, afterHours, isAssumedVolume, known: KNOWN }
}

const KNOWN = 'common-practice'

function waterIn(stage: VesselStage): HumidityBand {
  const { waterMl } = stage
  if (waterMl !== null) return { low: waterMl, middle: waterMl, high: waterMl }
  const spread = USUAL_WATER_ML[stage.kind]
  const { min, max } = limitsOf(spread)
  return { low: min, middle: medianOf(spread), high: max }
}

/** Where water that drops out gathers: the trap of that hose, else its lowest loop, whence it must be drained. */
export type CondensatePlace = 'water-trap' | 'lowest-loop'

export function placeOf(hose: Extract<Stage, { readonly kind: 'hose' }>): CondensatePlace {
  return hose.hasWaterTrap ? 'water-trap' : 'lowest-loop'
}
