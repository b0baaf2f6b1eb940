// What is inhaled on room air: its number and the saturation forecast. Leaves out dials and ribbon, of which there is nothing to set or draw.
import type { Plan } from '../../planning/plan-types.ts'
import { fractionText } from '../../words/number-text.ts'
import { ANSWER_WORDS } from '../../words/web-answer-text.ts'
import {
  forecastBesideText,
  landsText,
  onNowEyebrowText,
  SHOWN_WORDS,
} from '../../words/web-trial-text.ts'
import { SaturationScale } from '../parts/saturation-scale.tsx'
import type { TrialState } from '../worker/use-trial.ts'

export interface AirCardProps {
  readonly plan: Plan
  readonly trial: TrialState
}

export function AirCard({ plan, trial }: AirCardProps) {
  const { goal } = plan
  const tried = trial.tried?.trial ?? null
  return (
    <div className="answer">
      <p className="eyebrow">{onNowEyebrowText(goal)}</p>
      <h3 className="answer-name">{SHOWN_WORDS.roomAir}</h3>
      {tried === null ? null : (
        <>
          <p className="primary">
            <strong className="primary-value">
              {fractionText(tried.effectiveO2Fraction.median)}
            </strong>
            <span className="primary-name">{SHOWN_WORDS.inhaledNow}</span>
          </p>
          {tried.saturationPercent === null ? null : (
            <div className="forecast">
              <p className="forecast-text">
                <span className="forecast-name">{ANSWER_WORDS.saturation}</span>{' '}
                <b>{forecastBesideText(tried.saturationPercent, goal)}</b>
              </p>
              <SaturationScale
                band={tried.saturationPercent}
                goal={
                  goal.kind === 'saturation'
                    ? { low: goal.lowPercent, high: goal.highPercent }
                    : null
                }
              />
            </div>
          )}
          <p className="why">{landsText(tried, goal)}</p>
        </>
      )}
      <p className="section-help">{SHOWN_WORDS.roomAirHelp}</p>
    </div>
  )
}
