// Mean oxygen fraction of a well-mixed ventilated room over time. Leaves out what is near the mask, under bedding and in curtains, where it is higher.
import { requireWithin } from '../errors.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'

export interface EnrichedRoom {
  readonly volumeM3: number
  readonly airChangesPerHour: number
  /** All oxygen set free in it, uptake by people ignored: the safe side. */
  readonly oxygenLpm: number
  /** Of the gas set free; 1 where absent. */
  readonly gasO2Fraction?: number
}

/** Oxygen fraction above which a room counts as enriched; definitions run from 0.21 to 0.25. Source: NFPA 99, secondary. */
export const ENRICHED_O2_FRACTION = 0.235

const M3_PER_L = 0.001
const MINUTES_PER_HOUR = 60

export interface RoomAnswer {
  readonly steadyO2Fraction: number
  /** Null: nothing flows in. */
  readonly timeConstantMin: number | null
  /** Null: never reached. */
  readonly minutesToLimit: number | null
  /** Outside air and air changes that just hold the limit. */
  readonly outsideAirNeededM3PerH: number
  readonly airChangesNeededPerHour: number
}

/** V·dF/dt = A(F0 − F) + q(f − F). Valid 1–100 000 m³, 0–200 changes/h, 0–10 000 L/min, else DomainError. Exact for perfect
 *  mixing; reference figures in cylinder.test.ts to their rounding. */
export function roomEnrichment(
  room: EnrichedRoom & { readonly limitO2Fraction?: number },
): RoomAnswer {
  const { airM3PerMin, gasM3PerMin, gasO2Fraction } = flowsOf(room)
  const limit = room.limitO2Fraction ?? ENRICHED_O2_FRACTION
  within('FRACTION_OUT_OF_RANGE', 'limitO2Fraction', limit, AIR_O2_FRACTION + 0.001, 1)
  const outM3PerMin = airM3PerMin + gasM3PerMin
  const steady =
    outM3PerMin === 0
      ? AIR_O2_FRACTION
      : (airM3PerMin * AIR_O2_FRACTION + gasM3PerMin * gasO2Fraction) / outM3PerMin
  const timeConstantMin = outM3PerMin === 0 ? null : room.volumeM3 / outM3PerMin
  const needed =
    (Math.max(0, gasM3PerMin * (gasO2Fraction - limit)) / (limit - AIR_O2_FRACTION)) *
    MINUTES_PER_HOUR
  return {
    steadyO2Fraction: steady,
    timeConstantMin,
    minutesToLimit:
      timeConstantMin === null || steady <= limit
        ? null
        : timeConstantMin * Math.log((steady - AIR_O2_FRACTION) / (steady - limit)),
    outsideAirNeededM3PerH: needed,
    airChangesNeededPerHour: needed / room.volumeM3,
  }
}

/** Mean fraction after some minutes from plain air: F(t) = F0 + (F∞ − F0)(1 − e^(−t/τ)). Valid as roomEnrichment, minutes ≥ 0, else
 *  DURATION_OUT_OF_RANGE. Exact for perfect mixing; cylinder.test.ts. */
export function roomO2Fraction(room: EnrichedRoom, minutes: number): number {
  within('DURATION_OUT_OF_RANGE', 'minutes', minutes, 0, Number.MAX_VALUE)
  const { steadyO2Fraction, timeConstantMin } = roomEnrichment(room)
  if (timeConstantMin === null) return AIR_O2_FRACTION
  const risen = 1 - Math.exp(-minutes / timeConstantMin)
  return AIR_O2_FRACTION + (steadyO2Fraction - AIR_O2_FRACTION) * risen
}

function flowsOf(room: EnrichedRoom): {
  readonly airM3PerMin: number
  readonly gasM3PerMin: number
  readonly gasO2Fraction: number
} {
  const gasO2Fraction = room.gasO2Fraction ?? 1
  within('VOLUME_OUT_OF_RANGE', 'volumeM3', room.volumeM3, 1, 100_000)
  within('RATE_OUT_OF_RANGE', 'airChangesPerHour', room.airChangesPerHour, 0, 200)
  within('FLOW_OUT_OF_RANGE', 'oxygenLpm', room.oxygenLpm, 0, 10_000)
  within('FRACTION_OUT_OF_RANGE', 'gasO2Fraction', gasO2Fraction, AIR_O2_FRACTION, 1)
  return {
    airM3PerMin: (room.airChangesPerHour * room.volumeM3) / MINUTES_PER_HOUR,
    gasM3PerMin: room.oxygenLpm * M3_PER_L,
    gasO2Fraction,
  }
}

function within(
  code:
    | 'VOLUME_OUT_OF_RANGE'
    | 'RATE_OUT_OF_RANGE'
    | 'FLOW_OUT_OF_RANGE'
    | 'FRACTION_OUT_OF_RANGE'
    | 'DURATION_OUT_OF_RANGE',
  path: string,
  value: number,
  min: number,
  max: number,
): void {
  requireWithin({ code, path, value, min, max })
}
