// The wards of the shelf: name and beds, added, changed, removed once nothing lies there. Leaves out what lies in them.
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { rowsIn, withoutWard } from '../../kit/edit-shelf.ts'
import type { Shelf, Ward } from '../../kit/shelf.ts'
import { shelfLabel } from '../../words/shelf-field-labels.ts'
import { SHELF_PAGE, bedsText, removedText, wardHoldsText } from '../../words/shelf-page-text.ts'
import { NumberField } from '../parts/number-field.tsx'
import { FormFrame } from './form-frame.tsx'
import type { RowDraft } from './row-draft.ts'
import { TextField } from '../parts/text-field.tsx'

export function WardPart(props: {
  readonly shelf: Shelf
  readonly onShelf: (shelf: Shelf, said: string) => void
  readonly onEdit: (ward: Ward | null) => void
}) {
  const { shelf, onShelf, onEdit } = props
  return (
    <section className="shelf-list" aria-labelledby="shelf-wards">
      <h2 id="shelf-wards">{SHELF_PAGE.wards()}</h2>
      <ul className="shelf-rows">
        {shelf.wards.map((ward) => (
          <li key={ward.id} className="shelf-row">
            <div className="shelf-row-top">
              <h3>{ward.name}</h3>
              <p className="field-help">{bedsText(ward.beds)}</p>
            </div>
            <div className="buttons">
              <Button className="button" onPress={() => onEdit(ward)}>
                {SHELF_PAGE.edit()}
                <span className="unseen">, {ward.name}</span>
              </Button>
              <Button
                className="button"
                onPress={() => {
                  const held = rowsIn(shelf, ward.id).map(({ label }) => label)
                  if (held.length > 0) onShelf(shelf, wardHoldsText(ward.name, held))
                  else onShelf(withoutWard(shelf, ward.id), removedText(ward.name))
                }}
              >
                {SHELF_PAGE.remove()}
                <span className="unseen">, {ward.name}</span>
              </Button>
            </div>
          </li>
        ))}
      </ul>
      <Button className="button" onPress={() => onEdit(null)}>
        {SHELF_PAGE.addWard()}
      </Button>
    </section>
  )
}

export interface WardFormProps {
  readonly draft: RowDraft
  readonly name: string
  readonly problems: readonly Problem[]
  readonly onDraft: (draft: RowDraft) => void
  readonly onSave: () => void
  readonly onCancel: () => void
}

export function WardForm(props: WardFormProps) {
  const { draft, onDraft } = props
  const common = (path: string) => ({
    field: `shelf.${path}`,
    label: shelfLabel(path),
    typed: draft[path] ?? '',
    onType: (text: string) => onDraft({ ...draft, [path]: text }),
    problems: props.problems
      .filter((problem) => problem.path === path)
      .map((problem) => ({ ...problem, path: shelfLabel(path) })),
  })
  return (
    <FormFrame {...props} isRefused={props.problems.length > 0}>
      <TextField {...common('name')} />
      <NumberField {...common('beds')} />
    </FormFrame>
  )
}
