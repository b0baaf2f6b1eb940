// Head of the Shelf page: whose shelf it is, a draft that waits, the way back to the demo. Leaves out the rows.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Shelf } from '../../kit/shelf.ts'
import { SHELF_PAGE, altitudeText } from '../../words/shelf-page-text.ts'
import { shelfInUseText } from '../../words/web-shelf-import-text.ts'
import { chooseDemoShelf } from './shelf-store.ts'

export function ShelfTop(props: {
  readonly shelf: Shelf
  readonly isDemo: boolean
  readonly isKept: boolean
  readonly onDemo: () => void
  /** Name in a draft that waits; null where none does. */
  readonly kept: string | null
  readonly onGoOn: () => void
  readonly onForget: () => void
  /** Null while something is being typed. */
  readonly onEdit: (() => void) | null
}) {
  const { shelf, isDemo, isKept, kept } = props
  const [isAsking, setAsking] = useState(false)
  return (
    <header className="shelf-top">
      <h1>{SHELF_PAGE.heading()}</h1>
      <p>
        {shelfInUseText({
          hospital: shelf.hospital,
          isDemo,
          isInvented: shelf.isInvented ?? false,
        })}
        {shelf.altitudeM === undefined ? null : ` ${altitudeText(shelf.altitudeM)}`}
        {isKept ? null : ` ${SHELF_PAGE.notKept()}`}
      </p>
      <div className="buttons shelf-top-buttons">
        {props.onEdit === null ? null : (
          <Button className="button" onPress={props.onEdit}>
            {SHELF_PAGE.editHospital()}
          </Button>
        )}
        {isDemo || isAsking ? null : (
          <Button className="button" onPress={() => setAsking(true)}>
            {SHELF_PAGE.toDemo()}
          </Button>
        )}
      </div>
      {isAsking ? (
        <div className="offer" role="alert">
          <span>{SHELF_PAGE.toDemoSure()}</span>
          <Button
            className="button"
            onPress={() => {
              chooseDemoShelf()
              setAsking(false)
              props.onDemo()
            }}
          >
            {SHELF_PAGE.yesToDemo()}
          </Button>
          <Button className="button" onPress={() => setAsking(false)}>
            {SHELF_PAGE.keep()}
          </Button>
        </div>
      ) : null}
      {kept === null ? null : (
        <div className="offer">
          <span>
            {SHELF_PAGE.draftKept()} {kept}
          </span>
          <Button className="button" onPress={props.onGoOn}>
            {SHELF_PAGE.goOn()}
          </Button>
          <Button className="button" onPress={props.onForget}>
            {SHELF_PAGE.forget()}
          </Button>
        </div>
      )}
    </header>
  )
}
