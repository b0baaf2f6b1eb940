// Room air that open masks swap with the pocket: form and numbers. Fit changes the exchange, never the result.
import type { FitId } from '../family-id.ts'
import type { RoomExchange } from '../interface-family.ts'

/**
 * Exchange flow = fit × (base + k × device flow), L/min.
 * k: a free round jet draws in 0.32 x/d − 1 times its own flow (Ricou & Spalding 1961, from memory); over about four nozzle widths to
 * the face that is 0.28. base: calibrated on the simple mask (scripts/calibrate.ts). A constant ratio cannot be right at both ends:
 * at 5–8 L/min the base rules (ratio above 1), at flush flow the jet term (ratio about 0.4).
 */
export const JET_SHARE = 0.28

/** Ordinary wear is `gentle`. Taped tight still has its ports; a surgical mask below keeps part of the gas from the face. */
export const FIT_FACTOR: Readonly<Record<FitId, number>> = {
  tight: 0.5,
  gentle: 1,
  loose: 1.8,
  'over-surgical-mask': 2.2,
}

/** Share of the adult exchange by area of ports and face (two-thirds power of gas space), so that a small mask is not a leaky one. */
export function exchangeScale(pocketL: number, adultPocketL = 0.15): number {
  return (pocketL / adultPocketL) ** (2 / 3)
}

export function maskExchange(baseLpm: number, logSd: number): RoomExchange {
  return {
    baseLpm: {
      spread: { kind: 'lognormal', median: baseLpm, logSd, min: baseLpm / 6, max: baseLpm * 6 },
      known: 'derived',
    },
    perJetFlow: {
      spread: { kind: 'triangular', min: 0.1, mode: JET_SHARE, max: 0.5 },
      known: 'memory',
      source: 'RicouSpalding1961',
    },
    fitFactor: FIT_FACTOR,
  }
}
