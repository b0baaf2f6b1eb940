// The interfaces of a shelf as one choice each, with the fraction set where there is one to set, and whether a mask with a flow of its own is over it. Leaves out flows.
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import type { FamilyId } from '../../kit/family-id.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { SourceKind } from '../../kit/source-row.ts'

export interface Wearable {
  readonly key: string
  readonly family: FamilyId
  readonly setO2Fraction: number | null
  readonly sourceKind: SourceKind
  /** The mask over it, which has a flow of its own. */
  readonly overFamily: 'simple-mask' | null
}

/** One for each family and setting, in the order of the shelf; of several sources the plain wall flowmeter. */
export function wearablesOf(shelf: Shelf): readonly Wearable[] {
  const found = new Map<string, Wearable>()
  for (const { setUp } of candidateSetUps(shelf)) {
    const { family, setO2Fraction } = setUp
    const sourceKind = setUp.source.kind
    const key = `${family}:${setO2Fraction ?? ''}`
    const known = found.get(key)
    if (known === undefined || (sourceKind === PLAIN && known.sourceKind !== PLAIN))
      found.set(key, {
        key,
        family,
        setO2Fraction,
        sourceKind,
        overFamily: setUp.over?.family ?? null,
      })
  }
  return [...found.values()]
}

const PLAIN: SourceKind = 'wall-flowmeter'
