// A whole plan on the page: the answer, the set-up in sight, the ranking, the rest beside. Leaves out the case form.
import { lazy, memo, Suspense, useMemo, useState } from 'react'
import type { CaseWarning } from '../../patient/warnings.ts'
import { remarkText } from '../../words/remark-text.ts'
import { ANSWER_WORDS } from '../../words/web-answer-text.ts'
import { DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Lines } from '../parts/lines.tsx'
import type { Planned } from '../worker/use-plan.ts'
import { Assumed, Cautions, Guideline, ToCheck } from './beside.tsx'
import { Excluded } from './excluded.tsx'
import { FirstChoice } from './first-choice.tsx'
import { RankedList } from './ranked-list.tsx'
import { NO_PINS, withPin } from './pins.ts'
import type { Pins } from './pins.ts'
import { onNowShown, shownOf } from './shown.ts'
import { ShownPane } from './shown-pane.tsx'

/** Loaded with the first pin. */
const Compare = lazy(async () => ({ default: (await import('./compare.tsx')).Compare }))

/** Loaded when the mode is chosen. */
const TwoMetre = lazy(async () => ({ default: (await import('./two-metre.tsx')).TwoMetre }))

export interface PlanViewProps {
  readonly planned: Planned
  readonly warnings: readonly CaseWarning[]
  readonly isDemoShelf: boolean
  readonly onTakeRate: (ratePerMin: number) => void
}

/** Drawn anew only when the plan changes, not while the core tells its progress. */
export const PlanView = memo(function PlanView(props: PlanViewProps) {
  const { planned, warnings, isDemoShelf, onTakeRate } = props
  const { request, plan } = planned
  const { about, shelf } = request
  const [chosenKey, setChosenKey] = useState<string | null>(null)
  const shown = useMemo(() => shownOf(about, plan, chosenKey), [about, plan, chosenKey])
  const onNow = useMemo(() => onNowShown(about, plan), [about, plan])
  const [pins, setPins] = useState<Pins>(NO_PINS)
  const first = plan.ranked[0]
  return (
    <>
      {plan.missing.length === 0 ? null : (
        <section className="section missing" aria-labelledby="missing-heading">
          <h3 id="missing-heading">{DETAIL_WORDS.missing}</h3>
          <Lines lines={plan.missing.map(remarkText)} />
        </section>
      )}
      <Suspense fallback={null}>
        <TwoMetre plan={plan} shown={shown} />
      </Suspense>
      {first === undefined ? (
        <p className="answer-name">{ANSWER_WORDS.nothing}</p>
      ) : (
        <FirstChoice
          plan={plan}
          first={first}
          isShown={shown?.key === first.id}
          onShow={setChosenKey}
        />
      )}
      <div className="plan-columns">
        <div className="plan-shown">
          {shown === null ? null : (
            <ShownPane
              key={shown.key}
              request={request}
              plan={plan}
              shelf={shelf}
              shown={shown}
              onTakeRate={onTakeRate}
              pins={{
                onNow: onNow?.kind === 'row' ? onNow.row : null,
                onPin: (pin) => setPins(withPin(pins, pin)),
                onBeside: (before, after) => setPins({ before, after }),
              }}
            />
          )}
          {pins.before === null ? null : (
            <Suspense fallback={null}>
              <Compare request={request} pins={pins} onPins={setPins} />
            </Suspense>
          )}
          <ToCheck warnings={warnings} plan={plan} />
        </div>
        <div className="plan-list">
          <RankedList
            plan={plan}
            onNow={onNow}
            shownKey={shown?.key ?? null}
            onChoose={setChosenKey}
          />
          <Excluded plan={plan} />
        </div>
      </div>
      <div className="plan-rest">
        <Guideline plan={plan} onChoose={setChosenKey} />
        <Assumed plan={plan} />
        <Cautions plan={plan} isDemoShelf={isDemoShelf} />
      </div>
    </>
  )
})
