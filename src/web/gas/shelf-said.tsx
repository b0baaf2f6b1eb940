// Which shelf the meters and sources of an answer are of. Leaves out what lies on it.
import { shelfSaidText } from '../../words/gas-page-text.ts'
import { useShelf } from '../shelf/shelf-store.ts'

export function ShelfSaid() {
  const { shelf, isDemo } = useShelf()
  return <p className="field-help">{shelfSaidText({ hospital: shelf.hospital, isDemo })}</p>
}
