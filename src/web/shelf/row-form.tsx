// A row of the shelf being added or edited: every field it can have, what the shelf reader refuses beside it. Leaves out putting it on the shelf.
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { FAMILY_IDS } from '../../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import type { RowList } from '../../kit/edit-shelf.ts'
import { EVERYWHERE } from '../../kit/shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { shelfLabel } from '../../words/shelf-field-labels.ts'
import { GROUP_TITLES, SHELF_PAGE, entryText } from '../../words/shelf-page-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { Group } from '../case-form/group.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { choiceName, placeName } from './choice-names.ts'
import { FormFrame } from './form-frame.tsx'
import { isAbout } from './problem-place.ts'
import { entryCount, withoutEntry } from './row-draft.ts'
import type { RowDraft } from './row-draft.ts'
import { groupsOf, listOf } from './row-fields.ts'
import type { RowField } from './row-fields.ts'
import { RowFieldInput } from './row-field.tsx'

export interface RowFormProps {
  readonly shelf: Shelf
  readonly list: RowList
  readonly draft: RowDraft
  /** Name of the row as it stands on the shelf; empty for a new one. */
  readonly name: string
  readonly problems: readonly Problem[]
  readonly onDraft: (draft: RowDraft) => void
  readonly onSave: () => void
  readonly onCancel: () => void
}

export function RowForm(props: RowFormProps) {
  const { list, draft, problems } = props
  const groups = groupsOf(list, draft)
  const paths = groups.flatMap(({ fields }) => fields.map(({ path }) => path))
  const elsewhere = problems
    .filter(({ path }) => !paths.some((one) => isAbout(path, one)))
    .map((problem) => problemLineText({ ...problem, path: shelfLabel(problem.path) }))
  return (
    <FormFrame {...props} isRefused={problems.length > 0} elsewhere={elsewhere}>
      {groups.map(({ id, fields }) => (
        <Group key={id} heading={GROUP_TITLES[id]}>
          <GroupFields {...props} fields={fields} />
        </Group>
      ))}
    </FormFrame>
  )
}

/** Single fields one after the other; those of a list entry by entry. */
function GroupFields(props: RowFormProps & { readonly fields: readonly RowField[] }) {
  const { fields } = props
  const lists = [...new Set(fields.map(listOf).filter((list) => list !== null))]
  const single = fields.filter((field) => listOf(field) === null)
  return (
    <>
      {lists.map((list) => (
        <Entries
          key={list}
          {...props}
          name={list}
          fields={fields.filter((f) => listOf(f) === list)}
        />
      ))}
      <div className="shelf-fields">
        {single.map((field) => (
          <OneField key={field.path} {...props} field={field} path={field.path} />
        ))}
      </div>
    </>
  )
}

function Entries(
  props: RowFormProps & { readonly name: string; readonly fields: readonly RowField[] },
) {
  const { draft, name, fields, onDraft } = props
  const count = entryCount(draft, name)
  const isPlain = fields.every(({ path }) => path === `${name}[]`)
  const add = ADD[name]
  const what = fields[0] === undefined ? name : shelfLabel(fields[0].path)
  const places = Array.from({ length: isPlain || count === 0 ? count + 1 : count }, (_, i) => i)
  return (
    <>
      {places.map((place) => (
        <fieldset key={place} className="plain shelf-entry">
          <legend className="unseen">{entryText(what, place + 1)}</legend>
          <div className="shelf-fields">
            {fields.map((field) => (
              <OneField
                key={field.path}
                {...props}
                field={field}
                path={field.path.replace('[]', `[${place}]`)}
                onDraft={(next) =>
                  onDraft(
                    isPlain && next[`${name}[${place}]`] === ''
                      ? withoutEntry(next, name, place)
                      : next,
                  )
                }
              />
            ))}
          </div>
          {isPlain || place >= count ? null : (
            <Button className="button" onPress={() => onDraft(withoutEntry(draft, name, place))}>
              {SHELF_PAGE.removeEntry()}
              <span className="unseen">, {entryText(what, place + 1)}</span>
            </Button>
          )}
        </fieldset>
      ))}
      {add === undefined ? null : (
        <Button
          className="button"
          onPress={() =>
            onDraft({
              ...draft,
              [(fields[0]?.path ?? name).replace('[]', `[${Math.max(count, 1)}]`)]: '',
            })
          }
        >
          {add()}
        </Button>
      )}
    </>
  )
}

const ADD: Readonly<Record<string, () => string>> = {
  sizes: SHELF_PAGE.addSize,
  settings: SHELF_PAGE.addSetting,
  modes: SHELF_PAGE.addMode,
}

function OneField(props: RowFormProps & { readonly field: RowField; readonly path: string }) {
  const { field, path, draft, onDraft, problems } = props
  return (
    <RowFieldInput
      field={field}
      path={path}
      text={draft[path] ?? ''}
      choices={choicesFor(props)}
      problems={problems.filter((problem) => isAbout(problem.path, path))}
      onType={(at, text) => onDraft({ ...draft, [at]: text })}
    />
  )
}

/** Choices that depend on the shelf or on what is chosen so far. */
function choicesFor({
  field,
  shelf,
  draft,
}: RowFormProps & { readonly field: RowField }): readonly Choice[] | undefined {
  if (field.path === 'place')
    return [EVERYWHERE, ...shelf.wards.map(({ id }) => id)].map((value) => ({
      value,
      text: placeName(shelf, value),
    }))
  if (field.path !== 'sizes[].size') return undefined
  const family = FAMILY_IDS.find((one) => one === draft['family'])
  const sizes = family === undefined ? [] : INTERFACE_FAMILIES[family].sizes
  return sizes.map(({ id }) => ({ value: id, text: choiceName(field.path, id) }))
}
