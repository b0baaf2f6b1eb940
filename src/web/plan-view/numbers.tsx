// The one primary number with its spread and the printed one beside, and the saturation forecast against the goal. Leaves out what they follow from.
import type { Goal } from '../../patient/case.ts'
import type { RankedSetUp } from '../../planning/plan-types.ts'
import { fractionText } from '../../words/number-text.ts'
import {
  ANSWER_WORDS,
  fractionSpreadText,
  printedBesideText,
  saturationText,
} from '../../words/web-answer-text.ts'
import { forecastBesideText, SHOWN_WORDS } from '../../words/web-trial-text.ts'
import { FractionScale } from '../parts/fraction-scale.tsx'
import { SaturationScale } from '../parts/saturation-scale.tsx'

export interface NumbersProps {
  readonly row: RankedSetUp
  readonly goal: Goal
}

export function PrimaryNumber({ row, goal, isNow }: NumbersProps & { readonly isNow: boolean }) {
  return (
    <div className="answer-number">
      <p className="primary">
        <strong className="primary-value">{fractionText(row.effectiveO2Fraction.median)}</strong>
        <span className="primary-name">
          {isNow ? SHOWN_WORDS.inhaledNow : SHOWN_WORDS.inhaledThen}
        </span>
      </p>
      <div className="primary-spread">
        <FractionScale
          band={row.effectiveO2Fraction}
          printed={row.printedO2Fraction}
          goal={goal.kind === 'fraction' ? goal : null}
        />
        <p className="spread-text">
          <span>
            <i className="key key-band" aria-hidden="true" />
            <b>{fractionSpreadText(row)}</b> {ANSWER_WORDS.spread}
          </span>
          <span>
            {row.printedO2Fraction === null ? null : (
              <i className="key key-printed" aria-hidden="true" />
            )}
            {printedBesideText(row)}
          </span>
        </p>
      </div>
    </div>
  )
}

export function Forecast({ row, goal }: NumbersProps) {
  const band = row.saturationPercent
  return (
    <div className="forecast">
      <p className="forecast-text">
        <span className="forecast-name">{ANSWER_WORDS.saturation}</span>{' '}
        <b>{band === null ? saturationText(row, goal) : forecastBesideText(band, goal)}</b>
      </p>
      {band === null ? null : (
        <SaturationScale
          band={band}
          goal={
            goal.kind === 'saturation' ? { low: goal.lowPercent, high: goal.highPercent } : null
          }
        />
      )}
    </div>
  )
}
