// Reads what every row of a shelf file has: id, label, place, marking. Leaves out the row's own fields.
import { given, readChoice, readOptionalText, readText } from './read-fields.ts'
import type { Opened } from './read-fields.ts'

export interface RowHead {
  readonly id: string
  readonly label: string
  readonly place: string
  readonly wardMarking?: string
}

/** The places are `everywhere` and the ids of the wards. */
export function readRow(node: Opened, places: readonly string[]): RowHead | undefined {
  const id = readText(node, 'id')
  const label = readText(node, 'label')
  const place = readChoice(node, 'place', places)
  const wardMarking = readOptionalText(node, 'wardMarking')
  if (id === undefined || label === undefined || place === undefined) return undefined
  return { id, label, place, ...given({ wardMarking }) }
}
