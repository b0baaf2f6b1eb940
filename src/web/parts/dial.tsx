// One value to drag or to step: the browser's own slider, its value told in words, a step button at each end. Leaves out what it sets.
import { useId } from 'react'
import { Button } from 'react-aria-components'
import { SHOWN_WORDS } from '../../words/web-trial-text.ts'

export interface DialProps {
  readonly label: string
  readonly min: number
  readonly max: number
  readonly value: number
  /** The value in words: shown, and read out in place of the number. */
  readonly valueText: string
  readonly onMove: (value: number) => void
}

export function Dial({ label, min, max, value, valueText, onMove }: DialProps) {
  const id = useId()
  return (
    <div className="dial">
      <label htmlFor={id} className="dial-label">
        {label}
      </label>
      <output htmlFor={id} className="dial-value" aria-hidden="true">
        {valueText}
      </output>
      <div className="dial-row">
        <Step
          label={`${label}: ${SHOWN_WORDS.less}`}
          sign="−"
          to={value - 1}
          {...{ min, max }}
          onMove={onMove}
        />
        <input
          id={id}
          type="range"
          className="dial-range"
          min={min}
          max={max}
          step={1}
          value={value}
          aria-valuetext={valueText}
          onChange={(event) => onMove(event.target.valueAsNumber)}
        />
        <Step
          label={`${label}: ${SHOWN_WORDS.more}`}
          sign="+"
          to={value + 1}
          {...{ min, max }}
          onMove={onMove}
        />
      </div>
    </div>
  )
}

interface StepProps {
  readonly label: string
  readonly sign: string
  readonly to: number
  readonly min: number
  readonly max: number
  readonly onMove: (value: number) => void
}

function Step({ label, sign, to, min, max, onMove }: StepProps) {
  return (
    <Button
      className="button dial-step"
      aria-label={label}
      isDisabled={to < min || to > max}
      onPress={() => onMove(to)}
    >
      {sign}
    </Button>
  )
}
