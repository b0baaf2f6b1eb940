// Cylinders, transfers, rooms and pipelines: worked figures from outside, each reckoned again by the product's own functions.
import type { EvidenceRow } from '../evidence-row.ts'
import type { FormulaTable } from './build.ts'
import { formulaRows } from './build.ts'

/** Rows whose tolerance is a share of each value, and at least half of the last digit printed. */
function relativeRows(
  table: Omit<FormulaTable, 'tolerance'> & { readonly share: number; readonly halfDigit?: number },
): readonly EvidenceRow[] {
  const { share, halfDigit = 0, cells, ...rest } = table
  return cells.flatMap(([given, value]) =>
    formulaRows({
      ...rest,
      tolerance: Math.max(halfDigit, share * value),
      cells: [[given, value]],
    }),
  )
}

/** bar gauge, Z and L/L at 15 °C, Z and L/L at 20 °C. */
const CONTENTS: readonly (readonly [number, number, number, number, number])[] = [
  [10, 0.9918, 10.95, 0.9925, 10.76],
  [20, 0.9847, 21.05, 0.9859, 20.66],
  [50, 0.9652, 52.12, 0.9681, 51.08],
  [100, 0.9407, 105.9, 0.9462, 103.49],
  [137, 0.9307, 146.24, 0.9375, 142.7],
  [150, 0.929, 160.31, 0.9362, 156.37],
  [200, 0.9313, 212.85, 0.9393, 207.45],
  [230, 0.9393, 242.54, 0.9472, 236.41],
  [300, 0.9738, 304.83, 0.9808, 297.49],
]

const STATE = [
  ...relativeRows({
    id: 'oxygen-contents',
    source: 'Stewart1991',
    formula: 'oxygen-contents',
    condition: 'litres at 15 °C in each litre of water volume; a second implementation; 0.1 %',
    quantity: 'content',
    unit: '1',
    share: 0.001,
    reason: 'printed-digits',
    known: 'derived',
    cells: CONTENTS.flatMap(([bar, , at15, , at20]) => [
      [{ bar, atFillingC: 15 }, at15] as const,
      [{ bar, atFillingC: 20 }, at20] as const,
    ]),
  }),
  ...formulaRows({
    id: 'oxygen-compressibility',
    source: 'Stewart1991',
    formula: 'oxygen-compressibility',
    condition: 'compressibility, a second implementation',
    quantity: 'ratio',
    unit: '1',
    tolerance: 1e-4,
    reason: 'printed-digits',
    known: 'derived',
    cells: CONTENTS.flatMap(([bar, at15, , at20]) => [
      [{ bar, atFillingC: 15 }, at15] as const,
      [{ bar, atFillingC: 20 }, at20] as const,
    ]),
  }),
  ...relativeRows({
    id: 'gauge-at-temperature',
    source: 'Stewart1991',
    formula: 'gauge-at-temperature',
    condition: 'what a gauge shows of the same filling; 30 and 40 °C beyond the fit; 0.2 %',
    quantity: 'gas-pressure',
    unit: 'bar',
    share: 0.002,
    reason: 'printed-digits',
    known: 'derived',
    cells: (
      [
        [137, 15, 0, 126.9],
        [137, 15, 10, 133.6],
        [137, 15, 20, 140.4],
        [137, 15, 30, 147.1],
        [137, 15, 40, 153.8],
        [200, 20, -10, 168.1],
        [200, 20, 0, 178.8],
        [200, 20, 15, 194.7],
        [200, 20, 30, 210.6],
        [200, 20, 40, 221.1],
      ] as const
    ).map(([bar, atFillingC, atC, value]) => [{ bar, atFillingC, atC }, value] as const),
  }),
  ...relativeRows({
    id: 'cylinder-contents',
    source: 'Stewart1991',
    formula: 'cylinder-contents',
    condition:
      'whole cylinders at 15 °C, by a second implementation; 0.2 %, or half a litre as printed',
    quantity: 'volume',
    unit: 'L',
    share: 0.002,
    halfDigit: 0.5,
    reason: 'printed-digits',
    known: 'derived',
    cells: (
      [
        [1.2, 137, 175],
        [2.32, 137, 339],
        [4.68, 137, 684],
        [9.43, 137, 1379],
        [23.6, 137, 3451],
        [47.2, 137, 6903],
        [2, 230, 485],
        [10, 230, 2425],
        [2, 200, 426],
        [3, 200, 639],
        [5, 200, 1064],
        [10, 200, 2128],
        [20, 200, 4257],
        [50, 200, 10_642],
        [50, 150, 8016],
      ] as const
    ).map(([waterL, bar, value]) => [{ waterL, bar }, value] as const),
  }),
  ...formulaRows({
    id: 'gas-from-liquid',
    source: 'Stewart1991',
    formula: 'gas-from-liquid',
    condition: 'litres of gas from a litre of liquid at its boiling point',
    quantity: 'factor',
    unit: '1',
    tolerance: 0.5,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ atC: 0 }, 798.6],
      [{ atC: 15 }, 842.6],
      [{ atC: 20 }, 857.3],
      [{ atC: 21.1 }, 860.5],
    ],
  }),
]

