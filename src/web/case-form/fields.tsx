// Fields of the case form tied to the draft by their path. Leaves out which fields there are.
import { FIELD_LABELS } from '../../words/field-labels.ts'
import { FORM_WORDS } from '../../words/web-form-text.ts'
import { textOf, withText } from '../case/draft.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { assumedAt, problemsAt } from './form.ts'
import type { Form } from './form.ts'

export interface FormNumberProps {
  readonly form: Form
  readonly field: string
  readonly label?: string
  readonly unit?: string
  readonly isRequired?: boolean
}

export function FormNumber({ form, field, label, unit, isRequired }: FormNumberProps) {
  const known = FIELD_LABELS[field]
  const typed = textOf(form.draft, field)
  const assumed = typed.trim() === '' ? assumedAt(form, field) : undefined
  return (
    <NumberField
      field={field}
      label={label ?? known?.label ?? field}
      unit={unit ?? known?.unit}
      typed={typed}
      onType={(text) => form.change(withText(form.draft, field, text))}
      problems={problemsAt(form, field)}
      help={assumed ?? known?.help}
      isRequired={isRequired ?? false}
    />
  )
}

export interface FormChoiceProps {
  readonly form: Form
  readonly field: string
  readonly label?: string
  readonly choices: readonly Choice[]
  readonly empty?: string | undefined
}

export function FormChoice({ form, field, label, choices, empty }: FormChoiceProps) {
  return (
    <ChoiceField
      field={field}
      label={label ?? FIELD_LABELS[field]?.label ?? field}
      value={textOf(form.draft, field)}
      onChoose={(value) => form.change(withText(form.draft, field, value))}
      choices={choices}
      empty={empty}
      problems={problemsAt(form, field)}
    />
  )
}

/** What must be chosen shows "please choose" until it is. */
export function MustChoose(props: Omit<FormChoiceProps, 'empty'>) {
  const isEmpty = textOf(props.form.draft, props.field) === ''
  return <FormChoice {...props} empty={isEmpty ? FORM_WORDS.choose : undefined} />
}
