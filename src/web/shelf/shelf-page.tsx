// Shelf: what this hospital has, to browse, search, count, add and edit; or the one row being typed. Leaves out the shelf file's reading and the rows themselves.
import { useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { rowsOf, withoutRow } from '../../kit/edit-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { translated } from '../../words/say.ts'
import { addedText, changedText, removedText, SHELF_PAGE } from '../../words/shelf-page-text.ts'
import { HospitalForm } from './hospital-form.tsx'
import { ImportPart } from './import-part.tsx'
import { useKeptDraft } from './kept-draft.ts'
import type { OpenDraft } from './kept-draft.ts'
import { putDraft } from './open-draft.ts'
import { draftOf } from './row-draft.ts'
import { RowForm } from './row-form.tsx'
import { ShelfLists } from './shelf-lists.tsx'
import { canUndo, chooseShelf, undoShelf, useShelf } from './shelf-store.ts'
import { ShelfTop } from './shelf-top.tsx'
import { WardForm } from './ward-part.tsx'
import '../styles/shelf.css'

/** What was done last, for all who listen; a change can be taken back. */
interface Said {
  readonly text: string
  readonly isChange: boolean
}

const NOTHING: Said = { text: '', isChange: false }

export function ShelfPage() {
  const { shelf, isDemo, isKept } = useShelf()
  const [open, setOpen] = useKeptDraft()
  /** A draft kept from before is offered, not thrown at the reader. */
  const [isEntered, setEntered] = useState(false)
  const [isJudged, setJudged] = useState(false)
  const [said, setSaid] = useState(NOTHING)
  const enter = (draft: OpenDraft | null): void => {
    setOpen(draft)
    setEntered(draft !== null)
    setJudged(false)
  }
  const enterNew = (draft: OpenDraft): void => {
    // What waits to be put on the shelf is not typed over.
    if (open === null) enter(draft)
    else setSaid({ text: SHELF_PAGE.draftFirst(), isChange: false })
  }
  const take = (next: Shelf, text: string): void => {
    const isChange = next !== shelf
    if (isChange) chooseShelf(next)
    setSaid({ text, isChange })
  }
  const save = (): void => {
    if (open === null) return
    const put = putDraft(shelf, open)
    if (!put.ok) {
      setJudged(true)
      return
    }
    const isNew = open.id === null && open.list !== 'hospital'
    take(put.shelf, (isNew ? addedText : changedText)(nameIn(open)))
    enter(null)
  }
  const problems = useMemo(() => {
    if (!isJudged || open === null) return []
    const put = putDraft(shelf, open)
    return put.ok ? [] : put.problems
  }, [isJudged, open, shelf])
  const form = {
    draft: open?.draft ?? {},
    name: open === null ? '' : nameOf(shelf, open),
    problems,
    onDraft: (draft: OpenDraft['draft']) => setOpen(open === null ? null : { ...open, draft }),
    onSave: save,
    onCancel: () => enter(null),
  }
  return (
    <main className="shelf wide-place" id="answer" tabIndex={-1}>
      <ShelfTop
        shelf={shelf}
        isDemo={isDemo}
        isKept={isKept}
        onDemo={() => setSaid(NOTHING)}
        kept={open !== null && !isEntered ? nameIn(open) : null}
        onGoOn={() => setEntered(true)}
        onForget={() => enter(null)}
        onEdit={
          isEntered
            ? null
            : () => {
                const { hospital, altitudeM, isInvented } = shelf
                const draft = draftOf({ hospital, altitudeM, isInvented })
                enterNew({ list: 'hospital', id: null, draft })
              }
        }
      />
      {open === null || !isEntered ? (
        <>
          <ShelfLists
            shelf={shelf}
            onShelf={take}
            onOpen={enterNew}
            onRemove={(list, row) =>
              take(withoutRow(shelf, list, row.id), removedText(translated(row.label)))
            }
          />
          <ImportPart />
        </>
      ) : open.list === 'hospital' ? (
        <HospitalForm {...form} />
      ) : open.list === 'wards' ? (
        <WardForm {...form} />
      ) : (
        <RowForm {...form} shelf={shelf} list={open.list} />
      )}
      <p className="field-help">{isDemo ? SHELF_PAGE.demoEdit() : SHELF_PAGE.own()}</p>
      <div className="shelf-said" aria-live="polite" data-said={said.text !== ''}>
        <span>{said.text}</span>
        {said.isChange && canUndo() ? (
          <Button
            className="button"
            onPress={() => {
              undoShelf()
              setSaid(NOTHING)
            }}
          >
            {SHELF_PAGE.undo()}
          </Button>
        ) : null}
      </div>
    </main>
  )
}

/** The name as it is typed so far. */
function nameIn({ draft }: OpenDraft): string {
  return draft['label'] ?? draft['name'] ?? draft['hospital'] ?? ''
}

function nameOf(shelf: Shelf, { list, id }: OpenDraft): string {
  if (list === 'hospital') return shelf.hospital
  if (id === null) return ''
  if (list === 'wards') return shelf.wards.find((ward) => ward.id === id)?.name ?? id
  return rowsOf(shelf, list).find((row) => row.id === id)?.label ?? id
}
