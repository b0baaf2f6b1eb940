// One field of a row of the shelf, typed or chosen as its kind asks. Leaves out which fields there are.
import type { Problem } from '../../errors.ts'
import { shelfHelp, shelfLabel } from '../../words/shelf-field-labels.ts'
import { YES_NO_NAMES } from '../../words/shelf-names.ts'
import { SHELF_PAGE } from '../../words/shelf-page-text.ts'
import { CheckField } from '../parts/check-field.tsx'
import { ChoiceField } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { choiceName } from './choice-names.ts'
import { NO, YES, entriesOf } from './row-draft.ts'
import type { RowField } from './row-fields.ts'
import { TextField } from '../parts/text-field.tsx'

export interface RowFieldProps {
  readonly field: RowField
  /** Its own path, with the place of the entry: `sizes[1].count`. */
  readonly path: string
  readonly text: string
  readonly choices?: readonly Choice[] | undefined
  readonly problems: readonly Problem[]
  readonly onType: (path: string, text: string) => void
}

export function RowFieldInput(props: RowFieldProps) {
  const { field, path, text, problems } = props
  const common = {
    field: `shelf.${path}`,
    label: shelfLabel(path),
    problems: problems.map((problem) => ({ ...problem, path: shelfLabel(path) })),
    help: shelfHelp(path),
  }
  const onType = (typed: string): void => props.onType(path, typed)
  switch (field.kind) {
    case 'number':
      return <NumberField {...common} unit={field.unit} typed={text} onType={onType} />
    case 'numbers':
    case 'text':
      return <TextField {...common} typed={text} onType={onType} />
    case 'choice':
      return (
        <ChoiceField
          {...common}
          value={text}
          onChoose={onType}
          choices={props.choices ?? choicesOf(field)}
          empty={SHELF_PAGE.notStated()}
        />
      )
    case 'switch':
      return (
        <ChoiceField
          {...common}
          value={text}
          onChoose={onType}
          choices={[
            { value: YES, text: YES_NO_NAMES.yes },
            { value: NO, text: YES_NO_NAMES.no },
          ]}
          empty={SHELF_PAGE.notStated()}
        />
      )
    case 'choices':
      return <ManyChoices {...props} />
  }
}

function ManyChoices({ field, path, text, onType }: RowFieldProps) {
  const chosen = entriesOf(text)
  const order = field.choices ?? []
  return (
    <fieldset className="plain shelf-many">
      <legend>{shelfLabel(path)}</legend>
      <p className="field-help">{shelfHelp(path)}</p>
      <div className="shelf-checks">
        {order.map((one) => (
          <CheckField
            key={one}
            field={`shelf.${path}.${one}`}
            label={choiceName(path, one)}
            isChecked={chosen.includes(one)}
            onCheck={(isChecked) =>
              onType(
                path,
                order.filter((id) => (id === one ? isChecked : chosen.includes(id))).join('; '),
              )
            }
          />
        ))}
      </div>
    </fieldset>
  )
}

function choicesOf({ path, choices }: RowField): readonly Choice[] {
  return (choices ?? []).map((value) => ({ value, text: choiceName(path, value) }))
}
