// Dead space, breathing rate and size by age: published formulas and reference centiles.
import type { EvidenceRow } from '../evidence-row.ts'
import { across, formulaRows } from './build.ts'

const DEAD_SPACE = [
  ...formulaRows({
    id: 'dead-space',
    source: 'Numa1996',
    formula: 'dead-space-per-kg',
    condition: '3.28 − 0.56 ln(1 + age), awake, extrathoracic part included',
    quantity: 'volume',
    unit: 'mL/kg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'seen',
    cells: (
      [
        [0, 3.28, 3.5],
        [0.5, 3.05, 7.5],
        [1, 2.89, 10],
        [2, 2.66, 12],
        [5, 2.28, 18],
        [10, 1.94, 32],
      ] as const
    ).map(([ageYears, value, weightKg]) => [{ ageYears, weightKg }, value] as const),
  }),
  ...formulaRows({
    id: 'dead-space-intrathoracic',
    source: 'Numa1996',
    formula: 'intrathoracic-per-kg',
    condition: 'intrathoracic part, constant per kg in children',
    quantity: 'volume',
    unit: 'mL/kg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'seen',
    cells: [
      [{ ageYears: 0.5, weightKg: 7.5 }, 1.03],
      [{ ageYears: 6, weightKg: 20 }, 1.03],
    ],
  }),
]

const CENTILE_Z = [-1.645, 0, 1.645]
const RATES = formulaRows({
  id: 'rate',
  source: 'Rusconi1994',
  formula: 'rate-centile',
  condition: 'awake, 5th, 50th and 95th centile, equation seen in a secondary text',
  quantity: 'rate',
  unit: '/min',
  tolerance: 0.51,
  reason: 'printed-digits',
  known: 'secondary',
  cells: (
    [
      [1, [34, 47, 64]],
      [6, [30, 41, 56]],
      [12, [27, 36, 49]],
      [24, [22, 30, 39]],
      [36, [20, 27, 35]],
    ] as const
  ).flatMap(([ageMonths, values]) =>
    across(CENTILE_Z, values).map(([z, value]) => [{ ageMonths, z, asleep: 0 }, value] as const),
  ),
})

const P3_Z = -1.8808
const SIZES = [
  ...formulaRows({
    id: 'boy-weight',
    source: 'WHO2006',
    formula: 'boy-weight',
    condition: 'boys: −2 SD, 3rd centile, median, 97th centile, +2 SD',
    quantity: 'size',
    unit: 'kg',
    tolerance: 0.01,
    reason: 'printed-digits',
    known: 'seen',
    cells: [
      ...across([-2, P3_Z, 0, -P3_Z, 2], [7.74, 7.84, 9.65, 11.83, 11.99]).map(
        ([z, value]) => [{ ageMonths: 12, z }, value] as const,
      ),
      ...across([-2, 0, 2], [2.46, 3.35, 4.42]).map(
        ([z, value]) => [{ ageMonths: 0, z }, value] as const,
      ),
    ],
  }),
  ...formulaRows({
    id: 'girl-weight',
    source: 'WHO2006',
    formula: 'girl-weight',
    condition: 'girls: −2 SD, 3rd centile, median, 97th centile, +2 SD',
    quantity: 'size',
    unit: 'kg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'seen',
    cells: across([-2, P3_Z, 0, -P3_Z, 2], [7.04, 7.14, 8.95, 11.33, 11.51]).map(
      ([z, value]) => [{ ageMonths: 12, z }, value] as const,
    ),
  }),
  ...formulaRows({
    id: 'boy-length',
    source: 'WHO2006',
    formula: 'boy-height',
    condition: 'boys, median length',
    quantity: 'size',
    unit: 'cm',
    tolerance: 0.001,
    reason: 'printed-digits',
    known: 'seen',
    cells: [
      [{ ageMonths: 0, z: 0 }, 49.8842],
      [{ ageMonths: 1, z: 0 }, 54.6645],
      [{ ageMonths: 3, z: 0 }, 61.4013],
    ],
  }),
  ...formulaRows({
    id: 'predicted-weight-male',
    source: 'ARDSNet2000',
    formula: 'predicted-weight-male',
    condition: '50 + 0.91 (height − 152.4)',
    quantity: 'size',
    unit: 'kg',
    tolerance: 0.1,
    reason: 'printed-digits',
    known: 'secondary',
    cells: [
      [{ heightCm: 170 }, 66],
      [{ heightCm: 180 }, 75.1],
    ],
  }),
  ...formulaRows({
    id: 'predicted-weight-female',
    source: 'ARDSNet2000',
    formula: 'predicted-weight-female',
    condition: '45.5 + 0.91 (height − 152.4)',
    quantity: 'size',
    unit: 'kg',
    tolerance: 0.1,
    reason: 'printed-digits',
    known: 'secondary',
    cells: [
      [{ heightCm: 160 }, 52.4],
      [{ heightCm: 165 }, 57],
    ],
  }),
]

export const BODY_ROWS: readonly EvidenceRow[] = [...DEAD_SPACE, ...RATES, ...SIZES]
