// Masks with a reservoir bag: non-rebreather (valved) and partial rebreather (no inlet valve).
import type { FitId } from '../family-id.ts'
import type { InterfaceFamily, RatedFlow, SourcedSpread } from '../interface-family.ts'
import { maskExchange } from './exchange.ts'
import { maskSpace, sizeOf } from './sizes.ts'

/** Adult reservoir 0.6–1.0 L (memory). */
const BAG: SourcedSpread = {
  spread: { kind: 'triangular', min: 0.6, mode: 0.75, max: 1 },
  known: 'memory',
}

/**
 * Conductance of the seal over that of the bag's valve. Calibrated on Yorozu2014: tight at 6 and 15 L/min; loose and gentle at
 * 15 L/min (scripts/calibrate.ts prints before and after).
 */
export const LEAK_RATIO: Readonly<Record<FitId, SourcedSpread>> = {
  tight: leak(0.05),
  gentle: leak(0.42),
  loose: leak(4),
  'over-surgical-mask': leak(4),
}

/** Share of the flow that slips past a slack bag while supply exceeds demand. Calibrated with the leak ratio. */
export const FORWARD_LOSS: SourcedSpread = {
  spread: { kind: 'triangular', min: 0.45, mode: 0.68, max: 0.9 },
  known: 'derived',
  source: 'Yorozu2014',
}

/** Exchange through ports and seal of a valved mask, L/min, tight fit. Calibrated with the leak ratio. */
export const RESERVOIR_BASE_LPM = 1.7

/** A loose mask also swaps gas at its rim. Calibrated on Yorozu2014, loose at 15 L/min. */
export const RESERVOIR_FIT_FACTOR: Readonly<Record<FitId, number>> = {
  tight: 1,
  gentle: 1,
  loose: 3.5,
  'over-surgical-mask': 4,
}

function leak(median: number): SourcedSpread {
  return {
    spread: { kind: 'lognormal', median, logSd: 0.5, min: median / 8, max: median * 8 },
    known: 'derived',
    source: 'Yorozu2014',
  }
}

const EXCHANGE = {
  ...maskExchange(RESERVOIR_BASE_LPM, 0.5),
  // The jet blows into the bag's neck, not across open ports.
  perJetFlow: { spread: { kind: 'fixed', value: 0 }, known: 'derived' },
  fitFactor: RESERVOIR_FIT_FACTOR,
} as const

function sizes(adult: RatedFlow) {
  return [
    sizeOf('infant', { minLpm: 6, maxLpm: 10, known: 'memory' }, maskSpace('infant')),
    sizeOf('child', { minLpm: 8, maxLpm: 15, known: 'memory' }, maskSpace('child')),
    sizeOf('adult', adult, maskSpace('adult')),
  ]
}

export const NON_REBREATHER_MASK: InterfaceFamily = {
  id: 'non-rebreather-mask',
  opening: 'face',
  feeds: ['small-bore'],
  isCloseFitting: true,
  entrainsAir: 'no',
  sizes: sizes({ minLpm: 10, maxLpm: 15, known: 'seen', source: 'ODriscoll2017' }),
  behaviour: {
    kind: 'reservoir',
    exchange: EXCHANGE,
    bagL: BAG,
    leakRatio: LEAK_RATIO,
    forwardLoss: FORWARD_LOSS,
    hasInletValve: true,
    expiredShareIntoBag: 0,
  },
  isChecked: true,
  modelSd: { value: 0.08, known: 'common-practice' },
  printed: {
    kind: 'table',
    rows: [
      { flowLpm: 10, low: 0.6, high: 0.8 },
      { flowLpm: 15, low: 0.6, high: 0.9 },
    ],
    known: 'secondary',
    source: 'ODriscoll2017',
  },
}

export const PARTIAL_REBREATHER_MASK: InterfaceFamily = {
  id: 'partial-rebreather-mask',
  opening: 'face',
  feeds: ['small-bore'],
  isCloseFitting: true,
  entrainsAir: 'no',
  sizes: sizes({ minLpm: 6, maxLpm: 10, known: 'memory', source: 'Aarc2002' }),
  behaviour: {
    kind: 'reservoir',
    // Open ports instead of valves: exchange as in the simple mask.
    exchange: maskExchange(2.5, 0.5),
    bagL: BAG,
    leakRatio: LEAK_RATIO,
    // No inlet valve, so nothing slips past: the flow fills the bag until it is full.
    forwardLoss: { spread: { kind: 'fixed', value: 0 }, known: 'derived' },
    hasInletValve: false,
    // About the first third of what is breathed out enters the bag (common practice).
    expiredShareIntoBag: 1 / 3,
  },
  isChecked: false,
  modelSd: { value: 0.12, known: 'common-practice' },
  printed: {
    kind: 'table',
    rows: [
      { flowLpm: 6, low: 0.4, high: 0.6 },
      { flowLpm: 10, low: 0.5, high: 0.7 },
    ],
    known: 'memory',
    source: 'Aarc2002',
  },
}
