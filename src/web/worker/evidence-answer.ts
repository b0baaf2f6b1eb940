// Every outside check run in the worker, as data for the Evidence page. Loaded when first asked for. Leaves out words.
import { fractionPoints } from '../../evidence/fraction-points.ts'
import type { FractionPoint } from '../../evidence/fraction-points.ts'
import { evidenceReport } from '../../evidence/report.ts'
import type { EvidenceReport } from '../../evidence/report.ts'

export interface EvidenceAnswer {
  readonly report: EvidenceReport
  readonly points: readonly FractionPoint[]
}

export function evidenceAnswer(onProgress: (done: number, total: number) => void): EvidenceAnswer {
  const report = evidenceReport(undefined, onProgress)
  return { report, points: fractionPoints(report.outcomes) }
}
