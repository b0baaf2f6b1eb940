// The rows of the shelf under their headings, as far as the filter lets them through. Leaves out single rows.
import { useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { ROW_LISTS } from '../../kit/edit-shelf.ts'
import type { AnyRow, RowList } from '../../kit/edit-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { LIST_TITLES } from '../../words/shelf-names.ts'
import { SHELF_PAGE, rowsText } from '../../words/shelf-page-text.ts'
import { CheckField } from '../parts/check-field.tsx'
import { ChoiceField } from '../parts/choice-field.tsx'
import { Fold } from '../parts/fold.tsx'
import type { OpenDraft } from './kept-draft.ts'
import { RowCard } from './row-card.tsx'
import { draftOf } from './row-draft.ts'
import { NO_FILTER, shownLists } from './shelf-filter.ts'
import type { ShelfFilter } from './shelf-filter.ts'
import { TextField } from '../parts/text-field.tsx'
import { WardPart } from './ward-part.tsx'

export interface ShelfListsProps {
  readonly shelf: Shelf
  readonly onShelf: (shelf: Shelf, said: string) => void
  readonly onOpen: (draft: OpenDraft) => void
  readonly onRemove: (list: RowList, row: AnyRow) => void
}

export function ShelfLists({ shelf, onShelf, onOpen, onRemove }: ShelfListsProps) {
  const [filter, setFilter] = useState(NO_FILTER)
  const lists = useMemo(() => shownLists(shelf, filter), [shelf, filter])
  return (
    <>
      <Filters shelf={shelf} filter={filter} onFilter={setFilter} />
      <Fold heading={SHELF_PAGE.addRow()} level={2}>
        <AddRow onAdd={(list) => onOpen({ list, id: null, draft: {} })} />
      </Fold>
      {lists.length === 0 ? <p>{SHELF_PAGE.nothingFound()}</p> : null}
      {lists.map(({ list, rows, all }) => (
        <section key={list} className="shelf-list" aria-labelledby={`shelf-${list}`}>
          <h2 id={`shelf-${list}`}>
            {LIST_TITLES[list]}
            <span className="field-help"> {rowsText(rows.length, all)}</span>
          </h2>
          <ul className="shelf-rows">
            {rows.map((row) => (
              <li key={row.id}>
                <RowCard
                  shelf={shelf}
                  list={list}
                  row={row}
                  onShelf={onShelf}
                  onEdit={() => onOpen({ list, id: row.id, draft: draftOf(row) })}
                  onRemove={() => onRemove(list, row)}
                />
              </li>
            ))}
          </ul>
        </section>
      ))}
      <WardPart
        shelf={shelf}
        onShelf={onShelf}
        onEdit={(ward) =>
          onOpen({
            list: 'wards',
            id: ward?.id ?? null,
            draft: ward === null ? {} : draftOf(ward),
          })
        }
      />
    </>
  )
}

function Filters(props: {
  readonly shelf: Shelf
  readonly filter: ShelfFilter
  readonly onFilter: (filter: ShelfFilter) => void
}) {
  const { shelf, filter, onFilter } = props
  return (
    <search className="shelf-filters">
      <TextField
        field="shelf-search"
        label={SHELF_PAGE.search()}
        help={SHELF_PAGE.searchHelp()}
        typed={filter.text}
        onType={(text) => onFilter({ ...filter, text })}
        problems={[]}
      />
      <ChoiceField
        field="shelf-ward"
        label={SHELF_PAGE.ward()}
        value={filter.wardId}
        empty={SHELF_PAGE.anyPlace()}
        onChoose={(wardId) => onFilter({ ...filter, wardId })}
        choices={shelf.wards.map(({ id, name }) => ({ value: id, text: name }))}
      />
      <ChoiceField
        field="shelf-list"
        label={SHELF_PAGE.list()}
        value={filter.list}
        empty={SHELF_PAGE.allLists()}
        onChoose={(list) =>
          onFilter({ ...filter, list: ROW_LISTS.find((one) => one === list) ?? '' })
        }
        choices={ROW_LISTS.map((list) => ({ value: list, text: LIST_TITLES[list] }))}
      />
      <CheckField
        field="shelf-out"
        label={SHELF_PAGE.noneLeft()}
        isChecked={filter.isOutOnly}
        onCheck={(isOutOnly) => onFilter({ ...filter, isOutOnly })}
      />
    </search>
  )
}

function AddRow({ onAdd }: { readonly onAdd: (list: RowList) => void }) {
  const [list, setList] = useState<RowList>('interfaces')
  return (
    <div className="shelf-add">
      <ChoiceField
        field="shelf-add"
        label={SHELF_PAGE.addWhat()}
        value={list}
        onChoose={(chosen) => setList(ROW_LISTS.find((one) => one === chosen) ?? list)}
        choices={ROW_LISTS.map((one) => ({ value: one, text: LIST_TITLES[one] }))}
      />
      <Button className="button" onPress={() => onAdd(list)}>
        {SHELF_PAGE.add()}
      </Button>
    </div>
  )
}
