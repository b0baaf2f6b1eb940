// The answer alone, legible across the room: set-up, inhaled fraction, forecast. Leaves out everything else, which styles/two-metre.css folds away.
import { useEffect } from 'react'
import { Button } from 'react-aria-components'
import { AIR_O2_FRACTION } from '../../units/constants.ts'
import type { Plan } from '../../planning/plan-types.ts'
import { fractionText } from '../../words/number-text.ts'
import {
  ANSWER_WORDS,
  fractionSpreadText,
  holdsText,
  saturationText,
  setUpHeadingText,
} from '../../words/web-answer-text.ts'
import { FAR_WORDS } from '../../words/web-far-text.ts'
import { ON_NOW_NAMES } from '../../words/web-form-text.ts'
import { changeSettings, useSettings } from '../settings/settings-store.ts'
import { ON_NOW } from './shown.ts'
import type { Shown } from './shown.ts'
import '../styles/two-metre.css'

export interface TwoMetreProps {
  readonly plan: Plan
  readonly shown: Shown | null
}

/** Shown while the mode is set (parts/far-switch.tsx leads in) and there is an answer; one tap leads out. */
export function TwoMetre({ plan, shown }: TwoMetreProps) {
  const { isTwoMetre } = useSettings()
  return isTwoMetre && shown !== null ? <Far plan={plan} shown={shown} /> : null
}

function Far({ plan, shown }: { readonly plan: Plan; readonly shown: Shown }) {
  useEffect(() => {
    const { dataset } = document.documentElement
    const leaveByKey = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') leave()
    }
    dataset['far'] = 'yes'
    addEventListener('keydown', leaveByKey)
    return () => {
      delete dataset['far']
      removeEventListener('keydown', leaveByKey)
    }
  }, [])
  const row = shown.kind === 'row' ? shown.row : null
  return (
    <div className="far">
      <p className="far-name">
        {row === null ? ON_NOW_NAMES.air : setUpHeadingText(row)}
        {shown.key === ON_NOW ? `, ${FAR_WORDS.onNow}` : ''}
      </p>
      <p className="far-number">
        <span className="far-value">
          {fractionText(row === null ? AIR_O2_FRACTION : row.effectiveO2Fraction.median)}
        </span>
        <span className="far-fact">
          {ANSWER_WORDS.number}
          {row === null ? '' : `, ${fractionSpreadText(row)}`}
        </span>
      </p>
      {row === null ? null : (
        <p className="far-fact">
          {FAR_WORDS.saturation}: <strong>{saturationText(row, plan.goal)}</strong>
        </p>
      )}
      {row === null ? null : (
        <p className="far-fact">
          {FAR_WORDS.holds}: <strong>{holdsText(row)}</strong>
        </p>
      )}
      <Button className="button far-leave" onPress={leave}>
        {FAR_WORDS.leave}
      </Button>
    </div>
  )
}

function leave(): void {
  changeSettings({ isTwoMetre: false })
}
