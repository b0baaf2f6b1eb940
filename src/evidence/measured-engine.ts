// The one set-up behind a row that states one fraction: a single breath, or the mean of people on it. Leaves out spreads and changes.
import type { EngineCase } from './engine-case.ts'
import type { EvidenceRow } from './evidence-row.ts'

/** Null for rows of another form. */
export function measuredEngine(row: EvidenceRow): EngineCase | null {
  const { reproduce } = row
  if (reproduce.by === 'engine') return reproduce.engine
  return reproduce.by === 'people' && reproduce.statistic === 'mean' ? reproduce.engine : null
}
