// One row of the shelf: what it is, how many of each size, where it lies, all that is known of it. Leaves out editing its fields.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { Link } from 'wouter'
import type { Problem } from '../../errors.ts'
import { putRow, withCount } from '../../kit/edit-shelf.ts'
import type { AnyRow, RowList } from '../../kit/edit-shelf.ts'
import type { SizeId } from '../../kit/family-id.ts'
import { HUMIDIFIER_KINDS } from '../../kit/shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { SOURCE_KINDS } from '../../kit/shelf-rules.ts'
import { SIZE_NAMES } from '../../words/names.ts'
import { translated } from '../../words/say.ts'
import { SHELF_PAGE, changedText, countLabelText } from '../../words/shelf-page-text.ts'
import { Facts } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { chainHref } from '../chain/chain-address.ts'
import type { Named } from '../chain/chain-address.ts'
import { choiceName, placeName } from './choice-names.ts'
import { CountStepper } from './count-stepper.tsx'
import { factsOf, ratedText, whomText } from './row-facts.ts'
import { hasRunOut, kindName } from './shelf-filter.ts'

export interface RowCardProps {
  readonly shelf: Shelf
  readonly list: RowList
  readonly row: AnyRow
  readonly onShelf: (shelf: Shelf, said: string) => void
  readonly onEdit: () => void
  readonly onRemove: () => void
}

export function RowCard(props: RowCardProps) {
  const { shelf, list, row, onShelf } = props
  const [isAsking, setAsking] = useState(false)
  const label = translated(row.label)
  const count = (to: number, size?: SizeId): readonly Problem[] => {
    const put = putRow(
      shelf,
      list,
      withCount(row, { count: to, ...(size === undefined ? {} : { size }) }),
    )
    if (!put.ok) return put.problems
    onShelf(put.shelf, changedText(label))
    return []
  }
  const kind = 'family' in row ? choiceName('family', row.family) : kindName(row)
  return (
    <article className="shelf-row" aria-label={label}>
      <div className="shelf-row-top">
        <h3>{label}</h3>
        {hasRunOut(row) ? <span className="badge">{SHELF_PAGE.out()}</span> : null}
        <p className="field-help">
          {[kind, placeName(shelf, row.place), row.wardMarking].filter(Boolean).join(' · ')}
        </p>
      </div>
      <div className="shelf-counts">
        {'sizes' in row ? (
          row.sizes.map((stock) => (
            <div key={stock.size} className="shelf-size">
              <CountStepper
                field={`count.${list}.${row.id}.${stock.size}`}
                label={countLabelText(label, stock.size)}
                count={stock.count}
                onCount={(to) => count(to, stock.size)}
              />
              <span>
                {SIZE_NAMES[stock.size]}
                <span className="field-help shelf-rated">{whomText(row, stock)}</span>
                <span className="field-help shelf-rated">{ratedText(row, stock)}</span>
              </span>
            </div>
          ))
        ) : (
          <CountStepper
            field={`count.${list}.${row.id}`}
            label={countLabelText(label, undefined)}
            count={row.count}
            onCount={(to) => count(to)}
          />
        )}
      </div>
      <Fold heading={SHELF_PAGE.details()} level={4}>
        <Facts facts={factsOf(shelf, list, row)} />
        {isAsking ? (
          <div className="offer" role="alert">
            <span>{SHELF_PAGE.removeSure()}</span>
            <Button className="button" onPress={props.onRemove}>
              {SHELF_PAGE.yesRemove()}
              <span className="unseen">, {label}</span>
            </Button>
            <Button className="button" onPress={() => setAsking(false)}>
              {SHELF_PAGE.keep()}
            </Button>
          </div>
        ) : (
          <div className="buttons">
            <ChainLink row={row} />
            <Button className="button" onPress={props.onEdit}>
              {SHELF_PAGE.edit()}
              <span className="unseen">, {label}</span>
            </Button>
            <Button className="button" onPress={() => setAsking(true)}>
              {SHELF_PAGE.remove()}
              <span className="unseen">, {label}</span>
            </Button>
          </div>
        )}
      </Fold>
    </article>
  )
}

/** To the chain with this row in it; tubes and fittings are found by the chain itself. */
function ChainLink({ row }: { readonly row: AnyRow }) {
  const named = namedIn(row)
  if (named === null) return null
  return (
    <Link className="button" href={chainHref(named)}>
      {SHELF_PAGE.toChain()}
      <span className="unseen">, {translated(row.label)}</span>
    </Link>
  )
}

function namedIn(row: AnyRow): Named | null {
  if ('family' in row) return { interfaceKey: row.id }
  if (!('kind' in row)) return null
  if (SOURCE_KINDS.some((kind) => kind === row.kind)) return { sourceId: row.id }
  const humidification = HUMIDIFIER_KINDS.find((kind) => kind === row.kind)
  return humidification === undefined ? null : { humidification }
}
