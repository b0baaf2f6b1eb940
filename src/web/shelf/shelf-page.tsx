// The Shelf page: the shelf in use, out to files and in from them. Leaves out editing rows by hand.
import { SHELF_PAGE_WORDS, shelfInUseText } from '../../words/web-shelf-import-text.ts'
import { ImportPart } from './import-part.tsx'
import { useShelf } from './shelf-store.ts'
import '../styles/shelf-import.css'

export function ShelfPage() {
  const { shelf, isDemo } = useShelf()
  const { hospital, isInvented = false } = shelf
  const inUse = shelfInUseText({ hospital, isDemo, isInvented })
  return (
    <main className="shelf-page" id="answer" tabIndex={-1}>
      <h1 className="shelf-heading">{SHELF_PAGE_WORDS.heading}</h1>
      <p className="field-help">{inUse}</p>
      <ImportPart />
    </main>
  )
}
