// Up to two pinned set-ups, kept while the case changes: they are questions, answered anew for each case. Leaves out drawing.
import type { RankedSetUp } from '../../planning/plan-types.ts'

export interface Pin {
  readonly row: RankedSetUp
  readonly ratePerMin: number | null
}

export interface Pins {
  readonly before: Pin | null
  readonly after: Pin | null
}

export const NO_PINS: Pins = { before: null, after: null }

/** The first pin is before, the second after; a third takes the place of the second. */
export function withPin(pins: Pins, pin: Pin): Pins {
  return pins.before === null ? { before: pin, after: null } : { before: pins.before, after: pin }
}
