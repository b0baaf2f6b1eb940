// Nasal high flow as measured: fraction against the ratio of flow to demand, airway pressure, upper-airway clearance.
import { breathOf } from '../breathings.ts'
import type { BreathPattern } from '../../delivery/breath.ts'
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { engineRow, formulaRows, ONE_CONDITION } from './build.ts'

/** Half-sine breath with the given peak, at a given rate and duty. */
function peakBreath(peakLpm: number, ratePerMin: number): BreathPattern {
  const dutyFraction = 0.4
  const inspirationS = (60 / ratePerMin) * dutyFraction
  const tidalVolumeL = (2 / Math.PI) * (peakLpm / 60) * inspirationS
  return breathOf({ tidalVolumeL, ratePerMin, dutyFraction, timeConstantS: 0.4 })
}

function stream(flowLpm: number, breath: BreathPattern): EngineCase {
  return {
    family: 'nasal-high-flow',
    flowLpm,
    setO2Fraction: 1,
    breath,
    gas: ONE_CONDITION,
    isBench: true,
  }
}

const PATTERNS = [
  [28, 15],
  [34, 25],
  [40, 30],
] as const

/** Flow 1.45 times the demand: two benches agree on more than 0.9. Between 1 and 1.45 they disagree: shown, not judged. */
const RATIO_ROWS = PATTERNS.flatMap(([peakLpm, ratePerMin]) =>
  ([1.45, 1.2, 1] as const).map((ratio) =>
    engineRow({
      id: `ratio-${ratio}-${peakLpm}-${ratePerMin}`,
      source: ratio === 1.45 ? 'Huang2024' : 'Li2021',
      condition:
        ratio === 1.45
          ? 'flow at 1.45 times peak inspiratory flow, pure oxygen set: tracheal fraction above 0.9'
          : 'flow at or above peak inspiratory flow: no further change by one bench, contested by another',
      engine: stream(ratio * peakLpm, peakBreath(peakLpm, ratePerMin)),
      quantity: 'trachea',
      publishedValue: ratio === 1.45 ? 0.9 : 1,
      compare: ratio === 1.45 ? 'at-least' : 'equal',
      tolerance: 0.02,
      reason: 'reading-precision',
      known: 'seen',
      use: ratio === 1.45 ? 'judge' : 'context',
    }),
  ),
)

/** Once flow passes 1.34–1.67 times the peak, more flow changes nothing. */
const PLATEAU_ROWS = PATTERNS.map(([peakLpm, ratePerMin]) => {
  const breath = peakBreath(peakLpm, ratePerMin)
  const to = stream(1.67 * peakLpm, breath)
  return engineRow({
    id: `plateau-${peakLpm}-${ratePerMin}`,
    source: 'Li2021',
    condition:
      'from 1.34 to 1.67 times peak inspiratory flow: no further change of the tracheal fraction',
    engine: to,
    quantity: 'trachea',
    publishedValue: 0,
    tolerance: 0.02,
    reason: 'reading-precision',
    known: 'seen',
    reproduce: { by: 'change', from: stream(1.34 * peakLpm, breath), to },
  })
})

/** 10–90 % of a normal spread in standard deviations. */
const WIDTH_PER_SD = 2.563

interface EffectTable {
  readonly id: string
  readonly source: 'Parke2009' | 'Parke2011' | 'Parke2013' | 'Moeller2015' | 'Moeller2017'
  readonly formula: 'high-flow-pressure' | 'high-flow-clearance'
  readonly condition: string
  /** Flow, mean, SD. */
  readonly cells: readonly (readonly [number, number, number])[]
}

const EFFECTS: readonly EffectTable[] = [
  {
    id: 'pressure',
    source: 'Parke2011',
    formula: 'high-flow-pressure',
    condition: 'after cardiac surgery, nasopharynx, mouth closed, mean over the breath',
    cells: [
      [30, 1.93, 1.25],
      [40, 2.58, 1.54],
      [50, 3.31, 1.05],
    ],
  },
  {
    id: 'pressure-again',
    source: 'Parke2013',
    formula: 'high-flow-pressure',
    condition: 'nasopharynx, mouth closed, mean over the breath',
    cells: [
      [30, 1.5, 0.6],
      [40, 2.2, 0.8],
      [50, 3.1, 1.2],
    ],
  },
  {
    id: 'clearance',
    source: 'Moeller2017',
    formula: 'high-flow-clearance',
    condition: '10 volunteers, krypton, breath held, mouth closed: nasal clearance',
    cells: [
      [15, 40.6, 12.3],
      [30, 52.5, 17.7],
      [45, 72.9, 21.3],
    ],
  },
]

const EFFECT_ROWS = EFFECTS.flatMap((table) =>
  table.cells.flatMap(([flowLpm, mean, sd]) => [
    ...effectRow(table, { flowLpm, value: mean, tolerance: sd }),
    ...widthRow(table, { flowLpm, sd }),
  ]),
)

