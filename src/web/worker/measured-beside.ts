// The published measurement nearest to a set-up and how our model does under the study's own conditions, loaded when first asked for. Leaves out the other rows.
import { nearestMeasurement } from '../../evidence/nearest-measurement.ts'
import type { Quantity } from '../../evidence/evidence-row.ts'
import { SOURCES } from '../../evidence/sources.ts'
import { judgeRow } from '../../evidence/verdict.ts'
import type { FamilyId } from '../../kit/family-id.ts'

export interface MeasuredQuestion {
  readonly family: FamilyId
  readonly flowLpm: number
  readonly setO2Fraction: number | null
}

export interface MeasuredBeside {
  /** Id of the row on the Evidence page. */
  readonly rowId: string
  readonly condition: string
  readonly quantity: Quantity
  readonly flowLpm: number
  readonly publishedO2Fraction: number
  /** Of our model, under the study's conditions. */
  readonly modelO2Fraction: number
  readonly source: string
  readonly citation: string
}

/** Null where no study measured the family. */
export function measuredBeside(question: MeasuredQuestion): MeasuredBeside | null {
  const { setO2Fraction, ...asked } = question
  const nearest = nearestMeasurement({
    ...asked,
    ...(setO2Fraction === null ? {} : { setO2Fraction }),
  })
  if (nearest === null) return null
  const { row, flowLpm } = nearest
  return {
    rowId: row.id,
    condition: row.condition,
    quantity: row.quantity,
    flowLpm,
    publishedO2Fraction: row.publishedValue,
    modelO2Fraction: judgeRow(row).ourValue,
    source: row.source ?? '',
    citation: row.source === null ? '' : SOURCES[row.source].citation,
  }
}