const TIMES = [
  ...relativeRows({
    id: 'cylinder-minutes',
    source: 'Stewart1991',
    formula: 'cylinder-minutes',
    condition: 'worked examples with the real gas; 0.3 %',
    quantity: 'duration',
    unit: 'min',
    share: 0.003,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ waterL: 2, bar: 137, leftBar: 14, flowLpm: 10 }, 26.3],
      [{ waterL: 10, bar: 150, leftBar: 10, flowLpm: 5 }, 298.7],
    ],
  }),
  ...formulaRows({
    id: 'litres-per-psi',
    source: 'Stewart1991',
    formula: 'litres-per-psi',
    condition: 'litres for each psi from 4.68 L of water volume at 2000 psi',
    quantity: 'factor',
    unit: '1',
    tolerance: 0.005,
    reason: 'printed-digits',
    known: 'derived',
    cells: [[{ waterL: 4.68, psi: 2000 }, 0.34]],
  }),
  ...formulaRows({
    id: 'handbook-minutes',
    source: null,
    formula: 'handbook-minutes',
    condition:
      'American rule (gauge − reserve) × factor / flow, as taught to ambulance crews; third row has no reserve',
    quantity: 'duration',
    unit: 'min',
    tolerance: 0.01,
    reason: 'exact-arithmetic',
    known: 'common-practice',
    cells: [
      [{ psi: 2000, reservePsi: 200, factor: 0.28, flowLpm: 2 }, 252],
      [{ psi: 2200, reservePsi: 200, factor: 0.28, flowLpm: 10 }, 56],
      [{ psi: 500, reservePsi: 0, factor: 1.56, flowLpm: 6 }, 130],
      [{ psi: 500, reservePsi: 200, factor: 1.56, flowLpm: 6 }, 78],
    ],
  }),
  ...formulaRows({
    id: 'rule-of-thumb-minutes',
    source: null,
    formula: 'rule-of-thumb-minutes',
    condition: 'water volume × bar over flow, the metric rule of thumb',
    quantity: 'duration',
    unit: 'min',
    tolerance: 0.01,
    reason: 'exact-arithmetic',
    known: 'common-practice',
    cells: [
      [{ waterL: 2, bar: 137, leftBar: 14, flowLpm: 10 }, 24.6],
      [{ waterL: 10, bar: 150, leftBar: 10, flowLpm: 5 }, 280],
    ],
  }),
  ...formulaRows({
    id: 'transfer-need',
    source: null,
    formula: 'transfer-need',
    condition: 'twice flow × time, as taught for transfers; the second is a machine of 4.1 L/min',
    quantity: 'volume',
    unit: 'L',
    tolerance: 0.01,
    reason: 'exact-arithmetic',
    known: 'common-practice',
    cells: [
      [{ minutes: 16, drawLpm: 10, factor: 2, extraMinutes: 0 }, 320],
      [{ minutes: 60, drawLpm: 4.1, factor: 2, extraMinutes: 0 }, 492],
    ],
  }),
]

const ROOMS = [
  ...formulaRows({
    id: 'room-percent',
    source: null,
    formula: 'room-percent',
    condition: 'steady oxygen share of a well-mixed room, mass balance',
    quantity: 'opening',
    unit: '%',
    tolerance: 0.06,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ volumeM3: 30, changes: 6, oxygenLpm: 15 }, 21.34],
      [{ volumeM3: 30, changes: 6, oxygenLpm: 60 }, 22.5],
      [{ volumeM3: 30, changes: 1, oxygenLpm: 60 }, 29.4],
      [{ volumeM3: 180, changes: 2, oxygenLpm: 360 }, 25.4],
    ],
  }),
  ...formulaRows({
    id: 'room-minutes',
    source: null,
    formula: 'room-minutes',
    condition: 'time constant of a well-mixed room, mass balance',
    quantity: 'duration',
    unit: 'min',
    tolerance: 0.5,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ volumeM3: 30, changes: 6, oxygenLpm: 60 }, 9.8],
      [{ volumeM3: 30, changes: 1, oxygenLpm: 60 }, 54],
    ],
  }),
  ...relativeRows({
    id: 'outside-air',
    source: null,
    formula: 'outside-air',
    condition: 'outside air in m³/h that holds a limit, mass balance; 1 %',
    quantity: 'flow',
    unit: 'm³/h',
    share: 0.01,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ oxygenLpm: 10, limit: 0.235 }, 18],
      [{ oxygenLpm: 60, limit: 0.235 }, 108],
      [{ oxygenLpm: 600, limit: 0.235 }, 1080],
      [{ oxygenLpm: 1, limit: 0.25 }, 1.11],
      [{ oxygenLpm: 1, limit: 0.23 }, 2.25],
    ],
  }),
]

/** From memory, so beside ours and never a verdict: the standard's oxygen rows were not seen. */
const PIPELINES = formulaRows({
  id: 'pipeline-design',
  source: 'Htm2006',
  formula: 'pipeline-design',
  kind: 'model',
  use: 'context',
  condition: 'design flow of 1, 4 and 6 ward beds, formula from memory',
  quantity: 'flow',
  unit: 'L/min',
  tolerance: 0.01,
  reason: 'exact-arithmetic',
  known: 'memory',
  cells: [
    [{ area: 0, places: 1 }, 10],
    [{ area: 0, places: 4 }, 14.5],
    [{ area: 0, places: 6 }, 17.5],
  ],
})

export const SUPPLY_ROWS: readonly EvidenceRow[] = [...STATE, ...TIMES, ...ROOMS, ...PIPELINES]
