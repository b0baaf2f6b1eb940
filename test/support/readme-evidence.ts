// The counts and family table of the evidence report as README.md prints them, made from the report itself. Leaves out the rows.
import type { EvidenceReport } from '../../src/evidence/report.ts'
import { FAMILY_NAMES } from '../../src/words/names.ts'

export const EVIDENCE_BEGIN = '<!-- counts from src/evidence: begin -->'
export const EVIDENCE_END = '<!-- counts from src/evidence: end -->'

/** Everything between the two marks, marks included. */
export function evidenceBlock({ counts, families, misses }: EvidenceReport): string {
  const measured = counts.judgedMeasured
  const explained = misses.filter((miss) => miss.resultingVerdict === 'pass').length
  const unchecked = families.filter((family) => !family.isChecked)
  return [
    EVIDENCE_BEGIN,
    `${counts.rows} outside checks from ${counts.sources} sources, run on every \`npm test\`:`,
    '',
    `- **Formula**: ${counts.formula} rows compare re-coded equations with their published tables. All must pass.`,
    `- **Limiting cases**: ${counts.limitingCases} rows run the breath engine with its pockets switched off against exact arithmetic. All must pass.`,
    `- **Measured**: ${measured} rows from ${counts.modelSources} sources run the engine under the conditions of a study; ${counts.missedMeasured} of them (${percent(counts.missedMeasuredShare)} %) lie outside their tolerance and stay visible. A run shows for ${explained} of these ${misses.length} misses the change of parameter that would remove it.`,
    `- **Direction only**: ${counts.trends} published trends, all in the published direction. **Calibrating**: ${counts.calibrate} rows, never judged. **Context**: ${counts.context} rows, shown without verdict.`,
    '',
    'Inspired fraction, ours minus published, and the usual rule of thumb on the rows it speaks of:',
    '',
    '| family | rows | bias | RMS | worst | rule of thumb: RMS | ours on the same rows |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...families.flatMap(({ family, ours, rule }) => {
      if (ours === null) return []
      const ruled = rule === null ? '– | –' : `${two(rule.rms)} | ${two(rule.ours.rms)}`
      return [
        `| ${FAMILY_NAMES[family]} | ${ours.rows} | ${two(ours.bias)} | ${two(ours.rms)} | ${two(ours.worst)} | ${ruled} |`,
      ]
    }),
    '',
    `Not checked against measurements, and marked so wherever a number of theirs appears: ${unchecked.map(({ family }) => FAMILY_NAMES[family]).join(', ')}.`,
    EVIDENCE_END,
  ].join('\n')
}

function two(value: number): string {
  const text = value.toFixed(2)
  return text === '-0.00' ? '0.00' : text.replace('-', '−')
}

function percent(share: number): string {
  return String(Math.round(100 * share))
}
