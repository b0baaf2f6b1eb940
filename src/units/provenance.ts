// Where a value comes from and how we know it. Holds no values itself.

/**
 * seen: read in the source; secondary: read in a text that quotes the source; memory: from memory,
 * not read; derived: arithmetic from stated inputs; common-practice: a fact of the trade without a source.
 */
export type Known = 'seen' | 'secondary' | 'memory' | 'derived' | 'common-practice'

/** How a value is known, and the source's key in docs/references.md where there is a source. */
export interface Provenance {
  readonly known: Known
  readonly source?: string
}
