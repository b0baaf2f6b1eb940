// What is inhaled with the set-up in sight: one number with its spread, forecast against the goal, dials, ribbon. Leaves out the list it was chosen from.
import { memo, useMemo } from 'react'
import type { ReactNode } from 'react'
import { Button } from 'react-aria-components'
import type { Shelf } from '../../kit/shelf.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import type { Ribbon } from '../../pictures/ribbon-shape.ts'
import { stepCode } from '../../kit/flow-steps.ts'
import { NOT_CHECKED } from '../../words/caution-texts.ts'
import { averagesText, notesOf, twinsText } from '../../words/plan-text.ts'
import { feedText, rankText, setUpHeadingText, whyText } from '../../words/web-answer-text.ts'
import { DETAIL_WORDS } from '../../words/web-page-text.ts'
import {
  againstText,
  flowStepValueText,
  landsText,
  onNowEyebrowText,
  SHOWN_WORDS,
  trialText,
} from '../../words/web-trial-text.ts'
import { Facts } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import type { Tried } from '../worker/core-api.ts'
import type { TrialState } from '../worker/use-trial.ts'
import { Dials } from './dials.tsx'
import { Measured } from './measured.tsx'
import { Forecast, PrimaryNumber } from './numbers.tsx'
import { factsOf } from './row-facts.ts'
import { RibbonView } from './ribbon.tsx'
import { isTweaked, NO_TWEAK, ON_NOW, triedRow } from './shown.ts'
import type { Shown, Tweak } from './shown.ts'

export interface ShownCardProps {
  readonly plan: Plan
  readonly shelf: Shelf
  readonly shown: Extract<Shown, { kind: 'row' }>
  readonly tweak: Tweak
  readonly onTweak: (tweak: Tweak) => void
  readonly onTakeRate: (ratePerMin: number) => void
  readonly trial: TrialState
  readonly children?: ReactNode
}

export function ShownCard(props: ShownCardProps) {
  const { plan, shelf, shown, tweak, onTweak, trial } = props
  const { tried, answered } = trial
  const isTrial = isTweaked(tweak)
  // Number, name and ribbon are always those of one answer; the dials alone run ahead of it.
  const row = useMemo(() => rowOf(shown.row, tried, answered), [shown.row, tried, answered])
  return (
    <div className="answer" data-trial={isTrial}>
      <Heading plan={plan} shown={shown} row={row} />
      <TrialLine {...props} />
      <Numbers plan={plan} row={row} isOnNow={shown.key === ON_NOW} isTrial={isTrial} />
      <Dials
        setUp={shown.row.setUp}
        shelf={shelf}
        rates={tried?.rates ?? null}
        tweak={tweak}
        onTweak={onTweak}
      />
      {isTrial && tried !== null ? <Against tried={tried} /> : null}
      <FactsOf plan={plan} row={row} isTrial={isTrial} />
      {props.children}
      {trial.isFailed ? (
        <p role="alert">{SHOWN_WORDS.failed}</p>
      ) : (
        <Breath
          row={row}
          breath={tried?.trial.breath ?? null}
          ratePerMin={tried?.trial.ratePerMin ?? null}
        />
      )}
      <Measured setUp={row.setUp} oursO2Fraction={row.effectiveO2Fraction.median} />
      <Notes row={shown.row} />
    </div>
  )
}

function rowOf(
  row: RankedSetUp,
  tried: Tried | null,
  answered: TrialState['answered'],
): RankedSetUp {
  if (tried === null || answered === null || answered === 'on-now') return row
  const { setUp, ratePerMin } = answered
  if (setUp === null || (setUp === row.setUp && ratePerMin === undefined)) return row
  return triedRow(row, setUp, tried.trial)
}

interface RowProps {
  readonly plan: Plan
  readonly row: RankedSetUp
}

