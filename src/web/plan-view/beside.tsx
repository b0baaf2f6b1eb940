// What stands beside the ranking: what is on now really, the guideline's start, assumptions, cautions, things to check. Leaves out the ranking.
import { Button } from 'react-aria-components'
import type { CaseWarning } from '../../patient/warnings.ts'
import type { GuidelineStart, Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { assumedText } from '../../words/assumed-text.ts'
import { DEMO_SHELF_NOTE, STANDING_CAUTIONS } from '../../words/caution-texts.ts'
import { guidelineText, readingText } from '../../words/plan-text.ts'
import { remarkText } from '../../words/remark-text.ts'
import { startText } from '../../words/web-answer-text.ts'
import { warningText } from '../../words/warning-text.ts'
import { assumedCountText, DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'

export function ToCheck(props: { readonly warnings: readonly CaseWarning[]; readonly plan: Plan }) {
  const { warnings, plan } = props
  const lines = [
    ...new Set([...warnings.map(warningText), ...plan.reading.remarks.map(remarkText)]),
  ]
  if (lines.length === 0) return null
  return (
    <section className="section to-check" aria-labelledby="check-heading">
      <h3 id="check-heading">{DETAIL_WORDS.check}</h3>
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
      <h3 id="guideline-heading">{DETAIL_WORDS.guideline}</h3>
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
      <h3 id="assumed-heading">{DETAIL_WORDS.assumed}</h3>
      <p className="section-help">{readingText(plan.reading)}</p>
      {plan.assumed.length === 0 ? (
        <p>{DETAIL_WORDS.nothingAssumed}</p>
      ) : (
        <Fold heading={assumedCountText(plan.assumed.length)} level={4}>
          <Lines lines={plan.assumed.map(assumedText)} />
        </Fold>
      )}
    </section>
  )
}

export function Cautions(props: { readonly plan: Plan; readonly isDemoShelf: boolean }) {
  const { plan, isDemoShelf } = props
  const shelfNotes = isDemoShelf ? [DEMO_SHELF_NOTE] : []
  return (
    <section className="section" aria-labelledby="cautions-heading">
      <h3 id="cautions-heading">{DETAIL_WORDS.cautions}</h3>
      <Lines lines={[...plan.cautions.map(remarkText), ...STANDING_CAUTIONS, ...shelfNotes]} />
    </section>
  )
}
