// The evidence report as lines for a terminal: totals, families, rows or misses.
import type { EvidenceReport } from '../evidence/report.ts'
import { citationOf } from '../evidence/report.ts'
import type { RowOutcome } from '../evidence/verdict.ts'
import {
  besideText,
  countLines,
  EVIDENCE_WORDS,
  familyLines,
  GAS_NAMES,
  missText,
  ourValueText,
  publishedText,
  QUANTITY_NAMES,
  toleranceText,
  USE_NAMES,
  VERDICT_NAMES,
  conditionText,
} from '../words/evidence-text.ts'
import { KNOWN_NAMES } from '../words/names.ts'
import { bulleted, indented, section, tableLines } from './table.ts'
import type { TableColumn } from './table.ts'

export function evidenceLines(
  report: EvidenceReport,
  wanted: { readonly withRows: boolean },
): readonly string[] {
  return [
    ...countLines(report.counts).flatMap((line) => indented(line, 0)),
    ...section(
      EVIDENCE_WORDS.families,
      report.families.flatMap((family) => {
        const [head = '', ...rest] = familyLines(family)
        return [...bulleted([head]), ...rest.flatMap((line) => indented(line, 6))]
      }),
    ),
    ...(wanted.withRows ? section(EVIDENCE_WORDS.rows, rowTable(report.outcomes)) : []),
    ...section(EVIDENCE_WORDS.misses, missLines(report)),
  ]
}

function rowTable(outcomes: readonly RowOutcome[]): readonly string[] {
  const { columns } = EVIDENCE_WORDS
  const layout: readonly TableColumn[] = [
    { heading: columns.verdict },
    { heading: columns.id, widthMost: 24 },
    { heading: columns.quantity, widthMost: 22 },
    { heading: columns.published, widthMost: 16, align: 'right' },
    { heading: columns.ours, widthMost: 16, align: 'right' },
  ]
  return tableLines(
    layout,
    outcomes.map((outcome) => ({
      cells: [
        VERDICT_NAMES[outcome.verdict],
        outcome.row.id,
        QUANTITY_NAMES[outcome.row.quantity],
        publishedText(outcome.row),
        ourValueText(outcome),
      ],
      note: noteOf(outcome),
    })),
  )
}

/** Condition, tolerance, source and how the value is known. */
function noteOf({ row }: RowOutcome): string {
  return [
    conditionText(row),
    ...(row.kind === 'model' ? [GAS_NAMES[row.gas]] : []),
    toleranceText(row),
    ...(row.use === 'judge' ? [] : [USE_NAMES[row.use]]),
    ...[citationOf(row)].filter((citation) => citation !== null),
    KNOWN_NAMES[row.known],
  ].join('; ')
}

function missLines(report: EvidenceReport): readonly string[] {
  if (report.misses.length === 0) return indented(EVIDENCE_WORDS.noMisses)
  return bulleted(
    report.misses.map((miss) => {
      const { outcome } = miss
      const verdict = VERDICT_NAMES[outcome.verdict]
      return `${outcome.row.id} (${verdict}): ${besideText(outcome)}; ${missText(miss)}`
    }),
  )
}
