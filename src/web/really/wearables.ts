// The interfaces of a shelf as one choice each, with the fraction set where there is one to set. Leaves out flows.
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import type { FamilyId } from '../../kit/family-id.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { SourceKind } from '../../kit/source-row.ts'

export interface Wearable {
  readonly key: string
  readonly family: FamilyId
  readonly setO2Fraction: number | null
  readonly sourceKind: SourceKind
}

/** One for each family and setting, in the order of the shelf; of several sources the plain wall flowmeter. Two flows need the whole form. */
export function wearablesOf(shelf: Shelf): readonly Wearable[] {
  const found = new Map<string, Wearable>()
  for (const { setUp } of candidateSetUps(shelf)) {
    const { family, setO2Fraction } = setUp
    const sourceKind = setUp.source.kind
    if (setUp.over !== null) continue
    const key = `${family}:${setO2Fraction ?? ''}`
    const known = found.get(key)
    if (known === undefined || (sourceKind === PLAIN && known.sourceKind !== PLAIN))
      found.set(key, { key, family, setO2Fraction, sourceKind })
  }
  return [...found.values()]
}

const PLAIN: SourceKind = 'wall-flowmeter'
