// All outside checks run and counted, as data for the command line and for pages. Leaves out text.
import { EVIDENCE_ROWS } from './all-rows.ts'
import type { EvidenceRow } from './evidence-row.ts'
import { EXPLANATIONS, explainedOutcome } from './explanations.ts'
import type { Explanation } from './explanations.ts'
import { familySummaries, isMeasuredModel } from './family-summary.ts'
import type { FamilySummary } from './family-summary.ts'
import { SOURCES } from './sources.ts'
import { judgeRow } from './verdict.ts'
import type { RowOutcome, Verdict } from './verdict.ts'

export interface EvidenceCounts {
  readonly rows: number
  readonly sources: number
  readonly formula: number
  /** Engine runs, sign tests left out: limiting cases and measured rows together. */
  readonly model: number
  readonly limitingCases: number
  readonly trends: number
  readonly calibrate: number
  readonly context: number
  readonly modelSources: number
  /** Judged engine runs that are no limiting case, and those of them that miss. */
  readonly judgedMeasured: number
  readonly missedMeasured: number
  /** Share of all judged engine runs, and of the measured ones alone, that miss. */
  readonly missedShare: number
  readonly missedMeasuredShare: number
}

/** A row beyond its tolerance with the change that brings it back; null when none is written down. */
export interface ExplainedMiss {
  readonly outcome: RowOutcome
  readonly explanation: Explanation | null
  readonly resultingValue: number | null
  readonly resultingVerdict: Verdict | null
}

export interface EvidenceReport {
  readonly outcomes: readonly RowOutcome[]
  readonly counts: EvidenceCounts
  readonly families: readonly FamilySummary[]
  readonly misses: readonly ExplainedMiss[]
}

/** Of the whole list, which is the same whenever it is asked: worked out once. */
let whole: EvidenceReport | undefined

/** Runs every row, telling how many of them are done. Takes a second or two on a machine that does nothing else. */
export function evidenceReport(
  rows: readonly EvidenceRow[] = EVIDENCE_ROWS,
  onProgress?: (done: number, total: number) => void,
): EvidenceReport {
  if (rows !== EVIDENCE_ROWS) return reportOf(rows, onProgress)
  if (whole !== undefined) onProgress?.(rows.length, rows.length)
  whole ??= reportOf(rows, onProgress)
  return whole
}

function reportOf(
  rows: readonly EvidenceRow[],
  onProgress?: (done: number, total: number) => void,
): EvidenceReport {
  const outcomes = rows.map((row, i) => {
    const outcome = judgeRow(row)
    onProgress?.(i + 1, rows.length)
    return outcome
  })
  return {
    outcomes,
    counts: counts(outcomes),
    families: familySummaries(outcomes),
    misses: outcomes.filter(isMiss).map(explainMiss),
  }
}

export function isMiss(outcome: RowOutcome): boolean {
  return outcome.verdict === 'off' || outcome.verdict === 'far'
}

/** Short citation of a row; null for exact laws, arithmetic and common practice. */
export function citationOf(row: EvidenceRow): string | null {
  return row.source === null ? null : SOURCES[row.source].citation
}

function explainMiss(outcome: RowOutcome): ExplainedMiss {
  const explanation = EXPLANATIONS.find(({ rowId }) => rowId === outcome.row.id) ?? null
  const changed = explanation === null ? null : explainedOutcome(outcome.row, explanation)
  return {
    outcome,
    explanation,
    resultingValue: changed?.ourValue ?? null,
    resultingVerdict: changed?.verdict ?? null,
  }
}

function counts(outcomes: readonly RowOutcome[]): EvidenceCounts {
  const number = (test: (outcome: RowOutcome) => boolean): number => outcomes.filter(test).length
  const isEngineRun = ({ row }: RowOutcome): boolean =>
    row.kind === 'model' && row.use !== 'trend' && row.use !== 'context'
  const isJudgedRun = ({ row }: RowOutcome): boolean => row.kind === 'model' && row.use === 'judge'
  const judged = number(isJudgedRun)
  const judgedMeasured = number(isMeasuredModel)
  const missedMeasured = number((outcome) => isMeasuredModel(outcome) && isMiss(outcome))
  return {
    rows: outcomes.length,
    sources: sourceCount(outcomes),
    formula: number(({ row }) => row.kind === 'formula'),
    model: number(isEngineRun),
    limitingCases: number(({ row }) => row.isLimitingCase),
    trends: number(({ row }) => row.use === 'trend'),
    calibrate: number(({ row }) => row.use === 'calibrate'),
    context: number(({ row }) => row.use === 'context'),
    modelSources: sourceCount(outcomes.filter(isMeasuredModel)),
    judgedMeasured,
    missedMeasured,
    missedShare: number((outcome) => isJudgedRun(outcome) && isMiss(outcome)) / judged,
    missedMeasuredShare: missedMeasured / judgedMeasured,
  }
}

function sourceCount(outcomes: readonly RowOutcome[]): number {
  return new Set(outcomes.flatMap(({ row }) => (row.source === null ? [] : [row.source]))).size
}
