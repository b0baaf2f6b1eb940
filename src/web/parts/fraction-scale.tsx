// The inhaled fraction on its scale: spread as a band, middle as a mark, printed range as a bracket. Its numbers stand beside as text.
import type { Band } from '../../planning/plan-types.ts'
import { scaleOf, ticksOf } from '../../pictures/scale.ts'
import { fractionText } from '../../words/number-text.ts'

export interface FractionScaleProps {
  readonly band: Band
  readonly printed: { readonly low: number; readonly high: number } | null
  readonly goal: { readonly low: number; readonly high: number } | null
}

const AXIS = { min: 0.2, max: 1 } as const
const TICK = 0.2
const percent = scaleOf({ ...AXIS, fromPx: 0, toPx: 100 })

export function FractionScale({ band, printed, goal }: FractionScaleProps) {
  return (
    <div className="scale" aria-hidden="true">
      <div className="scale-strip">
        <div className="scale-line" />
        {goal === null ? null : <div className="strip-goal" style={span(goal)} />}
        <div className="strip-band" style={span(band)} />
        <div className="strip-middle" style={{ left: at(band.median) }} />
      </div>
      {printed === null ? null : (
        <div className="scale-below">
          <div
            className={printed.low === printed.high ? 'scale-printed one' : 'scale-printed'}
            style={span(printed)}
          />
        </div>
      )}
      <div className="scale-ticks">
        {ticksOf(AXIS, TICK).map((tick) => (
          <span key={tick} style={{ left: at(tick) }}>
            {fractionText(tick)}
          </span>
        ))}
      </div>
    </div>
  )
}

function at(value: number): string {
  return `${percent.at(Math.min(AXIS.max, Math.max(AXIS.min, value)))}%`
}

function span(range: { readonly low: number; readonly high: number }) {
  return { left: at(range.low), right: `calc(100% - ${at(range.high)})` }
}
