// The shelf this browser works with: the demo hospital's until another is opened; kept over reloads and shared by all places and windows. Leaves out showing and editing it.
import { useSyncExternalStore } from 'react'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { readShelf } from '../../kit/read-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'

export interface ShelfChoice {
  readonly shelf: Shelf
  /** Whether this is the invented shelf that the program brings along. */
  readonly isDemo: boolean
  /** Whether the browser keeps it; private windows may refuse. */
  readonly isKept: boolean
}

const KEY = 'oxwright.shelf.1'
const DEMO: ShelfChoice = { shelf: DEMO_SHELF, isDemo: true, isKept: true }

const listeners = new Set<() => void>()
let current: ShelfChoice | null = null

/** The shelf in use now. A kept one that no longer reads as a shelf is left where it is and not used. */
export function shelfNow(): ShelfChoice {
  current ??= keptShelf()
  return current
}

export function useShelf(): ShelfChoice {
  return useSyncExternalStore(subscribe, shelfNow)
}

/** Works with this shelf from now on. `shelf` has been read by readShelf. */
export function chooseShelf(shelf: Shelf): void {
  current = { shelf, isDemo: false, isKept: keep(JSON.stringify(shelf)) }
  for (const tell of listeners) tell()
}

export function chooseDemoShelf(): void {
  keep(null)
  current = DEMO
  for (const tell of listeners) tell()
}

function subscribe(tell: () => void): () => void {
  listeners.add(tell)
  addEventListener('storage', onOtherWindow)
  return () => {
    listeners.delete(tell)
    if (listeners.size === 0) removeEventListener('storage', onOtherWindow)
  }
}

function onOtherWindow(event: StorageEvent): void {
  if (event.key !== KEY && event.key !== null) return
  current = null
  for (const tell of listeners) tell()
}

function keptShelf(): ShelfChoice {
  try {
    const kept = localStorage.getItem(KEY)
    if (kept === null) return DEMO
    const read = readShelf(JSON.parse(kept))
    return read.ok ? { shelf: read.shelf, isDemo: false, isKept: true } : DEMO
  } catch {
    // Blocked storage or a broken entry: the page starts with the demo shelf.
    return DEMO
  }
}

function keep(text: string | null): boolean {
  try {
    if (text === null) localStorage.removeItem(KEY)
    else localStorage.setItem(KEY, text)
    return true
  } catch {
    return false
  }
}
