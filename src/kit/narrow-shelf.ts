// A shelf on which one set-up alone can be built, so that a plan of it is quick. Leaves out choosing it.
import type { SetUp } from './set-up.ts'
import type { Shelf } from './shelf.ts'

/** Only the set-up's interface and source can be taken, or nothing; the other sources stay, because what is on now is looked up among them. */
export function narrowShelf<S extends Pick<Shelf, 'interfaces' | 'sources'>>(
  shelf: S,
  setUp: Pick<SetUp, 'interfaceId' | 'source'> | null,
): S {
  return {
    ...shelf,
    interfaces: shelf.interfaces.filter(({ id }) => id === setUp?.interfaceId),
    sources: shelf.sources.map((row) => (row.id === setUp?.source.id ? row : { ...row, count: 0 })),
  }
}