interface EffectCell {
  readonly flowLpm: number
  readonly value: number
  readonly tolerance: number
}

function effectRow(table: EffectTable, cell: EffectCell, use: 'judge' | 'calibrate' = 'judge') {
  const isPressure = table.formula === 'high-flow-pressure'
  return formulaRows({
    id: `${table.id}-${table.source}`,
    source: table.source,
    formula: table.formula,
    condition: table.condition,
    quantity: isPressure ? 'airway-pressure' : 'clearance',
    unit: isPressure ? 'cmH2O' : 'mL/s',
    tolerance: cell.tolerance,
    reason: 'published-sd',
    known: use === 'calibrate' && table.source === 'Moeller2015' ? 'memory' : 'seen',
    use,
    family: 'nasal-high-flow',
    kind: 'model',
    cells: [
      [
        isPressure ? { flowLpm: cell.flowLpm, mouthOpen: 0 } : { flowLpm: cell.flowLpm },
        cell.value,
      ],
    ],
  })
}

/** Our 10–90 % width against 2.563 SD. */
function widthRow(
  table: EffectTable,
  cell: { readonly flowLpm: number; readonly sd: number },
): readonly EvidenceRow[] {
  const isPressure = table.formula === 'high-flow-pressure'
  return formulaRows({
    id: `${table.id}-width-${table.source}`,
    source: table.source,
    formula: isPressure ? 'high-flow-pressure-width' : 'high-flow-clearance-width',
    condition: table.condition,
    quantity: isPressure ? 'airway-pressure' : 'clearance',
    unit: isPressure ? 'cmH2O' : 'mL/s',
    tolerance: 1,
    reason: 'width-half-to-twice',
    known: 'derived',
    family: 'nasal-high-flow',
    kind: 'model',
    cells: [[{ flowLpm: cell.flowLpm }, WIDTH_PER_SD * cell.sd]],
  }).map((row) => ({ ...row, compare: 'factor' }))
}

const CALIBRATE_ROWS = [
  ...effectRow(
    {
      id: 'pressure-slope',
      source: 'Parke2009',
      formula: 'high-flow-pressure',
      condition: '15 patients, 35 L/min, mouth closed, mean of inspiratory-peak pressures',
      cells: [],
    },
    { flowLpm: 35, value: 2.7, tolerance: 1.04 },
    'calibrate',
  ),
  ...effectRow(
    {
      id: 'clearance-slope',
      source: 'Moeller2015',
      formula: 'high-flow-clearance',
      condition: 'upper-airway models, 1.8 mL/s for each L/min, from memory; taken at 40 L/min',
      cells: [],
    },
    { flowLpm: 40, value: 72, tolerance: 10 },
    'calibrate',
  ),
]

/** High flow on a tracheostomy tube, ordinary interface: mean expiratory pressure. No model of ours: context. */
const TRACHEOSTOMY_ROWS = formulaRows({
  id: 'tracheostomy-pressure',
  source: 'TracheostomyFlow2019',
  formula: 'high-flow-pressure',
  condition:
    'bench, tracheostomy, mean expiratory pressure; ours is the nose with an open mouth, for comparison only',
  quantity: 'airway-pressure',
  unit: 'cmH2O',
  tolerance: 0.3,
  reason: 'published-sd',
  known: 'seen',
  use: 'context',
  family: 'nasal-high-flow',
  kind: 'model',
  cells: (
    [
      [10, 0.5],
      [20, 0.6],
      [30, 0.8],
      [40, 1],
      [50, 1.2],
      [60, 1.5],
    ] as const
  ).map(([flowLpm, value]) => [{ flowLpm, mouthOpen: 1 }, value] as const),
})

/** Open mouth, from memory: shown without verdict. */
const OPEN_MOUTH_ROWS = formulaRows({
  id: 'pressure-open-mouth',
  source: 'Parke2011',
  formula: 'high-flow-pressure',
  condition: 'mouth open, mean over the breath; from memory',
  quantity: 'airway-pressure',
  unit: 'cmH2O',
  tolerance: 0.5,
  reason: 'reading-precision',
  known: 'memory',
  use: 'context',
  family: 'nasal-high-flow',
  kind: 'model',
  cells: [
    [{ flowLpm: 30, mouthOpen: 1 }, 1],
    [{ flowLpm: 40, mouthOpen: 1 }, 1.3],
    [{ flowLpm: 50, mouthOpen: 1 }, 1.7],
  ],
})

export const HIGH_FLOW_ROWS: readonly EvidenceRow[] = [
  ...RATIO_ROWS,
  ...PLATEAU_ROWS,
  ...EFFECT_ROWS,
  ...CALIBRATE_ROWS,
  ...TRACHEOSTOMY_ROWS,
  ...OPEN_MOUTH_ROWS,
]
