// The set-up in sight on Bedside, kept so that Chain can begin with it. Leaves out the case, which the draft keeps.

const KEY = 'oxwright.in-sight.1'

/** As an address of Chain names it; empty where none was in sight. */
export function keptInSight(storage: Pick<Storage, 'getItem'>): string {
  try {
    return storage.getItem(KEY) ?? ''
  } catch {
    // Blocked storage: Chain begins with its own choice.
    return ''
  }
}

export function keepInSight(storage: Pick<Storage, 'setItem'>, search: string): void {
  try {
    storage.setItem(KEY, search)
  } catch {
    // Private windows may refuse; Chain then begins with its own choice.
  }
}
