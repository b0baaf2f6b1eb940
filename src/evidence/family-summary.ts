// Bias, scatter and worst miss for each interface family, ours and the usual rule of thumb's on the same rows. Leaves out limiting cases and sign tests.
import { FAMILY_IDS } from '../kit/family-id.ts'
import type { FamilyId } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { Quantity } from './evidence-row.ts'
import { measuredEngine } from './measured-engine.ts'
import { ruleOfThumb } from './rules-of-thumb.ts'
import type { RuleId } from './rules-of-thumb.ts'
import type { RowOutcome } from './verdict.ts'

export interface MissSummary {
  readonly rows: number
  readonly bias: number
  readonly rms: number
  readonly worst: number
  readonly worstRowId: string
}

export interface FamilySummary {
  readonly family: FamilyId
  /** Whether any outside measurement judges the family: rows of a study, not of practice or guidelines. */
  readonly hasMeasurement: boolean
  readonly isChecked: boolean
  readonly judged: number
  readonly missed: number
  /** Oxygen fractions only; null without such a row. */
  readonly ours: MissSummary | null
  /** The rule of thumb on the rows it speaks of, and ours on those same rows. */
  readonly rule:
    | (MissSummary & { readonly ruleIds: readonly RuleId[]; readonly ours: MissSummary })
    | null
}

/** Quantities on the scale of an inspired fraction; expired oxygen counts with the usual difference added. */
const INSPIRED: readonly Quantity[] = ['effective', 'opening', 'pharynx', 'trachea', 'in-mask']
/** Inspired is commonly taken as expired + 0.06 at rest (common practice). */
const EXPIRED_DIFFERENCE = 0.06

export function familySummaries(outcomes: readonly RowOutcome[]): readonly FamilySummary[] {
  return FAMILY_IDS.map((family) =>
    summary(
      family,
      outcomes.filter((outcome) => outcome.row.family === family && isMeasuredModel(outcome)),
    ),
  )
}

/** A judged run of the engine that is no arithmetic of a limiting case. */
export function isMeasuredModel({ row }: RowOutcome): boolean {
  return row.kind === 'model' && row.use === 'judge' && !row.isLimitingCase
}

function summary(family: FamilyId, judged: readonly RowOutcome[]): FamilySummary {
  const ours = judged.flatMap((outcome) =>
    isFractionRow(outcome) ? [{ miss: outcome.miss, rowId: outcome.row.id }] : [],
  )
  const rules = judged.flatMap(ruleMiss)
  const ruleSummary = missSummary(rules)
  const same = missSummary(ours.filter(({ rowId }) => rules.some((rule) => rule.rowId === rowId)))
  return {
    family,
    hasMeasurement: judged.some(({ row }) => isMeasurement(row.known) && row.source !== null),
    isChecked: INTERFACE_FAMILIES[family].isChecked,
    judged: judged.length,
    missed: judged.filter(({ verdict }) => verdict !== 'pass').length,
    ours: missSummary(ours),
    rule:
      ruleSummary === null || same === null
        ? null
        : { ...ruleSummary, ruleIds: [...new Set(rules.map(({ rule }) => rule))], ours: same },
  }
}

function isMeasurement(known: string): boolean {
  return known === 'seen' || known === 'derived'
}

/** A fraction on the scale of an inspired one, to be met as a number. */
export function isFractionRow({ row }: RowOutcome): boolean {
  if (row.compare !== 'equal' || measuredEngine(row) === null) return false
  return INSPIRED.includes(row.quantity) || row.quantity === 'end-expired'
}

/** By how much the rule of thumb misses the row; empty where none speaks of it. */
export function ruleMiss(
  outcome: RowOutcome,
): readonly { readonly miss: number; readonly rowId: string; readonly rule: RuleId }[] {
  const { row } = outcome
  const engine = measuredEngine(row)
  if (!isFractionRow(outcome) || engine === null) return []
  const rule = ruleOfThumb(engine)
  if (rule === null) return []
  const inspired = row.publishedValue + (row.quantity === 'end-expired' ? EXPIRED_DIFFERENCE : 0)
  return [{ miss: rule.o2Fraction - inspired, rowId: row.id, rule: rule.rule }]
}

function missSummary(
  misses: readonly { readonly miss: number; readonly rowId: string }[],
): MissSummary | null {
  const worst = misses.toSorted((a, b) => Math.abs(b.miss) - Math.abs(a.miss))[0]
  if (worst === undefined) return null
  const sum = misses.reduce((total, { miss }) => total + miss, 0)
  const squares = misses.reduce((total, { miss }) => total + miss * miss, 0)
  return {
    rows: misses.length,
    bias: sum / misses.length,
    rms: Math.sqrt(squares / misses.length),
    worst: worst.miss,
    worstRowId: worst.rowId,
  }
}
