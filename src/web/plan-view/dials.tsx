// The dials of the set-up in sight: flow by the steps its meter has, breathing rate over the rates that are followed. Leaves out the answer to them.
import { useMemo } from 'react'
import type { SetUp } from '../../kit/set-up.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { FlowStep } from '../../kit/source-row.ts'
import type { TrialRates } from '../../planning/trial.ts'
import { flowStepValueText, rateValueText, SHOWN_WORDS } from '../../words/web-trial-text.ts'
import { Dial } from '../parts/dial.tsx'
import { indexOfStep, stepsOf } from './shown.ts'
import type { Tweak } from './shown.ts'

export interface DialsProps {
  readonly setUp: SetUp
  readonly shelf: Shelf
  /** Null until the first answer brings them. */
  readonly rates: TrialRates | null
  readonly tweak: Tweak
  readonly onTweak: (tweak: Tweak) => void
}

export function Dials({ setUp, shelf, rates, tweak, onTweak }: DialsProps) {
  const { over } = setUp
  const steps = useMemo(() => stepsOf(setUp, shelf), [setUp, shelf])
  const overSteps = useMemo(
    () => (over === null ? [] : stepsOf({ ...setUp, flow: over.flow }, shelf)),
    [setUp, over, shelf],
  )
  return (
    <fieldset className="dials">
      <legend>{SHOWN_WORDS.trying}</legend>
      <FlowDial
        label={SHOWN_WORDS.flow}
        steps={steps}
        own={setUp.flow}
        tried={tweak.flow}
        onTry={(flow) => onTweak({ ...tweak, flow })}
      />
      {over === null ? null : (
        <FlowDial
          label={SHOWN_WORDS.overFlow}
          steps={overSteps}
          own={over.flow}
          tried={tweak.overFlow}
          onTry={(overFlow) => onTweak({ ...tweak, overFlow })}
        />
      )}
      {rates === null ? null : (
        <Dial
          label={SHOWN_WORDS.rate}
          min={Math.ceil(rates.minPerMin)}
          max={Math.floor(rates.maxPerMin)}
          value={Math.round(tweak.ratePerMin ?? rates.middlePerMin)}
          valueText={rateValueText(tweak.ratePerMin ?? rates.middlePerMin, rates)}
          onMove={(ratePerMin) =>
            onTweak({
              ...tweak,
              // Back where it was is no trial, whatever the middle is after the decimal point.
              ratePerMin: ratePerMin === Math.round(rates.middlePerMin) ? null : ratePerMin,
            })
          }
        />
      )}
    </fieldset>
  )
}

function FlowDial(props: {
  readonly label: string
  readonly steps: readonly FlowStep[]
  readonly own: FlowStep
  readonly tried: FlowStep | null
  readonly onTry: (flow: FlowStep | null) => void
}) {
  const { label, steps, own, tried, onTry } = props
  const ownIndex = indexOfStep(steps, own)
  if (steps.length < 2) return <p className="field-help">{SHOWN_WORDS.oneStep}</p>
  return (
    <Dial
      label={label}
      min={0}
      max={steps.length - 1}
      value={indexOfStep(steps, tried ?? own)}
      valueText={flowStepValueText(tried ?? own)}
      onMove={(index) => onTry(index === ownIndex ? null : (steps[index] ?? null))}
    />
  )
}
