// Free parameters refitted from the rows marked for calibration alone, beside the stored ones, with leave-one-out for the reservoir mask. Changes nothing.
import { assert } from '../errors.ts'
import { NASAL_HIGH_FLOW } from '../kit/families/high-flow.ts'
import { CAPTURE_OUT } from '../kit/families/nasal.ts'
import {
  FORWARD_LOSS,
  LEAK_RATIO,
  RESERVOIR_BASE_LPM,
  RESERVOIR_FIT_FACTOR,
} from '../kit/families/reservoir-mask.ts'
import { SIMPLE_MASK_BASE_LPM } from '../kit/families/simple-mask.ts'
import { medianOf } from '../units/spread.ts'
import { EVIDENCE_ROWS } from './all-rows.ts'
import { humidityFits } from './calibrate-humidity.ts'
import type { EvidenceRow, Reproduction } from './evidence-row.ts'
import { minimiseOne, minimiseTwo } from './minimise.ts'
import type { Parameters } from './parameters.ts'
import { reproduceRow } from './reproduce.ts'

export interface FittedParameter {
  readonly id: string
  readonly stored: number
  readonly refitted: number
  /** How far the stored value may lie from the refit before the calibration counts as stale. */
  readonly tolerance: number
  /** True where the rows hardly depend on the parameter: then cost, not distance, decides. */
  readonly isFlat: boolean
  readonly rowIds: readonly string[]
  readonly isKept: boolean
}

/** A row of the reservoir mask predicted by a fit that did not see it. */
export interface LeftOut {
  readonly rowId: string
  readonly publishedValue: number
  readonly predicted: number
  /** False where no other row fixes the parameter: then the nearest other fit predicts. */
  readonly isIdentified: boolean
}

/** Everything that is fitted, in the order in which it is fitted. */
export function refitParameters(): readonly FittedParameter[] {
  const { forwardLoss, baseLpm } = fitTight(TIGHT_CALIBRATE)
  const fitted = { 'forward-loss': forwardLoss, 'exchange-base-lpm': baseLpm } as const
  const behaviour = NASAL_HIGH_FLOW.behaviour
  assert(behaviour.kind === 'high-flow', 'nasal high flow behaves as high flow')
  return [
    distance({
      id: 'simple-mask-base-lpm',
      stored: SIMPLE_MASK_BASE_LPM,
      refitted: fitOne(SIMPLE, { min: 1, max: 20 }, (x) => ({ 'exchange-base-lpm': x })),
      tolerance: 1,
      rowIds: SIMPLE,
    }),
    distance({
      id: 'reservoir-forward-loss',
      stored: medianOf(FORWARD_LOSS.spread),
      refitted: forwardLoss,
      tolerance: 0.05,
      rowIds: TIGHT_CALIBRATE,
    }),
    distance({
      id: 'reservoir-base-lpm',
      stored: RESERVOIR_BASE_LPM,
      refitted: baseLpm,
      tolerance: 0.3,
      rowIds: TIGHT_CALIBRATE,
    }),
    distance({
      id: 'reservoir-leak-gentle',
      stored: medianOf(LEAK_RATIO.gentle.spread),
      refitted: fitOne([GENTLE], { min: 0.05, max: 4 }, (x) => ({ ...fitted, 'leak-ratio': x })),
      tolerance: 0.1,
      rowIds: [GENTLE],
    }),
    distance({
      id: 'reservoir-loose-factor',
      stored: RESERVOIR_FIT_FACTOR.loose,
      refitted: fitOne([LOOSE], { min: 1, max: 12 }, (x) => ({
        ...fitted,
        'exchange-fit-factor': x,
      })),
      tolerance: 0.7,
      rowIds: [LOOSE],
    }),
    captureFit(),
    distance({
      id: 'high-flow-pressure-slope',
      stored: medianOf(behaviour.meanPressureCmH2oPerLpm.spread),
      refitted: slopeOf(PRESSURE),
      tolerance: 0.004,
      rowIds: [PRESSURE],
    }),
    distance({
      id: 'high-flow-clearance-slope',
      stored: medianOf(behaviour.clearanceMlPerSPerLpm.spread),
      refitted: slopeOf(CLEARANCE),
      tolerance: 0.1,
      rowIds: [CLEARANCE],
    }),
    ...humidityFits(),
  ]
}

