// Offers a newer version quietly; it is never taken unasked. Leaves out how it is found.
import { useSyncExternalStore } from 'react'
import { Button } from 'react-aria-components'
import { OFFLINE_WORDS } from '../../words/web-offline-text.ts'
import { startKeeping } from './update-store.ts'

const updates = startKeeping()

export function UpdateBar() {
  const isReady = useSyncExternalStore(updates.listen, updates.isReady)
  return (
    <output className="update">
      {isReady ? (
        <span className="update-bar">
          <span>{OFFLINE_WORDS.ready}</span>
          <Button className="button" onPress={updates.take}>
            {OFFLINE_WORDS.take}
          </Button>
        </span>
      ) : null}
    </output>
  )
}
