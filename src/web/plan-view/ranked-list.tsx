// The ranked set-ups, each with its row of the reach chart, chance, hold and why it is not first. Choosing one moves answer and ribbon. Leaves out details.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { reachRowOf, reachShape } from '../../pictures/reach-rows.ts'
import type { ReachAxis, ReachRow } from '../../pictures/reach-rows.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { NOT_CHECKED } from '../../words/caution-texts.ts'
import { averagesText, chanceCellText } from '../../words/plan-text.ts'
import { reachRowText } from '../../words/reach-text.ts'
import { feedText, setUpHeadingText } from '../../words/web-answer-text.ts'
import { LIST_WORDS, showAllText } from '../../words/web-page-text.ts'
import { rowNumberTexts, SHOWN_WORDS, whyNotText } from '../../words/web-trial-text.ts'
import { Fold } from '../parts/fold.tsx'
import { ReachAxisLine, ReachLegend, ReachStrip } from '../parts/reach-strip.tsx'
import type { Shown } from './shown.ts'

export interface RankedListProps {
  readonly plan: Plan
  /** What is on now, where that is known: a row of its own before the ranks. */
  readonly onNow: Shown | null
  readonly shownKey: string | null
  readonly onChoose: (key: string) => void
}

const ROWS_FIRST = 8

export function RankedList({ plan, onNow, shownKey, onChoose }: RankedListProps) {
  const [isAll, setAll] = useState(false)
  const { rows, axis } = reachShape(plan, isAll ? plan.ranked.length : ROWS_FIRST)
  return (
    <section className="section" aria-labelledby="list-heading">
      <h3 id="list-heading">{LIST_WORDS.heading}</h3>
      {plan.reading.isUsed || plan.goal.kind === 'comfort' ? null : (
        <p className="badge-line">{averagesText(plan.reading)}</p>
      )}
      <ReachAxisLine axis={axis} />
      {onNow === null ? null : (
        <OnNowRow
          onNow={onNow}
          axis={axis}
          plan={plan}
          isChosen={shownKey === onNow.key}
          onChoose={onChoose}
        />
      )}
      <ol className="ranked" aria-labelledby="list-heading">
        {rows.map((row) => (
          <Row
            key={row.ranked.id}
            row={row}
            axis={axis}
            plan={plan}
            isChosen={shownKey === row.ranked.id}
            onChoose={onChoose}
          />
        ))}
      </ol>
      <ReachLegend />
      {plan.ranked.length <= ROWS_FIRST ? null : (
        <Button className="button" onPress={() => setAll(!isAll)}>
          {isAll ? LIST_WORDS.showFewer : showAllText(plan.ranked.length)}
        </Button>
      )}
    </section>
  )
}

function OnNowRow(props: {
  readonly onNow: Shown
  readonly axis: ReachAxis
  readonly plan: Plan
  readonly isChosen: boolean
  readonly onChoose: (key: string) => void
}) {
  const { onNow, axis, plan, isChosen, onChoose } = props
  const row = onNow.kind === 'row' ? onNow.row : null
  return (
    <div className="ranked-row on-now" data-chosen={isChosen}>
      <label className="ranked-label">
        <Choice value={onNow.key} isChosen={isChosen} onChoose={onChoose} />
        <span className="ranked-name">
          <span className="feed">{SHOWN_WORDS.onNow}:</span>{' '}
          {row === null ? SHOWN_WORDS.roomAir : setUpHeadingText(row)}
        </span>
      </label>
      {row === null ? null : (
        <>
          <ReachStrip row={reachRowOf(row, axis)} axis={axis} />
          <NumbersLine ranked={row} plan={plan} />
        </>
      )}
    </div>
  )
}

interface RowProps {
  readonly row: ReachRow
  readonly axis: ReachAxis
  readonly plan: Plan
  readonly isChosen: boolean
  readonly onChoose: (key: string) => void
}

function Row({ row, axis, plan, isChosen, onChoose }: RowProps) {
  const { ranked } = row
  return (
    <li className="ranked-row" data-chosen={isChosen}>
      <label className="ranked-label">
        <Choice
          value={ranked.id}
          isChosen={isChosen}
          onChoose={onChoose}
          label={reachRowText(ranked, plan)}
        />
        <span className="rank">{ranked.rank}</span>
        <span className="ranked-name">
          {setUpHeadingText(ranked)} <span className="feed">{feedText(ranked)}</span>
        </span>
      </label>
      <ReachStrip row={row} axis={axis} />
      <NumbersLine ranked={ranked} plan={plan} />
      {ranked.isChecked ? null : <p className="ranked-notes">{NOT_CHECKED}</p>}
      {ranked.whyNotFirst === null ? null : (
        <Fold heading={SHOWN_WORDS.whyNot} level={4}>
          <p>{whyNotText(ranked.whyNotFirst)}</p>
        </Fold>
      )}
    </li>
  )
}

function Choice(props: {
  readonly value: string
  readonly isChosen: boolean
  readonly onChoose: (key: string) => void
  readonly label?: string
}) {
  return (
    <input
      type="radio"
      name="shown-set-up"
      checked={props.isChosen}
      onChange={() => props.onChoose(props.value)}
      aria-label={props.label}
    />
  )
}

function NumbersLine({ ranked, plan }: { readonly ranked: RankedSetUp; readonly plan: Plan }) {
  return (
    <p className="ranked-numbers">
      {ranked.chance === null ? null : (
        <span className="ranked-chance">
          <b>{chanceCellText(ranked)}</b> {LIST_WORDS.chance}
        </span>
      )}
      {rowNumberTexts(ranked, plan.goal).map((one) => (
        <span key={one}>{one}</span>
      ))}
    </p>
  )
}
