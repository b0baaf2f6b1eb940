// A whole plan on the page: answer, breath, what is on now, ranking, the rest beside. Leaves out the case form.
import { memo, useState } from 'react'
import type { CaseWarning } from '../../patient/warnings.ts'
import type { RankedSetUp } from '../../planning/plan-types.ts'
import { remarkText } from '../../words/remark-text.ts'
import { ANSWER_WORDS } from '../../words/web-answer-text.ts'
import { DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Lines } from '../parts/lines.tsx'
import type { Planned } from '../worker/use-plan.ts'
import { Answer } from './answer.tsx'
import { Assumed, Cautions, Guideline, OnNowLine, ToCheck } from './beside.tsx'
import { BreathSection } from './breath-section.tsx'
import { Excluded } from './excluded.tsx'
import { RankedList } from './ranked-list.tsx'

export interface PlanViewProps {
  readonly planned: Planned
  readonly warnings: readonly CaseWarning[]
}

/** Drawn anew only when the plan changes, not while the core tells its progress. */
export const PlanView = memo(function PlanView({ planned, warnings }: PlanViewProps) {
  const { about, plan } = planned
  const [chosenId, setChosenId] = useState<string | null>(null)
  const first = plan.ranked[0]
  const chosen: RankedSetUp | undefined = plan.ranked.find(({ id }) => id === chosenId) ?? first
  const choose = (id: string): void => setChosenId(id === first?.id ? null : id)
  return (
    <>
      {plan.missing.length === 0 ? null : (
        <section className="section missing" aria-labelledby="missing-heading">
          <h2 id="missing-heading">{DETAIL_WORDS.missing}</h2>
          <Lines lines={plan.missing.map(remarkText)} />
        </section>
      )}
      {chosen === undefined ? (
        <p className="answer-name">{ANSWER_WORDS.nothing}</p>
      ) : (
        <Answer plan={plan} chosen={chosen} onFirst={() => setChosenId(null)} />
      )}
      <OnNowLine about={about} plan={plan} />
      <ToCheck warnings={warnings} plan={plan} />
      {chosen === undefined ? null : (
        <>
          <BreathSection about={about} plan={plan} chosen={chosen} />
          <RankedList plan={plan} chosen={chosen} onChoose={choose} />
        </>
      )}
      <Guideline plan={plan} onChoose={choose} />
      <Excluded plan={plan} />
      <Assumed plan={plan} />
      <Cautions plan={plan} />
    </>
  )
})
