// Whether the last import can still be undone: nothing else has changed the shelf since. Leaves out the undoing itself (shelf-store.ts).
import type { Shelf } from '../../kit/shelf.ts'
import { canUndo, chooseShelf, undoShelf } from './shelf-store.ts'

let imported: Shelf | null = null

export function takeImport(shelf: Shelf): void {
  imported = shelf
  chooseShelf(shelf)
}

/** Whether the shelf in use is the one that the last import made. */
export function isImportUndoable(shelf: Shelf): boolean {
  return imported === shelf && canUndo()
}

export function undoImport(): void {
  imported = null
  undoShelf()
}
