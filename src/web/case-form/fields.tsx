// Fields of the case form tied to the draft by their path. Leaves out which fields there are.
import { useState } from 'react'
import type { ChoosableQuantity, ChoosableUnit } from '../../units/choosable.ts'
import { FIELD_LABELS } from '../../words/field-labels.ts'
import { quantityAt } from '../../words/shown-unit.ts'
import { FORM_WORDS, typedAsText } from '../../words/web-form-text.ts'
import { textOf, withText } from '../case/draft.ts'
import { shownEntry, typedUnit, withEntry } from '../case/field-units.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { useSettings } from '../settings/settings-store.ts'
import { problemsAt, standInAt } from './form.ts'
import type { Form } from './form.ts'

export interface FormNumberProps {
  readonly form: Form
  readonly field: string
  readonly label?: string
  readonly unit?: string
  readonly isRequired?: boolean
}

export function FormNumber(props: FormNumberProps) {
  const quantity = quantityAt(props.field)
  return quantity === undefined ? (
    <PlainNumber {...props} />
  ) : (
    <NumberInUnit {...props} quantity={quantity} />
  )
}

function PlainNumber({ form, field, label, unit, isRequired }: FormNumberProps) {
  const known = FIELD_LABELS[field]
  const typed = textOf(form.draft, field)
  const standIn = typed.trim() === '' ? standInAt(form, field) : undefined
  return (
    <NumberField
      field={field}
      label={label ?? known?.label ?? field}
      unit={unit ?? known?.unit}
      typed={typed}
      onType={(text) => form.change(withText(form.draft, field, text))}
      problems={problemsAt(form, field)}
      help={standIn ?? known?.help}
      isRequired={isRequired ?? false}
    />
  )
}

/** A number shown in the unit chosen; while it is being typed it stays in the unit it began in. */
function NumberInUnit(props: FormNumberProps & { readonly quantity: ChoosableQuantity }) {
  const { form, field, label, isRequired, quantity } = props
  const { units } = useSettings()
  const [typingIn, setTypingIn] = useState<ChoosableUnit | null>(null)
  const problems = problemsAt(form, field)
  const entry = shownEntry({
    text: textOf(form.draft, field),
    unit: typedUnit(form.draft, field) ?? units[quantity],
    chosen: typingIn ?? units[quantity],
    isRefused: problems.length > 0,
  })
  const { typedAs } = entry
  const known = FIELD_LABELS[field]
  const standIn = entry.text.trim() === '' ? standInAt(form, field) : undefined
  const asTyped = typedAs === undefined ? undefined : typedAsText(typedAs.text, typedAs.unit)
  return (
    <NumberField
      field={field}
      label={label ?? known?.label ?? field}
      unit={entry.unit}
      typed={entry.text}
      onType={(text) => {
        setTypingIn(entry.unit)
        form.change(withEntry(form.draft, { field, text, unit: entry.unit }))
      }}
      onLeave={() => setTypingIn(null)}
      problems={problems}
      help={asTyped ?? standIn ?? known?.help}
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