const Heading = memo(function Heading({
  plan,
  shown,
  row,
}: RowProps & { readonly shown: ShownCardProps['shown'] }) {
  const isOnNow = shown.key === ON_NOW
  const feed = [feedText(row), isOnNow ? null : twinsText(row)].filter((one) => one !== null)
  return (
    <>
      <p className="eyebrow">{isOnNow ? onNowEyebrowText(plan.goal) : rankText(shown.row, plan)}</p>
      <h3 className="answer-name">{setUpHeadingText(row)}</h3>
      <p className="answer-feed">{feed.join('; ')}</p>
    </>
  )
})

const Numbers = memo(function Numbers({
  plan,
  row,
  isOnNow,
  isTrial,
}: RowProps & { readonly isOnNow: boolean; readonly isTrial: boolean }) {
  const { goal } = plan
  return (
    <>
      <PrimaryNumber row={row} goal={goal} isNow={isOnNow && !isTrial} />
      <Forecast row={row} goal={goal} />
      <p className="why">{isTrial || isOnNow ? landsText(row, goal) : whyText(row, plan)}</p>
      <Badges plan={plan} row={row} />
    </>
  )
})

const FactsOf = memo(function FactsOf({
  plan,
  row,
  isTrial,
}: RowProps & { readonly isTrial: boolean }) {
  return <Facts facts={factsOf({ row, goal: plan.goal, isTrial })} />
})

/** The breath that is there, drawn anew only when another one is. */
const Breath = memo(function Breath(props: {
  readonly row: RankedSetUp
  readonly breath: Ribbon['breath'] | null
  readonly ratePerMin: number | null
}) {
  const { row, breath } = props
  const ribbon = useMemo(() => {
    if (breath === null) return null
    const { printedO2Fraction, isChecked } = row
    return { breath, printedO2Fraction, isChecked, title: setUpHeadingText(row) }
  }, [breath, row])
  return <RibbonView ribbon={ribbon} ratePerMin={props.ratePerMin} />
})

/** What to mind goes with the parts, not with the numbers of a trial. */
const Notes = memo(function Notes({ row }: { readonly row: RankedSetUp }) {
  const notes = notesOf(row)
  return (
    <Fold heading={`${DETAIL_WORDS.mind} (${notes.length})`} level={4}>
      <Lines lines={notes} />
    </Fold>
  )
})

function TrialLine({ shown, tweak, onTweak, onTakeRate }: ShownCardProps) {
  if (!isTweaked(tweak)) return null
  const { flow, overFlow, ratePerMin } = tweak
  const flows = [flow, overFlow].filter((step) => step !== null).map(flowStepValueText)
  return (
    <div className="trial" key={stepCode(shown.row.setUp.flow)}>
      <p>
        <strong>
          {trialText({ flow: flows.length === 0 ? null : flows.join(' + '), ratePerMin })}
        </strong>{' '}
        {SHOWN_WORDS.trialHelp}
      </p>
      <div className="buttons">
        <Button className="button" onPress={() => onTweak(NO_TWEAK)}>
          {SHOWN_WORDS.back}
        </Button>
        {ratePerMin === null ? null : (
          <Button className="button" onPress={() => onTakeRate(ratePerMin)}>
            {SHOWN_WORDS.takeRate}
          </Button>
        )}
      </div>
    </div>
  )
}

const Against = memo(function Against({ tried }: { readonly tried: Tried }) {
  const { against, isOnShelf } = tried.trial
  if (against.length === 0 && isOnShelf) return null
  return (
    <div className="against">
      {isOnShelf ? null : <p>{SHOWN_WORDS.offShelf}</p>}
      {against.map((reason) => (
        <p key={reason.code}>{againstText(reason)}</p>
      ))}
    </div>
  )
})

function Badges({ plan, row }: { readonly plan: Plan; readonly row: RankedSetUp }) {
  const badges = [
    ...(row.isChecked ? [] : [NOT_CHECKED]),
    ...(plan.reading.isUsed || plan.goal.kind === 'comfort' ? [] : [averagesText(plan.reading)]),
  ]
  if (badges.length === 0) return null
  return (
    <ul className="badges">
      {badges.map((badge) => (
        <li key={badge}>{badge}</li>
      ))}
    </ul>
  )
}