/** Every row of the simulator study, predicted by the others. */
export function leaveOneOut(): readonly LeftOut[] {
  return [
    ...TIGHT_ALL.map((rowId) => {
      const { forwardLoss, baseLpm } = fitTight(TIGHT_ALL.filter((other) => other !== rowId))
      const parameters = { 'forward-loss': forwardLoss, 'exchange-base-lpm': baseLpm }
      return leftOut(rowId, parameters, true)
    }),
    ...[GENTLE, LOOSE].map((rowId) => {
      const { forwardLoss, baseLpm } = fitTight(TIGHT_ALL)
      const parameters = {
        'forward-loss': forwardLoss,
        'exchange-base-lpm': baseLpm,
        'leak-ratio': medianOf(LEAK_RATIO.tight.spread),
        'exchange-fit-factor': RESERVOIR_FIT_FACTOR.tight,
      }
      return leftOut(rowId, parameters, false)
    }),
  ]
}

const SIMPLE = ['simple-centre-5', 'simple-centre-8']
const TIGHT_CALIBRATE = ['simulator-tight-6', 'simulator-tight-15']
const TIGHT_ALL = [
  'simulator-tight-6',
  'simulator-tight-8',
  'simulator-tight-10',
  'simulator-tight-12',
  'simulator-tight-15',
]
const GENTLE = 'simulator-gentle-15'
const LOOSE = 'simulator-loose-15'
const CAPTURE = 'trachea-slope'
const PRESSURE = 'pressure-slope-Parke2009-35-0'
const CLEARANCE = 'clearance-slope-Moeller2015-40'
/** Slope errors within this of the best count as equally good, per row unit. */
const FLAT_COST = 0.01

function fitTight(rowIds: readonly string[]): {
  readonly forwardLoss: number
  readonly baseLpm: number
} {
  const best = minimiseTwo({ x: 0.6, y: 1.5 }, ({ x, y }) =>
    x < 0 || x > 1 || y < 0
      ? Number.MAX_VALUE
      : squares(rowIds, { 'forward-loss': x, 'exchange-base-lpm': y }),
  )
  return { forwardLoss: best.x, baseLpm: best.y }
}

function fitOne(
  rowIds: readonly string[],
  bounds: { readonly min: number; readonly max: number },
  parameters: (x: number) => Parameters,
): number {
  return minimiseOne(bounds, (x) => squares(rowIds, parameters(x)))
}

/** The slope hardly depends on what the nose stores between breaths, so only the cost of the stored value is judged. */
function captureFit(): FittedParameter {
  const stored = medianOf(CAPTURE_OUT.spread)
  const refitted = fitOne([CAPTURE], { min: 0, max: 1 }, (x) => ({ 'capture-out': x }))
  const missAt = (x: number): number => Math.sqrt(squares([CAPTURE], { 'capture-out': x }))
  return {
    id: 'cannula-capture',
    stored,
    refitted,
    tolerance: FLAT_COST,
    isFlat: true,
    rowIds: [CAPTURE],
    isKept: missAt(stored) - missAt(refitted) <= FLAT_COST,
  }
}

function distance(fit: Omit<FittedParameter, 'isFlat' | 'isKept'>): FittedParameter {
  return { ...fit, isFlat: false, isKept: Math.abs(fit.stored - fit.refitted) <= fit.tolerance }
}

function slopeOf(rowId: string): number {
  const row = rowNamed(rowId)
  assert(row.reproduce.by === 'formula', 'slope rows are formulas of flow')
  const flowLpm = row.reproduce.given['flowLpm']
  assert(flowLpm !== undefined && flowLpm > 0, 'slope rows have a flow')
  return row.publishedValue / flowLpm
}

function leftOut(rowId: string, parameters: Parameters, isIdentified: boolean): LeftOut {
  const row = rowNamed(rowId)
  return {
    rowId,
    publishedValue: row.publishedValue,
    predicted: reproduceRow(withParameters(row, parameters)),
    isIdentified,
  }
}

function squares(rowIds: readonly string[], parameters: Parameters): number {
  return rowIds.reduce((sum, rowId) => {
    const row = rowNamed(rowId)
    return sum + (reproduceRow(withParameters(row, parameters)) - row.publishedValue) ** 2
  }, 0)
}

function withParameters(row: EvidenceRow, parameters: Parameters): EvidenceRow {
  return { ...row, reproduce: reproductionWith(row.reproduce, parameters) }
}

function reproductionWith(reproduce: Reproduction, parameters: Parameters): Reproduction {
  if (reproduce.by === 'engine')
    return { ...reproduce, engine: { ...reproduce.engine, parameters } }
  assert(reproduce.by === 'change', 'calibrate rows are breaths or changes')
  return {
    ...reproduce,
    from: { ...reproduce.from, parameters },
    to: { ...reproduce.to, parameters },
  }
}

function rowNamed(rowId: string): EvidenceRow {
  const row = EVIDENCE_ROWS.find((candidate) => candidate.id === rowId)
  assert(row !== undefined, 'calibration names a row')
  return row
}
