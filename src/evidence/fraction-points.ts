// Measured oxygen fractions beside ours and the usual rule of thumb's, as points of one scale. Leaves out limiting cases, sign tests and rows that calibrate.
import type { FamilyId } from '../kit/family-id.ts'
import { isFractionRow, isMeasuredModel, ruleMiss } from './family-summary.ts'
import type { RowOutcome } from './verdict.ts'

export interface FractionPoint {
  readonly rowId: string
  readonly family: FamilyId
  readonly publishedO2Fraction: number
  /** Half width of the tolerance: published spread, where the source gives one. */
  readonly spread: number
  readonly ourO2Fraction: number
  /** What the rule of thumb says, on the scale of the row; null where none speaks of it. */
  readonly ruleO2Fraction: number | null
  readonly isMiss: boolean
}

/** Every judged measurement of a fraction, in the order of the rows. */
export function fractionPoints(outcomes: readonly RowOutcome[]): readonly FractionPoint[] {
  return outcomes.flatMap((outcome) => {
    const { row, ourValue, verdict } = outcome
    if (row.family === null || !isMeasuredModel(outcome) || !isFractionRow(outcome)) return []
    const rule = ruleMiss(outcome)[0]
    return [
      {
        rowId: row.id,
        family: row.family,
        publishedO2Fraction: row.publishedValue,
        spread: row.tolerance.value,
        ourO2Fraction: ourValue,
        ruleO2Fraction: rule === undefined ? null : row.publishedValue + rule.miss,
        isMiss: verdict !== 'pass',
      },
    ]
  })
}
