// Parts that the forms of a transfer share: a form over what is kept, a row of it, numbers of a set-up, a button of a row. Leaves out which fields there are.
import { Button } from 'react-aria-components'
import { MR_SAFETIES } from '../../supply/store.ts'
import { mrSafetyName } from '../../words/supply-names.ts'
import { GasNumber } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { withRow } from './kept-form.ts'
import type { FormStore, KeptForm, Texts } from './kept-form.ts'
import { ON_RULES } from './on-form.ts'
import type { OnField } from './on-form.ts'
import type { FieldProblem } from './read-form.ts'

/** A form of the page over what is kept; anything typed makes an example one's own. */
export function formOf(
  store: FormStore,
  prefix: string,
  problems: readonly FieldProblem[],
): GasForm {
  const { form, change } = store
  return {
    prefix,
    texts: form.texts,
    problems,
    type: (name, text) => change({ ...own(form), texts: { ...own(form).texts, [name]: text } }),
  }
}

export function rowForm(
  store: FormStore,
  row: { readonly texts: Texts; readonly position: number; readonly prefix: string },
  problems: readonly FieldProblem[],
): GasForm {
  const { texts, position, prefix } = row
  return {
    prefix,
    texts,
    problems,
    type: (name, text) =>
      store.change(withRow(own(store.form), position, { ...texts, [name]: text })),
  }
}

export function own(form: KeptForm): KeptForm {
  const { example: _, ...texts } = form.texts
  return { ...form, texts }
}

export function OnNumbers({
  form,
  names,
}: {
  readonly form: GasForm
  readonly names: readonly OnField[]
}) {
  return (
    <div className="pair">
      {names.map((name) => (
        <GasNumber key={name} form={form} name={name} unit={ruleUnit(ON_RULES[name])} />
      ))}
    </div>
  )
}

function ruleUnit(rule: object): string | undefined {
  return 'unit' in rule && typeof rule.unit === 'string' ? rule.unit : undefined
}

export function RowButton(props: {
  readonly label: string
  readonly of: string
  readonly isDisabled?: boolean
  readonly onPress: () => void
}) {
  return (
    <Button className="button" isDisabled={props.isDisabled ?? false} onPress={props.onPress}>
      {props.label}
      <span className="unseen">, {props.of}</span>
    </Button>
  )
}

export function safetyChoices() {
  return MR_SAFETIES.map((safety) => ({ value: safety, text: mrSafetyName(safety) }))
}
