// Oxygen tables for infants on a cannula: effective-oxygen factors by weight and flow, by formula and through the engine, and the all-captured formula.
import { infantBreath } from '../breathings.ts'
import type { BreathPattern } from '../../delivery/breath.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { across, engineRow, formulaRows, limitRow, ONE_CONDITION } from './build.ts'

const AIR = 0.21
const WEIGHTS_KG = [0.7, 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4]
/** Flow L/min (true fractions for 1/32, 1/16, 1/8), factor in percent by weight, as printed with halves rounded up. */
const FACTORS: readonly (readonly [number, readonly number[]])[] = [
  [0.01, [1, 1, 1, 1, 1, 0, 0, 0, 0]],
  [1 / 32, [4, 3, 3, 2, 2, 1, 1, 1, 1]],
  [1 / 16, [9, 6, 5, 4, 3, 3, 2, 2, 2]],
  [1 / 8, [18, 13, 10, 8, 6, 5, 4, 4, 3]],
  [0.15, [21, 15, 12, 10, 8, 6, 5, 4, 4]],
  [0.25, [36, 25, 20, 17, 13, 10, 8, 7, 6]],
  [0.5, [71, 50, 40, 33, 25, 20, 17, 14, 13]],
  [0.75, [100, 75, 60, 50, 38, 30, 25, 21, 19]],
  [1, [100, 100, 80, 67, 50, 40, 33, 29, 25]],
  [1.25, [100, 100, 100, 83, 63, 50, 42, 36, 31]],
  [1.5, [100, 100, 100, 100, 75, 60, 50, 43, 38]],
  [2, [100, 100, 100, 100, 100, 80, 67, 57, 50]],
  [3, [100, 100, 100, 100, 100, 100, 100, 86, 75]],
  [4, [100, 100, 100, 100, 100, 100, 100, 100, 100]],
]

/** Rows of the table that are also run through the engine. */
const ENGINE_FLOWS: readonly number[] = [1 / 8, 0.25, 0.5, 1, 2]

const FACTOR_ROWS = formulaRows({
  id: 'infant-factor',
  source: 'StopRop2000',
  formula: 'infant-factor',
  condition: '5 mL/kg in 0.3 s, nose breathing, no store',
  quantity: 'factor',
  unit: '%',
  tolerance: 1,
  reason: 'printed-digits',
  known: 'seen',
  cells: FACTORS.flatMap(([flowLpm, values]) =>
    across(WEIGHTS_KG, values).map(([weightKg, value]) => [{ flowLpm, weightKg }, value] as const),
  ),
})

const CONCENTRATIONS = [22, 25, 30, 40, 50, 60, 80, 100]
/** Factor %, effective oxygen % by concentration. */
const EFFECTIVE: readonly (readonly [number, readonly number[]])[] = [
  [5, [21, 21, 21, 22, 22, 23, 24, 25]],
  [10, [21, 21, 22, 23, 24, 25, 27, 29]],
  [17, [21, 22, 23, 24, 26, 28, 31, 34]],
  [25, [21, 22, 23, 26, 28, 31, 36, 41]],
  [33, [21, 22, 24, 27, 31, 34, 40, 47]],
  [50, [22, 23, 26, 31, 36, 41, 51, 61]],
  [75, [22, 24, 28, 35, 43, 50, 65, 80]],
  [100, [22, 25, 30, 40, 50, 60, 80, 100]],
]

const EFFECTIVE_ROWS = formulaRows({
  id: 'infant-effective',
  source: 'StopRop2000',
  formula: 'infant-effective-percent',
  condition: 'factor of the first table applied to the concentration above 21 %',
  quantity: 'effective',
  unit: '%',
  tolerance: 0.5,
  reason: 'printed-digits',
  known: 'derived',
  cells: EFFECTIVE.flatMap(([factor, values]) =>
    across(CONCENTRATIONS, values).map(
      ([concentration, value]) => [{ factor, concentration }, value] as const,
    ),
  ),
})

/** 5 mL/kg in 0.3 s at constant flow, 60/min. */
function tableBreath(weightKg: number): BreathPattern {
  return {
    tidalVolumeL: 0.005 * weightKg,
    ratePerMin: 60,
    dutyFraction: 0.3,
    inspiration: { kind: 'square' },
    expiration: { kind: 'passive', timeConstantS: 0.1 },
  }
}

