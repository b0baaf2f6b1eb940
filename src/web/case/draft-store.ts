// Keeps the typed case in this browser, so that a reload loses nothing. Leaves out any server.
import { CHANGES } from '../../patient/case.ts'
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { quantityAt } from '../../words/shown-unit.ts'
import type { Draft } from './draft.ts'

const KEY = 'oxwright.draft.1'
const TYPED_AT_KEY = 'oxwright.draft.1.typed-at'

/** What is kept, or undefined where nothing is or it cannot be read. */
export function keptDraft(storage: Pick<Storage, 'getItem'>): Draft | undefined {
  try {
    const kept: unknown = JSON.parse(storage.getItem(KEY) ?? 'null')
    return isDraft(kept)
      ? { ...kept, changes: CHANGES.filter((change) => kept.changes.includes(change)) }
      : undefined
  } catch {
    // Blocked storage or a broken entry: the page starts without it.
    return undefined
  }
}

/** When the kept draft was last typed or confirmed, ms since 1970; undefined where that is not known. */
export function keptTypedAt(storage: Pick<Storage, 'getItem'>): number | undefined {
  try {
    const kept = Number(storage.getItem(TYPED_AT_KEY) ?? Number.NaN)
    return Number.isFinite(kept) ? kept : undefined
  } catch {
    return undefined
  }
}

/** Whether it could be kept; private windows may refuse. */
export function keepDraft(
  storage: Pick<Storage, 'setItem'>,
  draft: Draft,
  typedAtMs: number,
): boolean {
  try {
    storage.setItem(TYPED_AT_KEY, String(typedAtMs))
    storage.setItem(KEY, JSON.stringify(draft))
    return true
  } catch {
    return false
  }
}

function isDraft(kept: unknown): kept is Draft {
  if (typeof kept !== 'object' || kept === null) return false
  const { texts, changes, units, exampleId } = kept as Partial<Record<keyof Draft, unknown>>
  return (
    typeof texts === 'object' &&
    texts !== null &&
    Object.values(texts).every((text) => typeof text === 'string') &&
    Array.isArray(changes) &&
    (units === undefined || areUnits(units)) &&
    (exampleId === null || typeof exampleId === 'string')
  )
}

/** Every unit one of its field's own: a text whose unit is lost must not be read in another. */
function areUnits(units: unknown): boolean {
  if (typeof units !== 'object' || units === null) return false
  return Object.entries(units).every(([field, unit]) => {
    const quantity = quantityAt(field)
    return quantity !== undefined && CHOOSABLE_UNITS[quantity].some((one) => one === unit)
  })
}
