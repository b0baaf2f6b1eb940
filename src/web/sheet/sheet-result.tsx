// What stands on the sheet page once the plan is asked: work going on, a refusal, or the sheet with its tools. Leaves out the paper.
import type { Remote } from 'comlink'
import { useMemo } from 'react'
import { useLocation } from 'wouter'
import type { Shelf } from '../../kit/shelf.ts'
import { writeCase } from '../../patient/write-case.ts'
import { MODEL_VERSION } from '../../planning/plan.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import type { Sheet } from '../../sheet/sheet.ts'
import { noSheetLines } from '../../words/sheet-refusal.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { otherModelText } from '../../words/web-sheet-text.ts'
import { draftOfFile } from '../case/draft.ts'
import { keepDraft } from '../case/draft-store.ts'
import { BrokeOff } from '../parts/broke-off.tsx'
import type { ChainApi, SheetAsked } from '../worker/chain-api.ts'
import { useChainAnswer } from '../worker/use-chain-answer.ts'
import type { PlanState } from '../worker/use-plan.ts'
import { Instead } from './instead.tsx'
import { SheetPaper } from './sheet-paper.tsx'
import { SheetTools } from './sheet-tools.tsx'

export interface SheetResultProps {
  readonly request: SheetRequest
  readonly shelf: Shelf
  readonly state: PlanState
  readonly onRetry: () => void
}

export function SheetResult({ request, shelf, state, onRetry }: SheetResultProps) {
  const { planned, isWorking, problem, failure } = state
  const asked = useMemo(
    () => (planned === null || isWorking ? null : { request, shelf, plan: planned.plan }),
    [planned, isWorking, request, shelf],
  )
  const answer = useChainAnswer({ slot: 'sheet', question: asked, ask })
  if (problem !== null || failure !== null)
    return (
      <BrokeOff
        said={problem === null ? (failure ?? '') : problemLineText(problem)}
        onRetry={onRetry}
      />
    )
  if (answer.kind === 'failed') return <BrokeOff said={answer.failure} onRetry={answer.retry} />
  if (answer.kind === 'refused') return <Instead said={[problemLineText(answer.problem)]} />
  if (answer.kind === 'waiting') return <SheetWorking />
  const { value, isStale } = answer
  if (value.ok)
    return <Made request={request} shelf={shelf} sheet={value.sheet} isWorking={isStale} />
  if (isStale) return <SheetWorking />
  return <Instead said={noSheetLines(value)} />
}

const ask = async (core: Remote<ChainApi>, asked: SheetAsked) => await core.sheet(asked)

function SheetWorking() {
  return <output className="sheet-working">{PAGE_WORDS.working}</output>
}

/** While another is worked out its tools stay, with what is typed in them; the paper does not. */
function Made(props: {
  readonly request: SheetRequest
  readonly shelf: Shelf
  readonly sheet: Sheet
  readonly isWorking: boolean
}) {
  const { request, shelf, sheet, isWorking } = props
  const [, navigate] = useLocation()
  const openCase = (): void => {
    const file = { id: '', about: request.case }
    // Its plan counts from when the patient was read, not from when the sheet is opened.
    const readAtMs = Date.parse(request.readAt)
    keepDraft(localStorage, draftOfFile(writeCase(request.case), file), readAtMs)
    navigate('/')
  }
  return (
    <>
      <SheetTools request={request} sheet={sheet} onOpenCase={openCase} />
      {request.modelVersion === MODEL_VERSION ? null : (
        <p className="sheet-other-model">{otherModelText(request.modelVersion, MODEL_VERSION)}</p>
      )}
      {isWorking ? <SheetWorking /> : <SheetPaper request={request} shelf={shelf} sheet={sheet} />}
    </>
  )
}
