// Reads the ends of a part and the flows on its label. Leaves out what they mate with.
import { END_IDS } from './ends.ts'
import type { EndId } from './ends.ts'
import { at, given, has, readChoice, readList, readNumber, report } from './read-fields.ts'
import type { Given, Opened } from './read-fields.ts'
import type { LabelFlow, OwnEnds } from './shelf-row.ts'
import { RULES } from './shelf-rules.ts'

export function readEnd(node: Opened, key: string): EndId | undefined {
  return has(node, key) ? readChoice(node, key, END_IDS) : undefined
}

/** A list of ends, absent or present. */
export function readEnds(node: Opened, key: string): readonly EndId[] | undefined {
  return readList(node, key)?.flatMap((value, i) => {
    const path = `${at(node, key)}[${i}]`
    const entry = { ...node, path: '', fields: new Map([[path, value]]) }
    return readChoice(entry, path, END_IDS) ?? []
  })
}

export function readOwnEnds(node: Opened): OwnEnds {
  return given({
    inletEnds: readEnds(node, 'inletEnds'),
    outletEnd: readEnd(node, 'outletEnd'),
  })
}

/** Flows from the label; the lower must not lie above the higher. */
export function readLabelFlow(node: Opened): LabelFlow {
  const label: Given<{ ratedMinLpm: number | undefined; ratedMaxLpm: number | undefined }> = given({
    ratedMinLpm: readNumber(node, 'ratedMinLpm', RULES.ratedLpm),
    ratedMaxLpm: readNumber(node, 'ratedMaxLpm', RULES.ratedLpm),
  })
  reportSwapped(node, { lower: 'ratedMinLpm', higher: 'ratedMaxLpm', unit: 'L/min' })
  return label
}

/** Reports a lower bound that lies above its higher one; both as typed. */
export function reportSwapped(
  node: Opened,
  pair: { readonly lower: string; readonly higher: string; readonly unit: string },
): void {
  const min = node.fields.get(pair.lower)
  const max = node.fields.get(pair.higher)
  if (typeof min !== 'number' || typeof max !== 'number' || min <= max) return
  report(node, {
    code: 'RANGE_REVERSED',
    path: at(node, pair.higher),
    value: max,
    limit: { min },
    unit: pair.unit,
  })
}
