// When the evidence ends with a failing exit code: a solid row that misses, and nothing else. Leaves out the rows themselves.
import { describe, expect, it } from 'vitest'
import { EVIDENCE_ROWS } from '../evidence/all-rows.ts'
import type { EvidenceRow } from '../evidence/evidence-row.ts'
import { evidenceReport } from '../evidence/report.ts'
import { EXIT } from './exit-codes.ts'
import { evidenceExit } from './verb-evidence.ts'

function firstRow(test: (row: EvidenceRow) => boolean): EvidenceRow {
  const found = EVIDENCE_ROWS.find(test)
  if (found === undefined) throw new Error('no such row')
  return found
}

function wrong(row: EvidenceRow): EvidenceRow {
  return { ...row, publishedValue: row.publishedValue + 100 * row.tolerance.value + 1 }
}

describe('evidence exit code', () => {
  const formula = firstRow((row) => row.kind === 'formula' && row.compare === 'equal')
  const limiting = firstRow((row) => row.isLimitingCase && row.compare === 'equal')
  const measured = firstRow(
    (row) =>
      row.kind === 'model' && row.use === 'judge' && !row.isLimitingCase && row.compare === 'equal',
  )

  it('is 0 while every solid row passes', () => {
    expect(evidenceExit(evidenceReport([formula, limiting]))).toBe(EXIT.ok)
  })

  it('is 5 when a published equation or a limiting case is missed', () => {
    expect(evidenceExit(evidenceReport([wrong(formula), limiting]))).toBe(EXIT.evidenceMiss)
    expect(evidenceExit(evidenceReport([formula, wrong(limiting)]))).toBe(EXIT.evidenceMiss)
  })

  it('stays 0 for a measurement that misses, which the report shows', () => {
    const report = evidenceReport([wrong(measured)])
    expect(report.misses).toHaveLength(1)
    expect(evidenceExit(report)).toBe(EXIT.ok)
  })
})
