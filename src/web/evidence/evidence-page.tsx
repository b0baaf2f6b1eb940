// The Evidence page: every outside check, ours beside theirs. Leaves out how checks are run, which the worker does.
import { useCallback, useState } from 'react'
import { Button, Label, ProgressBar } from 'react-aria-components'
import { evidencePlotSvg, evidencePlotText } from '../../pictures/evidence-plot.ts'
import { countLines } from '../../words/evidence-text.ts'
import { checksText, EVIDENCE_PAGE } from '../../words/web-evidence-text.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import type { EvidenceAnswer } from '../worker/evidence-answer.ts'
import { Families } from './families.tsx'
import { Rows } from './rows.tsx'
import { useEvidence } from './use-evidence.ts'
import type { EvidenceState } from './use-evidence.ts'
import '../styles/evidence.css'

export function EvidencePage() {
  const [attempt, setAttempt] = useState(0)
  return <Checks key={attempt} onRetry={() => setAttempt(attempt + 1)} />
}

function Checks({ onRetry }: { readonly onRetry: () => void }) {
  const state = useEvidence()
  return (
    <main className="evidence" id="answer" tabIndex={-1} aria-busy={state.answer === null}>
      <h1 className="evidence-heading">{EVIDENCE_PAGE.heading}</h1>
      <p className="field-help">{EVIDENCE_PAGE.lead}</p>
      {state.answer === null ? (
        <Waiting state={state} onRetry={onRetry} />
      ) : (
        <Shown answer={state.answer} />
      )}
    </main>
  )
}

function Waiting(props: { readonly state: EvidenceState; readonly onRetry: () => void }) {
  const { progress, failure } = props.state
  if (failure !== null) {
    return (
      <div className="refused" role="alert">
        <h2>{PAGE_WORDS.failedHeading}</h2>
        <p>{failure}</p>
        <Button className="button" onPress={props.onRetry}>
          {PAGE_WORDS.tryAgain}
        </Button>
      </div>
    )
  }
  const share = progress === null ? 0 : progress.done / progress.total
  return (
    <ProgressBar value={share} maxValue={1} className="evidence-progress">
      <Label>{EVIDENCE_PAGE.working}</Label>{' '}
      <span className="progress-count">{progress === null ? '' : checksText(progress)}</span>
      <span className="progress-track" aria-hidden="true">
        <span className="progress-fill" style={{ width: `${share * 100}%` }} />
      </span>
    </ProgressBar>
  )
}

function Shown({ answer }: { readonly answer: EvidenceAnswer }) {
  const { report, points } = answer
  const draw = useCallback((widthPx: number) => evidencePlotSvg({ points, widthPx }), [points])
  return (
    <>
      <Lines lines={countLines(report.counts)} />
      <section className="evidence-part" aria-labelledby="evidence-plot">
        <h2 id="evidence-plot">{EVIDENCE_PAGE.plot}</h2>
        <Picture draw={draw} />
        <Fold heading={EVIDENCE_PAGE.inWords}>
          <Lines lines={evidencePlotText(points)} />
        </Fold>
      </section>
      <section className="evidence-part" aria-labelledby="evidence-families">
        <h2 id="evidence-families">{EVIDENCE_PAGE.families}</h2>
        <Families families={report.families} />
      </section>
      <section className="evidence-part" aria-labelledby="evidence-rows">
        <h2 id="evidence-rows">{EVIDENCE_PAGE.rows}</h2>
        <p className="field-help">{EVIDENCE_PAGE.rowsHelp}</p>
        <Rows report={report} />
      </section>
    </>
  )
}
