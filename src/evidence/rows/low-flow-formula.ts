// Low flow without any store: bench-validated formula, 40 points, by formula and through the engine.
import { squareBreath } from '../breathings.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { across, formulaRows, limitRow, ONE_CONDITION } from './build.ts'

const FLOWS = [2, 3, 4, 5, 6]
/** Ti/Ttot, ventilation L/min, fractions at 2–6 L/min. */
const GRID: readonly (readonly [number, number, readonly number[]])[] = [
  [0.33, 5, [0.314, 0.366, 0.419, 0.471, 0.523]],
  [0.33, 10, [0.262, 0.288, 0.314, 0.34, 0.366]],
  [0.33, 15, [0.245, 0.262, 0.28, 0.297, 0.314]],
  [0.33, 20, [0.236, 0.249, 0.262, 0.275, 0.288]],
  [0.5, 5, [0.368, 0.447, 0.526, 0.605, 0.684]],
  [0.5, 10, [0.289, 0.329, 0.368, 0.407, 0.447]],
  [0.5, 15, [0.263, 0.289, 0.315, 0.342, 0.368]],
  [0.5, 20, [0.249, 0.269, 0.289, 0.309, 0.329]],
]
const AIR = 0.21

const points = GRID.flatMap(([dutyFraction, ventilationLpm, values]) =>
  across(FLOWS, values).map(([flowLpm, publishedValue]) => ({
    dutyFraction,
    ventilationLpm,
    flowLpm,
    publishedValue,
  })),
)

/** Bench against formula: bias 1.49 points, limits of agreement −0.17 to 3.14. */
const LOW_FLOW_FORMULA = formulaRows({
  id: 'low-flow-formula',
  source: 'Duprez2018',
  formula: 'diluted-fraction',
  condition:
    '0.21 + 0.79 × flow over mean inspiratory flow; bench, limits of agreement −0.0017 to 0.0314',
  quantity: 'opening',
  unit: '1',
  tolerance: 0.03,
  reason: 'limits-of-agreement',
  known: 'derived',
  cells: points.map(
    (p) =>
      [
        { flowLpm: p.flowLpm, demandLpm: p.ventilationLpm / p.dutyFraction, air: AIR },
        p.publishedValue,
      ] as const,
  ),
})

const LOW_FLOW_ENGINE = points.map((p) =>
  limitRow({
    id: `low-flow-engine-${p.dutyFraction}-${p.ventilationLpm}-${p.flowLpm}`,
    source: 'Duprez2018',
    condition: 'no store, constant inspiratory flow, 15/min',
    engine: {
      family: 'nasal-cannula',
      flowLpm: p.flowLpm,
      breath: squareBreath({
        ventilationLpm: p.ventilationLpm,
        ratePerMin: 15,
        dutyFraction: p.dutyFraction,
      }),
      gas: ONE_CONDITION,
      airO2Fraction: AIR,
      limit: { kind: 'no-pocket' },
    },
    publishedValue: p.publishedValue,
    known: 'derived',
  }),
)

export const LOW_FLOW_ROWS: readonly EvidenceRow[] = [...LOW_FLOW_FORMULA, ...LOW_FLOW_ENGINE]
