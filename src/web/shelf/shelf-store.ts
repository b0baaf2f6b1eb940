// The shelf this browser works with: the demo hospital's until another is opened; kept over reloads and shared by all places and windows. Leaves out showing and editing it.
import { use, useSyncExternalStore } from 'react'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
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
/** A promise while a kept shelf is being read. */
let current: ShelfChoice | Promise<ShelfChoice> | null = null

/** The shelf in use; waits while a kept one is read. One that no longer reads as a shelf is left where it is and not used. */
export function useShelf(): ShelfChoice {
  const now = useSyncExternalStore(subscribe, choiceNow)
  return now instanceof Promise ? use(now) : now
}

function choiceNow(): ShelfChoice | Promise<ShelfChoice> {
  current ??= keptShelf()
  return current
}

/** Shelves before the last changes in this window, the newest last. */
let before: readonly ShelfChoice[] = []
const UNDO_STEPS_MAX = 50

/** Works with this shelf from now on. `shelf` has been read by readShelf. */
export function chooseShelf(shelf: Shelf): void {
  remember()
  take({ shelf, isDemo: false, isKept: true })
}

export function chooseDemoShelf(): void {
  remember()
  take(DEMO)
}

/** Whether there is a change of this window to take back. */
export function canUndo(): boolean {
  return before.length > 0
}

/** The shelf as it was before the last change of this window. */
export function undoShelf(): void {
  const last = before.at(-1)
  if (last === undefined) return
  before = before.slice(0, -1)
  take(last)
}

function remember(): void {
  if (current === null || current instanceof Promise) return
  before = [...before, current].slice(-UNDO_STEPS_MAX)
}

function take(choice: ShelfChoice): void {
  const isKept = keep(choice.isDemo ? null : JSON.stringify(choice.shelf))
  current = { ...choice, isKept: isKept || choice.isDemo }
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
  // Taking back what was done here would take back what was done there too.
  before = []
  for (const tell of listeners) tell()
}

/** Most people keep none, so that the reader of shelves is loaded only for those who do. */
function keptShelf(): ShelfChoice | Promise<ShelfChoice> {
  const kept = keptText()
  return kept === null ? DEMO : readKept(kept)
}

async function readKept(kept: string): Promise<ShelfChoice> {
  const { readShelf } = await import('../../kit/read-shelf.ts')
  try {
    const read = readShelf(JSON.parse(kept))
    return read.ok ? { shelf: read.shelf, isDemo: false, isKept: true } : DEMO
  } catch {
    // A broken entry: the page starts with the demo shelf.
    return DEMO
  }
}

function keptText(): string | null {
  try {
    return localStorage.getItem(KEY)
  } catch {
    // Blocked storage keeps nothing.
    return null
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
