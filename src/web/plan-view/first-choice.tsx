// The answer in one glance: the first set-up of the ranking, what it gives, why. Leaves out its breath, shown when it is chosen.
import { Button } from 'react-aria-components'
import { firstChecked } from '../../planning/first-checked.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { NOT_CHECKED } from '../../words/caution-texts.ts'
import { firstCheckedText } from '../../words/plan-text.ts'
import { rankText, setUpHeadingText, whyText } from '../../words/web-answer-text.ts'
import { firstGivesText, SHOWN_WORDS } from '../../words/web-trial-text.ts'

export interface FirstChoiceProps {
  readonly plan: Plan
  readonly first: RankedSetUp
  readonly isShown: boolean
  readonly onShow: (id: string) => void
}

export function FirstChoice({ plan, first, isShown, onShow }: FirstChoiceProps) {
  const checked = firstChecked(plan)
  return (
    <section className="first-choice" aria-labelledby="first-heading">
      <p className="eyebrow">{rankText(first, plan)}</p>
      <h3 id="first-heading" className="first-name">
        {setUpHeadingText(first)}
      </h3>
      <p className="first-gives">
        <b>{firstGivesText(first)}</b>
        {first.isChecked ? null : <span className="badge-line">{NOT_CHECKED}</span>}
      </p>
      <p className="first-why">{whyText(first, plan)}</p>
      {checked === null ? null : (
        <div className="first-checked">
          <p>{firstCheckedText(checked)}</p>
          <Button className="button" onPress={() => onShow(checked.id)}>
            {SHOWN_WORDS.showFirst}
            <span className="unseen">{`, ${setUpHeadingText(checked)}`}</span>
          </Button>
        </div>
      )}
      {isShown ? null : (
        <Button className="button first-show" onPress={() => onShow(first.id)}>
          {SHOWN_WORDS.showFirst}
        </Button>
      )}
    </section>
  )
}
