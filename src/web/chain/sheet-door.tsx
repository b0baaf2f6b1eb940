// From a chain to the bedside sheet of its set-up with its humidifier, for the patient on Bedside. Leaves out the sheet.
import { useMemo } from 'react'
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import { humidificationOf } from '../../kit/shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { SheetButton } from '../sheet/sheet-button.tsx'
import type { BedsidePatient } from './bedside-patient.ts'
import { namedBy } from './chain-address.ts'
import type { ChainChoice, Picked } from './chain-choice.ts'

/** Nothing where the picks are no set-up of a plan, or the chain is not for the patient on Bedside. */
export function SheetDoor(props: {
  readonly shelf: Shelf
  readonly picked: Picked
  readonly bedside: Pick<Extract<BedsidePatient, { kind: 'patient' }>, 'about'> | null
}) {
  const { shelf, picked, bedside } = props
  const { choice } = picked
  const id = useMemo(() => setUpIdOf(shelf, choice), [shelf, choice])
  const { wardId, humidification } = choice
  // A usual patient has no goal.
  if (bedside === null || picked.about !== bedside.about || id === undefined) return null
  const { about } = bedside
  const request = { about, shelf, ...(wardId === '' ? {} : { wardId }) }
  return (
    <p className="chain-to-sheet">
      <SheetButton request={request} id={id} humidification={humidificationOf(humidification)} />
    </p>
  )
}

/** The set-up with these picks, whatever wets its gas. */
function setUpIdOf(shelf: Shelf, choice: ChainChoice): string | undefined {
  const { interfaceKey, sourceId, flow, overFlow, fraction } = choice
  const found = candidateSetUps(shelf).find(({ setUp }) => {
    const named = namedBy(setUp, undefined)
    return (
      named?.interfaceKey === interfaceKey &&
      named.sourceId === sourceId &&
      named.flow === flow &&
      named.overFlow === overFlow &&
      named.fraction === fraction
    )
  })
  return found?.id
}
