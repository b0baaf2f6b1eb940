// The evidence report as JSON (schema/evidence.schema.json). Leaves out how each row is run, which the sources hold.
import { citationOf } from '../evidence/report.ts'
import type { EvidenceReport, ExplainedMiss } from '../evidence/report.ts'
import type { RowOutcome } from '../evidence/verdict.ts'
import { familyLines, missText, ourValueText, publishedText } from '../words/evidence-text.ts'
import { jsonText } from './json-output.ts'

export const EVIDENCE_JSON_FORMAT = 'oxwright-evidence-1'

export function evidenceJson(options: {
  readonly report: EvidenceReport
  readonly version: string
}): string {
  const { report, version } = options
  return jsonText({
    format: EVIDENCE_JSON_FORMAT,
    version,
    counts: report.counts,
    families: report.families.map((family) => ({ ...family, text: familyLines(family) })),
    rows: report.outcomes.map(toldOutcome),
    misses: report.misses.map(toldMiss),
  })
}

function toldOutcome(outcome: RowOutcome): object {
  const { reproduce: _, breathing, ...row } = outcome.row
  return {
    ...row,
    citation: citationOf(outcome.row),
    breathing: breathing === null ? null : { ...breathing.breath, isStated: breathing.isStated },
    ourValue: outcome.ourValue,
    miss: outcome.miss,
    verdict: outcome.verdict,
    text: { published: publishedText(outcome.row), ours: ourValueText(outcome) },
  }
}

function toldMiss(miss: ExplainedMiss): object {
  const { outcome, ...rest } = miss
  return { rowId: outcome.row.id, verdict: outcome.verdict, ...rest, text: missText(miss) }
}
