// Light, dark or as the device says; remembered in this browser. Leaves out the colours, which styles/tokens.css holds.
import { useEffect, useState } from 'react'
import { Label, Radio, RadioGroup } from 'react-aria-components'
import { PAGE_WORDS } from '../../words/web-page-text.ts'

const LOOKS = ['device', 'light', 'dark'] as const
type Look = (typeof LOOKS)[number]

const LOOK_NAMES: Readonly<Record<Look, string>> = {
  device: PAGE_WORDS.asDevice,
  light: PAGE_WORDS.light,
  dark: PAGE_WORDS.dark,
}

const KEY = 'oxwright.look'

export function LookSwitch() {
  const [look, setLook] = useState<Look>(keptLook)
  useEffect(() => {
    document.documentElement.dataset['look'] = look
    try {
      localStorage.setItem(KEY, look)
    } catch {
      // Blocked storage: the look lasts until the page is left.
    }
  }, [look])
  return (
    <RadioGroup
      className="look"
      orientation="horizontal"
      value={look}
      onChange={(value) => setLook(lookOf(value))}
    >
      <Label className="unseen">{PAGE_WORDS.look}</Label>
      {LOOKS.map((one) => (
        <Radio key={one} value={one} className="look-choice">
          {LOOK_NAMES[one]}
        </Radio>
      ))}
    </RadioGroup>
  )
}

function lookOf(value: string | null): Look {
  return LOOKS.find((look) => look === value) ?? 'device'
}

function keptLook(): Look {
  try {
    return lookOf(localStorage.getItem(KEY))
  } catch {
    return 'device'
  }
}
