// Two pinned set-ups on one scale, and the difference in words. Leaves out choosing them.
import { useCallback, useEffect, useMemo, useRef } from 'react'
import { Button } from 'react-aria-components'
import { compareRibbonsSvg, ribbonText } from '../../pictures/breath-ribbon.ts'
import type { Ribbon } from '../../pictures/ribbon-shape.ts'
import { differenceLines, PIN_WORDS, pinnedText } from '../../words/web-pins-text.ts'
import { setUpHeadingText } from '../../words/web-answer-text.ts'
import { SHOWN_WORDS } from '../../words/web-trial-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import type { PlanRequest, Tried } from '../worker/core-api.ts'
import { useTrial } from '../worker/use-trial.ts'
import type { TrialState } from '../worker/use-trial.ts'
import { NO_PINS } from './pins.ts'
import type { Pin, Pins } from './pins.ts'

export interface CompareProps {
  readonly request: PlanRequest
  readonly pins: Pins
  readonly onPins: (pins: Pins) => void
}

export function Compare({ request, pins, onPins }: CompareProps) {
  const { before, after } = pins
  if (before === null) return null
  if (after === null) {
    return (
      <div className="compare section" aria-live="polite">
        <p>
          <b>{titleOf(before)}</b>. {PIN_WORDS.one}
        </p>
        <Button className="button" onPress={() => onPins(NO_PINS)}>
          {PIN_WORDS.clear}
        </Button>
      </div>
    )
  }
  return <Both request={request} before={before} after={after} onPins={onPins} />
}

function Both(props: {
  readonly request: PlanRequest
  readonly before: Pin
  readonly after: Pin
  readonly onPins: (pins: Pins) => void
}) {
  const { request, before, after, onPins } = props
  const was = useTrial('before', request, useQuestion(before))
  const becomes = useTrial('after', request, useQuestion(after))
  const heading = useRef<HTMLHeadingElement>(null)
  // What was asked for stands below the card it was asked on: the reader is led there.
  useEffect(() => {
    heading.current?.focus()
  }, [])
  return (
    <section className="compare section" aria-labelledby="compare-heading">
      <h3 id="compare-heading" ref={heading} tabIndex={-1}>
        {PIN_WORDS.heading}
      </h3>
      <dl className="compare-names">
        <div>
          <dt>{PIN_WORDS.before}</dt>
          <dd>{titleOf(before)}</dd>
        </div>
        <div>
          <dt>{PIN_WORDS.after}</dt>
          <dd>{titleOf(after)}</dd>
        </div>
      </dl>
      <Answered before={before} after={after} was={was} becomes={becomes} />
      <div className="buttons">
        <Button className="button" onPress={() => onPins({ before: after, after: before })}>
          {PIN_WORDS.swap}
        </Button>
        <Button className="button" onPress={() => onPins(NO_PINS)}>
          {PIN_WORDS.clear}
        </Button>
      </div>
    </section>
  )
}

function Answered(props: {
  readonly before: Pin
  readonly after: Pin
  readonly was: TrialState
  readonly becomes: TrialState
}) {
  const { was, becomes } = props
  const first = useRibbonOf(props.before, was.tried)
  const second = useRibbonOf(props.after, becomes.tried)
  const draw = useCallback(
    (widthPx: number) =>
      first === null || second === null
        ? ''
        : compareRibbonsSvg({ before: first, after: second, widthPx, id: 'compared' }),
    [first, second],
  )
  if (was.isFailed || becomes.isFailed) return <p role="alert">{SHOWN_WORDS.failed}</p>
  if (was.tried === null || becomes.tried === null || first === null || second === null)
    return <p className="picture-waiting">{PIN_WORDS.working}</p>
  return (
    <>
      <Lines lines={differenceLines(was.tried.trial, becomes.tried.trial)} />
      <Picture draw={draw} />
      <Fold heading={PIN_WORDS.inWords} level={4}>
        <Lines lines={[...ribbonText(first), ...ribbonText(second)]} />
      </Fold>
    </>
  )
}

function titleOf({ row, ratePerMin }: Pin): string {
  return pinnedText(setUpHeadingText(row), ratePerMin)
}

function useQuestion({ row, ratePerMin }: Pin) {
  const { setUp } = row
  return useMemo(
    () => (ratePerMin === null ? { setUp } : { setUp, ratePerMin }),
    [setUp, ratePerMin],
  )
}

function useRibbonOf(pin: Pin, tried: Tried | null): Ribbon | null {
  return useMemo(() => {
    const breath = tried?.trial.breath ?? null
    if (tried === null || breath === null) return null
    const { printedO2Fraction, isChecked } = tried.trial
    return { breath, printedO2Fraction, isChecked, title: titleOf(pin) }
  }, [pin, tried])
}
