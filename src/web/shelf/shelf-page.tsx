// Shelf: what this hospital has, to browse, search, count, add and edit; or the one row being typed. Leaves out the shelf file's reading and the rows themselves.
import { useState } from 'react'
import { rowsOf, withoutRow } from '../../kit/edit-shelf.ts'
import type { RowList } from '../../kit/edit-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { addedText, changedText, removedText, SHELF_PAGE } from '../../words/shelf-page-text.ts'
import { ImportPart } from './import-part.tsx'
import { useKeptDraft } from './kept-draft.ts'
import type { OpenDraft } from './kept-draft.ts'
import { putDraft } from './open-draft.ts'
import { RowForm } from './row-form.tsx'
import { ShelfLists } from './shelf-lists.tsx'
import { chooseShelf, useShelf } from './shelf-store.ts'
import { ShelfTop } from './shelf-top.tsx'
import { WardForm } from './ward-part.tsx'
import '../styles/gas.css'
import '../styles/shelf.css'

export function ShelfPage() {
  const { shelf, isDemo, isKept } = useShelf()
  const [open, setOpen] = useKeptDraft()
  /** A draft kept from before is offered, not thrown at the reader. */
  const [isEntered, setEntered] = useState(false)
  const [isJudged, setJudged] = useState(false)
  const [said, setSaid] = useState('')
  const enter = (draft: OpenDraft | null): void => {
    setOpen(draft)
    setEntered(draft !== null)
    setJudged(false)
  }
  const take = (next: Shelf, what: string): void => {
    if (next !== shelf) chooseShelf(next)
    setSaid(what)
  }
  const putting = open === null ? null : putDraft(shelf, open)
  const save = (): void => {
    if (open === null || putting === null) return
    if (!putting.ok) {
      setJudged(true)
      return
    }
    const label = open.draft['label'] ?? open.draft['name'] ?? ''
    take(putting.shelf, open.id === null ? addedText(label) : changedText(label))
    enter(null)
  }
  const form = {
    draft: open?.draft ?? {},
    name: open === null ? '' : nameOf(shelf, open),
    problems: isJudged && putting !== null && !putting.ok ? putting.problems : [],
    onDraft: (draft: OpenDraft['draft']) => setOpen(open === null ? null : { ...open, draft }),
    onSave: save,
    onCancel: () => enter(null),
  }
  return (
    <main className="shelf" id="answer" tabIndex={-1}>
      <ShelfTop
        shelf={shelf}
        isDemo={isDemo}
        isKept={isKept}
        said={said}
        onSaid={setSaid}
        kept={
          open !== null && !isEntered ? (open.draft['label'] ?? open.draft['name'] ?? '') : null
        }
        onGoOn={() => setEntered(true)}
        onForget={() => enter(null)}
      />
      {open === null || !isEntered ? (
        <>
          <ShelfLists
            shelf={shelf}
            onShelf={take}
            onOpen={enter}
            onRemove={(list, row) => take(withoutRow(shelf, list, row.id), removedText(row.label))}
          />
          <ImportPart />
        </>
      ) : open.list === 'wards' ? (
        <WardForm {...form} />
      ) : (
        <RowForm {...form} shelf={shelf} list={open.list} />
      )}
      <p className="shelf-foot field-help">{isDemo ? SHELF_PAGE.demoEdit() : SHELF_PAGE.own()}</p>
    </main>
  )
}

function nameOf(shelf: Shelf, { list, id }: OpenDraft): string {
  if (id === null) return ''
  if (list === 'wards') return shelf.wards.find((ward) => ward.id === id)?.name ?? id
  const rows: ReturnType<typeof rowsOf> = rowsOf(shelf, list satisfies RowList)
  return rows.find((row) => row.id === id)?.label ?? id
}
