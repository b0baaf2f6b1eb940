// The shelf as it was before the last import, for undoing it as long as nothing else has changed the shelf since. Leaves out reloads.
import type { Shelf } from '../../kit/shelf.ts'
import { chooseDemoShelf, chooseShelf } from './shelf-store.ts'
import type { ShelfChoice } from './shelf-store.ts'

interface Taken {
  readonly before: ShelfChoice
  readonly after: Shelf
}

let last: Taken | null = null

export function takeImport(before: ShelfChoice, after: Shelf): void {
  last = { before, after }
  chooseShelf(after)
}

/** Whether the shelf in use is the one that the last import made. */
export function isImportUndoable(shelf: Shelf): boolean {
  return last !== null && last.after === shelf
}

export function undoImport(): void {
  if (last === null) return
  const { before } = last
  last = null
  if (before.isDemo) chooseDemoShelf()
  else chooseShelf(before.shelf)
}
