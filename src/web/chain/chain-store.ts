// Keeps what was picked on the Chain page in this browser, so that a reload loses nothing. Leaves out judging it.
import { FIRST_CHOICE } from './chain-choice.ts'
import type { ChainChoice } from './chain-choice.ts'

const KEY = 'oxwright.chain.1'

/** Null where nothing was picked yet. */
export function keptChoice(storage: Pick<Storage, 'getItem'>): ChainChoice | null {
  try {
    const kept: unknown = JSON.parse(storage.getItem(KEY) ?? 'null')
    if (typeof kept !== 'object' || kept === null) return null
    const texts = Object.entries(kept).filter(
      ([key, value]) => key in FIRST_CHOICE && typeof value === 'string',
    )
    return { ...FIRST_CHOICE, ...Object.fromEntries(texts) }
  } catch {
    // Blocked storage or a broken entry: the page starts with its own choice.
    return null
  }
}

export function keepChoice(storage: Pick<Storage, 'setItem'>, choice: ChainChoice): void {
  try {
    storage.setItem(KEY, JSON.stringify(choice))
  } catch {
    // Private windows may refuse; the page works without.
  }
}
