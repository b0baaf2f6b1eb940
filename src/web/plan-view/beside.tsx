// What stands beside the ranking: what is on now really, the guideline's start, assumptions, cautions, things to check. Leaves out the ranking.
import { Button } from 'react-aria-components'
import type { CaseWarning } from '../../patient/warnings.ts'
import type { Case } from '../../patient/case.ts'
import type { GuidelineStart, Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { assumedText } from '../../words/assumed-text.ts'
import { DEMO_SHELF_NOTE, STANDING_CAUTIONS } from '../../words/caution-texts.ts'
import { chanceLineText, givesText, guidelineText, readingText } from '../../words/plan-text.ts'
import { remarkText } from '../../words/remark-text.ts'
import { setUpOnNowText } from '../../words/set-up-text.ts'
import { startText } from '../../words/web-answer-text.ts'
import { warningText } from '../../words/warning-text.ts'
import { assumedCountText, DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'

export function OnNowLine({ about, plan }: { readonly about: Case; readonly plan: Plan }) {
  if (about.onNow === undefined) return null
  const { onNow } = plan
  return (
    <section className="section on-now" aria-labelledby="on-now-heading">
      <h2 id="on-now-heading">{DETAIL_WORDS.onNow}</h2>
      <p>
        <b>{setUpOnNowText(about.onNow.setUp)}</b>
        {onNow === null ? null : `: ${givesText(onNow)}; ${chanceLineText(onNow, plan)}`}
      </p>
    </section>
  )
}

export function ToCheck(props: { readonly warnings: readonly CaseWarning[]; readonly plan: Plan }) {
  const { warnings, plan } = props
  const lines = [
    ...new Set([...warnings.map(warningText), ...plan.reading.remarks.map(remarkText)]),
  ]
  if (lines.length === 0) return null
  return (
    <section className="section to-check" aria-labelledby="check-heading">
      <h2 id="check-heading">{DETAIL_WORDS.check}</h2>
      <Lines lines={lines} />
    </section>
  )
}

export interface GuidelineProps {
  readonly plan: Plan
  readonly onChoose: (id: string) => void
}

export function Guideline({ plan, onChoose }: GuidelineProps) {
  return (
    <section className="section" aria-labelledby="guideline-heading">
      <h2 id="guideline-heading">{DETAIL_WORDS.guideline}</h2>
      {plan.guideline.length === 0 ? <p>{DETAIL_WORDS.noGuideline}</p> : null}
      <ul className="lines">
        {plan.guideline.map((start) => (
          <li key={start.code}>
            {guidelineText(start)}
            <Starts starts={onList(start, plan)} onChoose={onChoose} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function onList(start: GuidelineStart, plan: Plan): readonly RankedSetUp[] {
  return plan.ranked.filter(({ id }) => start.setUpIds.includes(id)).slice(0, STARTS_MOST)
}

const STARTS_MOST = 3

function Starts(props: {
  readonly starts: readonly RankedSetUp[]
  readonly onChoose: (id: string) => void
}) {
  return (
    <div className="starts">
      {props.starts.map((start) => (
        <Button key={start.id} className="button" onPress={() => props.onChoose(start.id)}>
          {startText(start)}
        </Button>
      ))}
    </div>
  )
}

export function Assumed({ plan }: { readonly plan: Plan }) {
  return (
    <section className="section" aria-labelledby="assumed-heading">
      <h2 id="assumed-heading">{DETAIL_WORDS.assumed}</h2>
      <p className="section-help">{readingText(plan.reading)}</p>
      {plan.assumed.length === 0 ? (
        <p>{DETAIL_WORDS.nothingAssumed}</p>
      ) : (
        <Fold heading={assumedCountText(plan.assumed.length)}>
          <Lines lines={plan.assumed.map(assumedText)} />
        </Fold>
      )}
    </section>
  )
}

export function Cautions({ plan }: { readonly plan: Plan }) {
  return (
    <section className="section" aria-labelledby="cautions-heading">
      <h2 id="cautions-heading">{DETAIL_WORDS.cautions}</h2>
      <Lines lines={[...plan.cautions.map(remarkText), ...STANDING_CAUTIONS, DEMO_SHELF_NOTE]} />
    </section>
  )
}
