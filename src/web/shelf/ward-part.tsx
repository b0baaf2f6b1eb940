// The wards of the shelf: name and beds, added, changed, removed once nothing lies there. Leaves out what lies in them.
import { useEffect, useRef } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { rowsIn, withoutWard } from '../../kit/edit-shelf.ts'
import type { Shelf, Ward } from '../../kit/shelf.ts'
import { shelfLabel } from '../../words/shelf-field-labels.ts'
import {
  SHELF_PAGE,
  bedsText,
  editingText,
  removedText,
  wardHoldsText,
} from '../../words/shelf-page-text.ts'
import { NumberField } from '../parts/number-field.tsx'
import type { RowDraft } from './row-draft.ts'
import { TextField } from './text-field.tsx'

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

export function WardForm(props: {
  readonly draft: RowDraft
  readonly name: string
  readonly problems: readonly Problem[]
  readonly onDraft: (draft: RowDraft) => void
  readonly onSave: () => void
  readonly onCancel: () => void
}) {
  const { draft, onDraft } = props
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
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
    <section className="shelf-form" aria-labelledby="shelf-form-heading">
      <h2 id="shelf-form-heading" ref={heading} tabIndex={-1}>
        {editingText(props.name)}
      </h2>
      {props.problems.length === 0 ? null : (
        <p className="gas-act" role="alert">
          {SHELF_PAGE.toMend()}
        </p>
      )}
      <TextField {...common('name')} />
      <NumberField {...common('beds')} />
      <div className="buttons">
        <Button className="button shelf-save" onPress={props.onSave}>
          {SHELF_PAGE.save()}
        </Button>
        <Button className="button" onPress={props.onCancel}>
          {SHELF_PAGE.cancel()}
        </Button>
      </div>
    </section>
  )
}
