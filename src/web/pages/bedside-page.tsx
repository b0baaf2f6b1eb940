// The first page: a case on one side, its answer on the other. Leaves out the other places of the product.
import { lazy, Suspense, useCallback, useDeferredValue, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import type { Shelf } from '../../kit/shelf.ts'
import type { ReadCase } from '../../patient/read-case.ts'
import { remarkText } from '../../words/remark-text.ts'
import { caseLineText } from '../../words/web-answer-text.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { siteFromSettingsText } from '../../words/web-settings-text.ts'
import { isSiteGiven, readDraft } from '../case/case-input.ts'
import { textOf, wardIdOf, withText } from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'
import { useDraft } from '../case/use-draft.ts'
import { CaseForm } from '../case-form/case-form.tsx'
import type { Form } from '../case-form/form.ts'
import { Really } from '../really/really.tsx'
import { useSettings } from '../settings/settings-store.ts'
import { siteAltitude } from '../settings/site-altitude.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import { BenchProvider } from '../worker/bench.tsx'
import type { PlanRequest } from '../worker/core-api.ts'
import { usePlan } from '../worker/use-plan.ts'
import '../styles/bedside.css'
import { Result } from './result.tsx'
import { useSettled } from './use-settled.ts'

/** Comes after the form, which does not wait for it. */
const CaseFile = lazy(async () => ({
  default: (await import('../case-file/case-file.tsx')).CaseFile,
}))

/** Shown before the first answer brings its own. */
const EMERGENCY_ALWAYS = ['EMERGENCY_OXYGEN_FIRST', 'EMERGENCY_NOT_BREATHING'].map((code) => ({
  code,
  values: {},
}))

const NO_PROBLEMS: Form['problems'] = []
const NOTHING_ASSUMED: Form['assumed'] = []

export function BedsidePage() {
  return (
    <BenchProvider>
      <Bedside />
    </BenchProvider>
  )
}

function Bedside() {
  const typed = useDraft()
  const { draft, change, confirm } = typed
  const [isFormOpen, setFormOpen] = useState(false)
  const [attempt, setAttempt] = useState(0)
  const settled = useSettled(draft)
  const siteAltitudeM = siteAltitude(useSettings().altitudeTyped).altitudeM
  const read = useMemo(
    () => readDraft(settled, { altitudeM: siteAltitudeM }),
    [settled, siteAltitudeM],
  )
  const { shelf, isDemo } = useShelf()
  const state = usePlan(useRequest({ draft: settled, read, shelf }), attempt)
  const planned = useDeferredValue(state.planned)
  const takeRate = useCallback(
    (ratePerMin: number) => change((now) => withRate(now, ratePerMin)),
    [change],
  )
  const workOutAnew = useCallback(() => {
    confirm()
    setAttempt((now) => now + 1)
  }, [confirm])
  const assumed = planned?.plan.assumed ?? NOTHING_ASSUMED
  const problems = read.ok ? NO_PROBLEMS : read.problems
  const form = useMemo(
    () => ({ draft, problems, assumed, siteAltitudeM, change }),
    [draft, problems, assumed, siteAltitudeM, change],
  )
  // Until the newest answer is drawn, the one in sight is that of the case before.
  const isWorking = state.isWorking || settled !== draft || planned !== state.planned
  const about = read.ok ? read.case : null
  return (
    <>
      <section className="emergency" aria-label={PAGE_WORDS.emergency}>
        {(planned?.plan.emergency ?? EMERGENCY_ALWAYS).map((line) => (
          <p key={line.code}>{remarkText(line)}</p>
        ))}
      </section>
      <main className="page">
        <h1 className="unseen">{PAGE_WORDS.heading}</h1>
        <section className="case" aria-labelledby="case-heading">
          <h2 id="case-heading">{PAGE_WORDS.theCase}</h2>
          {about === null ? null : (
            <p className="case-line">
              {caseLineText(about)}
              {siteAltitudeM === undefined || isSiteGiven(settled)
                ? null
                : `. ${siteFromSettingsText(siteAltitudeM)}`}
            </p>
          )}
          <Really about={about} shelf={shelf} />
          <Button
            className="button form-switch"
            aria-expanded={isFormOpen}
            onPress={() => setFormOpen(!isFormOpen)}
          >
            {isFormOpen ? PAGE_WORDS.hideForm : PAGE_WORDS.editCase}
          </Button>
          <div className="form-holder" data-open={isFormOpen}>
            <Suspense fallback={<div className="file-drop-waiting" />}>
              <CaseFile about={about} onCase={typed.replace} />
            </Suspense>
            <CaseForm form={form} before={typed.before} onReplace={typed.replace} />
          </div>
        </section>
        <section
          className="result"
          id="answer"
          aria-labelledby="answer-heading"
          aria-busy={isWorking}
          tabIndex={-1}
        >
          <h2 id="answer-heading" className="unseen">
            {PAGE_WORDS.theAnswer}
          </h2>
          <Result
            read={read}
            state={{ ...state, planned, isWorking }}
            typedAtMs={typed.typedAtMs}
            onGoToForm={() => setFormOpen(true)}
            onAnew={workOutAnew}
            isDemoShelf={isDemo}
            onTakeRate={takeRate}
          />
        </section>
      </main>
    </>
  )
}

/** The rate counted on what is on now, where one stands there, is the same patient's: it follows. */
function withRate(draft: Draft, ratePerMin: number): Draft {
  const text = String(ratePerMin)
  const counted = withText(draft, 'breathing.ratePerMin', text)
  return textOf(draft, 'onNow.ratePerMin') === ''
    ? counted
    : withText(counted, 'onNow.ratePerMin', text)
}

/** The question the settled form asks; the same object while the case reads the same. */
function useRequest(asked: {
  readonly draft: Draft
  readonly read: ReadCase
  readonly shelf: Shelf
}): PlanRequest | null {
  const { draft, read, shelf } = asked
  const wardId = wardIdOf(draft, shelf)
  const key = read.ok
    ? JSON.stringify({ about: read.case, ...(wardId === undefined ? {} : { wardId }) })
    : null
  return useMemo(() => {
    // Safe: the text was written from a request just above; a case is plain data and comes back equal.
    return key === null ? null : { ...(JSON.parse(key) as Omit<PlanRequest, 'shelf'>), shelf }
  }, [key, shelf])
}
