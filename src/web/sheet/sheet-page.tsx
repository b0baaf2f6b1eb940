// The bedside sheet of the set-up named in the address, ready to print; no server is asked. Leaves out choosing the set-up.
import { useMemo, useState } from 'react'
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import { narrowShelf } from '../../kit/narrow-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { readFragment } from '../../sheet/fragment.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import { SHEET_WORDS } from '../../words/web-sheet-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import type { PlanRequest } from '../worker/core-api.ts'
import { usePlan } from '../worker/use-plan.ts'
import { Instead } from './instead.tsx'
import { SheetResult } from './sheet-result.tsx'
import { useFragment, withOwnCode } from './sheet-address.ts'
import '../styles/sheet.css'

export function SheetPage() {
  const fragment = useFragment()
  const read = useMemo(() => (fragment === '' ? null : readFragment(fragment)), [fragment])
  return (
    <main className="sheet-place" id="answer" tabIndex={-1}>
      <h1 className="sheet-heading">{SHEET_WORDS.heading}</h1>
      {read === null ? (
        <Instead said={[SHEET_WORDS.nothing]} />
      ) : read.ok ? (
        <OneSheet request={read.request} />
      ) : (
        <Instead said={[SHEET_WORDS.unreadable, ...read.problems.map(problemLineText)]} />
      )}
    </main>
  )
}

function OneSheet({ request }: { readonly request: SheetRequest }) {
  const { shelf } = useShelf()
  const [attempt, setAttempt] = useState(0)
  const asked = useMemo(() => planRequest(request, shelf), [request, shelf])
  const printed = useMemo(() => withOwnCode(request), [request])
  const state = usePlan(asked, attempt)
  if (asked === null) return <Instead said={[SHEET_WORDS.notOnShelf]} />
  return (
    <SheetResult
      request={printed}
      shelf={shelf}
      state={state}
      onRetry={() => setAttempt(attempt + 1)}
    />
  )
}

/** The case on as little of the shelf as the set-up needs; the ward is left out, which only says what lies where. Null: not on this shelf. */
function planRequest(request: SheetRequest, shelf: Shelf): PlanRequest | null {
  const found = candidateSetUps(shelf).find(({ id }) => id === request.setUpId)
  return found === undefined
    ? null
    : { about: request.case, shelf: narrowShelf(shelf, found.setUp) }
}
