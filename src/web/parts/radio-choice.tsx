// One choice of a few, all in sight side by side. Leaves out what is chosen.
import { Label, Radio, RadioGroup } from 'react-aria-components'

export interface RadioChoiceProps<C extends string> {
  readonly label: string
  /** Whether the label is only for readers that speak. */
  readonly isLabelUnseen?: boolean
  readonly value: C
  readonly choices: readonly C[]
  readonly texts: Readonly<Record<C, string>>
  readonly onChoose: (choice: C) => void
}

export function RadioChoice<C extends string>(props: RadioChoiceProps<C>) {
  const { label, value, choices, texts, onChoose } = props
  return (
    <RadioGroup
      className="radio-choice"
      orientation="horizontal"
      value={value}
      onChange={(picked) => {
        const found = choices.find((choice) => choice === picked)
        if (found !== undefined) onChoose(found)
      }}
    >
      <Label className={props.isLabelUnseen === true ? 'unseen' : 'field-label'}>{label}</Label>
      <div className="look">
        {choices.map((choice) => (
          <Radio key={choice} value={choice} className="look-choice">
            {texts[choice]}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  )
}
