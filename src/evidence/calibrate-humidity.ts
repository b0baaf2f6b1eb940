// Parameters of humidifiers refitted from the bench rows marked for calibration, beside the stored ones. Changes nothing.
import { assert } from '../errors.ts'
import { PARAMETERS } from '../humidity/parameters.ts'
import { medianOf } from '../units/spread.ts'
import type { FittedParameter } from './calibration.ts'
import type { EvidenceRow } from './evidence-row.ts'
import { minimiseOne } from './minimise.ts'
import { reproduceRow } from './reproduce.ts'
import { HUMIDITY_ROWS } from './rows/humidity-measured.ts'

/** What is fitted: the number of the row's formula that is changed, its stored value, and the tolerance of the refit. */
const FITS = [
  {
    id: 'bubble-saturation',
    given: 'saturation',
    stored: medianOf(PARAMETERS.bubbleSaturation.spread),
    bounds: { min: 0.5, max: 1 },
    tolerance: 0.01,
    rowIds: ['bubble-output-2-26'],
  },
  {
    id: 'chamber-error-c',
    given: 'errorC',
    stored: medianOf(PARAMETERS.chamberErrorC.spread),
    bounds: { min: -2, max: 2 },
    // The ±1 mg/L of the bench.
    tolerance: 0.6,
    rowIds: ['chamber-output-3-30', 'chamber-output-15-30'],
  },
  {
    id: 'exchanger-mg-per-l',
    given: 'meanMgPerL',
    stored: medianOf(PARAMETERS.exchangerMgPerL.spread),
    bounds: { min: 15, max: 35 },
    tolerance: 0.2,
    rowIds: ['exchangers-above-28'],
  },
] as const

export function humidityFits(): readonly FittedParameter[] {
  return FITS.map(({ id, given, stored, bounds, tolerance, rowIds }) => {
    const refitted = minimiseOne(bounds, (value) => squaredMiss(rowIds, { [given]: value }))
    const isKept = Math.abs(stored - refitted) <= tolerance
    return { id, stored, refitted, tolerance, isFlat: false, rowIds, isKept }
  })
}

function squaredMiss(rowIds: readonly string[], changed: Readonly<Record<string, number>>): number {
  return rowIds
    .map((rowId) => {
      const row = rowNamed(rowId)
      const { reproduce } = row
      assert(reproduce.by === 'formula', 'evidence/humidity rows are formulas')
      const given = { ...reproduce.given, ...changed }
      return (
        (reproduceRow({ ...row, reproduce: { ...reproduce, given } }) - row.publishedValue) ** 2
      )
    })
    .reduce((sum, one) => sum + one, 0)
}

function rowNamed(id: string): EvidenceRow {
  const row = HUMIDITY_ROWS.find((one) => one.id === id)
  assert(row !== undefined, 'evidence/row to calibrate')
  return row
}
