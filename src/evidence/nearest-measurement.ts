// The published measurement nearest to a set-up, to be shown beside a forecast. Leaves out judging: the row's own conditions stand with it.
import type { FamilyId } from '../kit/family-id.ts'
import { EVIDENCE_ROWS } from './all-rows.ts'
import type { EngineCase } from './engine-case.ts'
import type { EvidenceRow } from './evidence-row.ts'
import { measuredEngine } from './measured-engine.ts'

export interface NearestMeasurement {
  readonly row: EvidenceRow
  readonly flowLpm: number
  /** Absolute difference of flow, L/min; of the set fraction where one is given, in hundredths. */
  readonly distance: number
}

/** Nearest by setting first, then by flow, among rows of a study on that family; null where there is none. */
export function nearestMeasurement(question: {
  readonly family: FamilyId
  readonly flowLpm: number
  readonly setO2Fraction?: number
}): NearestMeasurement | null {
  const candidates = EVIDENCE_ROWS.flatMap((row) => {
    const engine = measuredCase(row)
    if (engine === null || engine.family !== question.family) return []
    return [{ row, flowLpm: engine.flowLpm, distance: distanceOf(engine, question) }]
  })
  return candidates.toSorted((a, b) => a.distance - b.distance)[0] ?? null
}

/** Case of a row that holds one measured oxygen fraction of a study. */
function measuredCase(row: EvidenceRow): EngineCase | null {
  const isStudy =
    row.kind === 'model' &&
    row.source !== null &&
    row.known === 'seen' &&
    row.compare === 'equal' &&
    !row.isLimitingCase &&
    (row.use === 'judge' || row.use === 'calibrate') &&
    MEASURED.includes(row.quantity)
  return isStudy ? measuredEngine(row) : null
}

const MEASURED = ['effective', 'opening', 'pharynx', 'trachea', 'in-mask', 'end-expired']
/** A hundredth of set fraction counts as much as 1 L/min. */
const HUNDREDTHS = 100

function distanceOf(
  engine: EngineCase,
  question: { readonly flowLpm: number; readonly setO2Fraction?: number },
): number {
  const flow = Math.abs(engine.flowLpm - question.flowLpm)
  if (question.setO2Fraction === undefined || engine.setO2Fraction === undefined) return flow
  return flow + HUNDREDTHS * Math.abs(engine.setO2Fraction - question.setO2Fraction)
}
