// What is inhaled with the set-up in sight: one number with its spread, forecast against the goal, dials, ribbon. Leaves out the list it was chosen from.
import { useMemo } from 'react'
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
import { Forecast, PrimaryNumber } from './numbers.tsx'
import { factsOf } from './row-facts.ts'
import { RibbonView } from './ribbon.tsx'
import { isTweaked, NO_TWEAK, ON_NOW, triedRow, tweakedSetUp } from './shown.ts'
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
  const isTrial = isTweaked(tweak)
  const { tried } = trial
  const row = isTrial && tried !== null ? tweakedRow(shown.row, tweak, tried) : shown.row
  const ribbon = useRibbon(row, tried)
  const isOnNow = shown.key === ON_NOW
  return (
    <div className="answer" data-trial={isTrial}>
      <p className="eyebrow">{isOnNow ? onNowEyebrowText(plan.goal) : rankText(shown.row, plan)}</p>
      <h3 className="answer-name">{setUpHeadingText(row)}</h3>
      <p className="answer-feed">
        {[feedText(row), isOnNow ? null : twinsText(row)].filter((one) => one !== null).join('; ')}
      </p>
      <TrialLine {...props} />
      <PrimaryNumber row={row} goal={plan.goal} isNow={isOnNow && !isTrial} />
      <Forecast row={row} goal={plan.goal} />
      <p className="why">{isTrial || isOnNow ? landsText(row, plan.goal) : whyText(row, plan)}</p>
      <Badges plan={plan} row={row} />
      <Dials
        setUp={shown.row.setUp}
        shelf={shelf}
        rates={tried?.rates ?? null}
        tweak={tweak}
        onTweak={onTweak}
      />
      {isTrial && tried !== null && trial.isCurrent ? <Against tried={tried} /> : null}
      <Facts facts={factsOf({ row, goal: plan.goal, isTrial })} />
      {props.children}
      {trial.isFailed ? <p role="alert">{SHOWN_WORDS.failed}</p> : <RibbonView ribbon={ribbon} />}
      <Fold heading={`${DETAIL_WORDS.mind} (${notesOf(row).length})`} level={4}>
        <Lines lines={notesOf(row)} />
      </Fold>
    </div>
  )
}

function tweakedRow(row: RankedSetUp, tweak: Tweak, tried: Tried): RankedSetUp {
  return triedRow(row, tweakedSetUp(row.setUp, tweak), tried.trial)
}

/** The breath that is there, drawn anew only when another one is. */
function useRibbon(row: RankedSetUp, tried: Tried | null): Ribbon | null {
  const breath = tried?.trial.breath ?? null
  const { printedO2Fraction, isChecked } = row
  const title = setUpHeadingText(row)
  return useMemo(
    () => (breath === null ? null : { breath, printedO2Fraction, isChecked, title }),
    [breath, printedO2Fraction, isChecked, title],
  )
}

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

function Against({ tried }: { readonly tried: Tried }) {
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
}

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
