// All that is said of one check, for the page and its search. Leaves out layout.
import type { ExplainedMiss } from '../../evidence/report.ts'
import { SOURCES } from '../../evidence/sources.ts'
import type { RowOutcome } from '../../evidence/verdict.ts'
import {
  besideText,
  conditionText,
  GAS_NAMES,
  missText,
  QUANTITY_NAMES,
  toleranceText,
} from '../../words/evidence-text.ts'
import { FAMILY_NAMES, KNOWN_NAMES } from '../../words/names.ts'
import { GROUP_NAMES } from '../../words/web-evidence-text.ts'
import { groupOf } from './filters.ts'

export interface Cited {
  readonly citation: string
  readonly doi?: string
}

export function sourceOf({ row }: RowOutcome): Cited | null {
  return row.source === null ? null : SOURCES[row.source]
}

/** Facts of a check, each a short line. */
export function rowFacts(outcome: RowOutcome): readonly string[] {
  const { row } = outcome
  return [
    `${QUANTITY_NAMES[row.quantity]}: ${besideText(outcome)} (${toleranceText(row)})`,
    [
      ...(row.kind === 'model' ? [GAS_NAMES[row.gas]] : []),
      GROUP_NAMES[groupOf(row)],
      KNOWN_NAMES[row.known],
    ].join('; '),
  ]
}

export function explanationText(
  outcome: RowOutcome,
  misses: readonly ExplainedMiss[],
): string | null {
  const miss = misses.find((one) => one.outcome.row.id === outcome.row.id)
  return miss === undefined ? null : missText(miss)
}

export function searchText(outcome: RowOutcome): string {
  const { row } = outcome
  return [
    row.id,
    conditionText(row),
    row.family === null ? '' : FAMILY_NAMES[row.family],
    ...rowFacts(outcome),
    sourceOf(outcome)?.citation ?? '',
    sourceOf(outcome)?.doi ?? '',
    row.source ?? '',
  ].join(' ')
}
