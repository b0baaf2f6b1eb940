// Which outside checks are shown, and in what order: misses first. Leaves out how a check is shown.
import type { EvidenceRow, Quantity } from '../../evidence/evidence-row.ts'
import type { RowOutcome } from '../../evidence/verdict.ts'

export const ROW_GROUPS = [
  'measured',
  'formula',
  'limiting',
  'trend',
  'calibrate',
  'context',
] as const
export type RowGroup = (typeof ROW_GROUPS)[number]

export const RESULTS = ['miss', 'pass', 'none'] as const
export type Result = (typeof RESULTS)[number]

/** Empty texts let everything through. */
export interface Filters {
  readonly family: string
  readonly group: string
  readonly source: string
  readonly quantity: string
  readonly result: string
  readonly text: string
}

export const NO_FILTERS: Filters = {
  family: '',
  group: '',
  source: '',
  quantity: '',
  result: '',
  text: '',
}

export function groupOf(row: EvidenceRow): RowGroup {
  if (row.use !== 'judge') return row.use
  if (row.kind === 'formula') return 'formula'
  return row.isLimitingCase ? 'limiting' : 'measured'
}

export function resultOf({ verdict }: RowOutcome): Result {
  if (verdict === 'none' || verdict === 'pass') return verdict
  return 'miss'
}

/** `textOf`: all that is said of a row, for the search. */
export function passes(
  outcome: RowOutcome,
  filters: Filters,
  textOf: (outcome: RowOutcome) => string,
): boolean {
  const { row } = outcome
  return (
    isAsked(filters.family, row.family) &&
    isAsked(filters.group, groupOf(row)) &&
    isAsked(filters.source, row.source) &&
    isAsked(filters.quantity, row.quantity) &&
    isAsked(filters.result, resultOf(outcome)) &&
    holdsWords(filters.text, () => textOf(outcome))
  )
}

function isAsked(wanted: string, value: string | null): boolean {
  return wanted === '' || wanted === value
}

/** Every word typed stands somewhere in the text. */
function holdsWords(typed: string, textOf: () => string): boolean {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  if (words.length === 0) return true
  const text = textOf().toLowerCase()
  return words.every((word) => text.includes(word))
}

/** Misses first, the worst in units of its tolerance at the head; the others as they stand. */
export function missesFirst(outcomes: readonly RowOutcome[]): readonly RowOutcome[] {
  const isMissed = (outcome: RowOutcome): boolean => resultOf(outcome) === 'miss'
  const share = ({ miss, row }: RowOutcome): number => Math.abs(miss) / row.tolerance.value
  return [
    ...outcomes.filter(isMissed).toSorted((a, b) => share(b) - share(a)),
    ...outcomes.filter((outcome) => !isMissed(outcome)),
  ]
}

export function sourcesOf(outcomes: readonly RowOutcome[]): readonly string[] {
  const keys = outcomes.flatMap(({ row }) => (row.source === null ? [] : [row.source]))
  return [...new Set<string>(keys)].toSorted((a, b) => a.localeCompare(b))
}

export function quantitiesOf(outcomes: readonly RowOutcome[]): readonly Quantity[] {
  return [...new Set(outcomes.map(({ row }) => row.quantity))]
}
