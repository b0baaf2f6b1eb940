// Humidifiers on benches, and the arithmetic of water use and condensate. Leaves out saturation, which stands in gas-physics.
import type { EvidenceRow } from '../evidence-row.ts'
import { formulaRows } from './build.ts'

/** Half of saturation at 37 °C, mg/L. */
const HALF_OF_BODY_MG_PER_L = 21.95

const BUBBLE = {
  source: 'BubbleBench1982',
  unit: 'mg/L',
  known: 'seen',
  kind: 'model',
  quantity: 'humidity',
} as const

const BUBBLE_AT_2 = formulaRows({
  ...BUBBLE,
  id: 'bubble-output',
  formula: 'bubble-humidity',
  condition: 'unheated bubble bottles at 26 °C: middle of four models, 17.2–20.4',
  tolerance: 1.6,
  reason: 'published-range',
  use: 'calibrate',
  cells: [[{ flowLpm: 2, roomC: 26 }, 18.8]],
})

const BUBBLE_BOUND: readonly EvidenceRow[] = formulaRows({
  ...BUBBLE,
  id: 'bubble-below-half',
  formula: 'bubble-humidity',
  condition: 'unheated bubble bottles at 26 °C: never half of saturation at 37 °C',
  tolerance: 0.1,
  reason: 'printed-digits',
  cells: [4, 6, 8].map((flowLpm) => [{ flowLpm, roomC: 26 }, HALF_OF_BODY_MG_PER_L] as const),
}).map((row) => ({ ...row, compare: 'at-most' }))

const BUBBLE_FALLS: readonly EvidenceRow[] = formulaRows({
  ...BUBBLE,
  id: 'bubble-falls',
  formula: 'bubble-humidity-change',
  condition: 'unheated bubble bottles at 26 °C: output falls as flow rises',
  tolerance: 0.5,
  reason: 'direction-only',
  use: 'trend',
  cells: [
    [{ fromLpm: 2, toLpm: 5, roomC: 26 }, -1],
    [{ fromLpm: 2, toLpm: 8, roomC: 26 }, -1],
  ],
}).map((row) => ({ ...row, compare: 'sign' }))

const SECOND_BENCH = [
  ...formulaRows({
    ...BUBBLE,
    id: 'bubble-mean',
    source: 'Chan2009',
    formula: 'bubble-humidity-mean',
    condition: 'bubble bottle at 26 °C, mean over 3–15 L/min, 16 ± 2',
    tolerance: 2,
    reason: 'published-sd',
    cells: [[{ roomC: 26 }, 16]],
  }),
  // 30 mg/L is saturation at 30 °C; the setting of the heater is not stated, so the row cannot judge.
  ...formulaRows({
    ...BUBBLE,
    id: 'chamber-output',
    source: 'Chan2009',
    formula: 'chamber-humidity',
    condition: 'heated humidifier, 30 ± 1 whatever the flow; its setting is not stated',
    tolerance: 1,
    reason: 'published-sd',
    use: 'calibrate',
    cells: [3, 15].map((flowLpm) => [{ flowLpm, outletC: 30 }, 30] as const),
  }),
]

const EXCHANGERS = formulaRows({
  id: 'exchangers-above',
  source: 'ExchangerBench2025',
  formula: 'exchangers-above-percent',
  condition: 'share of 71 exchangers that gave more than 28 mg/L',
  quantity: 'humidity',
  unit: '%',
  tolerance: 2,
  reason: 'printed-digits',
  known: 'seen',
  kind: 'model',
  use: 'calibrate',
  cells: [[{ mgPerL: 28 }, 34]],
})

const WATER_USE = formulaRows({
  id: 'water-use',
  source: null,
  formula: 'water-per-day',
  condition: 'water for gas saturated at 37 °C, a day, flow at body conditions',
  quantity: 'volume',
  unit: 'mL',
  tolerance: 2,
  reason: 'exact-arithmetic',
  known: 'derived',
  cells: [
    ...[10, 20, 30, 40, 50, 60].map(
      (flowLpmBtps) =>
        [{ flowLpmBtps, temperatureC: 37, heldMgPerL: 0 }, flowLpmBtps * 63.2] as const,
    ),
    [{ flowLpmBtps: 30, temperatureC: 37, heldMgPerL: 10 }, 1464],
  ],
})

const CONDENSATE = formulaRows({
  id: 'condensate-volume',
  source: null,
  formula: 'condensate-per-hour',
  condition: '37 °C saturated gas at 30 L/min cooling in a hose, an hour',
  quantity: 'volume',
  unit: 'mL',
  tolerance: 0.7,
  reason: 'printed-digits',
  known: 'derived',
  cells: (
    [
      [34, 11],
      [31, 21],
      [28, 30],
      [25, 37],
      [22, 44],
    ] as const
  ).map(([toC, value]) => [{ fromC: 37, toC, flowLpm: 30 }, value] as const),
})

export const HUMIDITY_ROWS: readonly EvidenceRow[] = [
  ...BUBBLE_AT_2,
  ...BUBBLE_BOUND,
  ...BUBBLE_FALLS,
  ...SECOND_BENCH,
  ...EXCHANGERS,
  ...WATER_USE,
  ...CONDENSATE,
]
