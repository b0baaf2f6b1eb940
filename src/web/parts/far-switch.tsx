// One tap into two-metre mode. Leaves out the mode itself, which plan-view/two-metre.tsx shows.
import { Button } from 'react-aria-components'
import { FAR_WORDS } from '../../words/web-far-text.ts'
import { changeSettings } from '../settings/settings-store.ts'

export function FarSwitch() {
  return (
    <Button className="button far-enter" onPress={() => changeSettings({ isTwoMetre: true })}>
      {FAR_WORDS.enter}
    </Button>
  )
}
