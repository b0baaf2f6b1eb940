// Light, dark or as the device says, quickly from every page. Leaves out where it is kept, which settings-store.ts does.
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { changeSettings, useSettings } from '../settings/settings-store.ts'
import { LOOKS } from '../settings/settings.ts'
import type { Look } from '../settings/settings.ts'
import { RadioChoice } from './radio-choice.tsx'

const LOOK_NAMES: Readonly<Record<Look, string>> = {
  device: PAGE_WORDS.asDevice,
  light: PAGE_WORDS.light,
  dark: PAGE_WORDS.dark,
}

export function LookSwitch() {
  const { look } = useSettings()
  return (
    <RadioChoice
      label={PAGE_WORDS.look}
      isLabelUnseen
      value={look}
      choices={LOOKS}
      texts={LOOK_NAMES}
      onChoose={(next) => changeSettings({ look: next })}
    />
  )
}
