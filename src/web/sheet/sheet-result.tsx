// What stands on the sheet page once the plan is asked: work going on, a refusal, or the sheet with its tools. Leaves out the paper.
import { useMemo } from 'react'
import { Button } from 'react-aria-components'
import { useLocation } from 'wouter'
import type { Shelf } from '../../kit/shelf.ts'
import { writeCase } from '../../patient/write-case.ts'
import { MODEL_VERSION } from '../../planning/plan.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import { sheetChain } from '../../sheet/sheet-chain.ts'
import { makeSheet } from '../../sheet/sheet.ts'
import type { Sheet, SheetAnswer } from '../../sheet/sheet.ts'
import { reasonText } from '../../words/remark-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { otherModelText, SHEET_WORDS } from '../../words/web-sheet-text.ts'
import { draftOfFile } from '../case/draft.ts'
import { keepDraft } from '../case/draft-store.ts'
import type { Planned, PlanState } from '../worker/use-plan.ts'
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
  const answer = useMemo(
    () => (planned === null ? null : answerOf({ request, shelf, planned })),
    [planned, request, shelf],
  )
  if (problem !== null || failure !== null) {
    return (
      <div className="sheet-instead" role="alert">
        <p>{PAGE_WORDS.failedHeading}</p>
        <p>{problem === null ? failure : problemLineText(problem)}</p>
        <Button className="button" onPress={onRetry}>
          {PAGE_WORDS.tryAgain}
        </Button>
      </div>
    )
  }
  if (isWorking || answer === null) return <p className="sheet-working">{PAGE_WORDS.working}</p>
  if (!answer.ok) {
    const reasons = answer.why === 'ruled-out' ? answer.reasons.map(reasonText) : []
    return <Instead said={[SHEET_WORDS.ruledOut, ...reasons]} />
  }
  return <Made request={request} shelf={shelf} sheet={answer.sheet} />
}

function answerOf(asked: {
  readonly request: SheetRequest
  readonly shelf: Shelf
  readonly planned: Planned
}): SheetAnswer {
  const { request, shelf, planned } = asked
  const row = planned.plan.ranked.find(({ id }) => id === request.setUpId)
  const chain =
    row === undefined ? null : sheetChain({ about: request.case, setUp: row.setUp, shelf })
  return makeSheet({ request, plan: planned.plan, shelf, chain })
}

function Made(props: {
  readonly request: SheetRequest
  readonly shelf: Shelf
  readonly sheet: Sheet
}) {
  const { request, sheet } = props
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
      <SheetPaper {...props} />
    </>
  )
}
