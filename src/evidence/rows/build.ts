// Short ways to write rows. Holds no evidence.
import type { FamilyId } from '../../kit/family-id.ts'
import type { Known } from '../../units/provenance.ts'
import type { EngineCase } from '../engine-case.ts'
import type {
  Comparison,
  EvidenceRow,
  GasBasis,
  Quantity,
  Reproduction,
  RowUse,
  ToleranceReason,
} from '../evidence-row.ts'
import type { FormulaId } from '../formulas.ts'
import type { PeopleSpread } from '../people.ts'
import type { SourceKey } from '../sources.ts'

type Given = Readonly<Record<string, number>>

/** Cells of one published table, worked by one formula. */
export interface FormulaTable {
  readonly id: string
  readonly source: SourceKey | null
  readonly formula: FormulaId
  readonly condition: string
  readonly quantity: Quantity
  readonly unit: string
  readonly tolerance: number
  readonly reason: ToleranceReason
  readonly known: Known
  readonly use?: RowUse
  readonly family?: FamilyId
  readonly kind?: 'formula' | 'model'
  readonly cells: readonly (readonly [given: Given, publishedValue: number])[]
}

/** One row for each cell; the id ends in the given numbers. */
export function formulaRows(table: FormulaTable): readonly EvidenceRow[] {
  return table.cells.map(([given, publishedValue]) => ({
    id: `${table.id}-${Object.values(given).join('-')}`,
    kind: table.kind ?? 'formula',
    family: table.family ?? null,
    source: table.source,
    condition: table.condition,
    gas: 'one-condition',
    quantity: table.quantity,
    breathing: null,
    publishedValue,
    unit: table.unit,
    compare: 'equal',
    tolerance: { value: table.tolerance, reason: table.reason },
    known: table.known,
    use: table.use ?? 'judge',
    isLimitingCase: false,
    reproduce: { by: 'formula', formula: table.formula, given },
  }))
}

export interface EngineRow {
  readonly id: string
  readonly source: SourceKey | null
  readonly condition: string
  readonly engine: EngineCase
  readonly quantity: Quantity
  readonly publishedValue: number
  readonly tolerance: number
  readonly reason: ToleranceReason
  readonly known: Known
  readonly isBreathingStated?: boolean
  readonly compare?: Comparison
  readonly use?: RowUse
  readonly unit?: string
  /** A study on people: our mean over people who differ so, not one middle person. */
  readonly people?: PeopleSpread
  /** Other than one breath of `engine`. */
  readonly reproduce?: Reproduction
}

/** A row that runs the breath engine. */
export function engineRow(row: EngineRow): EvidenceRow {
  return {
    id: row.id,
    kind: 'model',
    family: row.engine.family,
    source: row.source,
    condition: row.condition,
    gas: row.engine.gas,
    quantity: row.quantity,
    breathing: { breath: row.engine.breath, isStated: row.isBreathingStated ?? false },
    publishedValue: row.publishedValue,
    unit: row.unit ?? '1',
    compare: row.compare ?? 'equal',
    tolerance: { value: row.tolerance, reason: row.reason },
    known: row.known,
    use: row.use ?? 'judge',
    isLimitingCase: row.engine.limit !== undefined,
    reproduce: row.reproduce ?? meanOf(row),
  }
}

function meanOf({ engine, people }: EngineRow): Reproduction {
  if (people === undefined) return { by: 'engine', engine }
  return { by: 'people', engine, people, statistic: 'mean' }
}

export interface TrendRow {
  readonly id: string
  readonly source: SourceKey | null
  readonly condition: string
  readonly from: EngineCase
  readonly to: EngineCase
  readonly quantity: Quantity
  readonly sign: 1 | -1
  readonly known?: Known
}

/** A sign test: the quantity in `to` minus that in `from`. */
export function trendRow(row: TrendRow): EvidenceRow {
  return engineRow({
    ...row,
    engine: row.to,
    publishedValue: row.sign,
    compare: 'sign',
    tolerance: 0.5,
    reason: 'direction-only',
    known: row.known ?? 'seen',
    use: 'trend',
    reproduce: { by: 'change', from: row.from, to: row.to },
  })
}

/** A limiting-case cell that the engine must meet within 0.005. */
export function limitRow(row: {
  readonly id: string
  readonly source: SourceKey | null
  readonly condition: string
  readonly engine: EngineCase
  readonly publishedValue: number
  readonly known: Known
}): EvidenceRow {
  return engineRow({
    ...row,
    quantity: 'opening',
    tolerance: LIMIT_TOLERANCE,
    reason: 'grid-error',
    isBreathingStated: true,
  })
}

/** What the engine may miss exact arithmetic by. */
export const LIMIT_TOLERANCE = 0.005

/** Columns of a printed table as [column, value] pairs, blanks left out. */
export function across(
  columns: readonly number[],
  values: readonly (number | null)[],
): readonly (readonly [column: number, value: number])[] {
  return columns.flatMap((column, i) => {
    const value = values[i] ?? null
    return value === null ? [] : [[column, value] as const]
  })
}

/** Same case at body conditions with the flow as read on a meter. */
export const METERED: GasBasis = 'btps-from-meter'
export const ONE_CONDITION: GasBasis = 'one-condition'
