// One choice of a few, all in sight side by side, by the browser's own radio buttons (decision 0011). Leaves out what is chosen.
import { useId } from 'react'

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
  const name = useId()
  return (
    <fieldset className="radio-choice plain" role="radiogroup">
      <legend className={props.isLabelUnseen === true ? 'unseen' : 'field-label'}>{label}</legend>
      <div className="look">
        {choices.map((choice) => (
          <label key={choice} className="look-choice" data-selected={choice === value || undefined}>
            <input
              type="radio"
              className="unseen"
              name={name}
              value={choice}
              checked={choice === value}
              onChange={() => onChoose(choice)}
            />
            {texts[choice]}
          </label>
        ))}
      </div>
    </fieldset>
  )
}
