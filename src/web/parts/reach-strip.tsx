// One row of the reach chart: the likely range against the goal, other steps as ticks. Its numbers stand beside as text.
import type { ReachAxis, ReachRow } from '../../pictures/reach-rows.ts'
import { scaleOf, ticksOf } from '../../pictures/scale.ts'
import { fractionText, numberText } from '../../words/number-text.ts'
import { REACH_WORDS } from '../../words/reach-text.ts'

export interface ReachStripProps {
  readonly row: ReachRow
  readonly axis: ReachAxis
}

type Place = (value: number) => string

function placeOn(axis: ReachAxis): Place {
  const percent = scaleOf({ min: axis.min, max: axis.max, fromPx: 0, toPx: 100 })
  return (value) => `${percent.at(Math.min(axis.max, Math.max(axis.min, value)))}%`
}

export function ReachStrip({ row, axis }: ReachStripProps) {
  const at = placeOn(axis)
  const span = (range: { readonly low: number; readonly high: number }) => ({
    left: at(range.low),
    right: `calc(100% - ${at(range.high)})`,
  })
  const inside = row.otherSteps.filter((step) => step >= axis.min && step <= axis.max)
  return (
    <div className="strip" aria-hidden="true">
      {axis.goal === null ? null : <div className="strip-goal" style={span(axis.goal)} />}
      <div className="scale-line" />
      {[...new Set(inside)].map((step) => (
        <div key={step} className="strip-step" style={{ left: at(step) }} />
      ))}
      <div className="strip-band" style={span(row.band)} />
      <div className="strip-middle" style={{ left: at(row.band.median) }} />
    </div>
  )
}

/** The axis that all rows share, with the goal on it. */
export function ReachAxisLine({ axis }: { readonly axis: ReachAxis }) {
  const at = placeOn(axis)
  const isFraction = axis.kind === 'fraction'
  return (
    <div className="reach-axis" aria-hidden="true">
      <div className="scale-ticks">
        {ticksOf(axis, axis.tick).map((tick) => (
          <span key={tick} style={{ left: at(tick) }}>
            {isFraction ? fractionText(tick) : numberText(tick, 1)}
          </span>
        ))}
      </div>
      <div className="reach-legend">
        <span>{isFraction ? REACH_WORDS.fractionAxis : REACH_WORDS.saturationAxis}</span>
        {axis.goal === null ? null : (
          <span>
            <i className="key key-goal" />
            {REACH_WORDS.goalBand}
          </span>
        )}
      </div>
    </div>
  )
}

/** What the marks of the rows mean. */
export function ReachLegend() {
  return (
    <div className="reach-legend" aria-hidden="true">
      <span>
        <i className="key key-band" />
        {REACH_WORDS.interval}
      </span>
      <span>
        <i className="key key-step" />
        {REACH_WORDS.otherSteps}
      </span>
    </div>
  )
}
