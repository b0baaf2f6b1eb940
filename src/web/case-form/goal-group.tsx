// The goal: its kind, range and reason. A reason's usual range is offered and taken only by a press. Leaves out judging.
import { Button } from 'react-aria-components'
import { GOAL_KINDS } from '../../patient/read-goal.ts'
import { GOAL_REASONS, goalReason } from '../../planning/goal-reasons.ts'
import type { GoalReason } from '../../planning/goal-reasons.ts'
import { GOAL_REASON_NAMES, goalReasonText } from '../../words/goal-text.ts'
import { GOAL_KIND_NAMES } from '../../words/names.ts'
import { FORM_WORDS, suggestedGoalText } from '../../words/web-form-text.ts'
import { textOf } from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'
import { choicesOf } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { FormChoice, FormNumber, MustChoose } from './fields.tsx'
import type { Form } from './form.ts'
import { Group } from './group.tsx'

export function GoalGroup({ form }: { readonly form: Form }) {
  const { draft } = form
  const kind = textOf(draft, 'goal.kind')
  const reason = goalReason(textOf(draft, 'goal.reason'))
  return (
    <Group heading={FORM_WORDS.goal}>
      <MustChoose form={form} field="goal.kind" choices={choicesOf(GOAL_KINDS, GOAL_KIND_NAMES)} />
      {kind === 'saturation' ? (
        <Ends form={form} low="goal.lowPercent" high="goal.highPercent" unit="%" />
      ) : null}
      {kind === 'fraction' ? <Ends form={form} low="goal.low" high="goal.high" /> : null}
      <FormChoice
        form={form}
        field="goal.reason"
        choices={reasonChoices(textOf(draft, 'goal.reason'))}
        empty={FORM_WORDS.none}
      />
      {reason === null || isTaken(draft, reason) ? null : (
        <div className="offer">
          <span>{suggestedGoalText(reason)}</span>
          <Button className="button" onPress={() => form.change(withGoal(draft, reason))}>
            {FORM_WORDS.use}
          </Button>
        </div>
      )}
    </Group>
  )
}

function Ends(props: {
  readonly form: Form
  readonly low: string
  readonly high: string
  readonly unit?: string
}) {
  const { form, low, high, unit } = props
  const beside = unit === undefined ? {} : { unit }
  return (
    <fieldset className="pair plain">
      <legend className="unseen">{FORM_WORDS.rangeHelp}</legend>
      <FormNumber form={form} field={low} label={FORM_WORDS.low} {...beside} isRequired />
      <FormNumber form={form} field={high} label={FORM_WORDS.high} {...beside} isRequired />
    </fieldset>
  )
}

/** A reason typed freely in a case file stays a choice. */
function reasonChoices(chosen: string): readonly Choice[] {
  const known = GOAL_REASONS.map(({ id }) => ({ value: id, text: goalReasonText(id) }))
  return chosen === '' || GOAL_REASON_NAMES[chosen] !== undefined
    ? known
    : [{ value: chosen, text: chosen }, ...known]
}

function goalTexts(reason: GoalReason): Readonly<Record<string, string>> {
  const { suggested } = reason
  if (suggested.kind === 'saturation') {
    return {
      'goal.kind': suggested.kind,
      'goal.lowPercent': String(suggested.lowPercent),
      'goal.highPercent': String(suggested.highPercent),
    }
  }
  return { 'goal.kind': suggested.kind }
}

function isTaken(draft: Draft, reason: GoalReason): boolean {
  return Object.entries(goalTexts(reason)).every(([field, text]) => textOf(draft, field) === text)
}

function withGoal(draft: Draft, reason: GoalReason): Draft {
  return { ...draft, texts: { ...draft.texts, ...goalTexts(reason) } }
}
