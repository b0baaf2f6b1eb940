// The answer first: the set-up, one primary number with its spread and the printed one beside, one sentence why. Leaves out the other rows.
import { Button } from 'react-aria-components'
import type { Goal } from '../../patient/case.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { NOT_CHECKED } from '../../words/caution-texts.ts'
import { fractionText } from '../../words/number-text.ts'
import { averagesText, notesOf, twinsText } from '../../words/plan-text.ts'
import { remarkText } from '../../words/remark-text.ts'
import {
  ANSWER_WORDS,
  chanceSplitText,
  feedText,
  fractionSpreadText,
  holdsText,
  oxygenText,
  pressureBandText,
  printedBesideText,
  rankText,
  saturationText,
  setUpHeadingText,
  whyText,
} from '../../words/web-answer-text.ts'
import { DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Facts } from '../parts/facts.tsx'
import type { Fact } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { FractionScale } from '../parts/fraction-scale.tsx'
import { Lines } from '../parts/lines.tsx'

export interface AnswerProps {
  readonly plan: Plan
  readonly chosen: RankedSetUp
  readonly onFirst: () => void
}

export function Answer({ plan, chosen, onFirst }: AnswerProps) {
  const { goal } = plan
  return (
    <div className="answer">
      <p className="eyebrow">{rankText(chosen, plan)}</p>
      <h3 className="answer-name">{setUpHeadingText(chosen)}</h3>
      <p className="answer-feed">
        {[feedText(chosen), twinsText(chosen)].filter((part) => part !== null).join('; ')}
      </p>
      <div className="answer-number">
        <p className="primary">
          <strong className="primary-value">
            {fractionText(chosen.effectiveO2Fraction.median)}
          </strong>
          <span className="primary-name">{ANSWER_WORDS.number}</span>
        </p>
        <div className="primary-spread">
          <FractionScale
            band={chosen.effectiveO2Fraction}
            printed={chosen.printedO2Fraction}
            goal={goal.kind === 'fraction' ? goal : null}
          />
          <p className="spread-text">
            <span>
              <i className="key key-band" aria-hidden="true" />
              <b>{fractionSpreadText(chosen)}</b> {ANSWER_WORDS.spread}
            </span>
            <span>
              {chosen.printedO2Fraction === null ? null : (
                <i className="key key-printed" aria-hidden="true" />
              )}
              {printedBesideText(chosen)}
            </span>
          </p>
        </div>
      </div>
      <p className="why">{whyText(chosen, plan)}</p>
      <Badges plan={plan} chosen={chosen} />
      <Facts facts={factsOf(chosen, goal)} />
      {chosen === plan.ranked[0] ? null : (
        <Button className="button" onPress={onFirst}>
          {ANSWER_WORDS.back}
        </Button>
      )}
      <Fold heading={`${DETAIL_WORDS.mind} (${notesOf(chosen).length})`}>
        <Lines lines={notesOf(chosen)} />
      </Fold>
    </div>
  )
}

function Badges({ plan, chosen }: { readonly plan: Plan; readonly chosen: RankedSetUp }) {
  const badges = [
    ...(chosen.isChecked ? [] : [NOT_CHECKED]),
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

function factsOf(chosen: RankedSetUp, goal: Goal): readonly Fact[] {
  const pressure = pressureBandText(chosen)
  return [
    ...(chosen.chance === null
      ? []
      : [{ name: ANSWER_WORDS.chance, value: chanceSplitText(chosen) }]),
    { name: ANSWER_WORDS.saturation, value: saturationText(chosen, goal) },
    ...(chosen.chance === null ? [] : [{ name: ANSWER_WORDS.holds, value: holdsText(chosen) }]),
    { name: ANSWER_WORDS.oxygen, value: oxygenText(chosen) },
    ...(pressure === null ? [] : [{ name: ANSWER_WORDS.pressure, value: pressure }]),
    ...chosen.humidity
      .slice(0, 1)
      .map((remark) => ({ name: ANSWER_WORDS.humidity, value: remarkText(remark), isWide: true })),
  ]
}
