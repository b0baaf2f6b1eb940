// Fields of a Gas form, each tied to its text by name. Leaves out which fields there are.
import type { Problem } from '../../errors.ts'
import { gasHelp, gasLabel } from '../../words/gas-field-labels.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { TextField } from '../parts/text-field.tsx'
import type { Texts } from './kept-form.ts'
import type { FieldProblem } from './read-form.ts'

export interface GasForm {
  readonly prefix: string
  readonly texts: Texts
  readonly problems: readonly FieldProblem[]
  readonly type: (name: string, text: string) => void
}

export interface GasFieldProps {
  readonly form: GasForm
  readonly name: string
}

function idOf({ form, name }: GasFieldProps): string {
  return `${form.prefix}.${name}`
}

function problemsOf(props: GasFieldProps): readonly Problem[] {
  const id = idOf(props)
  return props.form.problems.filter(({ field }) => field === id)
}

export function GasNumber(props: GasFieldProps & { readonly unit?: string | undefined }) {
  const { form, name, unit } = props
  return (
    <NumberField
      field={idOf(props)}
      label={gasLabel(name)}
      unit={unit}
      typed={form.texts[name] ?? ''}
      onType={(text) => form.type(name, text)}
      problems={problemsOf(props)}
      help={gasHelp(name)}
    />
  )
}

export function GasChoice(
  props: GasFieldProps & { readonly choices: readonly Choice[]; readonly isChosen?: boolean },
) {
  const { form, name, choices } = props
  const value = form.texts[name] ?? ''
  return (
    <ChoiceField
      field={idOf(props)}
      label={gasLabel(name)}
      value={value}
      onChoose={(text) => form.type(name, text)}
      choices={choices}
      empty={value === '' ? GAS_TEXT.choose() : undefined}
      problems={problemsOf(props)}
      help={gasHelp(name)}
    />
  )
}

/** Free text, or a time of day: shown and kept exactly as typed. */
export function GasText(props: GasFieldProps) {
  const { form, name } = props
  return (
    <TextField
      field={idOf(props)}
      label={gasLabel(name)}
      typed={form.texts[name] ?? ''}
      onType={(text) => form.type(name, text)}
      problems={problemsOf(props)}
      help={gasHelp(name)}
    />
  )
}