/** The same table through the engine with pure oxygen: 0.21 + 0.79 × printed factor, half a printed point being 0.004. */
const FACTOR_ENGINE_ROWS = FACTORS.filter(([flowLpm]) => ENGINE_FLOWS.includes(flowLpm)).flatMap(
  ([flowLpm, values]) =>
    across(WEIGHTS_KG, values).map(([weightKg, factor]) =>
      limitRow({
        id: `infant-engine-${flowLpm}-${weightKg}`,
        source: 'StopRop2000',
        condition: '5 mL/kg in 0.3 s, nose breathing, no store, pure oxygen, air 0.21',
        engine: {
          family: 'nasal-cannula',
          size: 'newborn',
          flowLpm,
          breath: tableBreath(weightKg),
          gas: ONE_CONDITION,
          airO2Fraction: AIR,
          infantKg: weightKg,
          limit: { kind: 'no-pocket' },
        },
        publishedValue: AIR + ((1 - AIR) * factor) / 100,
        known: 'seen',
      }),
    ),
)

const CAPTURED_FLOWS = [0.025, 0.05, 0.1, 0.15, 0.2]
const CAPTURED: readonly (readonly [number, readonly number[]])[] = [
  [1, [0.282, 0.354, 0.497, 0.641, 0.785]],
  [2, [0.246, 0.282, 0.354, 0.425, 0.497]],
]

/** 5.5 mL/kg at 50/min; the formula did not differ from pharyngeal gas of 31 infants at any flow. */
function capturedBreath(weightKg: number): BreathPattern {
  return infantBreath({ weightKg, tidalMlPerKg: 5.5, ratePerMin: 50 })
}

const CAPTURED_ROWS = CAPTURED.flatMap(([weightKg, values]) =>
  across(CAPTURED_FLOWS, values).map(([flowLpm, publishedValue]) =>
    limitRow({
      id: `infant-captured-${weightKg}-${flowLpm}`,
      source: 'Finer1996',
      condition: '5.5 mL/kg at 50/min, all of the cannula flow inhaled, air 0.21',
      engine: {
        family: 'nasal-cannula',
        size: 'preterm',
        flowLpm,
        breath: capturedBreath(weightKg),
        gas: ONE_CONDITION,
        airO2Fraction: AIR,
        infantKg: weightKg,
        limit: { kind: 'all-captured' },
      },
      publishedValue,
      known: 'derived',
    }),
  ),
)

/** In a replica of an infant's airway the inspiratory-flow formula read low and the all-captured formula clearly high. */
const REPLICA_ROWS = CAPTURED.flatMap(([weightKg, values]) =>
  across(CAPTURED_FLOWS, values).flatMap(([flowLpm, capturedValue]) => {
    const breath = capturedBreath(weightKg)
    const engine = {
      family: 'nasal-cannula',
      size: 'preterm',
      flowLpm,
      breath,
      gas: ONE_CONDITION,
      airO2Fraction: AIR,
      infantKg: weightKg,
      isBench: true,
    } as const
    const inspirationMin = breath.dutyFraction / breath.ratePerMin
    const shareIn = Math.min(1, (flowLpm * inspirationMin) / breath.tidalVolumeL)
    const common = { source: 'Bertzouanis2024', engine, quantity: 'trachea' } as const
    return [
      engineRow({
        ...common,
        id: `infant-replica-floor-${weightKg}-${flowLpm}`,
        condition: 'not below the flow of inspiration alone',
        publishedValue: AIR + (1 - AIR) * shareIn,
        compare: 'at-least',
        tolerance: 0.01,
        reason: 'reading-precision',
        known: 'seen',
      }),
      engineRow({
        ...common,
        id: `infant-replica-ceiling-${weightKg}-${flowLpm}`,
        condition: 'not above all flow inhaled',
        publishedValue: capturedValue,
        compare: 'at-most',
        tolerance: 0.01,
        reason: 'reading-precision',
        known: 'seen',
      }),
    ]
  }),
)

export const INFANT_TABLE_ROWS: readonly EvidenceRow[] = [
  ...FACTOR_ROWS,
  ...EFFECTIVE_ROWS,
  ...FACTOR_ENGINE_ROWS,
  ...CAPTURED_ROWS,
  ...REPLICA_ROWS,
]
