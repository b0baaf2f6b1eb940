// The ranked set-ups, each with its row of the reach chart, chance, hold and why it is not first. Choosing one moves answer and ribbon. Leaves out details.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { reachShape } from '../../pictures/reach-rows.ts'
import type { ReachAxis, ReachRow } from '../../pictures/reach-rows.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { NOT_CHECKED } from '../../words/caution-texts.ts'
import { fractionBandText } from '../../words/number-text.ts'
import { averagesText, chanceCellText } from '../../words/plan-text.ts'
import { reachRowText } from '../../words/reach-text.ts'
import { reasonText, remarkText } from '../../words/remark-text.ts'
import {
  feedText,
  holdsText,
  oxygenText,
  saturationText,
  setUpHeadingText,
} from '../../words/web-answer-text.ts'
import { LIST_WORDS, showAllText } from '../../words/web-page-text.ts'
import { Facts } from '../parts/facts.tsx'
import { ReachAxisLine, ReachStrip } from '../parts/reach-strip.tsx'

export interface RankedListProps {
  readonly plan: Plan
  readonly chosen: RankedSetUp
  readonly onChoose: (id: string) => void
}

const ROWS_FIRST = 8

export function RankedList({ plan, chosen, onChoose }: RankedListProps) {
  const [isAll, setAll] = useState(false)
  const { rows, axis } = reachShape(plan, isAll ? plan.ranked.length : ROWS_FIRST)
  return (
    <section className="section" aria-labelledby="list-heading">
      <h2 id="list-heading">{LIST_WORDS.heading}</h2>
      <p className="section-help">{LIST_WORDS.help}</p>
      {plan.reading.isUsed || plan.goal.kind === 'comfort' ? null : (
        <p className="badge-line">{averagesText(plan.reading)}</p>
      )}
      <ReachAxisLine axis={axis} />
      <ol className="ranked" aria-labelledby="list-heading">
        {rows.map((row) => (
          <Row
            key={row.ranked.id}
            row={row}
            axis={axis}
            plan={plan}
            isChosen={row.ranked === chosen}
            onChoose={onChoose}
          />
        ))}
      </ol>
      {plan.ranked.length <= ROWS_FIRST ? null : (
        <Button className="button" onPress={() => setAll(!isAll)}>
          {isAll ? LIST_WORDS.showFewer : showAllText(plan.ranked.length)}
        </Button>
      )}
    </section>
  )
}

interface RowProps {
  readonly row: ReachRow
  readonly axis: ReachAxis
  readonly plan: Plan
  readonly isChosen: boolean
  readonly onChoose: (id: string) => void
}

function Row({ row, axis, plan, isChosen, onChoose }: RowProps) {
  const { ranked } = row
  return (
    <li className="ranked-row" data-chosen={isChosen}>
      <label className="ranked-label">
        <input
          type="radio"
          name="shown-set-up"
          checked={isChosen}
          onChange={() => onChoose(ranked.id)}
          aria-label={reachRowText(ranked, plan)}
        />
        <span className="rank">{ranked.rank}</span>
        <span className="ranked-name">
          {setUpHeadingText(ranked)} <span className="feed">{feedText(ranked)}</span>
        </span>
        {ranked.chance === null ? null : (
          <span className="ranked-chance">
            <b>{chanceCellText(ranked)}</b> {LIST_WORDS.chance}
          </span>
        )}
      </label>
      <ReachStrip row={row} axis={axis} />
      <Facts
        facts={[
          { name: LIST_WORDS.fraction, value: fractionBandText(ranked.effectiveO2Fraction) },
          { name: LIST_WORDS.saturation, value: saturationText(ranked, plan.goal) },
          ...(ranked.chance === null ? [] : [{ name: LIST_WORDS.holds, value: holdsText(ranked) }]),
          { name: LIST_WORDS.oxygen, value: oxygenText(ranked) },
        ]}
      />
      <p className="ranked-notes">{rowNotes(ranked).join(' · ')}</p>
    </li>
  )
}

function rowNotes(ranked: RankedSetUp): readonly string[] {
  return [
    ...(ranked.isChecked ? [] : [NOT_CHECKED]),
    ...(ranked.whyNotFirst === null ? [] : [reasonText(ranked.whyNotFirst)]),
    ...ranked.humidity.slice(0, 1).map(remarkText),
  ]
}
