// How a row comes out: our value, the miss in units of the tolerance, and pass, off or far. Leaves out why.
import type { EvidenceRow } from './evidence-row.ts'
import { reproduceRow } from './reproduce.ts'

/** `off`: beyond the tolerance, within twice; `far`: beyond. `none`: calibrate and context rows. */
export type Verdict = 'pass' | 'off' | 'far' | 'none'

export interface RowOutcome {
  readonly row: EvidenceRow
  readonly ourValue: number
  /** Ours minus published; for `factor` the logarithm to base 2 of ours over published; for bounds 0 when kept. */
  readonly miss: number
  readonly verdict: Verdict
}

/** Rounding of binary numbers, so that a miss of exactly the tolerance passes. */
const SLACK = 1e-9
/** A change smaller than this has no sign. */
const NO_CHANGE = 1e-7

/** Runs the row. */
export function judgeRow(row: EvidenceRow): RowOutcome {
  const ourValue = reproduceRow(row)
  const miss = missOf(row, ourValue)
  return { row, ourValue, miss, verdict: verdictOf(row, miss) }
}

function missOf(row: EvidenceRow, ourValue: number): number {
  const difference = ourValue - row.publishedValue
  switch (row.compare) {
    case 'equal':
      return difference
    case 'at-least':
      return Math.min(0, difference)
    case 'at-most':
      return Math.max(0, difference)
    case 'factor':
      return Math.log2(ourValue / row.publishedValue)
    case 'sign':
      return (Math.abs(ourValue) < NO_CHANGE ? 0 : Math.sign(ourValue)) - row.publishedValue
  }
}

function verdictOf(row: EvidenceRow, miss: number): Verdict {
  if (row.use === 'calibrate' || row.use === 'context') return 'none'
  const size = Math.abs(miss) - SLACK
  if (!Number.isFinite(size)) return 'far'
  if (size <= row.tolerance.value) return 'pass'
  return size <= 2 * row.tolerance.value ? 'off' : 'far'
}
