// The row being typed, kept in this browser until it is on the shelf or given up. Leaves out judging it.
import { useEffect, useState } from 'react'
import { ROW_LISTS } from '../../kit/edit-shelf.ts'
import type { RowList } from '../../kit/edit-shelf.ts'
import type { RowDraft } from './row-draft.ts'

/** `wards` and the hospital itself stand beside the lists of parts. */
export type DraftList = RowList | 'wards' | 'hospital'

export interface OpenDraft {
  readonly list: DraftList
  /** Null for a row that is not on the shelf yet. */
  readonly id: string | null
  readonly draft: RowDraft
}

const KEY = 'oxwright.shelf-draft.1'

export function useKeptDraft(): readonly [OpenDraft | null, (open: OpenDraft | null) => void] {
  const [open, setOpen] = useState(kept)
  useEffect(() => {
    try {
      if (open === null) localStorage.removeItem(KEY)
      else localStorage.setItem(KEY, JSON.stringify(open))
    } catch {
      // Blocked storage: what is typed lasts until the page is left.
    }
  }, [open])
  return [open, setOpen]
}

function kept(): OpenDraft | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null')
    return isOpenDraft(found) ? found : null
  } catch {
    // Blocked storage or a broken entry: nothing was being typed.
    return null
  }
}

function isOpenDraft(found: unknown): found is OpenDraft {
  if (typeof found !== 'object' || found === null) return false
  const { list, id, draft } = found as Partial<Record<keyof OpenDraft, unknown>> // Safe: each is looked at below.
  const isList = list === 'wards' || list === 'hospital' || ROW_LISTS.some((one) => one === list)
  const isId = id === null || typeof id === 'string'
  return isList && isId && isTexts(draft)
}

function isTexts(found: unknown): boolean {
  return (
    typeof found === 'object' &&
    found !== null &&
    Object.values(found).every((text) => typeof text === 'string')
  )
}
